"""The estimate of one structure: it reconciles, explains itself, says what it does not know."""

from __future__ import annotations

import numpy as np
import pytest

import scupper as sc

FIGURES = ("water", "debris", "cost.total", "hours.labour", "girder_area", "nozzle.flow")


@pytest.mark.parametrize("dimension", ["component", "operation", "resource"])
def test_every_sum_is_the_total(estimate: sc.Estimate, dimension: str) -> None:
    total = estimate.cost.total
    assert estimate.cost.by(dimension).sum() == pytest.approx(total, rel=1e-9)
    assert estimate.cost.lines["amount"].sum() == pytest.approx(total, rel=1e-9)


def test_an_unknown_dimension_of_cost_is_refused(estimate: sc.Estimate) -> None:
    with pytest.raises(sc.UnknownNameError):
        estimate.cost.by("crew")


def test_parts_of_the_cost_are_those_of_the_lines(estimate: sc.Estimate) -> None:
    parts = [estimate.figure(f"cost.{w}").magnitude for w in ("labour", "equipment", "materials")]
    assert sum(parts) == pytest.approx(estimate.cost.total, rel=1e-9)


@pytest.mark.parametrize("key", FIGURES)
def test_the_explanation_is_the_figure(estimate: sc.Estimate, key: str) -> None:
    derivation = sc.explain(estimate, key)
    first = derivation.to_dict()["steps"][0]
    assert first["value"] == estimate.figure(key).magnitude
    assert first["name"] in str(derivation)
    assert "<ul" in derivation._repr_html_()
    inputs = [s for s in derivation.to_dict()["steps"] if s["kind"] == "input"]
    assert inputs
    assert all(step["basis"] for step in inputs)


def test_the_explanation_keeps_the_units_of_the_job(
    county: sc.Inventory, job: sc.Job, estimate: sc.Estimate
) -> None:
    metric = sc.estimate(county["TC-0001"], job.replace(units="metric"))
    assert " gal " in str(estimate.explain("water")).splitlines()[0]
    assert " m3 " in str(metric.explain("water")).splitlines()[0]
    assert metric.water.to("gallon").magnitude == pytest.approx(estimate.water.magnitude)
    assert metric.cost.total == estimate.cost.total


def test_quantities_are_pint_of_the_application_registry(estimate: sc.Estimate) -> None:
    ureg = sc.units.registry()
    for value in (estimate.water, estimate.debris, estimate.hours, estimate.quantities["cap_area"]):
        assert isinstance(value, ureg.Quantity)
    assert estimate.water.check("[volume]")
    assert estimate.debris.check("[mass]")
    assert estimate.debris_volume.check("[volume]")
    assert estimate.hours > estimate.paid_hours > estimate.on_site_hours
    assert len(estimate.quantities) == 24
    assert "girder_area" in repr(estimate.quantities)
    with pytest.raises(KeyError):
        estimate.quantities["roof_area"]


def test_water_follows_from_the_nozzle(estimate: sc.Estimate, job: sc.Job) -> None:
    nozzle = estimate.nozzles["hand_line"]
    flow = sc.hydraulics.nozzle_flow("0.5 in", nozzle.pressure, 0.97)
    assert nozzle.flow.to("gpm").magnitude == pytest.approx(flow.to("gpm").magnitude, rel=0.05)
    reaction = sc.hydraulics.nozzle_reaction(nozzle.flow, nozzle.pressure)
    assert nozzle.reaction.to("lbf").magnitude == pytest.approx(
        reaction.to("lbf").magnitude, rel=1e-3
    )


def test_guesses_are_listed_the_dearest_first(estimate: sc.Estimate) -> None:
    table = estimate.assumptions
    assert table["worth"].is_monotonic_decreasing
    spread = (table["total_at_high"] - table["total_at_low"]).abs()
    np.testing.assert_allclose(table["worth"], spread)
    assert {"key", "label", "low", "likely", "high", "basis", "source"} <= set(table.columns)


def test_what_was_not_counted_is_said_with_the_money(
    county: sc.Inventory, job: sc.Job, estimate: sc.Estimate
) -> None:
    assert any("drains" in w and "not counted" in w and "USD" in w for w in estimate.warnings)
    counted = sc.estimate(county["TC-0001"], job.override("TC-0001", drains=4))
    assert not any("drains" in warning for warning in counted.warnings)


def test_a_nozzle_that_pushes_hard_is_said(county: sc.Inventory, job: sc.Job) -> None:
    strong = {"pump.pressure": "300 psi", "pump.flow_limit": "500 gpm", "hose[supply].bore": "3 in"}
    one = sc.estimate(county["TC-0001"], job.replace(strong | {"nozzle.bore": "0.5 in"}))
    assert any("more than one person" in w for w in one.warnings)
    on_deck = job.replace(strong | {"pump.pressure": "100 psi"})
    assert not any("bucket" in w for w in sc.estimate(county["TC-0001"], on_deck).warnings)
    beneath = on_deck.replace(service={"girder": "full_clean"}).replace(
        {"pump[under_line].pressure": "300 psi"}
    )
    bucket = sc.estimate(county["TC-0001"], beneath)
    assert any("under line" in w and "bucket" in w for w in bucket.warnings)


