"""What must hold of any price: more help is never later, less room never fewer trips, and units,
resources and operations are only ways to look at the same hours and money."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import scupper as sc

COUNTY = sc.read_inventory(sc.demo_records())
DEMO = sc.Job.demo()
FULL = DEMO.replace(
    service={"deck_top": "rinse", "gutter": "rinse", "drain": "rinse", "girder": "full_clean",
             "bearing": "full_clean", "cap": "full_clean", "joint": "full_clean"}
)  # fmt: skip
ONE_AFTER_THE_OTHER = FULL.replace(
    stages=[{"name": "day", "parties": [
        {"name": "all", "work": ["deck_top", "gutter", "drain", "joint",
                                 "girder", "bearing", "cap"]},
    ]}],
)  # fmt: skip
SIDE_BY_SIDE = FULL.replace(
    stages=[{"name": "day", "parties": [
        {"name": "deck", "work": ["deck_top", "gutter", "drain", "joint"]},
        {"name": "under", "work": ["girder", "bearing", "cap"]},
    ]}],
)  # fmt: skip
#: The same value in two units.
UNITS = {
    "tank.volume": ("3,000 gal", "11,356.235352 L"),
    "haul.distance": ("12 mi", "19.312128 km"),
    "shift.length": ("10 h", "600 min"),
    "pump[hand_line].pressure": ("80 psi", "551.58058345 kPa"),
    "nozzle[hand_line].bore": ("1/2 in", "12.7 mm"),
    "operation[deck_hand_line].time_per_unit": ("10,000 ft2/h", "929.0304 m2/h"),
    "haul.gross_limit": ("62,000 lb", "31 short_ton"),
    "price.disposal": ("80 USD/short_ton", "0.04 USD/lb"),
}


def priced(place: int, job: sc.Job) -> sc.Estimate:
    return sc.estimate(COUNTY[place], job)


def washable() -> list[int]:
    ids = set(sc.estimate_all(COUNTY, DEMO).to_pandas()["structure_id"])
    return [i for i in range(len(COUNTY)) if COUNTY[i].id in ids]


PLACES = st.sampled_from(washable())


@settings(max_examples=25, deadline=None)
@given(PLACES)
def test_a_second_party_is_never_later(place: int) -> None:
    alone = priced(place, ONE_AFTER_THE_OTHER).figure("hours.on_site")
    together = priced(place, SIDE_BY_SIDE).figure("hours.on_site")
    assert together <= alone * (1 + 1e-9)


@settings(max_examples=25, deadline=None)
@given(PLACES, st.integers(1, 3))
def test_another_tanker_is_never_later(place: int, tankers: int) -> None:
    few, more = (
        priced(place, FULL.replace({"refill.tankers": n})).figure("hours.on_site")
        for n in (tankers, tankers + 1)
    )
    assert more <= few * (1 + 1e-9)


@settings(max_examples=25, deadline=None)
@given(PLACES, st.floats(500, 3000), st.floats(0.3, 1.0))
def test_a_smaller_tank_or_truck_never_makes_fewer_trips(
    place: int, gallons: float, share: float
) -> None:
    own = FULL.replace(sharing="own_shifts")
    large = own.replace({"tank.volume": f"{gallons} gal", "haul.volume": "12 yd3"})
    small = own.replace(
        {"tank.volume": f"{gallons * share} gal", "haul.volume": f"{12 * share} yd3"}
    )
    for figure in ("water.refills", "haul.loads"):
        assert priced(place, small).figure(figure) >= priced(place, large).figure(figure)


@settings(max_examples=15, deadline=None)
@given(PLACES, st.sets(st.sampled_from(sorted(UNITS)), min_size=1))
def test_another_unit_is_the_same_price(place: int, keys: set[str]) -> None:
    first, second = (
        priced(place, DEMO.replace({key: UNITS[key][i] for key in sorted(keys)})) for i in (0, 1)
    )
    assert second.cost.total == pytest.approx(first.cost.total, rel=1e-8)
    for figure in ("water.refills", "haul.loads", "shift.count"):
        assert second.figure(figure).magnitude == pytest.approx(first.figure(figure).magnitude)


@settings(max_examples=25, deadline=None)
@given(PLACES, st.sampled_from([DEMO, FULL, SIDE_BY_SIDE, FULL.replace(sharing="own_shifts")]))
def test_hours_and_money_are_the_same_however_looked_at(place: int, job: sc.Job) -> None:
    estimate = priced(place, job)
    hours = estimate.hours_table
    parts = ["productive", "breaks", "waiting", "travel", "briefing", "closure", "meal", "standby"]
    assert list(hours[parts].sum(axis=1)) == pytest.approx(list(hours["paid"]))
    assert list(hours["paid"] + hours["unpaid_meal"]) == pytest.approx(list(hours["elapsed"]))
    labour = float((hours["people"] * hours["paid"]).sum())
    after_shift = float(estimate.figure("haul[truck].labour").to("labour_hour").magnitude)
    assert labour + after_shift == pytest.approx(estimate.hours.to("labour_hour").magnitude)
    for view in ("component", "operation", "resource"):
        assert estimate.cost.by(view).sum() == pytest.approx(estimate.cost.total)
