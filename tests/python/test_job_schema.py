"""The JSON Schema of a job accepts what the reader accepts, and refuses misspelt keys and words."""

from __future__ import annotations

import copy
import json
from pathlib import Path
from typing import Any

import jsonschema
import pytest

import scupper as sc
from scupper.command_line import main

Document = dict[str, Any]


@pytest.fixture(scope="module")
def validator() -> jsonschema.Draft202012Validator:
    schema = sc.job_schema()
    jsonschema.Draft202012Validator.check_schema(schema)
    return jsonschema.Draft202012Validator(schema)


@pytest.fixture
def demo(tmp_path: Path) -> Document:
    """The demo's job as people write it."""
    assert main(["demo", str(tmp_path)]) == 0
    document: Document = json.loads((tmp_path / "job.json").read_text(encoding="utf-8"))
    return document


def test_jobs_as_people_and_programs_write_them_are_valid(
    validator: jsonschema.Draft202012Validator, demo: Document, job: sc.Job
) -> None:
    told = job.override("TC-0001", {"column.height": "12 ft"}, drains=4)
    for document in (demo, told.to_dict(), json.loads(told._core.form())):
        validator.validate(document)


def test_stages_ways_and_charges_are_valid_and_survive_a_form(
    validator: jsonschema.Draft202012Validator, demo: Document, county: sc.Inventory
) -> None:
    demo |= {
        "ways": {"deck_top": "flusher"},
        "charges": [{"name": "permit", "when": ["over_rail"]}],
        "stages": [
            {"name": "deck", "closure": "shoulder", "parties": [{"name": "line", "work": []}]},
            {"name": "drains", "parties": [{"name": "openers", "work": ["drain"]}]},
        ],
    }
    demo["inputs"] |= {"charge[permit].amount": "250 USD"}
    validator.validate(demo)
    job = sc.Job.from_dict(demo)
    again = sc.Job(job._core.read(job._core.form(), "form"))
    validator.validate(json.loads(job._core.form()))
    priced = sc.estimate(county["TC-0001"], job)
    assert priced.closures == {"deck": "shoulder", "drains": "one_lane_two_way"}
    assert sc.estimate(county["TC-0001"], again).cost.total == pytest.approx(priced.cost.total)
    assert "deck: shoulder, drains: one lane two way" in priced.page()


@pytest.mark.parametrize(
    "inputs",
    [
        {"nozzle.bore": "1/2 in"},
        {"drains": 4, "drain_count": 4},
        {"deck_top_area": ["100 ft2", "200 ft2", "300 ft2"]},
        {"tank.volume": {"low": "1 m3", "likely": "2 m3", "high": "3 m3", "note": "rented"}},
        {"operation[my own].time_per_unit": "5 min/each"},
    ],
)
def test_forms_of_values_that_the_reader_knows_are_valid(
    validator: jsonschema.Draft202012Validator, demo: Document, inputs: Document
) -> None:
    demo["inputs"] |= inputs
    validator.validate(demo)
    demo["overrides"] = {"TC-0001": inputs}
    validator.validate(demo)


WRONG = [
    (["inputs", "nozzle[hand_line].boar"], "1 in"),
    (["inputs", "nozzle[hand_line].bore"], 0.5),
    (["inputs", "nozzle[hand_line].bore"], ["1 in", "2 in"]),
    (["inputs", "tank.volume"], {"low": "1 m3", "high": "3 m3"}),
    (["inputs", "tank.volume"], {"value": "1 m3", "sauce": "yard"}),
    (["inputs", "drain_cuont"], 4),
    (["overrides", "TC-0001"], {"drain": "none"}),
    (["servise"], {}),
    (["service", "deck_topp"], "rinse"),
    (["service", "deck_top"], "rinsed"),
    (["closure"], "lane"),
    (["sharing"], "halves"),
    (["price_at"], "P80"),
    (["units"], "imperial"),
    (["currency"], "dollars"),
    (["scupper_job"], 2),
    (["operations"], [{"name": "a", "component": "deck_top", "driver": "deck_top_aera"}]),
    (["labour"], [{"name": "wash_crew", "wenn": []}]),
    (["equipment"], [{"name": "truck", "when": ["over_sand"]}]),
    (["methods"], [{"name": "hand_line", "hose": "supply"}]),
    (["hauls"], [{"name": "jet_vac", "components": ["drian"]}]),
    (["hauls"], [{"name": "jet_vac", "dump": "tomorrow"}]),
    (["wash_water"], "colect"),
]


@pytest.mark.parametrize(("path", "value"), WRONG)
def test_misspelt_keys_and_wrong_words_are_invalid_and_refused(
    validator: jsonschema.Draft202012Validator, demo: Document, path: list[str], value: object
) -> None:
    wrong = copy.deepcopy(demo)
    at = wrong
    for key in path[:-1]:
        at = at[key]
    at[path[-1]] = value
    assert not validator.is_valid(wrong)
    with pytest.raises(sc.InputError):
        _ = sc.Job.from_dict(wrong).plan


def test_every_key_of_a_job_matches_one_pattern_and_is_described(job: sc.Job) -> None:
    import re

    patterns = sc.job_schema()["$defs"]["inputs"]["patternProperties"]
    for key in job.keys()["key"]:
        assert len([p for p in patterns if re.search(p, key)]) == 1, key
    assert patterns[r"^deck\.length$"]["description"].startswith("deck length: a length, e.g. ")


def test_the_command_prints_it(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["schema"]) == 0
    assert json.loads(capsys.readouterr().out) == sc.job_schema()
