"""Measured structures: lists, tables, DataFrames, their forms and schema."""

from __future__ import annotations

import csv
import json
from pathlib import Path
from typing import Any

import jsonschema
import numpy as np
import pandas as pd
import pytest

import scupper as sc
from scupper.command_line import main

RECORD: dict[str, Any] = {
    "id": "M-1",
    "state": "99",
    "length": "120 ft",
    "deck_width": "30 ft",
    "roadway_width": "28 ft",
    "material": "concrete",
    "design": "slab",
    "main_spans": 2,
    "approach_spans": 0,
    "given": {"drains": 4, "column.height": ["10 ft", "12 ft", "15 ft"]},
}


def document(*structures: dict[str, Any]) -> dict[str, Any]:
    return {"scupper_structures": 1, "structures": list(structures)}


@pytest.fixture
def measured(tmp_path: Path) -> sc.Inventory:
    file = tmp_path / "measured.json"
    file.write_text(json.dumps(document(RECORD)), encoding="utf-8")
    return sc.read_inventory(file)


def test_a_list_is_priced_with_what_was_measured(measured: sc.Inventory, job: sc.Job) -> None:
    assert len(measured) == 1
    assert measured.doubts.empty
    table = sc.take_off(measured).iloc[0]
    assert table["drain_count"] == 4
    assert table["drain_count_basis"] == "measured"
    assert table["deck_total_area_m2"] == pytest.approx(120 * 30 * 0.3048**2)
    assert sc.estimate(measured[0], job).cost.total > 0


def test_a_table_of_pandas_reads_back_what_it_says(samples: Path, measured: sc.Inventory) -> None:
    for inventory in (
        sc.read_inventory(samples / "ak_2019_part.txt"),
        sc.read_inventory(samples / "dc_2019_part_fixed.txt"),
        measured,
    ):
        table = inventory.to_pandas()
        again = sc.read_inventory(table)
        assert again.rejected.empty
        pd.testing.assert_frame_equal(again.to_pandas(), table, rtol=1e-15, atol=0)


def test_a_table_saved_by_pandas_reads_back(samples: Path, tmp_path: Path) -> None:
    table = sc.read_inventory(samples / "ak_2019_part.txt").to_pandas()
    file = tmp_path / "table.csv"
    table.to_csv(file, index=False)
    pd.testing.assert_frame_equal(sc.read_inventory(file).to_pandas(), table, rtol=1e-15, atol=0)


def test_a_frame_is_chosen_and_changed_as_frames_are(samples: Path) -> None:
    table = sc.read_inventory(samples / "dc_2019_part.txt").to_pandas()
    table = table[table["length_m"] > 50].assign(drain_count=6)
    inventory = sc.read_inventory(table)
    assert len(inventory) == len(table) > 0
    assert set(sc.take_off(inventory)["drain_count"]) == {6.0}


def test_cells_and_rows_that_cannot_be_used_are_told() -> None:
    table = pd.DataFrame(
        {
            "structure_id": ["A", "B", None, "A"],
            "length_m": [-1.0, np.nan, 3.0, 4.0],
            "material": ["cheese", "steel", None, None],
        }
    )
    inventory = sc.read_inventory(table)
    assert [s.id for s in inventory] == ["A", "B"]
    assert list(inventory.rejected["line"]) == [3, 4]
    assert set(inventory.doubts["column"]) == {"length", "material"}
    assert inventory["A"].to_dict()["length_m"] is None
    with pytest.raises(sc.UnknownNameError, match="lenght_m"):
        sc.read_inventory(table.rename(columns={"length_m": "lenght_m"}))
    with pytest.raises(sc.InputError, match="DataFrame"):
        sc.read_inventory(7)  # type: ignore[arg-type]


@pytest.mark.parametrize("units", ["us", "metric", "si"])
def test_the_form_of_the_command_line_is_filled_in_and_read(tmp_path: Path, units: str) -> None:
    file = tmp_path / "structures.csv"
    assert main(["template", "structures", "--out", str(file), "--units", units]) == 0
    with open(file, encoding="utf-8", newline="") as text:
        (header,) = csv.reader(text)
    row = {"structure_id": "M-1", "state": "99", "main_spans": "2", "length [ft]": "120"}
    filled = [row.get(name, "") for name in header]
    with open(file, "a", encoding="utf-8", newline="") as text:
        csv.writer(text).writerow(filled)
    inventory = sc.read_inventory(file)
    assert inventory["M-1"].to_dict()["main_spans"] == 2
    if units == "us":
        assert inventory["M-1"].to_dict()["length_m"] == pytest.approx(36.576)
    with pytest.raises(sc.FileError):
        sc.write_structure_form(file)


def test_every_field_of_the_tables_stands_in_the_form(county: sc.Inventory, tmp_path: Path) -> None:
    file = tmp_path / "structures.csv"
    sc.write_structure_form(file, "si")
    header = file.read_text(encoding="utf-8").strip().split(",")
    names = {name.split(" [")[0] for name in header}
    suffixes = ("_m2", "_m", "_km", "_deg")
    for column in county.to_pandas().columns:
        bare = next((column.removesuffix(s) for s in suffixes if column.endswith(s)), column)
        assert bare in names or column == "recorded_deck_area_m2", column


def test_the_list_form_is_valid_and_read(tmp_path: Path) -> None:
    file = tmp_path / "structures.json"
    assert main(["template", "structures", "--out", str(file)]) == 0
    form = json.loads(file.read_text(encoding="utf-8"))
    form["structures"][0]["id"] = "M-1"
    jsonschema.validate(form, sc.structures_schema())
    file.write_text(json.dumps(form), encoding="utf-8")
    assert len(sc.read_inventory(file)) == 1


def test_the_schema_takes_what_the_reader_takes(
    samples: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["schema", "structures"]) == 0
    schema = json.loads(capsys.readouterr().out)
    assert schema == sc.structures_schema()
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    validator.validate(document(RECORD))
    file = tmp_path / "written.json"
    inventory = sc.read_inventory(samples / "dc_2019_part.txt")
    sc.write_structures(file, inventory)
    validator.validate(json.loads(file.read_text(encoding="utf-8")))
    again = sc.read_inventory(file)
    pd.testing.assert_frame_equal(again.to_pandas(), inventory.to_pandas(), check_exact=True)
    for wrong in ({"lenght": "3 m"}, {"design": "tent"}, {"main_spans": "two"}, {"length": 3}):
        assert not validator.is_valid(document(RECORD | wrong))
        file.write_text(json.dumps(document(RECORD | wrong)), encoding="utf-8")
        with pytest.raises(sc.InputError):
            sc.read_inventory(file)
