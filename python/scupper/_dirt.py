"""How much dirt lies there, how it lies, and what it weighs."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Arguments, Units, answer, described_by, plain, result
from scupper._frames import with_units
from scupper.errors import UnknownNameError

if TYPE_CHECKING:
    import numpy as np
    import pandas as pd

    from scupper._arguments import FloatArray
    from scupper.units import Quantity


@described_by(_core.strip_volume)
def strip_volume(length: Any, width: Any, depth: Any, *, units: Units = None) -> Quantity:
    """In m³."""
    given = {"length": (length, "m"), "width": (width, "m"), "depth": (depth, "m")}
    return answer(_core.strip_volume, "m3", units, **given)


@described_by(_core.strip_mass)
def strip_mass(length: Any, line_mass: Any, *, units: Units = None) -> Quantity:
    """`line_mass` as ``"4,788 lb/mi"``; in kg."""
    given = {"length": (length, "m"), "line_mass": (line_mass, "kg/m")}
    return answer(_core.strip_mass, "kg", units, **given)


@described_by(_core.build_up_depth)
def build_up_depth(line_mass: Any, width: Any, density: Any, *, units: Units = None) -> Quantity:
    """In m."""
    given = {"line_mass": (line_mass, "kg/m"), "width": (width, "m"), "density": (density, "kg/m3")}
    return answer(_core.build_up_depth, "m", units, **given)


@described_by(_core.drain_volume)
def drain_volume(drains: Any, volume_each: Any, *, units: Units = None) -> Quantity:
    """`volume_each` as ``"1.5 ft3/each"``; in m³."""
    given = {"drains": (drains, "1"), "volume_each": (volume_each, "m3/each")}
    return answer(_core.drain_volume, "m3", units, **given)


@described_by(_core.box_volume)
def box_volume(length: Any, width: Any, depth: Any, *, units: Units = None) -> Quantity:
    """In m³."""
    given = {"length": (length, "m"), "width": (width, "m"), "depth": (depth, "m")}
    return answer(_core.box_volume, "m3", units, **given)


@described_by(_core.round_pit_volume)
def round_pit_volume(diameter: Any, depth: Any, *, units: Units = None) -> Quantity:
    """In m³."""
    given = {"diameter": (diameter, "m"), "depth": (depth, "m")}
    return answer(_core.round_pit_volume, "m3", units, **given)


@described_by(_core.loose_volume)
def loose_volume(volume: Any, swell: Any, *, units: Units = None) -> Quantity:
    """A swell of 30 % is 0.3; in m³."""
    given = {"volume": (volume, "m3"), "swell": (swell, "1")}
    return answer(_core.loose_volume, "m3", units, **given)


@described_by(_core.load_factor)
def load_factor(swell: Any, *, units: Units = None) -> float | FloatArray:
    """A swell of 30 % is 0.3."""
    return plain(_core.load_factor, units, swell=(swell, "1"))


@described_by(_core.swell_voids)
def swell_voids(swell: Any, *, units: Units = None) -> float | FloatArray:
    """A swell of 30 % is 0.3."""
    return plain(_core.swell_voids, units, swell=(swell, "1"))


@described_by(_core.wet_density)
def wet_density(dry: Any, gain: Any, *, units: Units = None) -> Quantity:
    """A gain of 30 % is 0.3; in kg/m³."""
    given = {"dry": (dry, "kg/m3"), "gain": (gain, "1")}
    return answer(_core.wet_density, "kg/m3", units, **given)


@dataclass(frozen=True)
class Windrow:
    """A windrow, and what it leaves of the shoulder.

    Attributes
    ----------
    section : pint.Quantity
        Area of its cross-section.
    width, height : pint.Quantity
        On the deck, and at its top.
    clear : pint.Quantity
        What is left of the shoulder; below 0 the windrow reaches into the lane.
    blocks : bool or numpy.ndarray
        True where nothing of the shoulder is left.
    """

    section: Quantity
    width: Quantity
    height: Quantity
    clear: Quantity
    blocks: bool | np.ndarray[Any, Any]


@described_by(_core.windrow)
def windrow(
    volume: Any,
    length: Any,
    repose: Any,
    *,
    shoulder: Any = "0 ft",
    against: str = "parapet",
    units: Units = None,
) -> Windrow:
    """`against` is ``"parapet"`` or, in the open, ``"nothing"``; `shoulder` its width."""
    if against not in ("parapet", "nothing"):
        raise UnknownNameError("debris.against", "against", f'"{against}"', "parapet or nothing")
    given = Arguments(units)
    for name, value, like in (
        ("volume", volume, "m3"),
        ("length", length, "m"),
        ("repose", repose, "rad"),
        ("shoulder", shoulder, "m"),
    ):
        given.add(name, value, like)
    heap, run, slope, room = given.shaped()
    section, width, height = _core.windrow(heap, run, slope, against == "parapet")
    blocks = _core.blocks_shoulder(room, width) != 0
    return Windrow(
        result(section, "m2"),
        result(width, "m"),
        result(height, "m"),
        result(_core.clear_shoulder(room, width), "m"),
        blocks if blocks.ndim else bool(blocks),
    )


def densities(units: str = "us") -> pd.DataFrame:
    """Bulk densities by material and moisture, and how steep a heap of each lies.

    Parameters
    ----------
    units
        ``"us"``, ``"metric"`` or ``"si"``; the unit stands in the column name.

    Returns
    -------
    pandas.DataFrame
        material, moisture; density and repose (angle), each likely, ``_low``, ``_high``,
        ``_source`` and ``_date``; note. NaN: not known.
    """
    return with_units(_core.dirt_densities(units))


def published_densities(units: str = "us") -> pd.DataFrame:
    """Every bulk density as printed.

    Parameters
    ----------
    units
        ``"us"``, ``"metric"`` or ``"si"``; the unit stands in the column name.

    Returns
    -------
    pandas.DataFrame
        material, moisture, density, source, date, basis (seen, computed, memory), note.
    """
    return with_units(_core.published_densities(units))


def build_ups(units: str = "us") -> pd.DataFrame:
    """How much dirt lies there by how long since the last cleaning: a job's ``build_up``.

    Parameters
    ----------
    units
        ``"us"``, ``"metric"`` or ``"si"``.

    Returns
    -------
    pandas.DataFrame
        since, key of the job's inputs, low, likely, high, unit, source, date, note.
    """
    return with_units(_core.build_ups(units))


def street_loads(units: str = "us") -> pd.DataFrame:
    """Street dirt by length of curb, as it was measured.

    Parameters
    ----------
    units
        ``"us"``, ``"metric"`` or ``"si"``; the unit stands in the column name.

    Returns
    -------
    pandas.DataFrame
        street, line_mass, source, date, basis, note.
    """
    return with_units(_core.street_loads(units))
