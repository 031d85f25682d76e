"""Water at 0 to 50 degC against IAPWS-95 and its viscosity, by the iapws library."""

from __future__ import annotations

import numpy as np
import pytest
from iapws import IAPWS95

import scupper as sc

h = sc.hydraulics
#: From just above the triple point: at 0 degC and 0.1 MPa water is liquid as well.
CELSIUS = np.arange(0.0, 51.0, 2.5)
UNITS = {"temperature": "degC"}


@pytest.mark.parametrize(
    ("function", "of_state"),
    [
        (h.water_density, lambda state: state.rho),
        (h.water_viscosity, lambda state: state.mu),
        (h.water_kinematic_viscosity, lambda state: state.nu),
    ],
)
def test_liquid_water_within_five_in_ten_thousand(function, of_state) -> None:  # type: ignore[no-untyped-def]
    states = [IAPWS95(T=273.15 + t, P=0.101325) for t in CELSIUS]
    theirs = np.array([of_state(state) for state in states])
    np.testing.assert_allclose(function(CELSIUS, units=UNITS).magnitude, theirs, rtol=5e-4)


def test_vapour_pressure_within_five_in_ten_thousand() -> None:
    warm = CELSIUS[1:]  # 0 degC lies below the triple point
    theirs = np.array([IAPWS95(T=273.15 + t, x=0).P * 1e6 for t in warm])
    ours = h.water_vapour_pressure(warm, units=UNITS).magnitude
    np.testing.assert_allclose(ours, theirs, rtol=5e-4)
