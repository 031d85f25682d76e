"""Formulas of the trade (Hazen-Williams, hose coefficients) and coils. No formula here."""

from __future__ import annotations

from scupper._check_forms import Argument, Check, Choice, Ratio, Reason, call, total
from scupper._checks.friction import VELOCITY
from scupper._checks.shared import CUT_OFF, OF_TABLE, TABLE_WATER, as_head, entry


def _hazen(form: str, coefficient: Argument) -> Argument:
    return call(
        "friction_loss",
        flow="{Q_gpm} gpm",
        bore="{d_in} in",
        length=("{L_ft} ft", "100 ft"),
        method="hazen-williams",
        c=coefficient,
        form=form,
        temperature=TABLE_WATER,
    )


_FORMS = ("si_10_67_4_8704", "us_1043_94_4_8655", "us_4_52_4_87", "us_4_52_4_8655")
_NOT_STATED: dict[str | float, str | float] = {"not stated": 140}


def _hazen_check(quantity: str, form: str, only: str, stated: bool) -> Check:
    """Heads were tabulated by 1043.94, pressures by 4.52; computed rows by 10.67."""
    unit = "ft" if "head" in quantity else "psi"
    coefficient = "{C}" if stated else Choice("C", _NOT_STATED)

    def answer(name: str, c: Argument) -> Argument:
        pressure = _hazen(name, c)
        return as_head(pressure, OF_TABLE) if unit == "ft" else pressure

    reasons: tuple[Reason, ...] = (
        Reason("other_form", other=tuple(answer(name, coefficient) for name in _FORMS)),
        CUT_OFF,
        Reason("within_1_percent", share=0.01),
        Reason("coarse_table_7_percent", share=0.07),
    )
    if not stated:
        fitted = Reason("coefficient_not_stated", between=(answer(form, 155), answer(form, 100)))
        reasons = (fitted, *reasons)
    return Check(quantity, answer(form, coefficient), unit, reasons, only=only)


HAZEN = (
    Check("pipe velocity", VELOCITY, reasons=(CUT_OFF, Reason("within_1_percent", share=0.01))),
    *(
        _hazen_check(quantity, form, only, stated)
        for stated, only_first in ((False, "not stated"), (True, ""))
        for quantity, form, only in (
            ("pipe friction head", "si_10_67_4_8704", "computed"),
            ("pipe friction head", "us_1043_94_4_8655", only_first),
            ("pipe friction pressure", "us_4_52_4_8655", only_first),
        )
        if stated or only != "computed"
    ),
)


# Coefficients as the same publishers print them, by nominal size in inches.
_BY_SIZE: dict[str | float, str | float] = {1.75: 10, 2.5: 2, 3: 0.8, 3.5: 0.34, 5: 0.08}


def _coefficient(coefficient: Argument, flow: Argument = "{Q_gpm} gpm") -> Argument:
    return call(
        "friction_loss",
        flow=flow,
        bore="1 in",
        length=("{L_ft} ft", "100 ft"),
        method="hose-coefficient",
        coefficient=coefficient,
    )


def _smooth(bore: str, length: Argument, **more: Argument) -> Argument:
    return call("friction_loss", flow="{Q_gpm} gpm", bore=bore, length=length, **more)


# High-pressure hose is printed at its nominal bore and with a margin.
_DRAWN = _smooth("{hose_in} in", "{L_ft} ft", roughness="0 m", temperature="20 degC")
_LINED: dict[str, Argument] = {
    "density": "1000 kg/m3",
    "kinematic_viscosity": "{nu_ft2_s} ft2/s",
}
_COEFFICIENT_REASONS = (CUT_OFF, Reason("within_1.5_percent", share=0.015))

HOSE = (
    Check(
        "hose friction coefficient C",
        _coefficient(2, Ratio("100 gpm", "{lines}")),
        "psi",
        _COEFFICIENT_REASONS,
    ),
    Check(
        "high-pressure hose",
        _DRAWN,
        reasons=(Reason("printed_5_to_33_percent_above_smooth", over=(1 / 0.95, 1 / 0.67)),),
    ),
    Check(
        "lined hose friction",
        _smooth("{bore_in} in", "{L_ft} ft", roughness="{eps_ft} ft", **_LINED),
        reasons=_COEFFICIENT_REASONS,
    ),
    Check(
        "pump discharge pressure",
        total("{nozzle_psi} psi", _coefficient(15.5)),
        reasons=(
            Reason(
                "linear_rule",
                between=(
                    total("{nozzle_psi} psi", _coefficient(10)),
                    total("{nozzle_psi} psi", _coefficient(16)),
                ),
            ),
        ),
    ),
    Check("hose friction loss", _coefficient("{C}"), reasons=_COEFFICIENT_REASONS, given=("C",)),
    Check(
        "hose friction loss",
        _coefficient(Choice("hose_in", _BY_SIZE)),
        reasons=_COEFFICIENT_REASONS,
    ),
)

_SHIPPED: dict[str | float, str | float] = {
    0.75: "rubber_lined_3_4in",
    1: "rubber_lined_1in",
    1.25: "rubber_lined_1_1_4in",
    1.5: "rubber_lined_1_1_2in",
    1.75: "rubber_lined_1_3_4in",
    2: "rubber_lined_2in",
    2.5: "rubber_lined_2_1_2in",
    3: "rubber_lined_3in",
    4: "rubber_lined_4in",
    5: "rubber_lined_5in",
    6: "rubber_lined_6in",
}
_C, _C_RANGE = entry(
    "hoses", Choice("hose_in", _SHIPPED), "coefficient", "coefficient_low", "coefficient_high"
)
HOSE_COEFFICIENTS = (Check("hose friction", _C, reasons=(_C_RANGE,)),)

COIL = (
    Check(
        "Darcy friction factor of a coil",
        call(
            "coil_friction_factor",
            reynolds="{Re}",
            curvature="{x}",
            relative_roughness="{k}",
        ),
    ),
    Check("critical Reynolds number", call("coil_critical_reynolds", curvature="{x}")),
)
