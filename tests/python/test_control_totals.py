"""Totals of whole public files: as published, and as counted apart from this project."""

from __future__ import annotations

import gzip
import re
from collections import Counter
from pathlib import Path

import pandas as pd
import pytest

import scupper as sc

TESTS = Path(__file__).parents[1]
TOTALS = pd.read_csv(TESTS / "reference" / "inventory" / "control_totals.csv", dtype=str)
COLUMNS = {
    "owner": "owner",
    "43A": "material",
    "43B": "design",
    "functional class": "functional_class",
    "107": "deck_type",
    "county": "county",
    "condition": "condition",
    "42B": "service_under",
}
CLASSES = {"rural minor collector": 8, "urban interstate": 11, "urban freeway/expressway": 12}
WORDS = {"good": "G", "fair": "F", "poor": "P"}
OTHER_WIDTHS = {"item49 x item51": "roadway_width_m", "item49 x item52 only": "deck_width_m"}


def lowest(row: pd.Series) -> str:  # type: ignore[type-arg]
    """The condition of 23 CFR 490.409: good from 7, poor up to 4."""
    parts = ["deck", "superstructure", "substructure", "culvert"]
    ratings = [row[f"{part}_condition"] for part in parts]
    rating = min((int(r) for r in ratings if r.isdigit()), default=-1)
    return "" if rating < 0 else "G" if rating >= 7 else "P" if rating <= 4 else "F"


def codes_of(key: str) -> dict[str, int]:
    """What the codes of a category are called, from the schema of structures."""
    field = sc.structures_schema()["properties"]["structures"]["items"]["properties"][key]
    words = next(form["enum"] for form in field["anyOf"] if "enum" in form)
    return {word: code - 1 for code, word in enumerate(words)}


@pytest.fixture(scope="module")
def tables(tmp_path_factory: pytest.TempPathFactory) -> dict[str, pd.DataFrame]:
    tables = {}
    for state in ("AK", "DC"):
        path = tmp_path_factory.mktemp("whole") / f"{state}19.txt"
        packed = TESTS / "data" / "inventory" / f"{state}19.txt.gz"
        path.write_bytes(gzip.decompress(packed.read_bytes()))
        inv = sc.read_inventory(path)
        assert inv.rows == len(inv)
        table = inv.to_pandas()
        for key in ("material", "design"):
            table[key] = table[key].map(codes_of(key))
        table["condition"] = table.apply(lowest, axis=1)
        table["area"] = sc.take_off(inv, units="si")["deck_total_area_m2"].to_numpy()
        tables[state] = table
    return tables


def of_category(table: pd.DataFrame, category: str) -> pd.DataFrame:
    """The structures of a category such as "owner 01", "43B 02", "good", "all"."""
    if category in WORDS:
        return table[table["condition"] == WORDS[category]]
    if category in CLASSES:
        return table[(table["functional_class"] == CLASSES[category]).fillna(False)]
    what = re.fullmatch(r"(.*) (\S+)", category)
    if what is None or what[1] not in COLUMNS:
        return table
    column, code = table[COLUMNS[what[1]]], what[2]
    if code == "(blank)":
        return table[column.isna()]
    if pd.api.types.is_numeric_dtype(column):
        return table[(column == int(code)).fillna(False)]
    return table[column == code]


def total(table: pd.DataFrame, quantity: str, category: str) -> float:
    part = of_category(table, category)
    if quantity in ("bridge count", "records"):
        return len(part)
    if quantity == "structure length":
        return float(part["length_m"].sum())
    if quantity == "spans":
        return float((part["main_spans"] + part["approach_spans"].fillna(0)).sum())
    if quantity == "NHS deck area share":
        national = table[table["on_national_system"] == "1"]
        return 100.0 * float(of_category(national, category)["area"].sum() / national["area"].sum())
    if quantity.startswith("records where"):
        return int(((part["area"] - part["recorded_deck_area_m2"]).abs() > 0.005).sum())
    if category in OTHER_WIDTHS:
        return float((part["length_m"] * part[OTHER_WIDTHS[category]].fillna(0.0)).sum())
    if category == "DECK_AREA column":
        return float(part["recorded_deck_area_m2"].sum())
    return float(part["area"].sum())


def verdict(row: pd.Series, tables: dict[str, pd.DataFrame]) -> str:  # type: ignore[type-arg]
    """Whether a row is reproduced, differs as its file says, or has no file of its year."""
    if pd.isna(row["computed_from"]):
        return "no file of that year"
    ours = total(tables[row["state"]], row["quantity"], row["category"])
    step = 0.00051 if row["quantity"] == "NHS deck area share" else 0.0051
    assert ours == pytest.approx(float(row["computed"]), abs=step), row.to_dict()
    if pd.isna(row["published"]):
        return "reproduced"
    published = float(row["published"])
    stated = float(row["computed_minus_published"])
    assert ours - published == pytest.approx(stated, abs=2 * step), row.to_dict()
    if row["quantity"] == "NHS deck area share":
        assert abs(stated) <= 0.05 + step, row.to_dict()  # printed to a tenth of a point
        return "reproduced"
    if abs(stated) < 0.5:  # counts, and areas printed whole
        return "reproduced"
    reason = "adjacent year" if row["notes"] == "adjacent year" else row["computed_from"]
    assert re.search("adjacent year|trend only|2019 file", reason), row.to_dict()
    return "differs by year, as stated"


def test_totals_of_the_whole_files(tables: dict[str, pd.DataFrame]) -> None:
    verdicts = Counter(verdict(row, tables) for _, row in TOTALS.iterrows())
    assert verdicts == {
        "reproduced": 333,
        "differs by year, as stated": 38,
        "no file of that year": 12,
    }
    assert verdicts.total() == len(TOTALS)
