"""The shipped hoses and fittings as tables."""

from __future__ import annotations

from typing import TYPE_CHECKING

from scupper import _core
from scupper._frames import with_units

if TYPE_CHECKING:
    import pandas as pd


def hoses(units: str = "us") -> pd.DataFrame:
    """Every hose of the shipped library, by construction and bore.

    Parameters
    ----------
    units
        ``"us"``, ``"metric"`` or ``"si"``; the unit stands in the column name.

    Returns
    -------
    pandas.DataFrame
        name, construction and nominal bore; then bore (true, under pressure), roughness,
        coefficient (psi per 100 ft at (100 gpm)²) and working pressure, each likely, ``_low``,
        ``_high``, ``_source`` and ``_date``. NaN: nobody published one.
    """
    return with_units(_core.hoses(units))


def fittings() -> pd.DataFrame:
    """Every fitting of the shipped library.

    Returns
    -------
    pandas.DataFrame
        name; the loss coefficient K, referred to the bore of the hose it stands in, likely,
        ``_low``, ``_high``, ``_source`` and ``_date``; note.
    """
    return with_units(_core.fittings())


def published_coefficients(units: str = "us") -> pd.DataFrame:
    """Every hose coefficient as printed, or as a table implies it at a flow.

    Parameters
    ----------
    units
        ``"us"``, ``"metric"`` or ``"si"``: of the flow.

    Returns
    -------
    pandas.DataFrame
        hose, coefficient (psi per 100 ft at (100 gpm)²), flow where a table implies it, source,
        date, basis (seen, computed, memory), note.
    """
    return with_units(_core.published_coefficients(units))
