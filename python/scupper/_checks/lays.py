"""Lays with a closed form, and pipes side by side. Data only: the formulas stand in the core."""

from __future__ import annotations

from typing import Any

from scupper._check_forms import (
    Argument,
    Check,
    PressureFor,
    Ratio,
    Reason,
    Solved,
    call,
    total,
)
from scupper._checks.shared import CUT_OFF, TABLE_WATER, as_head


def _segment(name: str, start: str, bore: str, length: str, coefficient: str) -> dict[str, Any]:
    hose = {"name": name, "bore": bore, "length": length, "coefficient": coefficient}
    return hose | ({"from": start} if start else {})


def _two_legs(supply: tuple[str, str], legs: tuple[str, str, str], tip: Any, pump: str) -> Any:
    """A supply line, a wye and a leg to each of two equal tips."""
    (length, coefficient), (first, second, of_leg) = supply, legs
    return {
        "name": "two legs",
        "pump": {"kind": "pressure", "pressure": pump},
        "segments": [
            _segment("supply", "", "2.5 in", length, coefficient),
            _segment("first", "supply", "1.5 in", first, of_leg),
            _segment("second", "supply", "1.5 in", second, of_leg),
        ],
        "nozzles": [tip | {"name": leg, "at": leg} for leg in ("first", "second")],
    }


_RATED_TIP = {"rated_flow": "{Q_leg} gpm", "rated_pressure": "{NP} psi"}
_EQUAL = _two_legs(
    ("{L1} ft", "{C_supply}"), ("{L2} ft", "{L2} ft", "{C_leg}"), _RATED_TIP, "100 psi"
)
# The source's constant over that of theory is the tip's discharge coefficient.
_TIP = {
    "bore": "{nozzle_in} in",
    "discharge_coefficient": Ratio(
        "{k} gpm", call("nozzle_flow", bore="1 in", pressure="1 psi", discharge_coefficient=1)
    ),
}
_UNEQUAL = _two_legs(("0 ft", "{C}"), ("{La} ft", "{Lb} ft", "{C}"), _TIP, "{P_wye_psi} psi")

LINE = (
    Check(
        "wyed lay: pump pressure",
        PressureFor(_EQUAL, "first", "{NP} psi"),
    ),
    Check(
        "unequal wyed legs: flow in short leg",
        Solved(_UNEQUAL, "nozzles", "flow_m3_per_s", "first"),
    ),
    Check(
        "unequal wyed legs: flow in long leg",
        Solved(_UNEQUAL, "nozzles", "flow_m3_per_s", "second"),
    ),
)


def _flow_at(velocity: str, bore: str) -> Argument:
    """A velocity times the opening."""
    return Ratio(velocity, Ratio(call("pipe_velocity", flow="1 m3/s", bore=bore), "1 m3/s"))


def _flow_for_head(head: str, loss_of_one: Argument) -> Argument:
    """The flow that a head drives, from what 1 m3/s loses: by the square root."""
    pressure = call("static_pressure", rise=head, temperature=TABLE_WATER)
    return call(
        "rated_nozzle_flow", rated_flow="1 m3/s", rated_pressure=loss_of_one, pressure=pressure
    )


def _loss(factor: str, flow: str, bore: str, length: str) -> Argument:
    return call(
        "factor_loss",
        factor=factor,
        velocity=call("pipe_velocity", flow=flow, bore=bore),
        bore=bore,
        length=length,
        temperature=TABLE_WATER,
    )


_WATER = call("water_density", temperature=TABLE_WATER)
_REASONS = (CUT_OFF, Reason("gravity_of_32.2", share=0.001))

PARALLEL = tuple(
    Check(quantity, value, unit, _REASONS)
    for quantity, value, unit in (
        (
            "wye: one of two equal legs",
            call(
                "friction_loss",
                flow="{Q_gpm} gpm",
                bore="{hose_in} in",
                length="{L_ft} ft",
                method="hose-coefficient",
                coefficient="{C}",
            ),
            "",
        ),
        ("parallel pipes, flow", _flow_at("{v_m_s} m/s", "{d_m} m"), ""),
        (
            "two pipes in series, flow",
            _flow_for_head(
                "{head_m} m",
                call(
                    "minor_loss",
                    flow="1 m3/s",
                    bore="{d2_m} m",
                    loss_coefficient="{K}",
                    temperature=TABLE_WATER,
                ),
            ),
            "",
        ),
        (
            "two pipes in series: head to pump",
            as_head(
                total(
                    _loss("{f8}", "{Q_cfs} ft3/s", "8 in", "{8 in} ft"),
                    _loss("{f6}", "{Q_cfs} ft3/s", "6 in", "{6 in} ft"),
                ),
                _WATER,
            ),
            "",
        ),
        (
            "max flow limited by suction head 30 ft",
            _flow_for_head("30 ft", _loss("{f8}", "1 m3/s", "{d_ft} ft", "{L_ft} ft")),
            "",
        ),
    )
)

# A pump whose curve meets 10 m of lift and 5.42e5 Q^2 of losses.
_DUTY = {
    "name": "duty point",
    "pump": {
        "kind": "curve",
        "curve": [
            ["0 m3/s", "40 m"],
            ["0.002 m3/s", "39.5 m"],
            ["0.004 m3/s", "38 m"],
            ["0.006 m3/s", "35 m"],
            ["0.008 m3/s", "30 m"],
            ["0.010 m3/s", "20 m"],
        ],
    },
    "segments": [
        {"name": "riser", "bore": "50 mm", "length": "0 m", "rise": "10 m", "roughness": "0 mm"}
    ],
    "nozzles": [
        {
            "name": "losses",
            "at": "riser",
            "rated_flow": "1 m3/s",
            "rated_pressure": call("static_pressure", rise="5.42e5 m"),
        }
    ],
}
DUTY = (
    Check("duty point flow", Solved(_DUTY, "pump", "flow_m3_per_s"), reasons=(CUT_OFF,)),
    Check(
        "duty point head",
        call("head", pressure=Solved(_DUTY, "pump", "pressure_Pa")),
        reasons=(CUT_OFF,),
        given=("same",),
    ),
)
