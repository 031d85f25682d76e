"""What a truck may carry of dirt, by volume and by law, and what it takes to haul it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, NamedTuple

from scupper import _core
from scupper._arguments import Arguments, Units, answer, described_by, result
from scupper.errors import InputError
from scupper.units import in_pint

if TYPE_CHECKING:
    import numpy as np

    from scupper._arguments import FloatArray
    from scupper.units import Quantity

#: Fresh water where nothing else is said.
_WATER = "1,000 kg/m3"


class Bulk(NamedTuple):
    """Dirt by volume and by mass."""

    volume: Quantity
    mass: Quantity


@dataclass(frozen=True)
class TankLoad:
    """What goes into a tank.

    Attributes
    ----------
    volume, mass : pint.Quantity
        One load.
    governed_by : str or numpy.ndarray
        "weight" where the truck is at its legal weight first, else "volume".
    """

    volume: Quantity
    mass: Quantity
    governed_by: str | np.ndarray[Any, Any]


class AxleGroup(NamedTuple):
    """Consecutive axles by their numbers, the front one 1, and what they may weigh together."""

    first: int
    last: int
    limit: Quantity


class LegalGross(NamedTuple):
    """What a truck may weigh, and the groups of axles that allow no more."""

    mass: Quantity
    limits: list[AxleGroup]


@described_by(_core.payload)
def payload(
    gross_limit: Any,
    empty_mass: Any,
    water_aboard: Any = "0 gal",
    water_density: Any = _WATER,
    *,
    units: Units = None,
) -> Quantity:
    """In kg; not above 0 where the truck may carry nothing."""
    return answer(
        _core.payload,
        "kg",
        units,
        gross_limit=(gross_limit, "kg"),
        empty_mass=(empty_mass, "kg"),
        water_aboard=(water_aboard, "m3"),
        water_density=(water_density, "kg/m3"),
    )


@described_by(_core.tank_fill)
def tank_fill(room: Any, payload: Any, density: Any, *, units: Units = None) -> TankLoad:
    """`room` of the tank, `payload` as `payload` gives it."""
    import numpy as np

    given = _arguments(
        units, room=(room, "m3"), payload=(payload, "kg"), density=(density, "kg/m3")
    )
    arrays = given.shaped()
    volume, mass = _core.tank_fill(*arrays)
    words = np.where(_core.weight_governs(*arrays) != 0, "weight", "volume")
    return TankLoad(result(volume, "m3"), result(mass, "kg"), words if words.ndim else words.item())


@described_by(_core.balanced_density)
def balanced_density(room: Any, payload: Any, *, units: Units = None) -> Quantity:
    """In kg/m³."""
    return answer(
        _core.balanced_density, "kg/m3", units, room=(room, "m3"), payload=(payload, "kg")
    )


@described_by(_core.decanted)
def decanted(
    volume: Any, mass: Any, free_share: Any, water_density: Any = _WATER, *, units: Units = None
) -> Bulk:
    """`free_share` of the volume, as 0.2."""
    given = _arguments(
        units,
        volume=(volume, "m3"),
        mass=(mass, "kg"),
        free_share=(free_share, "1"),
        water_density=(water_density, "kg/m3"),
    )
    left_volume, left_mass = _core.decanted(*given.shaped())
    return Bulk(result(left_volume, "m3"), result(left_mass, "kg"))


@described_by(_core.truck_loads)
def loads(
    volume: Any,
    mass: Any,
    room: Any,
    payload: Any,
    *,
    shared: bool = False,
    units: Units = None,
) -> float | FloatArray:
    """A plain number of loads."""
    given = _arguments(
        units, volume=(volume, "m3"), mass=(mass, "kg"), room=(room, "m3"), payload=(payload, "kg")
    )
    debris_volume, debris_mass, truck_room, truck_payload = given.shaped()
    number = _core.truck_loads(debris_volume, debris_mass, truck_room, truck_payload, shared)
    return number if number.ndim else float(number)


@described_by(_core.trip_time)
def haul_time(distance: Any, speed: Any, stop: Any = "0 min", *, units: Units = None) -> Quantity:
    """`distance` one way, `stop` to weigh, decant and dump; in second."""
    return answer(
        _core.trip_time,
        "s",
        units,
        distance=(distance, "m"),
        speed=(speed, "m/s"),
        stop=(stop, "s"),
    )


@described_by(_core.bridge_formula)
def bridge_formula(span: Any, axles: Any, *, units: Units = None) -> Quantity:
    """`axles` a whole number; in kg."""
    return answer(_core.bridge_formula, "kg", units, span=(span, "m"), axles=(axles, "1"))


@described_by(_core.axle_group_limit)
def axle_group_limit(span: Any, axles: Any, *, units: Units = None) -> Quantity:
    """`axles` a whole number; in kg."""
    return answer(_core.axle_group_limit, "kg", units, span=(span, "m"), axles=(axles, "1"))


@described_by(_core.legal_gross)
def legal_gross(spacings: Sequence[Any], *, units: Units = None) -> LegalGross:
    """One truck: ``["15 ft", "4.5 ft"]`` has three axles."""
    given = Arguments(units)
    given.add("spacings", spacings, "m")
    (si,) = given.shaped()
    if si.ndim != 1:
        raise InputError("arguments.shape", "spacings", f"an array {si.shape}", "one truck")
    mass, groups = _core.legal_gross(si.tolist())
    limits = [AxleGroup(first, last, in_pint(limit, "kg")) for first, last, limit in groups]
    return LegalGross(in_pint(mass, "kg"), limits)


def _arguments(units: Units, /, **given: tuple[Any, str]) -> Arguments:
    arguments = Arguments(units)
    for name, (value, like) in given.items():
        arguments.add(name, value, like)
    return arguments
