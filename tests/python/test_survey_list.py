"""Which measurements would narrow a programme's cost: the list, the sheet, and what comes of it."""

from __future__ import annotations

from pathlib import Path

import pandas as pd
import pytest

import scupper as sc
from scupper.command_line import main


@pytest.fixture(scope="module")
def found(county: sc.Inventory, job: sc.Job) -> sc.SurveyList:
    return sc.survey_list(county, job, visits=8)


def width(inventory: sc.Inventory, job: sc.Job, seed: int = 1) -> float:
    """Width of P5 to P95 of the programme's cost."""
    cost = sc.estimate_all(inventory, job).ranges(draws=2048, seed=seed).loc["cost.total"]
    return float(cost["P95"] - cost["P5"])


def filled_in(found: sc.SurveyList, sheet: Path) -> Path:
    """The sheet with every asked cell filled in: the mean of what is believed, counts whole."""
    rows = found.measurements
    table = pd.read_csv(sheet, dtype=str, keep_default_na=False)
    headers = {header.split(" [")[0]: header for header in table.columns}
    for row in rows.to_dict("records"):
        key = row["key"].removeprefix("quantity[").removesuffix("].given")
        mean = (row["low"] + 4 * row["likely"] + row["high"]) / 6  # of a PERT distribution
        at = row["visit"] - 1
        assert table.loc[at, headers[key]] == "", key
        table.loc[at, headers[key]] = str(round(mean) if row["unit"] == "each" else mean)
    filled = sheet.with_name("filled.csv")
    table.to_csv(filled, index=False)
    return filled


def test_visits_stand_in_the_order_of_what_they_narrow(found: sc.SurveyList) -> None:
    visits = found.visits
    assert list(visits["visit"]) == list(range(1, 9))
    assert visits["narrows"].idxmax() == 0
    assert visits["range_left"].is_monotonic_decreasing
    low, high = found.range
    assert low < found.mean < high
    assert visits["range_left"].iloc[0] == pytest.approx(high - low - visits["narrows"].iloc[0])
    assert visits["structure_id"].is_unique


def test_measurements_say_what_to_do_and_what_is_believed(found: sc.SurveyList) -> None:
    rows = found.measurements
    assert (rows["narrows"] > 0).all()
    assert (rows["low"] <= rows["likely"]).all()
    assert (rows["likely"] <= rows["high"]).all()
    drains = rows[rows["measure"] == "count the drains"]
    assert len(drains) > 0
    assert set(drains["unit"]) == {"each"}
    assert set(drains["key"]) == {"quantity[drain_count].given"}
    assert rows["unit"].str.len().gt(0).all()
    for _, visit in rows.groupby("visit"):
        assert visit["narrows"].is_monotonic_decreasing


def test_only_what_one_can_see_on_site_is_asked(found: sc.SurveyList) -> None:
    for key in found.measurements["key"]:
        assert not key.startswith(("operation", "labour", "price", "shift", "haul")), key


def test_list_sheet_and_survey_narrow_the_range_as_told(
    found: sc.SurveyList, county: sc.Inventory, job: sc.Job, tmp_path: Path
) -> None:
    sheet = tmp_path / "sheet.csv"
    found.write_sheet(sheet)
    measured = job.with_survey(filled_in(found, sheet), county)
    before = width(county, job)
    after = width(county, measured)
    told = found.visits["range_left"].iloc[-1] / (found.range[1] - found.range[0])
    assert after < before
    # Told is the expectation over what may be found; here the mean is found everywhere, which
    # leaves a little less than the average of all that may be found.
    assert told < 0.95
    assert after / before == pytest.approx(told, abs=0.08)


def test_what_was_measured_is_not_asked_again(
    found: sc.SurveyList, county: sc.Inventory, job: sc.Job, tmp_path: Path
) -> None:
    sheet = tmp_path / "sheet.csv"
    found.write_sheet(sheet)
    measured = job.with_survey(filled_in(found, sheet), county)
    again = sc.survey_list(county, measured, visits=200).measurements
    asked = set(zip(again["structure_id"], again["key"], strict=True))
    told = set(zip(found.measurements["structure_id"], found.measurements["key"], strict=True))
    assert not asked & told


def test_a_cell_that_is_not_asked_changes_nothing(
    found: sc.SurveyList, county: sc.Inventory, job: sc.Job, tmp_path: Path
) -> None:
    sheet = tmp_path / "sheet.csv"
    found.write_sheet(sheet)
    table = pd.read_csv(sheet, dtype=str, keep_default_na=False)
    assert (table == "not asked").any(axis=None)
    same = job.with_survey(sheet, county)
    assert sc.estimate_all(county, same).total == sc.estimate_all(county, job).total
    with pytest.raises(sc.FileError):
        found.write_sheet(sheet)


def test_order_and_threads_change_nothing(
    found: sc.SurveyList, county: sc.Inventory, job: sc.Job
) -> None:
    again = sc.survey_list(list(county)[::-1], job, visits=8, threads=1)
    pd.testing.assert_frame_equal(again.visits, found.visits, check_exact=True)
    pd.testing.assert_frame_equal(again.measurements, found.measurements, check_exact=True)


def test_the_table_has_units_in_its_columns(found: sc.SurveyList, tmp_path: Path) -> None:
    table = found.to_pandas()
    assert {"narrows_usd", "visit_narrows_usd", "range_left_usd", "unit"} <= set(table.columns)
    found.save(tmp_path / "list.csv")
    assert len(pd.read_csv(tmp_path / "list.csv")) == len(table)
    text = repr(found)
    assert "count the drains" in text
    assert found._repr_html_().startswith("<table>")


def test_bad_input_is_refused(county: sc.Inventory, job: sc.Job) -> None:
    with pytest.raises(sc.InputError, match="at least 16"):
        sc.survey_list(county, job, draws=4)
    with pytest.raises(sc.Interrupted):
        sc.survey_list(county, job, progress=lambda done, all: False)


def test_the_command_writes_list_and_sheet(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out, sheet = tmp_path / "list.csv", tmp_path / "sheet.csv"
    words = ["survey-list", str(sc.demo_records()), "--visits", "3", "--out", str(out)]
    assert main([*words, "--sheet", str(sheet)]) == 0
    assert "width of P5–P95" in capsys.readouterr().out
    assert pd.read_csv(out)["visit"].max() == 3
    assert len(pd.read_csv(sheet)) == 3
    assert main([*words, "--sheet", str(sheet)]) == 2  # a filled-in sheet is never overwritten
