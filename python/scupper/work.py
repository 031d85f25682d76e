"""Work on site: phases of a roadway, hours of daylight."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from scupper import _core
from scupper._arguments import Arguments
from scupper.scheduling import Day, _iso
from scupper.units import in_pint

if TYPE_CHECKING:
    from scupper.units import Quantity


def _si(name: str, value: str | Quantity, unit: str) -> float:
    given = Arguments()
    given.add(name, value, unit)
    return float(given.shaped()[0])


def washed_widths(roadway: str | Quantity, open_widths: Sequence[str | Quantity]) -> list[Quantity]:
    """How much of a roadway is washed in each phase; where phases overlap it is washed once.

    Parameters
    ----------
    roadway
        Width from curb to curb.
    open_widths
        Width closed to traffic in each phase, from one side and then the other.

    Returns
    -------
    list of pint quantities
        By phase, in metres; they add up to the roadway.

    Raises
    ------
    InputError
        Where a width is negative or the phases leave a strip unwashed.
    """
    widths = [_si(f"open_widths[{i}]", w, "m") for i, w in enumerate(open_widths)]
    return [in_pint(w, "m") for w in _core.washed_widths(_si("roadway", roadway, "m"), widths)]


def day_length(latitude: str | Quantity, day: Day) -> Quantity:
    """How long the sun is above a level horizon on a day, as a pint quantity in seconds.

    Parameters
    ----------
    latitude
        North positive, as ``"41.5 deg"``.
    day
        A date, or text as ``"2027-12-21"``.

    Raises
    ------
    InputError
        Beyond the poles, or where the day is none.
    """
    return in_pint(_core.day_length(_si("latitude", latitude, "rad"), _iso(day)), "s")
