"""Outings of several structures, shifts of one, a year of a programme, and their pictures."""

from __future__ import annotations

import datetime
from pathlib import Path

import matplotlib as mpl
import pandas as pd
import pytest

import scupper as sc
from scupper.command_line import main

mpl.use("agg")


@pytest.fixture(scope="module")
def dozen(county: sc.Inventory, job: sc.Job) -> sc.Inventory:
    ids = sc.estimate_all(county, job).to_pandas()["structure_id"]
    return county.select(list(ids)[:12])


@pytest.fixture(scope="module")
def plan(dozen: sc.Inventory, job: sc.Job) -> sc.OutingPlan:
    return sc.outings(dozen, job, within="15 mi", first="2027-04-05", week_limit="40 h")


def test_every_structure_is_in_one_outing(dozen: sc.Inventory, plan: sc.OutingPlan) -> None:
    served = plan.outings["structures"].explode()
    assert sorted(served) == sorted(dozen.to_pandas()["structure_id"])
    assert len(plan.outings) < 12
    assert plan.price < plan.price_alone
    assert plan.cost.drop("visits").to_dict() == pytest.approx(
        plan.outings[["labour", "overtime", "show_up", "equipment"]].sum().to_dict()
    )


def test_segments_fill_the_paid_hours(plan: sc.OutingPlan) -> None:
    segments = plan.segments.assign(hours=lambda t: t["end_h"] - t["start_h"])
    key = ["outing", "stage", "shift"]
    filled = segments.groupby([*key, "party"])["hours"].sum().groupby(key).max()
    paid = plan.shifts.set_index(key)["paid_h"]
    assert filled.sort_index().to_numpy() == pytest.approx(paid.sort_index().to_numpy())


def test_shifts_are_days_of_work_and_the_fifth_is_overtime(plan: sc.OutingPlan) -> None:
    days = plan.shifts["date"]
    assert days.is_monotonic_increasing
    assert days.is_unique
    assert (days.dt.day_of_week < 5).all()
    assert days.iloc[0] == pd.Timestamp("2027-04-05")
    fridays = plan.shifts[days.dt.day_of_week == 4]
    assert fridays["overtime_h"].to_list() == pytest.approx([10.0] * len(fridays))
    assert plan.shifts["overtime_h"].sum() == pytest.approx(10.0 * len(fridays))


def test_groups_and_one_closure(dozen: sc.Inventory, job: sc.Job) -> None:
    twins = {"twins": ["TC-0001", "TC-0002"]}
    apart = sc.outings(dozen, job, groups=twins)
    together = sc.outings(dozen, job, groups=twins, one_closure=["twins"])
    assert together.outings["structures"].iloc[0] == ["TC-0001", "TC-0002"]
    spent = [p.segments.query("outing == 'twins' and spent == 'set_up'") for p in (apart, together)]
    assert len(spent[1]) <= len(spent[0])
    with pytest.raises(sc.UnknownNameError, match="TC-0001"):
        sc.outings(dozen, job, groups={"north": ["TC-001"]})
    with pytest.raises(sc.InputError, match="one group"):
        sc.outings(dozen, job, groups={"a": ["TC-0001"], "b": ["TC-0001"]})


def test_show_up_pay_is_expected_cost(dozen: sc.Inventory, job: sc.Job) -> None:
    plan = sc.outings(dozen, job, cancelled=0.1, show_up="4 h")
    assert plan.cost["show_up"] == pytest.approx(plan.cost["labour"] * 0.1 * 4 / 10)
    with pytest.raises(sc.InputError):
        sc.outings(dozen, job, cancelled=-0.1)
    with pytest.raises(sc.InputError):
        sc.outings(dozen, job, within=5)  # type: ignore[arg-type]


