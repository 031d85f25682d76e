"""Forms written, filled in and read back: a job, and a survey sheet."""

from __future__ import annotations

import csv
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import scupper as sc
from scupper.command_line import main

Rows = list[dict[str, str]]


def read_rows(file: Path) -> Rows:
    with open(file, encoding="utf-8", newline="") as text:
        return list(csv.DictReader(text))


def write_rows(file: Path, rows: Rows, encoding: str = "utf-8") -> None:
    with open(file, "w", encoding=encoding, newline="") as text:
        writer = csv.DictWriter(text, rows[0].keys())
        writer.writeheader()
        writer.writerows(rows)


@pytest.fixture
def sheet(county: sc.Inventory, job: sc.Job, tmp_path: Path) -> Path:
    file = tmp_path / "survey.csv"
    sc.write_survey_sheet(file, county, job)
    return file


@pytest.mark.parametrize("units", ["us", "metric", "si"])
def test_a_job_form_is_read_unchanged(
    county: sc.Inventory, job: sc.Job, tmp_path: Path, units: str
) -> None:
    told = job.override("TC-0001", {"column.height": "12 ft 6 in"}).replace(units=units)
    file = tmp_path / "job.json"
    sc.write_job_form(file, told)
    again = sc.Job.from_file(file)
    priced, same = sc.estimate_all(county, told), sc.estimate_all(county, again)
    assert same.total == pytest.approx(priced.total, rel=1e-12, abs=0)
    assert set(again.to_dict()["inputs"]) == set(told.to_dict()["inputs"])


@settings(max_examples=40, deadline=None)
@given(
    st.floats(0.01, 4.0).map(lambda inches: f"{inches!r} in"),
    st.floats(0.1, 1e5).map(lambda rate: f"{rate!r} ft2/h"),
    st.floats(1.0, 99.0).map(lambda celsius: f"{min(celsius, 49.0)!r} degC"),
)
def test_any_value_survives_a_form(bore: str, rate: str, warmth: str) -> None:
    values = {
        "nozzle[hand_line].bore": bore,
        "operation[deck_hand_line].time_per_unit": rate,
        "water.temperature": warmth,
    }
    told = sc.Job.demo().replace(values)
    again = sc.Job(sc.Job.demo()._core.read(told._core.form(), "form"))
    for units in ("us", "metric"):
        before, after = (
            job.replace(units=units).keys().set_index("key").loc[list(values), "likely"]
            for job in (told, again)
        )
        assert after.tolist() == pytest.approx(before.tolist(), rel=1e-13)


def test_forms_are_not_overwritten(county: sc.Inventory, sheet: Path) -> None:
    before = sheet.read_text(encoding="utf-8")
    for write in (
        lambda: sc.write_job_form(sheet),
        lambda: sc.write_survey_sheet(sheet, county),
    ):
        with pytest.raises(sc.FileError) as caught:
            write()
        assert caught.value.id == "file.exists"
    assert sheet.read_text(encoding="utf-8") == before


def test_a_sheet_has_a_row_a_structure_and_read_back_empty_changes_nothing(
    county: sc.Inventory, job: sc.Job, sheet: Path
) -> None:
    rows = read_rows(sheet)
    assert [row["structure_id"] for row in rows] == [s.id for s in county]
    assert {"carries", "crosses", "drain_count", "column.height [ft]"} <= set(rows[0])
    assert "'@HERON TRAIL CONNECTOR" in {row["carries"] for row in rows}
    assert job.with_survey(sheet, county).to_dict() == job.to_dict()


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig"])
def test_what_is_filled_in_is_measured(
    county: sc.Inventory, job: sc.Job, sheet: Path, encoding: str
) -> None:
    rows = read_rows(sheet)
    rows[1] |= {"drain_count": "4", "column.height [ft]": "12 ft 6 in", "berm.width [ft]": "3"}
    write_rows(sheet, rows, encoding)
    told = job.with_survey(sheet, county)
    ((key, values),) = told.to_dict()["overrides"].items()
    assert key == f"99:{rows[1]['structure_id']}"
    assert values["quantity[drain_count].given"]["value"] == 4
    assert values["quantity[drain_count].given"]["basis"] == "measured"
    assert values["berm.width"]["source"] == f"{sheet}:3"
    by_hand = job.override(
        rows[1]["structure_id"],
        {"drains": 4, "column.height": "12 ft 6 in", "berm.width": "3 ft"},
    )
    assert sc.estimate_all(county, told).total == sc.estimate_all(county, by_hand).total


def test_measuring_narrows_the_range(county: sc.Inventory, job: sc.Job, sheet: Path) -> None:
    rows = [row | {"drain_count": "5"} for row in read_rows(sheet)]
    write_rows(sheet, rows)
    told = sc.estimate(county["TC-0001"], job.with_survey(sheet, county))
    assert "quantity[drain_count].given" not in set(told.assumptions["key"])
    assert not any("drains " in warning for warning in told.warnings)


