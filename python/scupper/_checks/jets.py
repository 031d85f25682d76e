"""Jets. Data only: the formulas stand in the core."""

from __future__ import annotations

from scupper._check_forms import Argument, Check, Reason, call
from scupper._checks.shared import TABLE_WATER

_BORE = ("{d_in} in", "{d_m} m", "{d_mm} mm")
_PLATE: dict[str, Argument] = {
    "bore": _BORE,
    "velocity": ("{V1_fps} ft/s", "{V_fps} ft/s", "{V_m_s} m/s"),
    "density": ("{w} lb/ft3", "{rho} kg/m3", "1000 kg/m3"),
}
_ROUND_G = Reason("rounded_gravity", share=0.0025)
_AREA_10_000_MM2 = "112.83791670955126 mm"  # the bore of 0.01 m2

JETS = (
    Check("jet force on fixed plate", call("jet_force", **_PLATE), reasons=(_ROUND_G,)),
    Check("jet force, vanes", call("jet_force", **_PLATE), reasons=(_ROUND_G,)),
    Check("jet force on plate", call("jet_force", **(_PLATE | {"bore": _AREA_10_000_MM2}))),
    Check("normal force", call("jet_force", **_PLATE, angle="{theta_deg} deg")),
    Check("force on moving plate", call("jet_force", **_PLATE, surface_speed="{u_m_s} m/s")),
    Check(
        "jet thrust",
        call("smooth_bore_reaction", bore=_BORE, pressure=("{p_Pa_gauge} Pa", "{dp_Pa} Pa")),
    ),
    Check(
        "nozzle velocity",
        call("jet_velocity", pressure="{P_psi} psi", density="998.2 kg/m3"),
        reasons=(Reason("rounded_gravity", share=0.005),),
    ),
    Check(
        "ideal jet velocity",
        call("jet_velocity", pressure="{P_psi} psi", density="998.2 kg/m3"),
    ),
    Check(
        "stagnation pressure",
        call(
            "stagnation_pressure",
            velocity=call("jet_velocity", pressure="{P_psi} psi", temperature=TABLE_WATER),
            temperature=TABLE_WATER,
        ),
    ),
)
