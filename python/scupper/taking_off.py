"""What there is to wash of every structure, with range and basis."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._core import Structure
from scupper._frames import frame, suffixed, with_units, words
from scupper._progress import Progress, told
from scupper.inventory import Inventory, gathered

if TYPE_CHECKING:
    import pandas as pd


def take_off(
    inventory: Inventory | Iterable[Structure],
    units: str = "si",
    threads: int | None = None,
    progress: Progress = False,
    ranges: bool = True,
) -> pd.DataFrame:
    """Quantities of every component, one row a structure.

    Parameters
    ----------
    inventory
        An inventory, a selection of one, or structures.
    units
        ``"si"`` (m, m2) or ``"us"`` (ft, ft2); the unit stands in the column name.
    threads
        How many; None for as many as the machine has.
    progress
        True for a bar on standard error, or a function of (done, all).
    ranges
        False leaves ``_low`` and ``_high`` out: far faster on a large inventory.

    Returns
    -------
    pandas.DataFrame
        Every quantity is followed by the same name with ``_low`` and ``_high`` (5 % and 95 % of
        draws) and ``_basis``. NaN: no record tells it; ``_low`` and ``_high`` then hold what is
        assumed. ``verdict`` says whether a structure is washed as a bridge.
    """
    inv = gathered(inventory)
    with told(progress, "taking off") as watch:
        core = _core.take_off(inv._core, threads or 0, watch, ranges, units)
    columns: dict[str, Any] = dict(inv._core.recorded({"structure_id", "state"}))
    basis_names = _core.basis_names()
    for i, (slot, unit) in enumerate(_core.take_off_columns(units)):
        name = suffixed(slot, unit)
        columns[name] = core["value"][i]
        for end in ("low", "high") if ranges else ():
            columns[f"{name}_{end}"] = core[end][i]
        columns[f"{name}_basis"] = words(core["basis"][i], basis_names)
    columns["verdict"] = words(core["verdict"], _core.verdict_names())
    return frame(columns)


def rules() -> pd.DataFrame:
    """Every rule by which a dimension, category or quantity follows from a record.

    Returns
    -------
    pandas.DataFrame
        name, field, formula, low, likely, high, basis, when, missing, source.
    """
    return frame(_core.rules())


def sections(units: str = "us") -> pd.DataFrame:
    """Every standard girder section of the shipped library: what its outline shows to dirt.

    A survey or an override names one as ``girder.section``; depth and girth then follow from it.

    Parameters
    ----------
    units
        ``"us"``, ``"metric"`` or ``"si"``; the unit stands in the column name.

    Returns
    -------
    pandas.DataFrame
        name, kind, depth, top and bottom width; perimeter, all round and exposed (without the top
        face); area within the outline (of a box with its void) and as printed, with the basis and
        source of that; source and date of the outline.
    """
    return with_units(_core.girder_sections(units))


def keys() -> pd.DataFrame:
    """Every name that documents, tables and programs may rely on.

    Returns
    -------
    pandas.DataFrame
        section, key, dimension and whether it goes by the quantity that drives its row.
    """
    lines = [line.split("\t") for line in _core.key_listing().splitlines()]
    rows = [(*line, "", "", "")[:4] for line in lines]
    names = ("section", "key", "dimension", "by")
    return frame({name: [row[i] for row in rows] for i, name in enumerate(names)})
