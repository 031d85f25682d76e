"""Suction head over text and arrays, against the formula written with numpy."""

from __future__ import annotations

import numpy as np
import pytest

import scupper as sc

h = sc.hydraulics


def test_the_atmosphere_of_1976() -> None:
    # U.S. Standard Atmosphere, 1976, table I (geopotential altitude)
    pressures = h.standard_atmosphere(np.array([0.0, 2000.0, 5000.0]), units={"altitude": "m"})
    assert pressures.magnitude == pytest.approx([101325.0, 79495.2, 54019.9], rel=1e-5)


def test_suction_head_by_altitude_and_temperature() -> None:
    left = h.npsh_available("10 ft", altitude=["0 ft", "5,000 ft"], temperature="80 degF")
    # 0.507 psi: vapour pressure at 80 degF, steam tables (from memory)
    water = 62.22 * 0.45359237 / 0.3048**3 * 9.80665
    air = h.standard_atmosphere(["0 ft", "5,000 ft"]).magnitude
    expected = (air - 0.507 * 6894.757) / water - 10 * 0.3048
    assert left.magnitude == pytest.approx(expected, rel=1e-3)
    with pytest.raises(sc.InputError):
        h.npsh_available("10 ft", altitude="50,000 ft")
    with pytest.raises(sc.InputError):
        h.npsh_available("10 ft", suction_loss="-1 ft")
