"""Hydraulics over text, pint and arrays, against the formulas written with numpy."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import scupper as sc

h = sc.hydraulics
INCH, FOOT, PSI, GALLON = 0.0254, 0.3048, 6894.757293168361, 231 * 0.0254**3
GPM = GALLON / 60
RHO = 999.0  # kg/m3, round on purpose


def test_water_at_fifteen_degrees() -> None:
    # IAPWS-95 (release R6-95), 0.101325 MPa: 999.10 kg/m3
    assert h.water_density("15 degC").magnitude == pytest.approx(999.10, rel=1e-5)
    viscosity = h.water_viscosity(np.array([0.0, 20.0]), units={"temperature": "degC"})
    # IAPWS SR6-08 (2011), table 3 and NIST: 1.79 and 1.00 mPa s
    assert viscosity.to("mPa s").magnitude == pytest.approx([1.79, 1.00], rel=2e-3)


def test_nozzle_flow_is_torricelli() -> None:
    bores, pressures = np.array([0.25, 0.5, 1.0]), np.array([[40.0], [80.0]])
    units = {"bore": "in", "pressure": "psi", "density": "kg/m3"}
    ours = h.nozzle_flow(bores, pressures, 0.97, density=RHO, units=units)
    area = np.pi / 4 * (bores * INCH) ** 2
    theirs = 0.97 * area * np.sqrt(2 * pressures * PSI / RHO)
    assert ours.shape == (2, 3)
    assert ours.to("m**3/s").magnitude == pytest.approx(theirs, rel=1e-6)


def test_the_constant_of_the_trade() -> None:
    """29.84 d^2 sqrt(p) with water of 62.4 lb/ft3: common practice, as in tip tables."""
    flow = h.nozzle_flow("1 in", "1 psi", 1.0, density="62.4 lb/ft3").to("gpm")
    assert flow.magnitude == pytest.approx(29.84, abs=0.01)


def test_pressure_undoes_flow() -> None:
    flow = h.nozzle_flow("0.5 in", "80 psi", 0.97)
    assert h.nozzle_pressure("0.5 in", flow, 0.97).to("psi").magnitude == pytest.approx(80)


def test_rated_nozzle_follows_the_root() -> None:
    flow = h.rated_nozzle_flow("4 gpm", "4,000 psi", ["1,000 psi", "4,000 psi"])
    assert flow.to("gpm").magnitude == pytest.approx([2.0, 4.0])


def test_reaction_is_momentum() -> None:
    q, p = 60 * GPM, 80 * PSI
    ours = h.nozzle_reaction("60 gpm", "80 psi", density="999 kg/m3").to("newton").magnitude
    assert ours == pytest.approx(RHO * q * np.sqrt(2 * p / RHO), rel=1e-9)


def test_friction_loss_is_darcy_weisbach() -> None:
    q, d, k = 60 * GPM, 1.5 * INCH, 5e-6
    rho = h.water_density("15 degC").magnitude
    loss = h.friction_loss("60 gpm", "1.5 in", "150 ft", roughness="5 um")
    v = q / (np.pi / 4 * d**2)
    nu = h.water_viscosity("15 degC").magnitude / rho
    f = h.friction_factor(v * d / nu, k / d)
    assert loss.magnitude == pytest.approx(f * 150 * FOOT / d * rho * v**2 / 2, rel=1e-9)


def test_hazen_williams_in_si_form() -> None:
    q, d = 0.02, 0.1
    loss = h.friction_loss(
        q, d, 100.0, "hazen-williams", c=140, units={"flow": "m3/s", "bore": "m", "length": "m"}
    )
    head = 10.67 * 100.0 * (q / 140) ** 1.852 / d**4.8704
    rho = h.water_density("15 degC").magnitude
    assert loss.magnitude == pytest.approx(rho * 9.80665 * head, rel=1e-9)


def test_hose_coefficient() -> None:
    loss = h.friction_loss("200 gpm", "2.5 in", "100 ft", "hose-coefficient", coefficient=2.0)
    assert loss.to("psi").magnitude == pytest.approx(8.0)


@pytest.mark.parametrize(
    ("arguments", "id"),
    [
        ({"method": "darcy"}, "hydraulics.method"),
        ({}, "hydraulics.roughness"),
        ({"method": "hazen-williams"}, "hydraulics.c"),
        ({"method": "hazen-williams", "c": 140, "form": "us"}, "hydraulics.form"),
        ({"method": "hose-coefficient"}, "hydraulics.coefficient"),
    ],
)
def test_what_a_method_lacks_is_said(arguments: dict[str, object], id: str) -> None:
    with pytest.raises(sc.InputError) as caught:
        h.friction_loss("60 gpm", "1.5 in", "150 ft", **arguments)  # type: ignore[arg-type]
    assert caught.value.id == id


@pytest.mark.parametrize("bare", [0.5, 1, np.float64(0.5), np.array([0.5, 1.0]), [0.5, 1.0]])
def test_a_bare_number_is_refused_with_an_example(bare: object) -> None:
    with pytest.raises(sc.InputError) as caught:
        h.nozzle_flow(bare, "80 psi", 0.97)
    assert caught.value.path == "bore"
    assert "a length" in caught.value.allowed or "unit" in caught.value.allowed


@pytest.mark.parametrize("wrong", ["80 psi", "80", "wet", None, object()])
def test_what_is_no_length_is_refused(wrong: object) -> None:
    with pytest.raises(sc.InputError):
        h.nozzle_flow(wrong, "80 psi", 0.97)


def test_units_by_word_and_shapes_that_do_not_fit() -> None:
    with pytest.raises(sc.UnknownNameError):
        h.nozzle_flow(0.5, 80, 0.97, units="us")
    with pytest.raises(sc.InputError) as caught:
        h.nozzle_flow(np.ones(3), np.ones(2), 0.97, units="si")
    assert caught.value.id == "arguments.shape"


def test_scalars_give_scalars() -> None:
    assert isinstance(h.nozzle_flow("1 in", "80 psi", 1.0).magnitude, float)
    assert isinstance(h.friction_factor(1e5, 1e-4), float)
    assert h.friction_factor(np.array([1e4, 1e5]), 0.0).shape == (2,)


def test_formulas_stand_in_the_docstrings() -> None:
    assert "Q = c (pi / 4) D^2 sqrt(2 p / rho)" in (h.nozzle_flow.__doc__ or "")


pressures = st.floats(min_value=1.0, max_value=4000.0)


@given(low=pressures, high=pressures)
def test_more_pressure_more_flow(low: float, high: float) -> None:
    low, high = sorted((low, high))
    flow = h.nozzle_flow("0.5 in", np.array([low, high]), 0.97, units={"pressure": "psi"})
    assert flow.magnitude[0] <= flow.magnitude[1]


@given(factor=st.floats(min_value=0.1, max_value=10.0))
def test_loss_grows_with_length_in_proportion(factor: float) -> None:
    one = h.friction_loss("60 gpm", "1.5 in", "100 ft", roughness="5 um")
    many = h.friction_loss(
        "60 gpm", "1.5 in", 100.0 * factor, roughness="5 um", units={"length": "ft"}
    )
    assert many.magnitude == pytest.approx(factor * one.magnitude, rel=1e-9)
