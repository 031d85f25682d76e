"""The structures of a split: costs either way, and the hours each takes of what there is."""

from __future__ import annotations

from collections.abc import Mapping
from math import inf
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import single
from scupper.errors import UnknownNameError

if TYPE_CHECKING:
    from scupper._priced_ways import PricedWays

#: What sizes of contracts are of, and a unit of each.
_SIZES = {"price": "currency", "area": "m2", "structures": "1"}
#: The first resource of every split: paid hours of the crew.
CREW = "crew"


def size_of(name: str, value: Any, size: str) -> float:
    """The size of a contract in SI."""
    return single(name, value, _SIZES.get(size, "1"), None)


def hours_there(
    problem: _core.SplitProblem, hours: Any, equipment: Mapping[str, Any] | None
) -> tuple[float, ...]:
    """Hours there are of every resource of a problem, in SI; infinite where nobody says.

    Parameters
    ----------
    problem
        Its resources are the crew and the kinds of equipment of the in-house job.
    hours
        Of the crew.
    equipment
        By kind, of all pieces together.
    """
    there = dict.fromkeys(problem.resources, inf)
    if hours is not None:
        there[CREW] = single("hours", hours, "s", None)
    for name, value in (equipment or {}).items():
        if name not in there or name == CREW:
            kinds = [kind for kind in there if kind != CREW]
            near = _core.nearest_name(name, kinds)
            raise UnknownNameError("delivery.equipment", "equipment", f'"{name}"',
                                   f'"{near}"?' if near else ", ".join(kinds))  # fmt: skip
        there[name] = single(f"equipment.{name}", value, "s", None)
    return tuple(there.values())


def problem_of(
    ways: PricedWays, on_top: tuple[float, float, float], size: str, by: str | None
) -> tuple[_core.SplitProblem, list[str]]:
    """What has a price one way at least, as a split's structures, and the region of each.

    Parameters
    ----------
    ways
        The list priced both ways.
    on_top
        Administration and inspection over the price, supervision over wages.
    size
        What sizes of contracts are of.
    by
        The field of the record that says the region.
    """
    import numpy as np

    if size not in _SIZES:
        raise UnknownNameError("delivery.size", "size", f'"{size}"', ", ".join(_SIZES))
    rows = ways.either
    regions = _regions(ways, rows, by)
    columns = {name: column[rows] for name, column in ways.columns.items()}
    sizes = {
        "price": np.nan_to_num(columns["price"]),
        "area": np.nan_to_num(columns["areas"]),
        "structures": np.ones(len(rows)),
    }[size]
    hours = {CREW: columns["crew_time"]}
    hours |= {name: column[rows] for name, column in ways.equipment_times.items()}
    times = [(name, np.nan_to_num(column).tolist()) for name, column in hours.items()]
    numbers = list(ways.names(rows)["structure_id"])
    direct, wages, price = (columns[name].tolist() for name in ("direct", "wages", "price"))
    problem = _core.SplitProblem(
        on_top, numbers, regions, direct, wages, price, times, sizes.tolist()
    )
    return problem, regions


def _regions(ways: PricedWays, rows: list[int], by: str | None) -> list[str]:
    if by is None:
        return [""] * len(rows)
    if by not in ("county", "district"):
        raise UnknownNameError("delivery.by", "by", f'"{by}"', '"county", "district"')
    recorded = ways.inventory._core.recorded({by})[by]
    return [str(recorded[i]) for i in rows]
