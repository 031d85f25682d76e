"""Friction from first principles, and fittings. Data only: the formulas stand in the core."""

from __future__ import annotations

from scupper._check_forms import Argument, Check, Choice, Ratio, Reason, call, difference, total
from scupper._checks.shared import CUT_OFF, OF_TABLE, TABLE_WATER, as_head, entry

_SQUARE_METRE = "1.1283791670955126 m"
_FLOW = (
    "{Q_gpm} gpm",
    "{Q_L_min} L/min",
    "{Q_m3_hr} m3/h",
    "{Q_ft3_s} ft3/s",
    "{Q_m3_s} m3/s",
)
_PIPE = ("{D_m} m", "{d_in} in", "{bore_in} in", "{D_ft} ft")
_LENGTH = ("{L_m} m", "{L_ft} ft")
VELOCITY = call("pipe_velocity", flow=_FLOW, bore=_PIPE)
_RHO = ("{rho} kg/m3", "1000 kg/m3")


def _darcy(length: Argument, **more: Argument) -> Argument:
    return call("friction_loss", flow=_FLOW, bore=_PIPE, length=length, **more)


def _charted(density: Argument = _RHO, velocity: Argument = VELOCITY) -> Argument:
    """The loss at a friction factor that the source read from a chart."""
    return call(
        "factor_loss",
        factor="{f}",
        velocity=velocity,
        bore=_PIPE,
        length=_LENGTH,
        density=density,
    )


def _as_head(pressure: Argument, density: Argument = _RHO) -> Argument:
    return as_head(pressure, density)


def _minor(coefficient: Argument, density: Argument = _RHO) -> Argument:
    return call("minor_loss", flow=_FLOW, bore=_PIPE, loss_coefficient=coefficient, density=density)


def _fanning(density: Argument = _RHO, velocity: Argument = VELOCITY) -> Argument:
    """Fanning's factor is a quarter of Darcy's: four lengths."""
    one = call(
        "factor_loss",
        factor="{f_fanning}",
        velocity=velocity,
        bore=_PIPE,
        length=_LENGTH,
        density=density,
    )
    return total(one, one, one, one)


_PIPE_REASONS = (
    Reason("read_from_chart", share=0.02, only="chart"),
    CUT_OFF,
    Reason("within_0.5_percent", share=0.005),
    Reason("within_1_percent", share=0.01),
)
_LINE = "62.4 lb/ft3"
_ROUGH = Ratio(("{eps_m} m", "{eps_ft} ft"), _PIPE)
THIN: dict[str, Argument] = {"kinematic_viscosity": "{nu_ft2_s} ft2/s", "density": OF_TABLE}


def _factor(viscosity: Argument) -> Argument:
    reynolds = call("reynolds", flow=_FLOW, bore=_PIPE, kinematic_viscosity=viscosity)
    return call("friction_factor", reynolds=reynolds, relative_roughness=_ROUGH)


def _laminar(flow: Argument) -> Argument:
    """The head that a smooth pipe of a liquid with a dynamic viscosity takes."""
    loss = call(
        "friction_loss",
        flow=flow,
        bore=_PIPE,
        length=_LENGTH,
        roughness="0 m",
        density=_RHO,
        kinematic_viscosity=Ratio("{mu} Pa*s", _RHO),
    )
    return _as_head(loss)


# A velocity times the opening: over what a flow of 1 m3/s has as velocity.
_FLOW_OF_VELOCITY = Ratio(
    "{V_m_s} m/s", Ratio(call("pipe_velocity", flow="1 m3/s", bore=_PIPE), "1 m3/s")
)

_FITTINGS: dict[str | float, str | float] = {
    "globe": "globe_valve",
    "angle valve": "angle_valve",
    "swing check": "check_valve",
    "elbow 90": "elbow_90",
    "elbow 45": "elbow_45",
    "tee line": "tee_run",
    "tee branch": "tee_branch",
    "180 return": "return_bend",
    "gate": "gate_valve",
    "sudden entry": "inlet",
    "sudden exit": "outlet",
}


