"""Water, air above it, and what a pump may draw."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Units, answer, described_by

if TYPE_CHECKING:
    from scupper.units import Quantity


@described_by(_core.water_density)
def water_density(temperature: Any, *, units: Units = None) -> Quantity:
    """In kg/m³."""
    return answer(_core.water_density, "kg/m3", units, temperature=(temperature, "K"))


@described_by(_core.water_viscosity)
def water_viscosity(temperature: Any, *, units: Units = None) -> Quantity:
    """The dynamic viscosity, in Pa s."""
    return answer(_core.water_viscosity, "Pa*s", units, temperature=(temperature, "K"))


@described_by(_core.water_kinematic_viscosity)
def water_kinematic_viscosity(temperature: Any, *, units: Units = None) -> Quantity:
    """In m²/s."""
    return answer(_core.water_kinematic_viscosity, "m2/s", units, temperature=(temperature, "K"))


@described_by(_core.water_vapour_pressure)
def water_vapour_pressure(temperature: Any, *, units: Units = None) -> Quantity:
    """In pascal, absolute."""
    return answer(_core.water_vapour_pressure, "Pa", units, temperature=(temperature, "K"))


@described_by(_core.standard_atmosphere)
def standard_atmosphere(altitude: Any, *, units: Units = None) -> Quantity:
    """In pascal, absolute."""
    return answer(_core.standard_atmosphere, "Pa", units, altitude=(altitude, "m"))


def density_of(density: Any, temperature: Any) -> Any:
    """The density itself, or that of water of a temperature."""
    return water_density(temperature) if density is None else density
