"""The workbook: live formulas, values of the engine, blank where only the engine can answer."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import openpyxl
import pytest
from workbooks import changed, needs_spreadsheet, recalculated, rows, summary

import scupper as sc
from scupper import _core

SHEETS = [
    "Summary",
    "Inputs",
    "Workings",
    "Cost lines",
    "Unit costs",
    "Hours",
    "Cautions",
    "Checks",
]


@pytest.fixture(scope="module")
def file(estimate: sc.Estimate, tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("workbook") / "estimate.xlsx"
    estimate.save_workbook(path)
    return path


def engine(estimate: sc.Estimate) -> dict[str, float]:
    """The figures of the engine by label, in the job's units."""
    core = estimate._core
    columns = dict(core.figures())
    labels: Any = dict(zip(columns["key"], columns["label"], strict=True))
    return {labels[key]: core.figure(key)[0] for key in _core.workbook_figures(core)}


def agree(found: dict[str, Any], estimate: sc.Estimate) -> None:
    expected = engine(estimate)
    assert found.keys() == expected.keys()
    for label, value in expected.items():
        assert found[label] == pytest.approx(value, rel=1e-9, abs=1e-9), label


def test_the_values_kept_with_the_formulas_are_those_of_the_engine(
    file: Path, estimate: sc.Estimate
) -> None:
    kept = openpyxl.load_workbook(file, data_only=True)
    assert kept.sheetnames == SHEETS
    agree(summary(kept), estimate)
    assert kept["Summary"]["A2"].value == "valid"
    lines = rows(kept, "Cost lines", "component")
    total = kept["Cost lines"].cell(lines["total of the lines"], 4).value
    assert total == pytest.approx(estimate.cost.total, rel=1e-12)


def test_figures_and_lines_are_formulas(file: Path) -> None:
    book = openpyxl.load_workbook(file)
    for row in rows(book, "Inputs", "key").values():
        assert isinstance(book["Inputs"].cell(row, 2).value, int | float)
        assert book["Inputs"].cell(row, 10).value.startswith("=IF(ISNUMBER(B")
    for value in summary(book).values():
        assert value.startswith('=IF(checks_raised>0,"",')
    lines = book["Cost lines"]
    for row in range(4, lines.max_row + 1):
        assert str(lines.cell(row, 4).value).startswith("=IF(checks_raised>0")
    workings = [row[1].value for row in book["Workings"].iter_rows(min_row=4)]
    formulas = [w for w in workings if isinstance(w, str)]
    assert len(formulas) > 100
    assert max(map(len, formulas)) < 2000
    solves = [row for row in book["Workings"].iter_rows(min_row=4) if row[5].value]
    assert solves
    assert all(not isinstance(row[1].value, str) for row in solves)


def test_listed_values_stand_in_explanation_and_workbook(
    county: sc.Inventory, job: sc.Job, tmp_path: Path
) -> None:
    wages = ["28 USD/h", "30 USD/h", "35 USD/h"]
    told = job.replace(
        {
            "shift.travel_time": {"values": ["1 h", "2 h"], "weights": [3, 1]},
            "labour[flagger].wage": {"sample": wages},
        }
    )
    listed = sc.estimate(county["TC-0001"], told)
    steps = {s["key"]: s for s in listed.explain("cost.total", depth=None).to_dict()["steps"]}
    assert steps["cost.total"]["value"] == pytest.approx(listed.cost.total)
    travel, wage = steps["shift.travel_time"], steps["labour[flagger].wage"]
    assert (travel["value"], travel["unit"]) == (pytest.approx(1.25), "h")  # the mean
    assert travel["source"].endswith("one of 2 by weight")
    assert (wage["value"], wage["unit"]) == (pytest.approx(30.75), "USD/h")  # linear between
    assert wage["source"].endswith("a sample of 3")
    listed.save_workbook(tmp_path / "listed.xlsx")
    kept = openpyxl.load_workbook(tmp_path / "listed.xlsx", data_only=True)
    agree(summary(kept), listed)
    inputs = rows(kept, "Inputs", "key")
    row = [cell.value for cell in kept["Inputs"][inputs["shift.travel_time"]]]
    assert row[1] == pytest.approx(1.25)
    assert {"1 h", "2 h"} <= set(row)
    assert any("one of 2 by weight" in str(cell) for cell in row)


