"""The command from end to end, in a folder of its own."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path

import pandas as pd
import pytest

import scupper as sc
from scupper.command_line import main

FILES = [
    "doubts.csv",
    "estimate.csv",
    "rejected.csv",
    "summary.txt",
    "take_off.csv",
    "unpriced.csv",
]


@pytest.fixture
def demo(tmp_path: Path) -> Path:
    assert main(["demo", str(tmp_path / "demo")]) == 0
    return tmp_path / "demo"


def estimate(demo: Path, out: Path, *more: str) -> int:
    records, job = str(demo / "tamarack_county.txt"), str(demo / "job.json")
    return main(["estimate", records, "--job", job, "--out", str(out), *more])


def test_estimate_writes_everything_and_it_adds_up(
    demo: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "a" / "out"
    assert estimate(demo, out) == 0
    assert sorted(f.name for f in out.iterdir()) == FILES
    priced = pd.read_csv(out / "estimate.csv", dtype={"state": str})
    unpriced = pd.read_csv(out / "unpriced.csv")
    taken_off = pd.read_csv(out / "take_off.csv")
    assert len(priced) + len(unpriced) == len(taken_off) == 150
    summary = (out / "summary.txt").read_text(encoding="utf-8")
    assert f"USD {priced['cost_total_usd'].sum():,.0f}" in summary
    assert capsys.readouterr().out.strip().endswith(summary.strip())
    assert list(tmp_path.rglob(".*")) == []


def test_a_cell_that_a_spreadsheet_would_run_is_made_text(demo: Path, tmp_path: Path) -> None:
    records = demo / "tamarack_county.txt"
    text = records.read_text(encoding="utf-8").replace("LARCH AVENUE", "=1+1")
    records.write_text(text, encoding="utf-8")
    assert estimate(demo, tmp_path / "out") == 0
    carries = pd.read_csv(tmp_path / "out" / "estimate.csv")["carries"]
    assert "'=1+1" in set(carries)
    assert "'@HERON TRAIL CONNECTOR" in set(carries)
    assert not carries.str.startswith(("=", "+", "-", "@")).any()


def test_select_units_threads(demo: Path, tmp_path: Path) -> None:
    more = ["--select", "TC-0001, TC-00O2", "--units", "metric", "--threads", "1"]
    assert estimate(demo, tmp_path / "out", *more) == 0
    priced = pd.read_csv(tmp_path / "out" / "estimate.csv")
    assert list(priced["structure_id"]) == ["TC-0001"]
    assert "water_m3" in priced.columns
    summary = (tmp_path / "out" / "summary.txt").read_text(encoding="utf-8")
    assert "not found: TC-00O2" in summary
    assert "TC-0002" in summary


def test_workbook_is_written_for_one_structure(
    demo: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    records, out = str(demo / "tamarack_county.txt"), tmp_path / "one.xlsx"
    words = [records, "TC-0001", "--job", str(demo / "job.json"), "--out", str(out)]
    assert main(["workbook", *words]) == 0
    assert out.read_bytes().startswith(b"PK")
    assert capsys.readouterr().out.strip() == str(out)


def test_a_second_run_replaces_the_files_and_keeps_others(demo: Path, tmp_path: Path) -> None:
    out = tmp_path / "out"
    assert estimate(demo, out) == 0
    (out / "notes.txt").write_text("mine", encoding="utf-8")
    (out / "summary.txt").write_text("old", encoding="utf-8")
    assert estimate(demo, out) == 0
    assert (out / "notes.txt").read_text(encoding="utf-8") == "mine"
    assert "structures read" in (out / "summary.txt").read_text(encoding="utf-8")


@pytest.mark.parametrize("text", ["", "not a header\n1,2,3\n", "STATE_CODE_001\n99\n"])
def test_a_malformed_file_is_one_readable_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], text: str
) -> None:
    bad = tmp_path / "bad.txt"
    bad.write_text(text, encoding="utf-8")
    assert main(["estimate", str(bad), "--out", str(tmp_path / "out")]) == 2
    err = capsys.readouterr().err.strip().splitlines()
    assert "bad.txt" in err[-1]
    assert "allowed:" in err[-1]
    assert not (tmp_path / "out").exists()


def test_a_folder_that_cannot_be_made(
    demo: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "file").write_text("", encoding="utf-8")
    assert estimate(demo, tmp_path / "file" / "out") == 2
    assert "file.write" in capsys.readouterr().err


def test_explain_rules_keys(demo: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["explain", str(demo / "tamarack_county.txt"), "TC-0001", "water"]) == 0
    assert capsys.readouterr().out.startswith("water used = ")
    assert main(["rules"]) == 0
    assert "source: " in capsys.readouterr().out
    assert main(["keys"]) == 0
    assert "input\tnozzle.bore\t" in capsys.readouterr().out
    assert main(["explain", str(demo / "tamarack_county.txt"), "TC-001", "water"]) == 2
    assert "TC-0001" in capsys.readouterr().err


def test_version(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as stop:
        main(["--version"])
    assert stop.value.code == 0
    assert capsys.readouterr().out == f"scupper {sc.__version__}\n"


def test_an_interrupt_leaves_nothing(
    demo: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def interrupt(*_: object, **__: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(pd.DataFrame, "to_csv", interrupt)
    assert estimate(demo, tmp_path / "out") == 130
    assert sorted(f.name for f in tmp_path.iterdir()) == ["demo"]


@pytest.mark.skipif(os.name != "posix", reason="sends a signal")
def test_ctrl_c_stops_a_long_run(tmp_path: Path) -> None:
    header, *rows = sc.demo_records().read_text(encoding="utf-8").splitlines()
    big = tmp_path / "big.txt"
    with open(big, "w", encoding="utf-8") as file:
        file.write(header + "\n")
        for i in range(1300):
            file.writelines(row.replace(",TC-", f",{i}-") + "\n" for row in rows)
    command = [sys.executable, "-m", "scupper.command_line", "estimate", str(big)]
    process = subprocess.Popen(
        [*command, "--out", str(tmp_path / "out")],
        stderr=subprocess.PIPE,
        preexec_fn=lambda: signal.signal(signal.SIGINT, signal.SIG_DFL),  # may be off where we run
    )
    assert process.stderr is not None
    assert b"no --job" in process.stderr.readline()
    process.send_signal(signal.SIGINT)
    _, err = process.communicate(timeout=60)
    assert process.returncode == 130, err
    assert b"stopped" in err
    assert sorted(f.name for f in tmp_path.iterdir()) == ["big.txt"]
