"""The closure of an estimate, and how much traffic gets past one."""

from __future__ import annotations

import pytest

import scupper as sc


def per_hour(flow: object) -> float:
    return float(flow.to("count/hour").magnitude)  # type: ignore[attr-defined]


def test_an_estimate_lays_its_closure_out(estimate: sc.Estimate) -> None:
    plan = estimate.closure_plan
    assert plan.kind == "one_lane_two_way"
    assert plan.advance_signs == 6
    assert plan.taper.to("ft").magnitude == pytest.approx(100)
    assert plan.buffer.magnitude > 0
    assert int(plan.elements["devices"].sum()) == plan.devices
    assert any("road.speed" in caution for caution in plan.cautions)
    assert "govern" in plan.cautions[0]


def test_the_speed_of_a_survey_beats_the_record(county: sc.Inventory, job: sc.Job) -> None:
    slow = sc.estimate(county["TC-0001"], job.override("TC-0001", {"road.speed": "25 mph"}))
    # Stopping distance at 25 mph: MUTCD 2009, table 6C-2.
    assert slow.closure_plan.buffer.to("ft").magnitude == pytest.approx(155)


def test_no_closure_has_an_empty_plan(county: sc.Inventory, job: sc.Job) -> None:
    plan = sc.estimate(county["TC-0001"], job.replace(closure="none")).closure_plan
    assert plan.kind == "none"
    assert plan.devices == 0
    assert len(plan.elements) == 0


def test_one_lane_for_both_ways_by_hand() -> None:
    # 2 x (60 s + 2,300 ft / 25 mph) = 245.5 s; 1,500 x 60 / 245.5 = 366.7: common practice.
    cycle = sc.closure.one_lane_cycle("2,300 ft", "25 mph", "60 s")
    assert cycle.to("s").magnitude == pytest.approx(245.5, abs=0.05)
    capacity = sc.closure.one_lane_capacity("2,300 ft", "25 mph", "60 s", "1,500 vehicle/h")
    assert per_hour(capacity) == pytest.approx(366.7, abs=0.05)
    demand = sc.closure.hourly_demand(6500, 0.06, 0.55)
    assert per_hour(demand) == pytest.approx(214.5)
    assert demand < capacity


def test_the_night_window_by_hand() -> None:
    # Hours from 20 o'clock, in percent of 45,000 vehicles of one direction; invented.
    shares = [0.044, 0.036, 0.030, 0.023, 0.014, 0.010, 0.009, 0.010, 0.018, 0.038]
    demand = sc.closure.hourly_demand(45_000, shares)
    assert sc.closure.window(demand, "1,450 vehicle/h") == (2, 7)  # 22 to 5 o'clock
    assert sc.closure.window(1.1 * demand, "1,450 vehicle/h") == (3, 6)
    with pytest.raises(sc.InputError):
        sc.closure.window("1 vehicle/h", "1,450 vehicle/h")
