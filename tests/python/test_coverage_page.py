"""The page of what is covered names every component, operation, rule and test that exists."""

import json
import re
from pathlib import Path

import pytest

import scupper as sc

TESTS = Path(__file__).parents[1]
DATA = TESTS.parent / "cpp" / "data"
RATES = DATA / "rates.json"
BOOKINGS = {"traffic_control", "supply", "disposal", "visit", "indirect"}  # of no part of a bridge


def rows(heading: str) -> list[list[str]]:
    """The cells of each row of the table under a heading, without its head."""
    page = (TESTS / "COVERAGE.md").read_text(encoding="utf-8")
    section = page.split(f"## {heading}\n")[1].split("\n## ")[0]
    lines = [line for line in section.splitlines() if line.startswith("|")]
    return [[cell.strip() for cell in line.strip("|").split("|")] for line in lines[2:]]


def test_every_component_stands_in_it_with_a_rule_that_exists() -> None:
    table = rows("Components")
    listed = {row[0] for row in table}
    schema = sc.job_schema()["properties"]["service"]["properties"]
    assert listed == set(schema) - BOOKINGS
    known = set(sc.rules()["name"])
    for row in table:
        names = re.findall(r"`([^`]+)`", row[2])
        assert names, row
        assert set(names) <= known, row


def test_every_operation_stands_in_it_with_its_component_and_driver() -> None:
    shipped = json.loads(RATES.read_text(encoding="utf-8"))["operations"]
    expected = [(op["name"], op["component"], op["driver"]) for op in shipped]
    assert [(row[0], row[1], row[3]) for row in rows("Operations")] == expected


@pytest.mark.parametrize("heading", ["Alternatives", "Surroundings", "Paces"])
def test_every_entry_that_ships_stands_in_it(heading: str) -> None:
    name = heading.lower()
    document = json.loads((DATA / f"{name}.json").read_text(encoding="utf-8"))
    assert [row[0] for row in rows(heading)] == [entry["name"] for entry in document[name]]


@pytest.mark.parametrize(
    "heading", ["Components", "Operations", "Alternatives", "Surroundings", "Paces", "Learning"]
)
def test_every_test_it_names_exists(heading: str) -> None:
    for row in rows(heading):
        file, case = row[-1].strip("`").split(": ", 1)
        source = (TESTS / "cpp" / file).read_text(encoding="utf-8")
        assert f'TEST_CASE("{case}")' in source, row
