"""How sure the price of the invented county is."""

from __future__ import annotations

import pickle

import numpy as np
import pytest

import scupper as sc


@pytest.fixture(scope="module")
def found(county: sc.Inventory, job: sc.Job) -> sc.Simulation:
    return sc.simulate(county, job, draws=400, seed=3)


def test_a_row_a_priced_structure_with_rising_quantiles(
    found: sc.Simulation, county: sc.Inventory, job: sc.Job
) -> None:
    table = found.to_pandas()
    priced = sc.estimate_all(county, job).to_pandas()
    assert list(table["structure_id"]) == list(priced["structure_id"])
    np.testing.assert_array_equal(table["cost_estimate_usd"], priced["cost_total_usd"])
    for figure, unit in (("cost", "usd"), ("hours", "h"), ("water", "gal")):
        low, middle, high = (table[f"{figure}_{p}_{unit}"] for p in ("P5", "P50", "P95"))
        assert (low <= middle).all()
        assert (middle <= high).all()
        assert (low < high).any()


def test_totals_are_those_of_the_draws(found: sc.Simulation) -> None:
    draws = found.total_draws("cost")
    row = found.total.loc["cost"]
    assert len(draws) == 400
    assert row["mean"] == pytest.approx(draws.mean())
    assert row["sd"] == pytest.approx(draws.std(ddof=1))
    assert row["P80"] == pytest.approx(np.quantile(draws, 0.8, method="hazen"))
    assert 0 < row["mean_se"] < row["sd"] / 5
    assert found.quantile(0.8) == row["P80"]
    assert found.contingency(0.8) == pytest.approx(row["P80"] - row["estimate"])
    budget = found.quantile(0.8)
    assert found.chance_above(budget) == pytest.approx(0.2, abs=0.005)
    hours = found.total_draws("hours")
    assert found.chance_above(float(np.median(hours)), "hours") == pytest.approx(0.5, abs=0.005)


def test_the_mean_of_the_list_is_the_sum_of_its_structures(found: sc.Simulation) -> None:
    assert found.to_pandas()["cost_mean_usd"].sum() == pytest.approx(
        found.total.loc["cost", "mean"]
    )


def test_parts_threads_and_another_process_give_the_same_bits(
    found: sc.Simulation, county: sc.Inventory, job: sc.Job
) -> None:
    ids = [s.id for s in county]
    first = sc.simulate(county.select(ids[:5]), job, 400, 3, threads=1)
    rest = sc.simulate(county.select(ids[5:]), job, 400, 3, threads=2)
    joined = pickle.loads(pickle.dumps(first)).joined(rest)
    np.testing.assert_array_equal(joined.total_draws(), found.total_draws())
    assert joined.to_pandas().equals(found.to_pandas())


def test_a_stop_rule_uses_fewer_draws(county: sc.Inventory, job: sc.Job) -> None:
    rough = sc.simulate(county, job, draws=1000, relative_error=0.5)
    assert rough.draws == 400
    assert rough.relative_error() <= 0.5


def test_what_makes_no_sense_is_refused(
    found: sc.Simulation, county: sc.Inventory, job: sc.Job
) -> None:
    with pytest.raises(sc.InputError, match="replicates"):
        sc.simulate(county, job, draws=25, replicates=10)
    with pytest.raises(sc.InputError):
        sc.simulate(county, job, draws=0)
    with pytest.raises(sc.UnknownNameError, match="latin_hypercube"):
        sc.simulate(county, job, draws=10, sampling="hypercube")
    with pytest.raises(sc.InputError):
        sc.simulate(county, job, draws=10, relative_error=-1.0)
    with pytest.raises(sc.UnknownNameError, match="cost"):
        found.quantile(0.5, "price")
    with pytest.raises(sc.InputError):
        found.quantile(80)
    with pytest.raises(sc.Interrupted):
        sc.simulate(county, job, draws=100, progress=lambda done, of: False)


def test_the_widest_swing_comes_first(county: sc.Inventory, job: sc.Job) -> None:
    table = sc.swings(county, job)
    assert table["width"].is_monotonic_decreasing
    assert table["width"].iloc[0] > 0
    assert (table["structures"] <= len(county)).all()
    with pytest.raises(sc.InputError):
        sc.swings(county, job, level=0.5)


def test_sobol_points_need_powers_of_two_and_know_the_mean_better(
    county: sc.Inventory, job: sc.Job
) -> None:
    with pytest.raises(sc.InputError, match="5120 or 10240"):
        sc.simulate(county, job, sampling="sobol")
    with pytest.raises(sc.InputError, match="one structure"):
        sc.simulate(county, job, draws=64, sampling="sobol_single")
    one = county.select(["TC-0001"])
    plain, single = (
        sc.simulate(one, job, draws=16384, sampling=kind).relative_error()
        for kind in ("plain", "sobol_single")
    )
    assert single < 0.5 * plain


def test_an_interval_is_wider_than_two_errors_of_few_replicates(found: sc.Simulation) -> None:
    low, high = found.interval(0.8)
    row = found.total.loc["cost"]
    assert (low + high) / 2 == pytest.approx(row["P80"])
    assert (high - low) / 2 == pytest.approx(2.262157 * row["P80_se"], rel=1e-6)  # nine degrees


def test_listed_values_price_at_their_mean_and_draw_nothing_else(
    county: sc.Inventory, job: sc.Job
) -> None:
    key = "charge[permit].amount"
    charged = job.replace(charges=[{"name": "permit"}])
    listed = charged.replace({key: {"values": ["0 USD", "1000 USD"], "weights": [3, 1]}})
    certain = charged.replace({key: "250 USD"})
    one = county["TC-0001"]
    assert sc.estimate(one, listed).cost.total == pytest.approx(
        sc.estimate(one, certain).cost.total
    )
    again = sc.Job.from_dict(listed.to_dict())
    assert again.to_dict() == listed.to_dict()
    with pytest.raises(sc.InputError, match=r"weights"):
        charged.replace({key: {"values": ["0 USD"], "weights": [1, 2]}})


def test_correlated_inputs_widen_the_total(county: sc.Inventory, job: sc.Job) -> None:
    wages = ["labour[wash_crew].wage", "labour[flagger].wage", "equipment[water_truck].rate"]
    together = job.replace(correlations=[{"inputs": wages, "rank": 0.9}])
    apart, joined = (
        sc.simulate(county, j, draws=1000, seed=2).total.loc["cost", "sd"] for j in (job, together)
    )
    assert joined > apart
    impossible = job.replace(correlations=[{"inputs": wages, "rank": -0.9}])
    with pytest.raises(sc.InputError, match="together at most"):
        sc.estimate(county["TC-0001"], impossible)
    misspelt = [wages[0], "labour[flager].wage"]
    unknown = job.replace(correlations=[{"inputs": misspelt, "rank": 0.5}])
    with pytest.raises(sc.UnknownNameError, match="flagger"):
        sc.estimate(county["TC-0001"], unknown)
