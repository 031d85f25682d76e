"""Vacuum hoses over text and arrays, against the fluids library and what holds for every lay."""

from __future__ import annotations

import fluids
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import scupper as sc

h = sc.hydraulics
LAY = {"blower_flow": "3,500 ft3/min", "relief_vacuum": "16 inHg", "bore": "8 in"}


@given(st.floats(1e-4, 0.05), st.floats(800, 8000))
def test_falling_grains_agree_with_fluids(size: float, density: float) -> None:
    theirs = fluids.v_terminal(D=size, rhop=density, rho=1.2, mu=1.8e-5, Method="Haider_Levenspiel")
    ours = h.terminal_velocity(size, density, 1.2, 1.8e-5, units="si")
    assert ours.to("m/s").magnitude == pytest.approx(theirs, rel=1e-5)


@given(st.floats(0.01, 10), st.floats(5e-5, 2e-3), st.floats(0.05, 0.3))
def test_saltation_agrees_with_fluids(rate: float, size: float, bore: float) -> None:
    theirs = fluids.saltation.Rizk(mp=rate, dp=size, rhog=1.2, D=bore)
    ours = h.saltation_velocity(rate, size, 1.2, bore, units="si")
    assert ours.to("m/s").magnitude == pytest.approx(theirs, rel=2e-3)  # its g is 9.80665 too


def test_air_is_that_of_the_standard_atmosphere() -> None:
    altitudes = np.array([0.0, 1000.0, 3000.0])
    for altitude in altitudes:
        air = fluids.ATMOSPHERE_1976(altitude)
        assert h.air_density(air.P, air.T, units="si").m == pytest.approx(air.rho, rel=1e-6)
        assert h.air_viscosity(air.T, units="si").m == pytest.approx(air.mu, rel=1e-6)


def test_longer_hose_draws_less_air_and_the_relief_valve_opens() -> None:
    lengths = [f"{feet} ft" for feet in (20, 100, 400, 1600)]
    air = h.vacuum_air_flow(**LAY, length=lengths)
    assert (np.diff(air.free_flow.m) < 0).all()
    assert (np.diff(air.vacuum.m) >= 0).all()
    assert air.vacuum.to("inHg").m.max() <= 16 + 1e-9
    narrow = h.vacuum_air_flow(**(LAY | {"bore": "3 in"}), length="400 ft")
    assert narrow.relief_open is True
    assert narrow.vacuum.to("inHg").m == pytest.approx(16)


def test_sand_comes_and_stones_do_not() -> None:
    found = h.vacuum_pick_up(
        **LAY,
        length="60 ft",
        lift="15 ft",
        size=["0.5 mm", "2 mm", "80 mm"],
        rate="1 kg/s",
        transport_least="23 m/s",
    )
    assert found.feasible.tolist() == [True, True, False]
    assert found.hinders.tolist() == ["nothing", "nothing", "pick_up"]
    assert found.margin[0] > found.margin[1] > 1 > found.margin[2]
    assert found.water_lift.to("ft").m == pytest.approx([18.13] * 3, rel=1e-3)
    one = h.vacuum_pick_up(**LAY, length="60 ft", size="1 mm", rate="1 kg/s")
    assert one.feasible is True
    assert one.hinders == "nothing"
    assert one.air.end_velocity.check("[speed]")


def test_the_least_speeds_are_a_table() -> None:
    table = h.transport_velocities().set_index("dust")
    # ACGIH Industrial Ventilation (2009), from a student's table: heavy or moist 23 m/s and up
    assert table.loc["heavy_or_moist", "low_m_per_s"] == 23
    assert (table["low_m_per_s"] <= table["high_m_per_s"]).all()
    assert (table["source"] != "").all()


@pytest.mark.parametrize(
    ("name", "value"),
    [("bore", "0 in"), ("relief_vacuum", "2 atm"), ("length", "-1 ft"), ("blower_flow", "0 m3/s"),
     ("roughness", "1 in"), ("air_temperature", "0 K")],
)  # fmt: skip
def test_what_cannot_be_is_refused(name: str, value: str) -> None:
    with pytest.raises(sc.InputError):
        h.vacuum_air_flow(**(LAY | {"length": "60 ft"} | {name: value}))
