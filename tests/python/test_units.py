"""The unit table against pint, and arguments with units.

Source of the factors compared with: the definitions file of the library pint.
"""

from __future__ import annotations

import math

import numpy as np
import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

import scupper as sc
from scupper import _core

ROWS = [row for row in _core.unit_table() if row[5]]
OWN = {"inH2O", "ftH2O", "each", "labour-h", "currency"}  # pint has no equal


def test_only_these_units_have_no_equal_in_pint() -> None:
    assert {name for name, *_, pint_name in _core.unit_table() if not pint_name} == OWN


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_every_unit_agrees_with_pint(row: tuple[str, str, str, float, float, str]) -> None:
    name, _, si_unit, _, _, pint_name = row
    ureg = pint.UnitRegistry()
    for number in (1.0, 73.25):
        ours = float(_core.to_si(number, name, si_unit, "test"))
        quantity = ureg.Quantity(number, pint_name)
        absolute = pint_name in ("degC", "degF")
        theirs = quantity.to("kelvin") if absolute else quantity.to_base_units()
        assert ours == pytest.approx(theirs.magnitude, rel=1e-12)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
@given(si=st.floats(min_value=1e-6, max_value=1e9))
def test_there_and_back(row: tuple[str, str, str, float, float, str], si: float) -> None:
    name, _, si_unit, *_ = row
    back = _core.to_si(_core.from_si(si, name), name, si_unit, "test")
    assert float(back) == pytest.approx(si, rel=1e-12, abs=1e-9)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_pint_quantities_come_in_by_factor(row: tuple[str, str, str, float, float, str]) -> None:
    name, _, si_unit, *_ = row
    numbers, unit = sc.units.core_unit(sc.units.in_pint(np.array([1.0, 2.0]), name))
    ours = _core.to_si(numbers, unit, si_unit, "test")
    assert ours == pytest.approx(_core.to_si([1.0, 2.0], name, si_unit, "test"), rel=1e-12)


def test_a_unit_the_core_does_not_know_goes_through_base_units() -> None:
    ureg = sc.units.registry()
    flow = sc.hydraulics.nozzle_flow(ureg.Quantity(0.5, "decimeter"), ureg.Quantity(1, "atm"), 1.0)
    si = sc.hydraulics.nozzle_flow(0.05, 101325.0, 1.0, units="si")
    assert flow.magnitude == pytest.approx(si.magnitude, rel=1e-9)


def test_the_trade_s_units_are_in_the_application_registry() -> None:
    ureg = sc.units.registry()
    assert ureg is sc.units.registry()
    assert ureg.Quantity(1, "gpm").to("L/min").magnitude == pytest.approx(3.785411784, rel=1e-12)
    assert ureg.Quantity(3, "labour_hour").to("hour").magnitude == pytest.approx(3)
    assert ureg.Quantity(1, "short_ton").to("pound").magnitude == pytest.approx(2000)
    assert str(sc.units.in_pint(1.5, "short ton")) == "1.5 us_short_ton"


@pytest.mark.parametrize(
    ("text", "si", "unit"),
    [
        ("12 ft 6 in", 3.81, "meter"),
        ("7/8 in", 0.022225, "meter"),
        ("1,200 gal", 1200 * 231 * 0.0254**3, "meter ** 3"),
        ("59 degF", 288.15, "kelvin"),
        ("2 %", 0.02, "dimensionless"),
    ],
)
def test_texts_become_quantities(text: str, si: float, unit: str) -> None:
    quantity = sc.units.quantity(text)
    assert quantity.magnitude == pytest.approx(si, rel=1e-12)
    assert quantity.units == pint.Unit(unit)


def test_money_is_no_pint_quantity() -> None:
    with pytest.raises(sc.UnitError):
        sc.units.quantity("USD 85/h")


def test_the_table_lists_every_unit() -> None:
    table = sc.units.table()
    assert list(table["name"]) == [row[0] for row in _core.unit_table()]
    assert all(math.isfinite(factor) for factor in table["factor"])
