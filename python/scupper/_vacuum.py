"""Vacuum hoses: how much air they draw, and whether dirt comes with it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Arguments, Units, answer, described_by, result
from scupper._frames import frame

if TYPE_CHECKING:
    import numpy as np
    import pandas as pd

    from scupper._arguments import FloatArray
    from scupper.units import Quantity


@described_by(_core.air_density)
def air_density(pressure: Any, temperature: Any = "15 degC", *, units: Units = None) -> Quantity:
    """In kg/m³; the pressure is absolute."""
    given = {"pressure": (pressure, "Pa"), "temperature": (temperature, "K")}
    return answer(_core.air_density, "kg/m3", units, **given)


@described_by(_core.air_viscosity)
def air_viscosity(temperature: Any = "15 degC", *, units: Units = None) -> Quantity:
    """In Pa s."""
    return answer(_core.air_viscosity, "Pa*s", units, temperature=(temperature, "K"))


@described_by(_core.terminal_velocity)
def terminal_velocity(
    size: Any, grain_density: Any, density: Any, viscosity: Any, *, units: Units = None
) -> Quantity:
    """In m/s."""
    return answer(
        _core.terminal_velocity,
        "m/s",
        units,
        size=(size, "m"),
        grain_density=(grain_density, "kg/m3"),
        density=(density, "kg/m3"),
        viscosity=(viscosity, "Pa*s"),
    )


@described_by(_core.saltation_velocity)
def saltation_velocity(
    solids: Any, size: Any, density: Any, bore: Any, *, units: Units = None
) -> Quantity:
    """In m/s."""
    return answer(
        _core.saltation_velocity,
        "m/s",
        units,
        solids=(solids, "kg/s"),
        size=(size, "m"),
        density=(density, "kg/m3"),
        bore=(bore, "m"),
    )


@described_by(_core.pick_up_velocity)
def pick_up_velocity(
    size: Any, grain_density: Any, density: Any, viscosity: Any, bore: Any, *, units: Units = None
) -> Quantity:
    """In m/s."""
    return answer(
        _core.pick_up_velocity,
        "m/s",
        units,
        size=(size, "m"),
        grain_density=(grain_density, "kg/m3"),
        density=(density, "kg/m3"),
        viscosity=(viscosity, "Pa*s"),
        bore=(bore, "m"),
    )


def transport_velocities() -> pd.DataFrame:
    """Published least air speeds by kind of dust.

    Returns
    -------
    pandas.DataFrame
        dust, low_m_per_s, high_m_per_s, source.
    """
    columns = _core.transport_velocities()
    return frame(
        {
            "dust": columns["dust"],
            "low_m_per_s": columns["low"],
            "high_m_per_s": columns["high"],
            "source": columns["source"],
        }
    )


@dataclass(frozen=True)
class AirFlow:
    """What air flows through a vacuum hose, dirt or not.

    Attributes
    ----------
    vacuum : pint.Quantity
        At the blower, below the atmosphere.
    end_velocity, inlet_velocity : pint.Quantity
        Air speed at the end of the hose and before the blower.
    free_flow : pint.Quantity
        At the pressure and temperature of the air around.
    relief_open : bool or numpy.ndarray
        Whether the relief valve holds the vacuum.
    """

    vacuum: Quantity
    end_velocity: Quantity
    inlet_velocity: Quantity
    free_flow: Quantity
    relief_open: bool | np.ndarray[Any, Any]


@dataclass(frozen=True)
class PickUp:
    """Whether dirt comes through a vacuum hose, and what it would take.

    Attributes
    ----------
    air : AirFlow
        As without dirt.
    dirt_vacuum : pint.Quantity
        What the dirt takes besides the air.
    pick_up_velocity, saltation_velocity, rise_velocity : pint.Quantity
        Air speed needed at the end, along level hose and in a rise.
    water_lift : pint.Quantity
        How high the relief vacuum holds a column of water.
    margin : float or numpy.ndarray
        Air speed at the end over the greatest speed needed.
    hinders : str or numpy.ndarray
        The first thing that keeps the dirt from coming, or "nothing".
    feasible : bool or numpy.ndarray
        True where nothing hinders.
    """

    air: AirFlow
    dirt_vacuum: Quantity
    pick_up_velocity: Quantity
    saltation_velocity: Quantity
    rise_velocity: Quantity
    water_lift: Quantity
    margin: float | FloatArray
    hinders: str | np.ndarray[Any, Any]
    feasible: bool | np.ndarray[Any, Any]


@described_by(_core.vacuum_air_flow)
def vacuum_air_flow(
    *,
    blower_flow: Any,
    relief_vacuum: Any,
    bore: Any,
    length: Any,
    lift: Any = "0 m",
    roughness: Any = "0.05 mm",
    minor_loss: Any = 2,
    air_pressure: Any = "101,325 Pa",
    air_temperature: Any = "15 degC",
    units: Units = None,
) -> AirFlow:
    """`minor_loss` is the sum of K of entry, bends and nozzle; arrays broadcast."""
    given = _lay(units, locals())
    arrays = given.shaped()
    return _air(_core.vacuum_air_flow(arrays), arrays[0].shape)


@described_by(_core.vacuum_pick_up)
def vacuum_pick_up(
    *,
    blower_flow: Any,
    relief_vacuum: Any,
    bore: Any,
    length: Any,
    size: Any,
    rate: Any,
    grain_density: Any = "2,650 kg/m3",
    transport_least: Any = "0 m/s",
    lift: Any = "0 m",
    roughness: Any = "0.05 mm",
    minor_loss: Any = 2,
    air_pressure: Any = "101,325 Pa",
    air_temperature: Any = "15 degC",
    units: Units = None,
) -> PickUp:
    """`grain_density` is that of the grains, not of the heap; `rate` what is collected while the
    hose is in the dirt, which is common practice; `transport_least` a least speed of
    `transport_velocities`; arrays broadcast."""
    given = _lay(units, locals())
    given.add("size", size, "m")
    given.add("grain_density", grain_density, "kg/m3")
    given.add("rate", rate, "kg/s")
    given.add("transport_least", transport_least, "m/s")
    arrays = given.shaped()
    shape = arrays[0].shape
    core = _core.vacuum_pick_up(arrays)
    hinders = _shaped(core["hinders"], shape)
    return PickUp(
        air=_air(core, shape),
        dirt_vacuum=_quantity(core["dirt_vacuum"], shape, "Pa"),
        pick_up_velocity=_quantity(core["pick_up_velocity"], shape, "m/s"),
        saltation_velocity=_quantity(core["saltation_velocity"], shape, "m/s"),
        rise_velocity=_quantity(core["rise_velocity"], shape, "m/s"),
        water_lift=_quantity(core["water_lift"], shape, "m"),
        margin=_shaped(core["margin"], shape),
        hinders=hinders,
        feasible=hinders == "nothing",
    )


#: Arguments of a lay in the order of the core, each with a unit of its dimension.
_LAY = {
    "blower_flow": "m3/s",
    "relief_vacuum": "Pa",
    "bore": "m",
    "length": "m",
    "lift": "m",
    "roughness": "m",
    "minor_loss": "1",
    "air_pressure": "Pa",
    "air_temperature": "K",
}


def _lay(units: Units, given: Mapping[str, Any]) -> Arguments:
    arguments = Arguments(units)
    for name, like in _LAY.items():
        arguments.add(name, given[name], like)
    return arguments


def _air(core: Mapping[Any, Any], shape: tuple[int, ...]) -> AirFlow:
    return AirFlow(
        _quantity(core["vacuum"], shape, "Pa"),
        _quantity(core["end_velocity"], shape, "m/s"),
        _quantity(core["inlet_velocity"], shape, "m/s"),
        _quantity(core["free_flow"], shape, "m3/s"),
        _shaped(core["relief_open"], shape),
    )


def _shaped(values: Any, shape: tuple[int, ...]) -> Any:
    """Values in the shape of the arguments; a single one as a plain Python value."""
    import numpy as np

    array = np.asarray(values).reshape(shape)
    return array if shape else array.item()


def _quantity(values: Any, shape: tuple[int, ...], unit: str) -> Quantity:
    import numpy as np

    return result(np.asarray(values, dtype=float).reshape(shape), unit)