def test_text_that_looks_like_a_formula_stays_text(
    county: sc.Inventory, job: sc.Job, tmp_path: Path
) -> None:
    document = job.to_dict()
    document["inputs"]["labour[wash_crew].wage"] |= {"source": "=HYPERLINK(1)", "date": ""}
    risky = sc.Job.from_dict(document)
    sc.estimate(county["TC-0001"], risky).save_workbook(tmp_path / "a.xlsx")
    inputs = openpyxl.load_workbook(tmp_path / "a.xlsx")["Inputs"]
    cells = [cell for row in inputs.iter_rows(max_col=9) for cell in row if cell.value is not None]
    assert "=HYPERLINK(1)" in [cell.value for cell in cells]
    assert {cell.data_type for cell in cells} == {"s", "n"}


def test_the_same_estimate_gives_the_same_file(
    file: Path, estimate: sc.Estimate, tmp_path: Path
) -> None:
    estimate.save_workbook(tmp_path / "again.xlsx")
    assert (tmp_path / "again.xlsx").read_bytes() == file.read_bytes()
    assert [f.name for f in tmp_path.iterdir()] == ["again.xlsx"]


def test_a_folder_that_is_not_there_is_refused(estimate: sc.Estimate, tmp_path: Path) -> None:
    with pytest.raises(sc.FileError):
        estimate.save_workbook(tmp_path / "nowhere" / "a.xlsx")


@pytest.mark.parametrize("units", ["us", "metric", "si"])
@needs_spreadsheet
def test_another_spreadsheet_works_out_the_same(
    county: sc.Inventory, job: sc.Job, tmp_path: Path, units: str
) -> None:
    priced = sc.estimate(county["TC-0001"], job.replace(units=units))
    priced.save_workbook(tmp_path / "a.xlsx")
    changed(tmp_path / "a.xlsx", tmp_path / "b.xlsx", {})
    book = recalculated(tmp_path / "b.xlsx")
    agree(summary(book), priced)
    assert book["Summary"]["A2"].value == "valid"
    cells = _core.workbook(priced._core, _core.workbook_figures(priced._core))["cells"]
    values = [c["value"] for c in cells if c["kind"] != "input"]  # type: ignore[attr-defined]
    for row, value in enumerate(values, 4):
        found = book["Workings"].cell(row, 2).value
        assert found == pytest.approx(value, rel=1e-9, abs=1e-9), row


CHANGES = {
    "labour[wash_crew].wage": (52.5, "USD 52.50/h"),
    "labour[wash_crew].people": (5, "5 each"),
    "operation[deck_hand_line].time_per_unit": (4000, "4000 ft2/h"),
    "haul[truck].gross_limit": (47900, "47900 lb"),
    "tank.volume": (700, "700 gal"),
    "shift.travel_time": (2.25, "2.25 h"),
    "drain.clogged_share": (0.9, "0.9"),
    "price.water": (50, "USD 50/kgal"),
}


@pytest.mark.parametrize("sharing", ["pro_rata", "own_shifts", "one_closure"])
@needs_spreadsheet
def test_changed_inputs_move_the_sheet_as_the_engine(
    county: sc.Inventory, job: sc.Job, tmp_path: Path, sharing: str
) -> None:
    structure, shared = county["TC-0001"], job.replace(sharing=sharing)
    sc.estimate(structure, shared).save_workbook(tmp_path / "a.xlsx")
    changed(tmp_path / "a.xlsx", tmp_path / "b.xlsx", {k: v[0] for k, v in CHANGES.items()})
    book = recalculated(tmp_path / "b.xlsx")
    assert book["Summary"]["A2"].value == "valid"
    measured = shared.override("TC-0001", {k: v[1] for k, v in CHANGES.items()})
    agree(summary(book), sc.estimate(structure, measured))