@pytest.mark.parametrize(
    ("change", "path", "found", "allowed"),
    [
        ({"drain_count": "four"}, ":3: column drain_count", "four", "number"),
        ({"drain_count": "-1"}, ":3: column drain_count", "-1", "or more"),
        ({"drain_count": "1.5"}, ":3: column drain_count", "1.5", "whole number"),
        ({"deck.length [ft]": "3 psi"}, ":3: column deck.length [ft]", "3 psi", "ft"),
        ({"berm.width [ft]": "900"}, ":3: column berm.width [ft]", "900", "0 ft to 164 ft"),
        ({"drain_count": "1", "drain_free_count": "2"}, ":3: column drain_count", "1", "make up"),
        ({"structure_id": ""}, ":3", "without a structure number", "number"),
        ({"structure_id": "TC-0001"}, ":3", "TC-0001", "one row"),
    ],
)
def test_a_wrong_cell_is_refused_with_line_and_column(
    county: sc.Inventory,
    job: sc.Job,
    sheet: Path,
    change: dict[str, str],
    path: str,
    found: str,
    allowed: str,
) -> None:
    rows = read_rows(sheet)
    rows[1] |= change
    write_rows(sheet, rows)
    with pytest.raises(sc.InputError) as caught:
        job.with_survey(sheet, county)
    assert caught.value.path == f"{sheet}{path}"
    assert found in caught.value.found
    assert allowed in caught.value.allowed


def test_unknown_numbers_are_named_all_at_once_with_the_nearest(
    county: sc.Inventory, job: sc.Job, sheet: Path
) -> None:
    rows = read_rows(sheet)
    rows[0]["structure_id"] = "TC-00O1"
    rows[4]["structure_id"] = "TC-9999"
    write_rows(sheet, rows)
    with pytest.raises(sc.UnknownNameError) as caught:
        job.with_survey(sheet, county)
    error = caught.value
    assert error.path == f"{sheet}:2, {sheet}:6"
    assert '"99:TC-00O1", "99:TC-9999"' in error.found
    assert "TC-0001" in error.allowed


@pytest.mark.parametrize(
    ("text", "where"),
    [
        ("", ":1"),
        ("number,drain_count\nTC-0001,4\n", ":1"),
        ("structure_id,drain_cuont\nTC-0001,4\n", ":1: column drain_cuont"),
        ("structure_id,column.height [gal]\nTC-0001,4\n", ":1: column column.height [gal]"),
        ("structure_id,column.height\nTC-0001,4\n", ":2: column column.height"),
        ("structure_id,drain_count\n\nTC-0001,4,5\n", ":3"),
        ('structure_id,drain_count\n"TC-0001"x,4\n', ":2"),
    ],
)
def test_a_sheet_that_cannot_be_read_is_refused(
    job: sc.Job, tmp_path: Path, text: str, where: str
) -> None:
    file = tmp_path / "survey.csv"
    file.write_text(text, encoding="utf-8")
    with pytest.raises(sc.InputError) as caught:
        job.with_survey(file)
    assert caught.value.path == f"{file}{where}"


def test_templates_and_survey_on_the_command_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    records = str(sc.demo_records())
    form, sheet = tmp_path / "job.json", tmp_path / "survey.csv"
    assert main(["template", "job", "--out", str(form), "--units", "metric"]) == 0
    select = ["--select", "TC-0001, TC-0002, TC-00O3"]
    assert (
        main(["template", "survey", records, "--job", str(form), "--out", str(sheet), *select]) == 0
    )
    assert "not found: TC-00O3, near: " in capsys.readouterr().err
    rows = read_rows(sheet)
    assert [row["structure_id"] for row in rows] == ["TC-0001", "TC-0002"]
    assert "column.height [m]" in rows[0]
    rows[0]["drain_count"] = "0"
    write_rows(sheet, rows)
    explain = ["explain", records, "TC-0001", "drain_count", "--job", str(form)]
    assert main([*explain, "--survey", str(sheet)]) == 0
    assert f"{sheet}:2" in capsys.readouterr().out
    estimate = ["estimate", records, "--job", str(form), "--survey", str(sheet)]
    assert main([*estimate, "--out", str(tmp_path / "out"), "--select", "TC-0003"]) == 0
    rows[0]["drain_count"] = "none"
    write_rows(sheet, rows)
    assert main([*estimate, "--out", str(tmp_path / "other")]) == 2
    assert f"{sheet}:2: column drain_count" in capsys.readouterr().err
    assert not (tmp_path / "other").exists()
    assert main(["template", "job", "--out", str(form)]) == 2