_K, _K_RANGE = entry(
    "fittings",
    Choice("fitting", _FITTINGS),
    "loss_coefficient",
    "loss_coefficient_low",
    "loss_coefficient_high",
)

DARCY = (
    Check("minor loss coefficient K", _K, reasons=(_K_RANGE,)),
    *(
        Check(quantity, value, unit, _PIPE_REASONS, given)
        for quantity, value, unit, given in (
            (
                "steel pipe friction head",
                _as_head(
                    _darcy("100 ft", roughness="{eps_ft} ft", temperature=TABLE_WATER), OF_TABLE
                ),
                "ft",
                (),
            ),
            (
                "smooth hose friction head",
                _as_head(_darcy("100 ft", roughness="{eps_ft} ft", **THIN), OF_TABLE),
                "ft",
                (),
            ),
            ("pipe velocity", VELOCITY, "", ()),
            (
                "Darcy friction factor, rough",
                call("friction_factor", reynolds=1e12, relative_roughness="{eD}"),
                "",
                (),
            ),
            (
                "Darcy friction factor",
                call("friction_factor", reynolds="{Re}", relative_roughness=("{eD}", "0")),
                "",
                ("Re",),
            ),
            ("Darcy friction factor", _factor("{nu} m2/s"), "", ("nu",)),
            ("Darcy friction factor", _factor(Ratio("{mu} Pa*s", "{rho} kg/m3")), "", ()),
            (
                "Reynolds number",
                call(
                    "reynolds",
                    flow=_FLOW,
                    bore=_PIPE,
                    kinematic_viscosity=Ratio(
                        "{mu_lbf_s_ft2} lbf*s/ft2", Ratio("{gamma} lbf/ft3", "{g} ft/s2")
                    ),
                ),
                "",
                (),
            ),
            ("level difference", _as_head(total(_charted(), _minor("{K}"))), "", ()),
            ("pipe pressure drop", _charted(), "", ()),
            ("pipe head loss", _as_head(_charted()), "", ()),
            ("pumping power", call("hydraulic_power", pressure="{dP_Pa} Pa", flow=_FLOW), "", ()),
            (
                "reservoir elevation",
                total("{z2_m} m", _as_head(total(_charted(), _minor("{sumK}")))),
                "",
                (),
            ),
            (
                "conical expansion",
                _as_head(
                    call(
                        "minor_loss",
                        flow="{V1_m_s} m3/s",
                        bore=_SQUARE_METRE,
                        loss_coefficient="{K}",
                        density="1000 kg/m3",
                    ),
                    "1000 kg/m3",
                ),
                "",
                (),
            ),
            (
                "total pressure drop, domestic line",
                difference(
                    total(
                        call("static_pressure", rise="{dz_ft} ft", density=_LINE),
                        _charted(_LINE),
                        _minor("{K}", _LINE),
                        call("velocity_pressure", flow=_FLOW, bore="0.0417 ft", density=_LINE),
                    ),
                    call("velocity_pressure", flow=_FLOW, bore=_PIPE, density=_LINE),
                ),
                "",
                (),
            ),
            ("friction loss", _fanning("1 kg/m3", "{V_m_s} m/s"), "Pa", ("V_m_s",)),
            ("friction loss", _fanning("1 kg/m3"), "Pa", ()),
            (
                "head loss, petroleum line",
                _as_head(total(_fanning(), _minor(0.5), _minor(1.0))),
                "",
                (),
            ),
            ("head loss (turbulent)", _as_head(_fanning()), "", ()),
            ("head loss (laminar)", _laminar(_FLOW), "", ()),
            ("laminar head loss", _laminar(_FLOW_OF_VELOCITY), "", ()),
        )
    ),
)

FRICTION_FACTOR = (
    Check(
        "Darcy friction factor",
        call("friction_factor", reynolds="{Re}", relative_roughness="{eD}"),
        reasons=(Reason("within_1e-9", share=1e-9),),
    ),
)