def dearer_jobs(job: sc.Job) -> dict[str, sc.Job]:
    """Jobs with all that a sheet can hold: full clean, parties side by side, a posted bridge."""
    parts = ["deck_top", "gutter", "drain", "joint", "rail", "parapet", "girder", "bearing", "cap",
             "seat", "back_wall", "column", "berm"]  # fmt: skip
    full = job.replace(service=dict.fromkeys(parts, "full_clean"))
    stages = [
        {"name": "top", "parties": [{"name": "deck_crew", "work": ["deck_top", "gutter"]},
                                    {"name": "drain_crew", "work": ["drain"]}]},
        {"name": "beneath", "parties": [{"name": "bucket_crew",
                                         "work": ["girder", "bearing", "cap", "seat"]}]},
    ]  # fmt: skip
    limit = {"posting.limit": "15 short_ton"}
    return {
        "full clean": full,
        "collected": full.replace(wash_water="collect", sharing="own_shifts"),
        "side by side": full.replace(stages=stages),
        "side by side, own shifts": full.replace(stages=stages, sharing="own_shifts"),
        "from the approach": job.override("TC-0001", limit),
        "half a tank": job.replace(posting="half_fill").override("TC-0001", limit),
    }


@pytest.mark.parametrize("name", list(dearer_jobs(sc.Job.demo())))
@needs_spreadsheet
def test_dearer_jobs_are_worked_out_the_same_and_follow_a_change(
    county: sc.Inventory, job: sc.Job, tmp_path: Path, name: str
) -> None:
    structure, whole = county["TC-0001"], dearer_jobs(job)[name]
    sc.estimate(structure, whole).save_workbook(tmp_path / "a.xlsx")
    values = {"labour[wash_crew].wage": 52.5, "operation[deck_hand_line].time_per_unit": 4000}
    changed(tmp_path / "a.xlsx", tmp_path / "b.xlsx", values)
    book = recalculated(tmp_path / "b.xlsx")
    assert book["Summary"]["A2"].value == "valid"
    texts = {"labour[wash_crew].wage": "USD 52.50/h",
             "operation[deck_hand_line].time_per_unit": "4000 ft2/h"}  # fmt: skip
    agree(summary(book), sc.estimate(structure, whole.override("TC-0001", texts)))


@needs_spreadsheet
def test_what_a_posting_leaves_to_do_is_decided_by_the_engine(
    county: sc.Inventory, job: sc.Job, tmp_path: Path
) -> None:
    posted = job.override("TC-0001", {"posting.limit": "15 short_ton"})
    sc.estimate(county["TC-0001"], posted).save_workbook(tmp_path / "a.xlsx")
    changed(tmp_path / "a.xlsx", tmp_path / "b.xlsx", {"tank.volume": 500})
    book = recalculated(tmp_path / "b.xlsx")
    assert set(summary(book).values()) <= {None, ""}
    assert "weight posting" in book["Summary"]["A2"].value


@pytest.mark.parametrize(
    ("key", "value", "says"),
    [
        ("nozzle[hand_line].bore", 0.625, "what it was solved for"),
        ("water.temperature", 75, "what it was solved for"),
        ("deck.length", 250, "inferred from it by rule"),
        ("labour[wash_crew].wage", -1, "a number within bounds"),
        ("labour[wash_crew].wage", "about 40", "a number within bounds"),
        ("labour[wash_crew].wage", None, "a number within bounds"),
        ("shift.travel_time", 23, "time left for work in a shift"),
    ],
)
@needs_spreadsheet
def test_what_only_the_engine_can_answer_is_blank(
    file: Path, tmp_path: Path, key: str, value: Any, says: str
) -> None:
    changed(file, tmp_path / "b.xlsx", {key: value})
    book = recalculated(tmp_path / "b.xlsx")
    assert set(summary(book).values()) <= {None, ""}
    lines = book["Cost lines"]
    assert {lines.cell(row, 4).value for row in range(4, lines.max_row + 1)} <= {None, ""}
    raised = [row[0].value for row in book["Checks"].iter_rows(min_row=5) if row[1].value == 1]
    assert any(says in label for label in raised)
    assert book["Summary"]["A2"].value == f"price again: {raised[0]}"
