"""Dirt, windrows, tanks and axles over text, pint quantities and arrays; the shipped dirt table."""

from __future__ import annotations

import math

import numpy as np
import pandas as pd
import pytest
from hypothesis import given
from hypothesis import strategies as st

import scupper as sc

d = sc.debris


def test_a_gutter_of_dirt_by_volume_and_by_mass() -> None:
    # Worked by hand: 120 ft of 1.5 ft by a quarter inch are 3.75 ft3, at 95 lb/ft3 356 lb.
    volume = d.strip_volume("120 ft", "1.5 ft", "0.25 in")
    assert volume.to("ft**3").m == pytest.approx(3.75)
    mass = d.strip_mass("400 ft", "4,788 lb/mi")
    assert mass.to("lb").m == pytest.approx(362.727, abs=1e-3)
    depth = d.build_up_depth("4,788 lb/mi", "2 ft", "95 lb/ft3")
    assert 0.05 < depth.to("inch").m < 0.07


def test_arrays_broadcast_and_bare_numbers_need_a_unit() -> None:
    volumes = d.strip_volume([10, 20, 30], 0.5, 0.01, units="si")
    assert volumes.m == pytest.approx([0.05, 0.10, 0.15])
    with pytest.raises(sc.UnitError, match="width"):
        d.strip_volume("10 m", 0.5, "1 cm")
    with pytest.raises(sc.InputError, match="depth"):
        d.strip_volume("10 m", "0.5 m", "-1 cm")


def test_drains_boxes_and_pits() -> None:
    assert d.drain_volume(12, "1.5 ft3/each").to("ft**3").m == pytest.approx(18)
    assert d.box_volume("2 ft", "1.5 ft", "6 in").to("ft**3").m == pytest.approx(1.5)
    assert d.round_pit_volume("2 ft", "1 ft").to("ft**3").m == pytest.approx(math.pi)


@given(st.floats(0.01, 100), st.floats(1, 500), st.floats(5, 60))
def test_a_windrow_holds_its_dirt(volume: float, length: float, repose: float) -> None:
    heap = {"volume": f"{volume} m3", "length": f"{length} m", "repose": f"{repose} deg"}
    for against in ("parapet", "nothing"):
        w = d.windrow(**heap, against=against)
        assert 0.5 * (w.width * w.height).to("m**2").m * length == pytest.approx(volume, rel=1e-9)


def test_a_windrow_blocks_a_narrow_shoulder() -> None:
    w = d.windrow("10 ft3", "100 ft", "34 deg", shoulder=["0.3 ft", "4 ft"])
    assert w.blocks.tolist() == [True, False]
    assert (w.clear.m < 0).tolist() == [True, False]
    with pytest.raises(sc.UnknownNameError, match="parapet"):
        d.windrow("1 m3", "1 m", "30 deg", against="wall")
    with pytest.raises(sc.InputError, match="right angle"):
        d.windrow("1 m3", "1 m", "90 deg")


def test_swell_and_water() -> None:
    assert d.loose_volume("10 yd3", 0.3).to("yd**3").m == pytest.approx(13)
    assert d.load_factor(0.3) == pytest.approx(0.769, abs=5e-4)
    assert d.swell_voids([0.2, 0.3]) == pytest.approx([0.167, 0.231], abs=5e-4)
    assert d.wet_density("2,400 lb/yd3", 0.3).to("lb/yd**3").m == pytest.approx(3120)


def test_a_tank_is_full_by_weight_or_by_volume() -> None:
    payload = d.payload("62,000 lb", "42,000 lb", "600 gal")
    assert payload.to("lb").m == pytest.approx(15000, rel=1e-3)
    load = d.tank_fill("12 yd3", payload, ["119 lb/ft3", "7 lb/ft3"])
    assert load.governed_by.tolist() == ["weight", "volume"]
    assert load.mass.to("lb").m[0] == pytest.approx(payload.to("lb").m)
    assert load.volume.to("yd**3").m[1] == pytest.approx(12)
    assert d.balanced_density("12 yd3", payload).to("lb/ft**3").m == pytest.approx(46.3, rel=1e-2)
    assert d.loads("20 yd3", "14,250 lb", "12 yd3", payload) == 2
    assert d.loads("6 yd3", "1,000 lb", "12 yd3", payload, shared=True) == pytest.approx(0.5)
    with pytest.raises(sc.InputError, match="payload"):
        d.loads("1 yd3", "1,000 lb", "12 yd3", "0 lb")


