"""Which inputs a total depends on: indices beside a reference library, and of a job."""

from __future__ import annotations

import json
from pathlib import Path

import matplotlib as mpl
import numpy as np
import pandas as pd
import pytest
from SALib.analyze import sobol as reference
from SALib.sample import sobol as saltelli

import scupper as sc
from scupper import _core
from scupper.command_line import main

mpl.use("Agg")
PNG = b"\x89PNG\r\n\x1a\n"


@pytest.fixture(scope="module")
def job() -> sc.Job:
    return sc.Job.demo()


@pytest.fixture(scope="module")
def one() -> sc.Inventory:
    return sc.read_inventory(sc.demo_records()).select(["TC-0001"])


def ishigami(x: np.ndarray) -> np.ndarray:
    return np.sin(x[:, 0]) + 7 * np.sin(x[:, 1]) ** 2 + 0.1 * x[:, 2] ** 4 * np.sin(x[:, 0])


def test_indices_agree_with_a_reference_library_on_its_own_sample() -> None:
    problem = {"num_vars": 3, "names": list("abc"), "bounds": [[-np.pi, np.pi]] * 3}
    x = saltelli.sample(problem, 4096, calc_second_order=False, seed=7)
    y = ishigami(x)
    theirs = reference.analyze(problem, y, calc_second_order=False, seed=7)
    runs = y.reshape(-1, 5).T  # A, A with a column of B each, B
    ours = _core.indices_of(runs[0], runs[4], list(runs[1:4]), 8)
    for k in range(3):
        for name, reference_name in (("first_order", "S1"), ("total", "ST")):
            error = max(float(ours[f"{name}_se"][k]), 1e-3)
            assert abs(ours[name][k] - theirs[reference_name][k]) < 4 * error


def test_shares_of_a_price(one: sc.Inventory, job: sc.Job) -> None:
    table = sc.sensitivity(one, job, draws=600, top=5)
    assert len(table) == 6
    assert table.index[-1] == "others"
    named = table.iloc[:-1]
    assert named["total"].is_monotonic_decreasing
    assert 0.7 < table["first_order"].sum() < 1.1
    slack = 4 * (table["total_se"] + table["first_order_se"]) + 0.02
    assert (table["total"] >= table["first_order"] - slack).all()
    assert named["rank_correlation"].abs().between(0, 1).all()
    again = sc.sensitivity(one, job, draws=600, top=5, threads=2)
    assert again.equals(table)


def test_correlated_inputs_are_one_factor(one: sc.Inventory, job: sc.Job) -> None:
    first, second = sc.sensitivity(one, job, draws=100, top=2).index[:2]
    together = job.replace(correlations=[{"inputs": [first, second], "rank": 0.5}])
    table = sc.sensitivity(one, together, draws=100, top=2)
    assert any(first in key and second in key for key in table.index)
    asked = sc.sensitivity(one, job, draws=100, top=2, together=[[first, second]])
    assert any(first in key and second in key for key in asked.index)
    with pytest.raises(sc.InputError, match="once"):
        sc.sensitivity(one, job, draws=100, together=[[first], [first]])
    with pytest.raises(sc.UnknownNameError, match="simulate.figure"):
        sc.sensitivity(one, job, figure="noise", draws=100)


def test_the_command_writes_what_the_call_gives(
    one: sc.Inventory, job: sc.Job, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    words = ["sensitivity", str(sc.demo_records()), "--select", "TC-0001", "--figure", "hours"]
    words += ["--draws", "100", "--top", "3"]
    table = sc.sensitivity(one, job, "hours", 100, top=3)
    for name in ("table.csv", "table.json"):
        assert main([*words, "--out", str(tmp_path / name)]) == 0
    shown = capsys.readouterr().out
    assert table["label"].iloc[0] in shown
    assert f"{table['total'].iloc[0]:.3f}" in shown
    read = pd.read_csv(tmp_path / "table.csv", index_col="key")
    pd.testing.assert_frame_equal(read, table, check_exact=False, rtol=1e-12)
    rows = json.loads((tmp_path / "table.json").read_text())
    assert [row["key"] for row in rows] == list(table.index)
    assert rows[0]["total"] == pytest.approx(table["total"].iloc[0])
    assert rows[-1]["rank_correlation"] is None  # of several inputs
    assert main([*words, "--figure", "noise"]) == 2


def test_the_commands_of_draws_plot_what_they_say(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    records = [str(sc.demo_records()), "--select", "TC-0001,TC-0002"]
    out, plot = str(tmp_path / "out.csv"), tmp_path / "chance.png"
    words = ["simulate", *records, "--draws", "400", "--relative-error", "0.1", "--out", out]
    assert main([*words, "--budget", "9000", "--plot", str(plot)]) == 0
    assert "160 draws" in capsys.readouterr().out  # four of ten replicates are enough
    assert plot.read_bytes().startswith(PNG)
    visits = tmp_path / "visits.png"
    words = ["survey-list", *records, "--visits", "1", "--out", out, "--plot", str(visits)]
    assert main(words) == 0
    assert visits.read_bytes().startswith(PNG)
    assert main([*words[:-1], str(tmp_path / "visits.tiff3")]) == 2
    assert "png" in capsys.readouterr().err
