"""Water and the atmosphere. Data only: the formulas stand in the core."""

from __future__ import annotations

from scupper._check_forms import Check, Reason, call
from scupper._checks.shared import CUT_OFF, TABLE_WATER

_TEMPERATURE = ("{T_C} degC", "{T_F} degF")
_OLD_TABLE = "International Critical Tables"
# Until 1964 a millilitre was 1.000028 cm3, so that old g/mL exceed g/cm3 by 28 ppm.
_MILLILITRE = Reason("old_millilitre", over=(1.000023, 1.000033), only=_OLD_TABLE)
_OLD_SCALE = Reason("old_viscosity_scale", share=0.008, only=_OLD_TABLE)
_WATER_REASONS = (
    CUT_OFF,
    Reason("older_table_0.3_percent", share=0.003),
    Reason("older_table_0.8_percent", share=0.008),
)


def _water(reasons: tuple[Reason, ...]) -> tuple[Check, ...]:
    return tuple(
        Check(quantity, call(function, temperature=_TEMPERATURE), reasons=(*own, *reasons))
        for quantity, function, own in (
            ("water density", "water_density", (_MILLILITRE,)),
            ("water dynamic viscosity", "water_viscosity", ()),
            ("water kinematic viscosity", "water_kinematic_viscosity", (_OLD_SCALE,)),
            ("water vapour pressure", "water_vapour_pressure", ()),
        )
    )


_PRESSURE = call("standard_atmosphere", altitude="{z_ft} ft")
_HEAD_OF_AIR = call("head", pressure=_PRESSURE, temperature=TABLE_WATER)
_AIR_REASONS = (
    CUT_OFF,
    Reason("within_0.3_percent", share=0.003),
    Reason("older_atmosphere_1_percent", share=0.01),
)
ATMOSPHERE = (
    Check("atmospheric pressure", _PRESSURE, reasons=_AIR_REASONS),
    Check("atmospheric head of water", _HEAD_OF_AIR, reasons=_AIR_REASONS),
    Check(
        "practical suction lift",
        call("greatest_suction_lift", altitude="{z_ft} ft", temperature=TABLE_WATER),
        reasons=(Reason("rule_of_two_thirds", over=(0.6, 0.7)),),
    ),
    Check(
        "maximum theoretical lift",
        call("greatest_suction_lift", altitude="{z_ft} ft", temperature="{T_C} degC"),
        reasons=(Reason("geometric_altitude", share=0.001),),
    ),
)

WATER_IAPWS = _water((Reason("within_0.01_percent", share=1e-4),))
WATER_PROPERTIES = _water(_WATER_REASONS)