def test_decanting_and_the_way_to_the_dump() -> None:
    left = d.decanted("10 yd3", "20,000 lb", 0.2)
    assert left.volume.to("yd**3").m == pytest.approx(8)
    assert left.mass.to("lb").m == pytest.approx(20000 - 3370, abs=3)
    assert d.haul_time("12 mi", "30 mph", "30 min").to("h").m == pytest.approx(1.3)


def test_what_a_truck_may_weigh_by_its_axles() -> None:
    # 23 CFR 658.17: a single axle and a tandem of 20 ft are 51,000 lb; 51 ft and five axles 80,000.
    truck = d.legal_gross(["15.7 ft", "4.3 ft"])
    assert truck.mass.to("lb").m == pytest.approx(51000)
    assert [(g.first, g.last) for g in truck.limits] == [(1, 3)]
    tractor = d.legal_gross(["12 ft", "4 ft", "31 ft", "4 ft"])
    assert tractor.mass.to("lb").m == pytest.approx(80000)
    limits = d.axle_group_limit(["0 ft", "4 ft", "9 ft"], [1, 2, 3]).to("lb").m
    assert limits == pytest.approx([20000, 34000, 42500])
    assert d.bridge_formula("36 ft", 4).to("lb").m == pytest.approx(66000)
    with pytest.raises(sc.InputError, match="axles"):
        d.bridge_formula("36 ft", 2.5)
    with pytest.raises(sc.InputError, match="one truck"):
        d.legal_gross([["4 ft"], ["5 ft"]])


def test_densities_are_a_table_with_units_and_sources() -> None:
    table = d.densities().set_index(["material", "moisture"])
    wet, leaves = table.loc[("sand", "wet")], table.loc[("leaves", "unstated")]
    assert wet["density_lb_per_ft3"] == pytest.approx(119)
    assert wet["density_low_lb_per_ft3"] <= 119 <= wet["density_high_lb_per_ft3"]
    assert wet["density_lb_per_ft3"] / leaves["density_lb_per_ft3"] > 14
    assert (table["density_source"] != "").all()
    si = d.densities("si")["density_kg_per_m3"].to_numpy()
    assert si == pytest.approx(table["density_lb_per_ft3"].to_numpy() * 16.01846, rel=1e-6)
    published = d.published_densities("si")
    assert set(published["basis"]) == {"seen", "computed", "memory"}
    assert (d.street_loads("si")["source"] != "").all()


def depth_of(job: sc.Job) -> float:
    table: pd.DataFrame = job.keys().set_index("key")
    return float(table.loc["dirt[gutter].depth", "likely"])


def test_a_job_says_how_long_since_the_last_cleaning() -> None:
    table = d.build_ups().set_index(["since", "key"])
    job = sc.Job.demo()
    for since in ("washed_last_year", "some_years", "neglected"):
        changed = job.replace(build_up=since)
        row = table.loc[(since, "dirt[gutter].depth")]
        assert depth_of(changed) == pytest.approx(row["likely"])
        assert row["unit"] == "in"
    own = job.replace({"dirt[gutter].depth": "3 in"}).replace(build_up="neglected")
    assert depth_of(own) == pytest.approx(3)
    assert depth_of(job.replace(build_up="neglected").replace(build_up="washed_last_year")) == (
        pytest.approx(depth_of(job))
    )
    with pytest.raises(sc.UnknownNameError, match="neglected"):
        job.replace(build_up="neglectd")


def test_a_neglected_bridge_has_more_dirt(county: sc.Inventory) -> None:
    masses = [
        sc.estimate(county[0], sc.Job.demo().replace(build_up=since)).debris.to("kg").m
        for since in ("washed_last_year", "some_years", "neglected")
    ]
    assert np.all(np.diff(masses) > 0)