def test_shifts_of_one_structure_are_those_it_is_priced_with(
    county: sc.Inventory, job: sc.Job
) -> None:
    estimate = sc.estimate(county["TC-0003"], job.replace(sharing="own_shifts"))
    table = estimate.shift_plan.assign(hours=lambda t: t["end_h"] - t["start_h"])
    assert table["shift"].max() == estimate.shifts
    assert table["hours"].sum() == pytest.approx(estimate.paid_hours.to("h").magnitude)
    on_site = table[table["spent"].isin(["set_up", "work", "removal"])]["hours"].sum()
    assert on_site == pytest.approx(estimate.on_site_hours.to("h").magnitude)


def test_pictures_are_to_scale(county: sc.Inventory, job: sc.Job, plan: sc.OutingPlan) -> None:
    estimate = sc.estimate(county["TC-0003"], job)
    ax = estimate.plot_shifts()
    widths = sum(bar.get_width() for bar in ax.patches)  # type: ignore[attr-defined]
    table = estimate.shift_plan
    assert widths == pytest.approx((table["end_h"] - table["start_h"]).sum())
    week = plan.plot()
    assert len(week.get_yticklabels()) >= 5
    assert "Mon 05 Apr" in week.get_yticklabels()[0].get_text()
    with pytest.raises(sc.InputError):
        plan.plot(first=1000)


def test_a_year_is_the_sum_of_its_rounds(county: sc.Inventory, job: sc.Job) -> None:
    once = sc.year(county, job)
    assert once.total == pytest.approx(sc.estimate_all(county, job).total, rel=1e-9)
    often = sc.year(county, job, {"drain": 2, "sidewalk": 1 / 3})
    rounds = often.rounds
    assert rounds["visits_a_year"].sum() == pytest.approx(2.0)
    assert often.total == pytest.approx((rounds["visits_a_year"] * rounds["cost_of_a_visit"]).sum())
    assert often.table["cost_total_usd"].sum() == pytest.approx(often.total)
    assert "a year" in repr(often)
    with pytest.raises(sc.UnknownNameError, match="drain"):
        sc.year(county, job, {"drian": 2})


def test_a_season_says_whether_the_crews_are_enough(county: sc.Inventory, job: sc.Job) -> None:
    year = sc.year(county, job)
    one = year.load("2027-04-01", datetime.date(2027, 10, 31))
    assert one["days"] == 152  # Monday to Friday, no holidays
    assert one["share"] == pytest.approx(one["hours_needed"] / one["hours_there"])
    assert year.load("2027-04-01", "2027-10-31", crews=2)["share"] == pytest.approx(
        one["share"] / 2
    )
    with pytest.raises(sc.InputError):
        year.load("2027-10-31", "2027-04-01")


def test_the_command_writes_a_row_a_shift(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "shifts.csv"
    words = ["outings", str(sc.demo_records()), "--select", "TC-0009,TC-0010", "--out", str(out)]
    assert main([*words, "--within", "15 mi", "--first", "2027-04-05"]) == 0
    table = pd.read_csv(out)
    assert table["structures"].to_list() == ["TC-0009; TC-0010"]
    assert table["date"].to_list() == ["2027-04-05"]
    assert "outings" in capsys.readouterr().out
    assert main([*words, "--within", "five"]) == 2


def test_phases_overlap_and_are_washed_once() -> None:
    washed = sc.work.washed_widths("56 ft", ["34 ft", "34 ft"])
    assert [w.to("ft").magnitude for w in washed] == pytest.approx([34.0, 22.0])
    with pytest.raises(sc.InputError):
        sc.work.washed_widths("56 ft", ["20 ft", "20 ft"])


def test_days_are_short_in_winter() -> None:
    # 9 h 20 min at 40 degrees north, as almanacs print it (from memory).
    assert sc.work.day_length("40 deg", "2027-12-21").to("h").magnitude == pytest.approx(
        9 + 20 / 60, abs=0.1
    )
    with pytest.raises(sc.InputError):
        sc.work.day_length("91 deg", "2027-12-21")
