"""Nozzles, bars, jets and coils over text, pint and arrays, against other libraries."""

from __future__ import annotations

import fluids
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import scupper as sc

h = sc.hydraulics


def test_a_bar_is_the_sum_of_its_nozzles() -> None:
    bores = ["1/4 in", "1/4 in", "3/8 in"]
    pressures = np.array([50.0, 75.0, 100.0])
    units = {"pressure": "psi"}
    whole = h.bar_flow(bores, pressures, 0.8, units=units)
    parts = [h.nozzle_flow(bore, pressures, 0.8, units=units) for bore in bores]
    np.testing.assert_allclose(whole.m, sum(part.m for part in parts), rtol=1e-13)
    back = h.bar_pressure(bores, whole, 0.8)
    np.testing.assert_allclose(back.to("psi").m, pressures, rtol=1e-12)
    with pytest.raises(sc.InputError, match="shapes"):
        h.bar_flow(bores, "50 psi", [0.8, 0.9])


@given(st.floats(0, 2), st.floats(0.5, 50))
def test_wear_is_found_from_the_flow(wear: float, millimetres: float) -> None:
    bore = sc.units.quantity(f"{millimetres} mm")
    new = h.nozzle_flow(bore, "100 psi", 0.95)
    worn = h.nozzle_flow(h.worn_bore(bore, wear), "100 psi", 0.95)
    assert h.nozzle_wear(worn, new) == pytest.approx(wear, abs=1e-12)


def test_a_jet_of_a_tip() -> None:
    velocity = h.jet_velocity("3,000 psi", density="1,000 kg/m3")
    assert velocity.to("m/s").m == pytest.approx(np.sqrt(2 * 3000 * 6894.757293168361 / 1000))
    pressure = h.stagnation_pressure(velocity, density="1,000 kg/m3")
    assert pressure.to("psi").m == pytest.approx(3000)
    # 231 in3 a gallon and 33,000 ft lbf/min a horsepower make it exact.
    assert h.hydraulic_power("1,500 psi", "20 gpm").to("hp").m == pytest.approx(17.5)


def test_water_on_the_surface() -> None:
    width = h.fan_width("12 in", ["15 deg", "90 deg"])
    np.testing.assert_allclose(width.to("in").m, [24 * np.tan(np.radians(7.5)), 24.0])
    depth = h.water_by_area("4 gpm", width, "1 ft/s")
    assert depth.check("[volume] / [area]")
    np.testing.assert_allclose(depth.to("gal/ft**2").m, 4 / 60 / width.to("ft").m)


@given(st.floats(200, 1.4e5), st.floats(0.012, 0.15))
def test_coils_agree_with_fluids(reynolds: float, curvature: float) -> None:
    """Schmidt's laminar, critical and turbulent formulas as the fluids library has them."""
    critical = fluids.friction.helical_transition_Re_Schmidt(curvature, 1.0)
    near_step = 18_000 < reynolds < 22_000  # where the greater of two formulas is taken
    if critical <= reynolds < 1.2 * critical or near_step or 2_000 < reynolds < 4_000:
        return
    theirs = fluids.friction.friction_factor_curved(
        reynolds, curvature, 1.0, Rec_method="Schmidt", laminar_method="Schmidt laminar",
        turbulent_method="Schmidt turbulent",
    )  # fmt: skip
    assert h.coil_friction_factor(reynolds, curvature, 0) == pytest.approx(theirs, rel=1e-9)


def test_hose_on_the_reel_costs_more() -> None:
    straight = h.friction_loss("20 gpm", "1 in", "200 ft", roughness="0.005 mm")
    drums = sc.units.registry().Quantity(np.array([12.0, 18.0, 36.0]), "in")
    coiled = h.coil_loss("20 gpm", "1 in", "200 ft", drums, roughness="0.005 mm")
    assert (np.diff(coiled.m) < 0).all()
    assert (coiled.m > straight.m).all()
    with pytest.raises(sc.InputError, match="five bores"):
        h.coil_loss("20 gpm", "1 in", "200 ft", "4 in", roughness="0.005 mm")


def test_the_pieces_of_friction_add_up() -> None:
    loss = h.friction_loss("60 gpm", "1.5 in", "100 ft", roughness="0.005 mm")
    velocity = h.pipe_velocity("60 gpm", "1.5 in")
    factor = h.friction_factor(h.reynolds("60 gpm", "1.5 in"), 0.005 / 38.1)
    assert h.factor_loss(factor, velocity, "1.5 in", "100 ft").m == pytest.approx(loss.m)
    fitting = h.minor_loss("60 gpm", "1.5 in", 2.5)
    assert fitting.m == pytest.approx(2.5 * h.velocity_pressure("60 gpm", "1.5 in").m)
    assert h.head(h.static_pressure("10 ft")).to("ft").m == pytest.approx(10)


def test_pumps_by_their_laws() -> None:
    assert h.affinity_flow("400 gpm", 0.5).to("gpm").m == pytest.approx(200)
    assert h.affinity_head("100 ft", 0.5).to("ft").m == pytest.approx(25)
    assert h.affinity_power("10 hp", 0.5).to("hp").m == pytest.approx(1.25)
    assert h.shaft_power("100 psi", "60 gpm", 0.5).m == pytest.approx(
        2 * h.hydraulic_power("100 psi", "60 gpm").m
    )
    lift = h.greatest_suction_lift(altitude=["0 ft", "5,000 ft"])
    assert lift.m[1] < lift.m[0]
    left = h.npsh_available(lift, altitude=["0 ft", "5,000 ft"])
    np.testing.assert_allclose(left.m, 0, atol=1e-12)


@pytest.mark.parametrize(
    "call",
    [
        lambda: h.worn_bore("1 in", -0.1),
        lambda: h.fan_width("1 ft", "180 deg"),
        lambda: h.jet_force("1 in", "1 m/s", "2 m/s"),
        lambda: h.water_by_area("1 gpm", "0 in", "1 ft/s"),
        lambda: h.minor_loss("1 gpm", "1 in", -1),
        lambda: h.jet_velocity("3,000"),
    ],
)
def test_what_cannot_be_is_refused(call: object) -> None:
    assert callable(call)
    with pytest.raises(sc.InputError):
        call()
