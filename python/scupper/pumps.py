"""Power and speed of pumps, and what the air pushes into one that draws from below.

Drafting from a stream, pond or ditch needs the permission of whoever has charge of the water.
Arguments and results as in `scupper.hydraulics`, where these functions are found.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Units, answer, described_by
from scupper._water import density_of, standard_atmosphere, water_vapour_pressure

if TYPE_CHECKING:
    from scupper.units import Quantity


@described_by(_core.hydraulic_power)
def hydraulic_power(pressure: Any, flow: Any, *, units: Units = None) -> Quantity:
    """In watt."""
    given = {"pressure": (pressure, "Pa"), "flow": (flow, "m3/s")}
    return answer(_core.hydraulic_power, "W", units, **given)


@described_by(_core.shaft_power)
def shaft_power(pressure: Any, flow: Any, efficiency: Any, *, units: Units = None) -> Quantity:
    """In watt; an efficiency of 80 % is 0.8."""
    return answer(
        _core.shaft_power,
        "W",
        units,
        pressure=(pressure, "Pa"),
        flow=(flow, "m3/s"),
        efficiency=(efficiency, "1"),
    )


@described_by(_core.affinity_flow)
def affinity_flow(
    flow: Any, speed_ratio: Any, diameter_ratio: Any = 1, *, units: Units = None
) -> Quantity:
    """In m³/s."""
    ratios = {"speed_ratio": (speed_ratio, "1"), "diameter_ratio": (diameter_ratio, "1")}
    return answer(_core.affinity_flow, "m3/s", units, flow=(flow, "m3/s"), **ratios)


@described_by(_core.affinity_head)
def affinity_head(
    head: Any, speed_ratio: Any, diameter_ratio: Any = 1, *, units: Units = None
) -> Quantity:
    """In metre."""
    ratios = {"speed_ratio": (speed_ratio, "1"), "diameter_ratio": (diameter_ratio, "1")}
    return answer(_core.affinity_head, "m", units, head=(head, "m"), **ratios)


@described_by(_core.affinity_power)
def affinity_power(
    power: Any, speed_ratio: Any, diameter_ratio: Any = 1, *, units: Units = None
) -> Quantity:
    """In watt."""
    ratios = {"speed_ratio": (speed_ratio, "1"), "diameter_ratio": (diameter_ratio, "1")}
    return answer(_core.affinity_power, "W", units, power=(power, "W"), **ratios)


@described_by(_core.npsh_available)
def npsh_available(
    suction_lift: Any,
    suction_loss: Any = "0 m",
    *,
    altitude: Any = "0 m",
    surface_pressure: Any = None,
    temperature: Any = "15 degC",
    vapour_pressure: Any = None,
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """The atmosphere of an altitude and water of a temperature unless their pressures are given."""
    return answer(
        _core.npsh_available,
        "m",
        units,
        surface_pressure=(_surface(surface_pressure, altitude), "Pa"),
        vapour_pressure=(_vapour(vapour_pressure, temperature), "Pa"),
        suction_lift=(suction_lift, "m"),
        suction_loss=(suction_loss, "m"),
        density=(density_of(density, temperature), "kg/m3"),
    )


@described_by(_core.greatest_suction_lift)
def greatest_suction_lift(
    suction_loss: Any = "0 m",
    npsh_required: Any = "0 m",
    *,
    altitude: Any = "0 m",
    surface_pressure: Any = None,
    temperature: Any = "15 degC",
    vapour_pressure: Any = None,
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """As for `npsh_available`."""
    return answer(
        _core.greatest_suction_lift,
        "m",
        units,
        surface_pressure=(_surface(surface_pressure, altitude), "Pa"),
        vapour_pressure=(_vapour(vapour_pressure, temperature), "Pa"),
        suction_loss=(suction_loss, "m"),
        npsh_required=(npsh_required, "m"),
        density=(density_of(density, temperature), "kg/m3"),
    )


def _surface(pressure: Any, altitude: Any) -> Any:
    return standard_atmosphere(altitude) if pressure is None else pressure


def _vapour(pressure: Any, temperature: Any) -> Any:
    return water_vapour_pressure(temperature) if pressure is None else pressure
