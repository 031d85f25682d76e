"""Pumps. Data only: the formulas stand in the core."""

from __future__ import annotations

from scupper._check_forms import Argument, Check, Ratio, Reason, call, difference, total
from scupper._checks.shared import CUT_OFF, OF_TABLE, TABLE_WATER

_SPEED = Ratio("{n2}", "{n1}")
_CYCLE = ("{Q1_m3_s} m3/s", "{Q_m3_s} m3/s")
_ROUND_WATER = "1000 kg/m3"
_BRAKE = call(
    "shaft_power",
    pressure=call("static_pressure", rise=("{H1_m} m", "{H_m} m"), density=_ROUND_WATER),
    flow=_CYCLE,
    efficiency="{eff}",
)
_PUMP_REASONS = (
    CUT_OFF,
    Reason("rule_of_two_thirds", over=(0.65, 0.69)),
    Reason("rounded_constant", share=0.003),
)


def _gained(*speeds: Argument) -> Argument:
    return call(
        "hydraulic_power",
        pressure=difference(
            *(
                call("velocity_pressure", flow="{Q_gpm} gpm", bore=d, density=OF_TABLE)
                for d in speeds
            )  # fmt: skip
        ),
        flow="{Q_gpm} gpm",
    )


def _horsepower_constant(power: Argument) -> Argument:
    return Ratio("1 hp", power)


_SYSTEM_LOSS = call(
    "factor_loss",
    factor="{f_fanning}",
    velocity=call("pipe_velocity", flow="{Q_m3_s} m3/s", bore="{d_m} m"),
    bore="{d_m} m",
    length="{L_m} m",
)
_ONE_FOOT = call("static_pressure", rise="1 ft", temperature=TABLE_WATER)
_SURFACE = total(call("standard_atmosphere", altitude="0 m"), "{p_tank_psig} psi")
PUMPS = tuple(
    Check(quantity, value, unit, _PUMP_REASONS)
    for quantity, value, unit in (
        (
            "static pressure of water column",
            call("static_pressure", rise="{h_ft} ft", temperature=TABLE_WATER),
            "",
        ),
        (
            "head from pressure",
            call("head", pressure="{P_psi} psi", temperature=TABLE_WATER),
            "",
        ),
        ("pressure of 1 ft head", _ONE_FOOT, "psi"),
        ("atmospheric pressure, sea level", call("standard_atmosphere", altitude="0 m"), ""),
        ("1 in Hg in ft of water", call("head", pressure="1 inHg", temperature=TABLE_WATER), ""),
        (
            "practical lift",
            call("greatest_suction_lift", altitude="0 m", temperature=TABLE_WATER),
            "",
        ),
        (
            "hose contents 1 1/2 in x 100 ft",
            Ratio("100 ft", Ratio(call("pipe_velocity", flow="1 m3/s", bore="1.5 in"), "1 m3/s")),
            "",
        ),
        ("water weight", OF_TABLE, "lb/gal"),
        (
            "water horsepower constant (head)",
            _horsepower_constant(call("hydraulic_power", pressure=_ONE_FOOT, flow="1 gpm")),
            "",
        ),
        (
            "water horsepower constant (pressure)",
            _horsepower_constant(call("hydraulic_power", pressure="1 psi", flow="1 gpm")),
            "",
        ),
        (
            "constant used on pump nameplates",
            _horsepower_constant(
                call("shaft_power", pressure="1 psi", flow="1 gpm", efficiency=0.85)
            ),
            "",
        ),
        (
            "affinity: flow",
            call("affinity_flow", flow="{Q1_gpm} gpm", speed_ratio=_SPEED),
            "",
        ),
        ("affinity: power", call("affinity_power", power="{P1_hp} hp", speed_ratio=_SPEED), ""),
        (
            "NPSH available",
            call(
                "npsh_available",
                suction_lift=difference("0 ft", "{z_ft} ft"),
                suction_loss="{loss_ft} ft",
                surface_pressure=_SURFACE,
                vapour_pressure="{pv_psi} psi",
                temperature=TABLE_WATER,
            ),
            "",
        ),
        (
            "pump power, pressure part",
            call(
                "hydraulic_power",
                pressure=difference("{p2_psi} psi", "{p1_psi} psi"),
                flow="{Q_gpm} gpm",
            ),
            "",
        ),
        ("pump power, kinetic part", _gained("{d2_in} in", "{d1_in} in"), ""),
        (
            "brake horsepower, plunger pump with boosted suction",
            difference(
                call(
                    "shaft_power",
                    pressure="{P_d_psi} psi",
                    flow="{Q_gpm} gpm",
                    efficiency="{ME}",
                ),
                call(  # what the boost gives back
                    "shaft_power",
                    pressure="{P_s_psi} psi",
                    flow="{Q_gpm} gpm",
                    efficiency=Ratio(1.0, "{ME_s}"),
                ),
            ),
            "",
        ),
        (
            "system curve point",
            total(
                "{dz} m",
                call(
                    "head",
                    pressure=total(
                        *(_SYSTEM_LOSS,) * 4,  # Fanning's factor is a quarter of Darcy's
                        call("velocity_pressure", flow="{Q_m3_s} m3/s", bore="{d_m} m"),
                    ),
                ),
            ),
            "",
        ),
        ("brake power", _BRAKE, ""),
        (
            "affinity with diameter change: power",
            call(
                "affinity_power",
                power=_BRAKE,
                speed_ratio=_SPEED,
                diameter_ratio=Ratio("{D2}", "{D1}"),
            ),
            "",
        ),
        (
            "maximum height of pump (suction)",
            call(
                "greatest_suction_lift",
                suction_loss=call(
                    "head",
                    pressure=call(
                        "minor_loss",
                        flow="{Q_ft3_s} ft3/s",
                        bore="{D_in} in",
                        loss_coefficient="{KL}",
                        temperature="{T_F} degF",
                    ),
                    temperature="{T_F} degF",
                ),
                npsh_required="{NPSHr_ft} ft",
                temperature="{T_F} degF",
            ),
            "",
        ),
        (
            "water horsepower",
            call("hydraulic_power", pressure="{P_psi} psi", flow="{Q_gpm} gpm"),
            "",
        ),
    )
)
