"""The table of published figures: whole, explained, the same as the C++ tests count, and awake."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from pathlib import Path

import pandas as pd
import pytest

import scupper as sc
from scupper.command_line import main

REFERENCE = Path(__file__).resolve().parents[1] / "reference"


def gathered() -> Iterator[tuple[str, dict[str, str]]]:
    """Every row of the reference files, with the name of its file."""
    for path in (REFERENCE / "hydraulics").glob("*.csv"):
        with path.open(encoding="utf-8", newline="") as file:
            for row in csv.DictReader(file):
                yield path.stem, row


@pytest.fixture(scope="module")
def table() -> pd.DataFrame:
    return sc.verification()


def test_every_row_of_every_file_is_in_the_table_once(table: pd.DataFrame) -> None:
    ids = [(name, row["id"]) for name, row in gathered()]
    assert sorted(ids) == sorted(zip(table["file"], table["id"], strict=True))
    assert len(table) > 1200


def test_every_difference_has_its_reason(table: pd.DataFrame) -> None:
    assert not (table["verdict"] == "unexplained").any()
    assert not table["verdict"].str.endswith(("nobody mapped it", ": ")).any()
    apart = table["verdict"].str.startswith("not checked: ")
    assert table.loc[~apart, "ours"].notna().all()
    assert apart.sum() <= 45
    assert set(table["basis"]) == {"seen", "computed", "memory"}


def test_rows_agree_as_counted(table: pd.DataFrame) -> None:
    """The tests in C++ count the rows of the same files: summaries of their tallies."""
    counts = sc.verification_counts(table)
    pinned = pd.read_csv(REFERENCE / "verdicts.csv")
    pd.testing.assert_frame_equal(counts, pinned)


def test_agreement_is_half_a_printed_step(table: pd.DataFrame) -> None:
    precision = {row["id"]: float(row["printed_precision"] or 0) for _, row in gathered()}
    agrees = table[table["verdict"] == "agrees"]
    steps = agrees["id"].map(precision)
    assert (agrees["difference"].abs() <= 0.5 * steps * (1 + 1e-8)).all()
    assert (agrees["difference"] == agrees["ours"] - agrees["published"]).all()


def test_a_wrong_engine_is_found(monkeypatch: pytest.MonkeyPatch) -> None:
    right = sc.hydraulics.water_density
    monkeypatch.setattr(sc.hydraulics, "water_density", lambda *a, **k: 1.02 * right(*a, **k))
    found = sc.verification()
    wrong = found[found["verdict"] == "unexplained"]
    assert {"water_iapws", "water_properties"} <= set(wrong["file"])


def test_the_table_is_written_as_csv_and_html(table: pd.DataFrame, tmp_path: Path) -> None:
    sheet, page = sc.write_verification(tmp_path / "out", table)
    again = pd.read_csv(sheet, keep_default_na=False)
    assert list(again.columns) == list(table.columns)
    assert len(again) == len(table)
    text = page.read_text(encoding="utf-8")
    assert "NZ-001" in text
    assert text.count("<tr>") >= len(table)


def test_the_command_prints_counts_and_writes(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["verify", "--out", str(tmp_path)]) == 0
    printed = capsys.readouterr().out
    assert "nozzle_discharge" in printed
    assert "constant_29.7" in printed
    assert (tmp_path / "verification.csv").exists()
    assert (tmp_path / "verification.html").exists()
    assert main(["verify", "--rows"]) == 0
    assert "NZ-001" in capsys.readouterr().out


def test_missing_figures_are_said(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setattr("scupper.verifying._core.__file__", str(tmp_path / "_core.so"))
    with pytest.raises(sc.FileError, match="installed package"):
        sc.verification()