def test_nobody_holds_the_bar_of_a_truck(county: sc.Inventory, job: sc.Job) -> None:
    flusher = job.replace(ways={"deck_top": "flusher", "gutter": "flusher"})
    bar = sc.estimate(county["TC-0001"], flusher)
    assert bar.nozzles["flusher"].reaction.to("lbf").magnitude > 60
    assert not any("reaction of the flusher" in warning for warning in bar.warnings)


def test_washing_without_water_is_refused_by_name(county: sc.Inventory, job: sc.Job) -> None:
    dry = sc.estimate(county["TC-0001"], job.replace(wash_water="none"))
    assert any("deck hand line" in w and "dry removal" in w for w in dry.warnings)
    assert dry.water.magnitude == 0
    collected = sc.estimate(county["TC-0001"], job.replace(wash_water="collect"))
    assert collected.cost.total > sc.estimate(county["TC-0001"], job).cost.total
    with pytest.raises(sc.UnknownNameError, match="collect"):
        job.replace(wash_water="colect")


def test_haul_trucks_of_a_job_by_name(county: sc.Inventory, job: sc.Job) -> None:
    trucks = [
        {"name": "sweeper", "components": ["gutter"]},
        {"name": "jet_vac", "dump": "after_shift"},
    ]
    own = job.replace(hauls=trucks).replace({"haul[sweeper].water_share": 0})
    estimate = sc.estimate(county["TC-0001"], own)
    loads = [estimate.figure(f"haul[{truck['name']}].loads").magnitude for truck in trucks]
    assert sum(loads) == pytest.approx(estimate.figure("debris.loads").magnitude)
    assert estimate.figure("haul[jet_vac].labour").magnitude > 0
    assert "dump run" in estimate.cost.by("resource").index


def test_ranges_come_from_seeded_draws(estimate: sc.Estimate) -> None:
    ranges = estimate.ranges(draws=128, seed=3)
    assert ranges.equals(estimate.ranges(draws=128, seed=3))
    assert not ranges.equals(estimate.ranges(draws=128, seed=4))
    assert (ranges["P5"] <= ranges["P50"]).all()
    assert (ranges["P50"] <= ranges["P95"]).all()
    assert ranges.loc["cost.total", "value"] == estimate.cost.total


def test_a_measurement_narrows_the_range(county: sc.Inventory, job: sc.Job) -> None:
    def width(j: sc.Job) -> float:
        row = sc.estimate(county["TC-0001"], j).ranges().loc["cost.total"]
        return float(row["P95"] - row["P5"])

    assert width(job.override("TC-0001", drains=5)) < width(job)


def test_the_summary_says_what_it_is(estimate: sc.Estimate) -> None:
    text = repr(estimate)
    for word in ("99:TC-0001", "shifts", "labour", "water", "dirt", "loads", "P5–P95", "mean",
                 "group of one", "not counted"):  # fmt: skip
        assert word in text, word
    assert "99:TC-0001" in estimate._repr_html_()


def test_the_stamp_changes_with_record_and_job(
    county: sc.Inventory, job: sc.Job, estimate: sc.Estimate
) -> None:
    stamp = estimate.stamp
    assert stamp["version"] == sc.__version__
    assert stamp == sc.estimate(county["TC-0001"], sc.Job.demo()).stamp
    other_job = sc.estimate(county["TC-0001"], job.replace({"nozzle.bore": "3/8 in"})).stamp
    other_record = sc.estimate(county["TC-0002"], job).stamp
    assert stamp["records"] == other_job["records"] != other_record["records"]
    assert stamp["job"] == other_record["job"] != other_job["job"]


def test_figures_as_a_table(estimate: sc.Estimate) -> None:
    table = estimate.to_pandas().set_index("key")
    assert table.loc["cost.total", "value"] == estimate.cost.total
    assert table.loc["water.volume", "unit"] == "gal"


def test_an_unknown_figure_names_the_nearest(estimate: sc.Estimate) -> None:
    with pytest.raises(sc.UnknownNameError) as caught:
        estimate.explain("cost.totl")
    assert "cost.total" in caught.value.allowed


def test_cautions_follow_from_what_is_below(county: sc.Inventory, job: sc.Job) -> None:
    over_road = sc.estimate(county["TC-0001"], job).cautions
    over_water = sc.estimate(county["TC-0002"], job).cautions
    assert {"road_below"} <= {c["id"] for c in over_road} - {c["id"] for c in over_water}
    assert {"drowning"} <= {c["id"] for c in over_water} - {c["id"] for c in over_road}
    assert all(c["text"] and c["source"] for c in over_road + over_water)


def test_closure_by_record(county: sc.Inventory) -> None:
    assert sc.closure.kind_by_record(county["TC-0001"]) == "one_lane_two_way"
    assert sc.closure.kind_by_record(county["TC-0028"]) != "one_lane_two_way"


def test_the_closure_priced_is_the_jobs_or_the_records(county: sc.Inventory, job: sc.Job) -> None:
    for structure in (county["TC-0001"], county["TC-0028"]):
        priced = sc.estimate(structure, job)
        assert priced.closure == sc.closure.kind_by_record(structure)
        assert sc.estimate(structure, job.replace(closure="shoulder")).closure == "shoulder"
