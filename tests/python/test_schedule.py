"""When the work can be done: notices and days."""

import datetime

import pytest

import scupper as sc


def crossing_water(calendar: dict[str, object] | None = None) -> sc.Estimate:
    inventory = sc.read_inventory(sc.demo_records())
    job = sc.Job.demo().replace(calendar=calendar or {})
    return next(
        est
        for est in (sc.estimate(inventory[i], job) for i in range(3))
        if "discharge_permit" in set(est.schedule().notices["notice"])
    )


def test_notices_are_listed_with_their_source_and_no_dates_without_a_day_of_asking() -> None:
    schedule = crossing_water().schedule()
    assert schedule.earliest is None
    assert schedule.work_days == []
    assert schedule.notices["earliest"].isna().all()
    assert (schedule.notices["source"] == "common practice").all()


def test_notices_become_dates_and_cost_nothing() -> None:
    plain, asked = crossing_water(), crossing_water({"asked": "2027-03-01"})
    schedule = asked.schedule()
    usual = max(schedule.notices["days_usual"])
    assert schedule.earliest == datetime.date(2027, 3, 1) + datetime.timedelta(days=int(usual))
    assert len(schedule.work_days) == schedule.shifts
    assert asked.cost.total == plain.cost.total
    assert asked.hours == plain.hours


def test_cold_and_falling_air_are_lost_days() -> None:
    est = crossing_water({"asked": "2027-03-01"})
    first = est.schedule().work_days[0]
    later = first + datetime.timedelta(days=1)
    schedule = est.schedule({first: "39 degF", later.isoformat(): "6 degC"}, falling=[later])
    uses = schedule.days.set_index("date")["use"]
    assert uses[str(first)] == "too_cold"
    assert uses[str(later)] == "falling_air"
    assert first not in schedule.work_days
    with pytest.raises(sc.InputError, match="days whose air is given"):
        est.schedule({first: "39 degF"}, falling=["2027-01-01"])
    with pytest.raises(sc.InputError, match="2027-03-01"):
        est.schedule({"1 March": "39 degF"})


@pytest.mark.parametrize(
    ("calendar", "path"),
    [
        ({"asked": "1 March 2027"}, "job.calendar.asked"),
        ({"weekdays": ["mondy"]}, "job.calendar.weekdays"),
        ({"weekdays": []}, "job.calendar.weekdays"),
        ({"closed": [{"from": "04-01", "to": "02-30"}]}, "job.calendar.closed[0].to"),
        ({"closed": [{"from": "04-01"}]}, "job.calendar.closed[0].to"),
        ({"least_air_temperature": "40"}, "job.calendar.least_air_temperature"),
        ({"start": "2027-03-01"}, "job.calendar"),
    ],
)
def test_a_calendar_that_cannot_be_used_is_refused(calendar: dict[str, object], path: str) -> None:
    with pytest.raises(sc.Error) as refused:
        sc.Job.demo().replace(calendar=calendar)
    assert refused.value.path == path


@pytest.mark.parametrize("days", [-1, 2.5, [90, 60, 120], [1, 2], "90"])
def test_days_of_a_notice_are_whole_and_in_order(days: object) -> None:
    with pytest.raises(sc.InputError, match="whole days"):
        sc.Job.demo().replace(notices=[{"name": "railway", "days": days}])


def test_an_own_notice_takes_the_place_of_the_shipped_one() -> None:
    job = sc.Job.demo().replace(
        notices=[{"name": "lane_closure", "days": 2, "source": "the county's rule"}]
    )
    by_name = {row["name"]: row for row in job.to_dict()["notices"]}
    assert by_name["lane_closure"]["days"] == [2, 2, 2]
    assert by_name["railway"]["days"] == [60, 90, 120]
    assert sc.Job.from_dict(job.to_dict()).to_dict() == job.to_dict()


def test_page_and_card_say_what_to_ask_for() -> None:
    est = crossing_water({"asked": "2027-03-01"})
    for text in (est.page(), est.work_card()):
        assert "discharge permit 0–30–90" in text
        assert str(est.schedule().work_days[-1]) in text
