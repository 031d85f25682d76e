"""Air that carries dirt. Data only: the formulas stand in the core."""

from __future__ import annotations

from scupper._check_forms import Argument, Check, Choice, Entry, Reason, call
from scupper._checks.shared import entry

_GRAIN: dict[str, Argument] = {
    "size": "{dp_m} m",
    "grain_density": "{rhop} kg/m3",
    "density": "{rhog} kg/m3",
    "viscosity": "{mug} Pa*s",
}
_DUST: dict[str | float, str | float] = {
    "very fine light dust": "very_fine_light",
    "dry dusts and powders": "dry_powder",
    "dry powder": "dry_powder",
    "general industrial dust": "general",
    "heavy or moist": "heavy_or_moist",
    "heavy dust": "heavy",
}
_LOW, _SPEEDS = entry(
    "transport_velocities", Choice("dust", _DUST), "low_m_per_s", "low_m_per_s", "high_m_per_s"
)
_HIGH = Entry("transport_velocities", Choice("dust", _DUST), "high_m_per_s")

VACUUM = (
    Check(
        "saltation velocity, Rizk",
        call(
            "saltation_velocity",
            solids="{mp_kg_s} kg/s",
            size="{dp_m} m",
            density="{rhog} kg/m3",
            bore="{D_m} m",
        ),
    ),
    Check(
        "pickup velocity",
        call("pick_up_velocity", **_GRAIN, bore="{D_m} m"),
        reasons=(Reason("rounded_gravity", share=5e-4),),
    ),
    Check("minimum duct transport velocity", _LOW, reasons=(_SPEEDS,), only='"low"'),
    Check("minimum duct transport velocity", _HIGH, reasons=(_SPEEDS,), only='"high"'),
)

GRAINS = (
    Check("terminal velocity", call("terminal_velocity", **_GRAIN)),
    Check(
        "air density",
        call("air_density", pressure="{p_Pa} Pa", temperature="{T_K} K"),
        reasons=(Reason("gas_constant_rounded", share=1e-6),),
    ),
    Check("air dynamic viscosity", call("air_viscosity", temperature="{T_K} K")),
)
