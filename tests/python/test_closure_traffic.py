"""Traffic past a closure in Python: published figures, arrays, words, money, pictures."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest

import scupper as sc

c = sc.closure


def per_hour(flow: Any) -> Any:
    return flow.to("count/hour").magnitude


def test_capacity_by_method() -> None:
    # HCM 7th edition, equations 10-8 and 10-9: two lanes to one, cones, rural, day.
    discharge = c.queue_discharge(2, 1, rural=True)
    assert per_hour(discharge) == pytest.approx(1412)
    assert per_hour(c.capacity_before_queue(discharge)) == pytest.approx(1630.485, abs=1e-3)
    # HCM 2010, exhibit 10-14, as FHWA-HOP-13-042 prints it.
    assert per_hour(c.work_zone_capacity("hcm_2010", 2, 1)) == pytest.approx(1400)
    assert per_hour(c.work_zone_capacity("hcm_2010", 3, 2)) == pytest.approx(2900)
    with pytest.raises(sc.UnknownNameError):
        c.work_zone_capacity("hcm_1985", 2, 1)
    with pytest.raises(sc.InputError):
        c.work_zone_capacity("hcm_7", 2, 3)


def test_the_worked_queue_and_not_the_posted_one() -> None:
    # 80 vehicles a minute, 60 pass for half an hour, then 120: 600 wait, gone after 15 min;
    # the posted 63,000 vehicle-minutes are not the area between the lines, 13,500.
    queue = c.queue(["80 vehicle/min"] * 2, ["60 vehicle/min", "120 vehicle/min"],
                    ["30 min", "60 min"])  # fmt: skip
    assert queue.longest.magnitude == pytest.approx(600)
    assert queue.cleared is not None
    assert queue.cleared.to("min").magnitude == pytest.approx(45)
    assert queue.delay.to("count*min").magnitude == pytest.approx(13_500)
    assert queue.longest_delay.to("min").magnitude == pytest.approx(7.5)
    assert len(queue.steps) == 2
    assert "600 vehicles" in repr(queue)
    assert c.queue_length(600, "20 ft/each").to("ft").magnitude == pytest.approx(12_000)


def test_permitted_hours_of_a_night_by_hand() -> None:
    shares = c.hourly_shares("urban")
    assert sum(shares) == pytest.approx(1)
    demand = c.hourly_demand(20_000, shares)
    permitted = c.permitted_hours(
        demand, "3,800 vehicle/h", "1,400 vehicle/h", longest_queue="0 vehicle"
    )
    # 7 % of the day's traffic passes: more comes at 7, 16 and 17 o'clock.
    assert [hour for hour in range(24) if not permitted[hour]] == [7, 16, 17]
    assert permitted[18] == 13
    assert set(c.permitted_hours(demand, "3,800 vehicle/h", "1,400 vehicle/h")) == {24}
    queue = c.closure_queue(demand, "3,800 vehicle/h", "1,400 vehicle/h", 18, "13 h")
    assert queue.longest.magnitude == 0


def test_two_directions_in_one_lane() -> None:
    # HCM 7th edition, chapter 26, appendix B: 0.0375 s a foot; exhibit 26-B4.
    assert c.optimal_green("1,000 ft").to("s").magnitude == pytest.approx(37.5)
    trucks = c.truck_equivalent(np.array([100.0, 900.0]), units={"flow": "vehicle/h"})
    assert list(trucks) == pytest.approx([1.9, 1.0])
    demand = c.passenger_car_demand("300 vehicle/h", 0.88, 0.83, 0.892857)
    assert per_hour(demand) == pytest.approx(460.022, abs=1e-3)
    assert c.one_lane_speed("45 mph").to("mph").magnitude == pytest.approx(42.6)


def test_road_user_cost_by_hand() -> None:
    value = c.time_value("23 USD/h", "41 USD/h", 0.1)
    assert value.to("1/hour").magnitude == pytest.approx(24.8)
    slow = c.slowing_delay(1000, "1 mi", "60 mph", "45 mph")
    assert slow.to("count*s").magnitude == pytest.approx(20_000)
    assert c.delay_cost(slow, value) == pytest.approx(24.8 * 20_000 / 3600)
    assert c.delay_cost(slow, "24.8 USD/h") == pytest.approx(24.8 * 20_000 / 3600)
    assert c.turn_delay(10, "240 s", "60 s").to("count*s").magnitude == pytest.approx(675)
    assert c.detour_cost(100, "10 mi", "40 mph", "24 USD/h", "0.5 USD/mi") == pytest.approx(1100)
    # A + B: the bidder with the higher price and fewer days wins.
    first, second = (c.bid_with_time(f"{bid} USD", f"{days} day", "5,000 USD/day")
                     for bid, days in ((1_000_000, 60), (1_040_000, 45)))  # fmt: skip
    assert (first, second) == pytest.approx((1_300_000, 1_265_000))
    with pytest.raises(sc.InputError):
        c.time_value("23 USD/h", "41 EUR/h", 0.1)
    with pytest.raises(sc.InputError):
        c.time_value("23 mph", "41 USD/h", 0.1)


def test_a_plan_goes_up_sign_first_and_comes_down_sign_last() -> None:
    plan = c.plan(speed="55 mph", kind="rural_lane", road="rural", work_length="400 ft")
    assert list(plan.placing["what"])[:5] == [
        "advance_sign_c", "advance_sign_b", "advance_sign_a", "shadow_vehicle", "arrow_board",
    ]  # fmt: skip
    assert list(plan.removal["what"]) == list(plan.placing["what"])[::-1]
    places = plan.places
    assert int((places["what"] == "device").sum()) == plan.devices
    assert int((places["what"] == "sign").sum()) == plan.advance_signs


def test_work_off_the_road() -> None:
    plan = c.plan(speed="45 mph", kind="off_road", road="rural", work_length="200 ft")
    assert (plan.advance_signs, plan.devices) == (2, 0)
    # California edition 2026 of the manual, 6B.04: more than 2 ft behind a curb.
    assert c.advance_warning_may_be_omitted("3 ft", at_curb=True)
    assert not c.advance_warning_may_be_omitted("3 ft")
    assert c.roll_ahead(["45 mph", "65 mph"]).to("ft").magnitude == pytest.approx([75, 150])


@pytest.mark.parametrize("kind", ["none", "shoulder", "one_lane_two_way", "rural_lane",
                                  "freeway_lane", "two_freeway_lanes", "full_closure",
                                  "off_road"])  # fmt: skip
def test_every_kind_has_a_picture(kind: str, tmp_path: Any) -> None:
    plan = c.plan(speed="55 mph", kind=kind, road="rural", work_length="300 ft",
                  shoulder_width="8 ft")  # fmt: skip
    figure = plan.picture()
    figure.savefig(tmp_path / "closure.png", dpi=60)
    assert (tmp_path / "closure.png").stat().st_size > 1000
    whole, near = figure.axes
    drawn = sum(len(points.get_offsets()) for points in whole.collections
                if points.get_label() == "channelizing device")  # fmt: skip
    assert drawn == plan.devices
    if plan.devices:
        assert near.get_aspect() == 1.0
        lengths = [row["length"].to("ft").magnitude for row in plan.elements.to_dict("records")]
        texts = " ".join(text.get_text() for text in whole.texts)
        assert all(f"{length:,.0f} ft" in texts for length in lengths)


def test_road_users_of_an_estimate(county: sc.Inventory, job: sc.Job) -> None:
    users = sc.estimate(county["TC-0001"], job).road_users
    assert users.known
    assert users.kind == "one_lane_two_way"
    assert users.total == pytest.approx(users.per_closure * users.closures)
    assert users.per_hour * users.closed.to("h").magnitude == pytest.approx(users.per_closure)
    assert list(users.hours.columns) == ["demand_per_h", "permitted_h"]
    assert "road-user cost" in repr(users)
    unpriced = job.to_dict()
    unpriced["inputs"] = {key: value for key, value in unpriced["inputs"].items()
                          if not key.endswith("_time_value")}  # fmt: skip
    without = sc.estimate(county["TC-0001"], sc.Job.from_dict(unpriced)).road_users
    assert math.isnan(without.total)
    assert any("No value of time" in caution for caution in without.cautions)


def test_limits_of_traffic_and_its_hours_come_from_the_job(
    county: sc.Inventory, job: sc.Job
) -> None:
    level = job.replace(traffic={"hours": [100 / 24] * 24, "capacity": "hcm_7"})
    hours = sc.estimate(county["TC-0001"], level).road_users.hours["demand_per_h"]
    assert hours.max() == pytest.approx(hours.min())
    assert sc.Job.from_dict(level.to_dict()).to_dict()["traffic"]["capacity"] == "hcm_7"
    busy = {"traffic.daily": 30_000, "traffic.queue_limit": "0.1 mi"}
    with pytest.raises(sc.InputError, match="traffic leaves no hours"):
        sc.estimate(county["TC-0001"], job.replace(busy))
    uneven = sc.estimate(county["TC-0001"], job.replace(traffic={"hours": [1.0] * 24}))
    with pytest.raises(sc.InputError):
        repr(uneven.road_users)
    with pytest.raises(sc.InputError):
        job.replace(traffic={"hour": "rural"})


def test_day_against_night_with_one_key_changed(county: sc.Inventory, job: sc.Job) -> None:
    table = sc.scenarios(county["TC-0001"], {"day": job, "night": job.replace(work_time="night")})
    night = table["night"] / table["day"]
    assert night["cost_labour_usd"] > 1
    assert night["cost_equipment_usd"] > 1  # light towers
    assert night["cost_total_usd"] > 1


def test_charges_of_a_contract_stand_in_the_price(county: sc.Inventory, job: sc.Job) -> None:
    rented = job.replace({"contract.occupancy_charge": "100 USD/h"})
    estimate = sc.estimate(county["TC-0001"], rented)
    hours = estimate.figure("hours.closed").to("h").magnitude
    assert estimate.cost.by("resource")["lane occupancy"] == pytest.approx(100 * hours)
    assert "hours the road is closed" in str(estimate.explain("cost.contract"))


def test_what_setting_up_takes_by_people(county: sc.Inventory, job: sc.Job) -> None:
    effort = sc.estimate(county["TC-0001"], job).closure_effort
    assert set(effort["step"]) == {"closure_set_up", "closure_change_sides", "closure_removal"}
    assert set(effort["people"]) == {"wash_crew", "flagger"}
    assert list(effort["labour_h"]) == pytest.approx(list(effort["number"] * effort["time_h"]))


STAGES = [
    {"name": "deck", "closure": "one_lane_two_way", "parties": [
        {"name": "deck_party", "work": ["deck_top", "sidewalk", "gutter"]}]},
    {"name": "drains", "closure": "full_closure", "parties": [
        {"name": "drain_party", "work": ["drain"]}]},
]  # fmt: skip


def test_road_users_of_every_stage_add_up(county: sc.Inventory, job: sc.Job) -> None:
    staged = sc.estimate(county["TC-0001"], job.replace(stages=STAGES))
    users = staged.road_users
    assert [stage.stage for stage in users.stages] == ["deck", "drains"]
    assert [stage.kind for stage in users.stages] == ["one_lane_two_way", "full_closure"]
    assert all(stage.total > 0 for stage in users.stages)
    assert users.total == pytest.approx(sum(stage.total for stage in users.stages))
    assert "drains, full closure" in repr(users)
    plans = staged.closure_plans
    assert list(plans) == ["deck", "drains"]
    assert plans["deck"].kind == "one_lane_two_way"
    assert plans["drains"].kind == "full_closure"
    one = sc.estimate(county["TC-0001"], job)
    assert one.closure_plans[""].devices == one.closure_plan.devices


def test_road_users_that_cannot_be_figured_are_a_warning(county: sc.Inventory, job: sc.Job) -> None:
    unpriced = job.to_dict()
    unpriced["inputs"] = {key: value for key, value in unpriced["inputs"].items()
                          if not key.endswith("_time_value")}  # fmt: skip
    without = sc.estimate(county["TC-0001"], sc.Job.from_dict(unpriced))
    assert any(w.startswith("road users: no value of time") for w in without.warnings)
    now = sc.estimate(county["TC-0001"], job)
    assert not any(w.startswith("road users") for w in now.warnings)
