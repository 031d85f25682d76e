"""Nozzles, bars and jets."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Arguments, Units, answer, described_by, plain, result
from scupper._water import density_of

if TYPE_CHECKING:
    from collections.abc import Callable

    from scupper._arguments import FloatArray
    from scupper.units import Quantity


@described_by(_core.nozzle_flow)
def nozzle_flow(
    bore: Any,
    pressure: Any,
    discharge_coefficient: Any,
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """Water of a temperature unless a density is given."""
    return answer(
        _core.nozzle_flow,
        "m3/s",
        units,
        bore=(bore, "m"),
        pressure=(pressure, "Pa"),
        discharge_coefficient=(discharge_coefficient, "1"),
        density=(density_of(density, temperature), "kg/m3"),
    )


@described_by(_core.nozzle_pressure)
def nozzle_pressure(
    bore: Any,
    flow: Any,
    discharge_coefficient: Any,
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """Water of a temperature unless a density is given."""
    return answer(
        _core.nozzle_pressure,
        "Pa",
        units,
        bore=(bore, "m"),
        flow=(flow, "m3/s"),
        discharge_coefficient=(discharge_coefficient, "1"),
        density=(density_of(density, temperature), "kg/m3"),
    )


@described_by(_core.rated_nozzle_flow)
def rated_nozzle_flow(
    rated_flow: Any, rated_pressure: Any, pressure: Any, *, units: Units = None
) -> Quantity:
    """The liquid is that of the rating."""
    return answer(
        _core.rated_nozzle_flow,
        "m3/s",
        units,
        rated_flow=(rated_flow, "m3/s"),
        rated_pressure=(rated_pressure, "Pa"),
        pressure=(pressure, "Pa"),
    )


@described_by(_core.equivalent_bore)
def equivalent_bore(
    rated_flow: Any,
    rated_pressure: Any,
    discharge_coefficient: Any,
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """Water of a temperature unless a density is given."""
    return answer(
        _core.equivalent_bore,
        "m",
        units,
        rated_flow=(rated_flow, "m3/s"),
        rated_pressure=(rated_pressure, "Pa"),
        discharge_coefficient=(discharge_coefficient, "1"),
        density=(density_of(density, temperature), "kg/m3"),
    )


@described_by(_core.nozzle_reaction)
def nozzle_reaction(
    flow: Any,
    pressure: Any,
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """Water of a temperature unless a density is given."""
    return answer(
        _core.nozzle_reaction,
        "N",
        units,
        flow=(flow, "m3/s"),
        pressure=(pressure, "Pa"),
        density=(density_of(density, temperature), "kg/m3"),
    )


@described_by(_core.smooth_bore_reaction)
def smooth_bore_reaction(
    bore: Any, pressure: Any, discharge_coefficient: Any = 1, *, units: Units = None
) -> Quantity:
    """In newton."""
    return answer(
        _core.smooth_bore_reaction,
        "N",
        units,
        bore=(bore, "m"),
        pressure=(pressure, "Pa"),
        discharge_coefficient=(discharge_coefficient, "1"),
    )


@described_by(_core.bar_flow)
def bar_flow(
    bores: Any,
    pressure: Any,
    discharge_coefficient: Any,
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """`bores` is the list of one bar; the coefficient is one for all or a list; pressures may be
    an array."""
    given = {"pressure": (pressure, "Pa"), "density": (density_of(density, temperature), "kg/m3")}
    return _of_bar(_core.bar_flow, "m3/s", units, bores, discharge_coefficient, given)


@described_by(_core.bar_pressure)
def bar_pressure(
    bores: Any,
    flow: Any,
    discharge_coefficient: Any,
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """As for `bar_flow`; flows may be an array."""
    given = {"flow": (flow, "m3/s"), "density": (density_of(density, temperature), "kg/m3")}
    return _of_bar(_core.bar_pressure, "Pa", units, bores, discharge_coefficient, given)


def _of_bar(
    core: Callable[..., FloatArray],
    unit: str,
    units: Units,
    bores: Any,
    coefficient: Any,
    given: dict[str, tuple[Any, str]],
) -> Quantity:
    bar, rest = Arguments(units), Arguments(units)
    bar.add("bores", bores, "m")
    bar.add("discharge_coefficient", coefficient, "1")
    for name, (value, like) in given.items():
        rest.add(name, value, like)
    return result(core(*bar.shaped(), *rest.shaped()), unit)


@described_by(_core.worn_bore)
def worn_bore(bore: Any, wear: Any, *, units: Units = None) -> Quantity:
    """A growth of 10 % is 0.1."""
    return answer(_core.worn_bore, "m", units, bore=(bore, "m"), wear=(wear, "1"))


@described_by(_core.nozzle_wear)
def nozzle_wear(flow: Any, new_flow: Any, *, units: Units = None) -> Any:
    """A plain number or array."""
    return plain(_core.nozzle_wear, units, flow=(flow, "m3/s"), new_flow=(new_flow, "m3/s"))


@described_by(_core.jet_velocity)
def jet_velocity(
    pressure: Any, *, temperature: Any = "15 degC", density: Any = None, units: Units = None
) -> Quantity:
    """Water of a temperature unless a density is given."""
    rho = (density_of(density, temperature), "kg/m3")
    return answer(_core.jet_velocity, "m/s", units, pressure=(pressure, "Pa"), density=rho)


@described_by(_core.stagnation_pressure)
def stagnation_pressure(
    velocity: Any, *, temperature: Any = "15 degC", density: Any = None, units: Units = None
) -> Quantity:
    """Water of a temperature unless a density is given."""
    rho = (density_of(density, temperature), "kg/m3")
    return answer(_core.stagnation_pressure, "Pa", units, velocity=(velocity, "m/s"), density=rho)


@described_by(_core.jet_force)
def jet_force(
    bore: Any,
    velocity: Any,
    surface_speed: Any = "0 m/s",
    angle: Any = "0 deg",
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """Water of a temperature unless a density is given."""
    return answer(
        _core.jet_force,
        "N",
        units,
        bore=(bore, "m"),
        velocity=(velocity, "m/s"),
        surface_speed=(surface_speed, "m/s"),
        angle=(angle, "rad"),
        density=(density_of(density, temperature), "kg/m3"),
    )


@described_by(_core.fan_width)
def fan_width(stand_off: Any, spray_angle: Any, *, units: Units = None) -> Quantity:
    """In metre."""
    given = {"stand_off": (stand_off, "m"), "spray_angle": (spray_angle, "rad")}
    return answer(_core.fan_width, "m", units, **given)


@described_by(_core.water_by_area)
def water_by_area(flow: Any, width: Any, travel_speed: Any, *, units: Units = None) -> Quantity:
    """Volume by area is a length: ``.to("gal/ft**2")``."""
    given = {"flow": (flow, "m3/s"), "width": (width, "m"), "travel_speed": (travel_speed, "m/s")}
    return answer(_core.water_by_area, "m", units, **given)
