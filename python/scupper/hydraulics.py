"""Water from the pump to the tip and onto the surface: nozzles, friction, lays, vacuum hoses.

Every argument is text with its unit (``"1/2 in"``), a pint quantity, or a bare number or array
whose unit stands in ``units={"bore": "in"}``; ``units="si"`` means SI units throughout. Arrays
broadcast as in numpy. Results are pint quantities in SI units; ``.to("gpm")`` shows them otherwise.
"""

from __future__ import annotations

from scupper._friction import (
    coil_critical_reynolds,
    coil_friction_factor,
    coil_loss,
    factor_loss,
    friction_factor,
    friction_loss,
    head,
    minor_loss,
    pipe_velocity,
    reynolds,
    static_pressure,
    velocity_pressure,
)
from scupper._hoses import (
    fittings,
    hoses,
    published_coefficients,
)
from scupper._nozzles import (
    bar_flow,
    bar_pressure,
    equivalent_bore,
    fan_width,
    hydraulic_power,
    jet_force,
    jet_velocity,
    nozzle_flow,
    nozzle_pressure,
    nozzle_reaction,
    nozzle_wear,
    rated_nozzle_flow,
    smooth_bore_reaction,
    stagnation_pressure,
    water_by_area,
    worn_bore,
)
from scupper._vacuum import (
    AirFlow,
    PickUp,
    air_density,
    air_viscosity,
    pick_up_velocity,
    saltation_velocity,
    terminal_velocity,
    transport_velocities,
    vacuum_air_flow,
    vacuum_pick_up,
)
from scupper._water import (
    npsh_available,
    standard_atmosphere,
    water_density,
    water_kinematic_viscosity,
    water_vapour_pressure,
    water_viscosity,
)
from scupper.hose_lay import (
    HoseLay,
    LaySolution,
    LaySweep,
)

__all__ = [
    "AirFlow",
    "HoseLay",
    "LaySolution",
    "LaySweep",
    "PickUp",
    "air_density",
    "air_viscosity",
    "bar_flow",
    "bar_pressure",
    "coil_critical_reynolds",
    "coil_friction_factor",
    "coil_loss",
    "equivalent_bore",
    "factor_loss",
    "fan_width",
    "fittings",
    "friction_factor",
    "friction_loss",
    "head",
    "hoses",
    "hydraulic_power",
    "jet_force",
    "jet_velocity",
    "minor_loss",
    "nozzle_flow",
    "nozzle_pressure",
    "nozzle_reaction",
    "nozzle_wear",
    "npsh_available",
    "pick_up_velocity",
    "pipe_velocity",
    "published_coefficients",
    "rated_nozzle_flow",
    "reynolds",
    "saltation_velocity",
    "smooth_bore_reaction",
    "stagnation_pressure",
    "standard_atmosphere",
    "static_pressure",
    "terminal_velocity",
    "transport_velocities",
    "vacuum_air_flow",
    "vacuum_pick_up",
    "velocity_pressure",
    "water_by_area",
    "water_density",
    "water_kinematic_viscosity",
    "water_vapour_pressure",
    "water_viscosity",
    "worn_bore",
]
