"""Which inputs a total depends on: indices beside a reference library, and of a job."""

from __future__ import annotations

import numpy as np
import pytest
from SALib.analyze import sobol as reference
from SALib.sample import sobol as saltelli

import scupper as sc
from scupper import _core


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
