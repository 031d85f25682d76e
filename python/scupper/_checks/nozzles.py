"""Nozzles and their reaction. Data only: the formulas stand in the core."""

from __future__ import annotations

from scupper._check_forms import Argument, Check, Reason, call, difference
from scupper._checks.shared import CUT_OFF, OF_TABLE, SQUARE_INCH, TABLE_WATER


def _tip(coefficient: float, density: Argument = "998.2 kg/m3") -> Argument:
    return call(
        "nozzle_flow",
        bore="{d_in} in",
        pressure="{P_psi} psi",
        discharge_coefficient=coefficient,
        density=density,
    )


# Tip lists of the fire service use 29.7 where the theory has 29.84.
_PRACTICE = _tip(29.7 / 29.84, OF_TABLE)
_TIP_REASONS = (
    Reason("constant_29.7", other=(_PRACTICE,)),
    Reason("constant_29.7_cut_off", other=(_PRACTICE,), steps=1),
    CUT_OFF,
    Reason("within_0.5_percent", share=0.005),
)


def _upstream(bore: str, tip: str, flow: Argument, density: Argument) -> Argument:
    """Tip pressure less the velocity pressure that the water already has in the hose."""
    at_tip = call("nozzle_pressure", bore=tip, flow=flow, discharge_coefficient=1, density=density)
    return difference(at_tip, call("velocity_pressure", flow=flow, bore=bore, density=density))


_SLUGS = "62.41765 lb/ft3"  # 1.94 slug/ft3

NOZZLES = (
    Check(
        "sprinkler",
        _tip(0.965, OF_TABLE),
        reasons=(Reason("own_coefficient", between=(_tip(0.94, OF_TABLE), _tip(0.99, OF_TABLE))),),
    ),
    Check(
        "nozzle velocity",
        call("jet_velocity", pressure="{P_psi} psi", temperature=TABLE_WATER),
        reasons=(Reason("within_0.2_percent", share=0.002),),
    ),
    Check(
        "pressure upstream of nozzle",
        _upstream("{D1_m} m", "{D2_m} m", "{Q_m3_s} m3/s", "{rho} kg/m3"),
        given=("D1_m",),
    ),
    Check(
        "pressure upstream of nozzle",
        _upstream(
            "{D1_in} in", "{D2_in} in", ("{Q_gpm} gpm", "{Q_ft3_s} ft3/s"), "62.41765 lb/ft3"
        ),
    ),
    Check("nozzle exit velocity", call("pipe_velocity", flow="{Q_m3_s} m3/s", bore="{D2_m} m")),
    Check("", _tip(1, ("{rho_kg_m3} kg/m3",)), reasons=_TIP_REASONS, given=("rho_kg_m3",)),
    Check("", _tip(1, OF_TABLE), reasons=_TIP_REASONS),
)


def _reaction(flow: str, pressure: str) -> Argument:
    return call("nozzle_reaction", flow=flow, pressure=pressure, density="998.2 kg/m3")


def _smooth_bore(bore: str, pressure: Argument, coefficient: float = 1) -> Argument:
    return call(
        "smooth_bore_reaction", bore=bore, pressure=pressure, discharge_coefficient=coefficient
    )


_COUPLING_TIP = call(
    "nozzle_pressure",
    bore="{D2_m} m",
    flow="{Q_m3_s} m3/s",
    discharge_coefficient=1,
    density="1000 kg/m3",
)
_COUPLING_HOSE = call(
    "velocity_pressure", flow="{Q_m3_s} m3/s", bore="{D1_m} m", density="1000 kg/m3"
)


def _momentum(pressure: Argument) -> Argument:
    return call("nozzle_reaction", flow="{Q_m3_s} m3/s", pressure=pressure, density="1000 kg/m3")


_RULE_OF_THUMB = (Reason("rule_of_thumb", share=0.15),)

REACTIONS = (
    Check("smooth-bore tip flow", _tip(1, OF_TABLE), reasons=_TIP_REASONS),
    Check(
        "flow formula constant per area",
        call(
            "nozzle_flow",
            bore=SQUARE_INCH,
            pressure="1 psi",
            discharge_coefficient=1,
            temperature=TABLE_WATER,
        ),
        unit="gpm",
        reasons=(Reason("constant_29.7", share=0.005),),
    ),
    Check("fog reaction shortcut", _reaction("1 gpm", "100 psi"), "lbf", reasons=_RULE_OF_THUMB),
    Check(
        "smooth-bore reaction shortcut",
        _reaction("1 gpm", "50 psi"),
        "lbf",
        reasons=_RULE_OF_THUMB,
    ),
    Check(
        "",
        _smooth_bore("{d_in} in", "{P_psi} psi"),
        reasons=(
            Reason(
                "constant_1.57", other=(_smooth_bore("{d_in} in", "{P_psi} psi", 1.57 / 1.5707963),)
            ),
        ),
        given=("d_in",),
    ),
    Check(
        "",
        _reaction("{Q_gpm} gpm", "{P_psi} psi"),
        reasons=(Reason("constant_0.0505", share=0.045),),
        given=("Q_gpm",),
    ),
    Check(
        "jet momentum flux",
        call(
            "nozzle_reaction",
            flow="{mdot_kg_s} L/s",
            pressure=call("stagnation_pressure", velocity="{v_m_s} m/s", density="1000 kg/m3"),
            density="1000 kg/m3",
        ),
        reasons=(Reason("speed_printed_rounded", share=1e-5),),
    ),
    # The force at the coupling: momentum out less momentum in less the pressure there.
    Check(
        "hose/nozzle anchoring force",
        difference(
            _momentum(_COUPLING_TIP),
            _momentum(_COUPLING_HOSE),
            _smooth_bore("{D1_m} m", difference(_COUPLING_TIP, _COUPLING_HOSE), 0.5),
        ),
    ),
    Check("reaction formula constant", _smooth_bore("1 in", "1 psi"), "lbf"),
)


def _orifice(coefficient: float) -> Argument:
    return call(
        "equivalent_bore",
        rated_flow="{N} gpm",
        rated_pressure="4000 psi",
        discharge_coefficient=coefficient,
        temperature=TABLE_WATER,
    )


RATED = (
    Check(
        "fan nozzle flow by size number",
        call(
            "rated_nozzle_flow",
            rated_flow="{N} gpm",
            rated_pressure="4000 psi",
            pressure="{P_psi} psi",
        ),
        reasons=(CUT_OFF,),
    ),
    Check(
        "equivalent orifice of size number",
        _orifice(0.79),
        reasons=(
            Reason(
                "own_coefficient",
                between=(_orifice(0.93), _orifice(0.73)),
            ),
        ),
    ),
    Check(
        "nozzle size selected",
        call(
            "rated_nozzle_flow",
            rated_flow="{Q_gpm} gpm",
            rated_pressure="{P_psi} psi",
            pressure="4000 psi",
        ),
        unit="gpm",
    ),
    Check(
        "square-root law",
        call(
            "rated_nozzle_flow",
            rated_flow="{q2_L_min} L/min",
            rated_pressure="{p2_bar} bar",
            pressure="{p1_bar} bar",
        ),
    ),
    Check(
        "pressure from size number",
        call(
            "nozzle_pressure",
            bore=_orifice(1),
            flow="{Q_gpm} gpm",
            discharge_coefficient=1,
            temperature=TABLE_WATER,
        ),
        reasons=(Reason("size_rounded", share=0.06),),
    ),
)
