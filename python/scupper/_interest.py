"""Money at different times: interest factors, real and nominal rates, escalation."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Units, described_by
from scupper._money import amount_of, plain

if TYPE_CHECKING:
    from scupper._arguments import FloatArray


@described_by(_core.compound_amount_factor)
def compound_amount_factor(
    interest: Any, periods: Any, *, units: Units = None
) -> float | FloatArray:
    """F/P; a rate of 5 % is 0.05."""
    given = {"interest": (interest, "1"), "periods": (periods, "1")}
    return plain(_core.compound_amount_factor, units, **given)


@described_by(_core.present_worth_factor)
def present_worth_factor(interest: Any, periods: Any, *, units: Units = None) -> float | FloatArray:
    """P/F; a rate of 5 % is 0.05."""
    given = {"interest": (interest, "1"), "periods": (periods, "1")}
    return plain(_core.present_worth_factor, units, **given)


@described_by(_core.series_amount_factor)
def series_amount_factor(interest: Any, periods: Any, *, units: Units = None) -> float | FloatArray:
    """F/A; a rate of 5 % is 0.05."""
    given = {"interest": (interest, "1"), "periods": (periods, "1")}
    return plain(_core.series_amount_factor, units, **given)


@described_by(_core.sinking_fund_factor)
def sinking_fund_factor(interest: Any, periods: Any, *, units: Units = None) -> float | FloatArray:
    """A/F; a rate of 5 % is 0.05."""
    given = {"interest": (interest, "1"), "periods": (periods, "1")}
    return plain(_core.sinking_fund_factor, units, **given)


@described_by(_core.capital_recovery_factor)
def capital_recovery_factor(
    interest: Any, periods: Any, *, units: Units = None
) -> float | FloatArray:
    """A/P; a rate of 5 % is 0.05."""
    given = {"interest": (interest, "1"), "periods": (periods, "1")}
    return plain(_core.capital_recovery_factor, units, **given)


@described_by(_core.series_present_worth_factor)
def series_present_worth_factor(
    interest: Any, periods: Any, *, units: Units = None
) -> float | FloatArray:
    """P/A; a rate of 5 % is 0.05."""
    given = {"interest": (interest, "1"), "periods": (periods, "1")}
    return plain(_core.series_present_worth_factor, units, **given)


@described_by(_core.gradient_present_worth_factor)
def gradient_present_worth_factor(
    interest: Any, periods: Any, *, units: Units = None
) -> float | FloatArray:
    """P/G; a rate of 5 % is 0.05."""
    given = {"interest": (interest, "1"), "periods": (periods, "1")}
    return plain(_core.gradient_present_worth_factor, units, **given)


@described_by(_core.gradient_series_factor)
def gradient_series_factor(
    interest: Any, periods: Any, *, units: Units = None
) -> float | FloatArray:
    """A/G; a rate of 5 % is 0.05."""
    given = {"interest": (interest, "1"), "periods": (periods, "1")}
    return plain(_core.gradient_series_factor, units, **given)


@described_by(_core.nominal_rate)
def nominal_rate(real: Any, inflation: Any, *, units: Units = None) -> float | FloatArray:
    """A rate of 5 % is 0.05."""
    given = {"real": (real, "1"), "inflation": (inflation, "1")}
    return plain(_core.nominal_rate, units, **given)


@described_by(_core.real_rate)
def real_rate(nominal: Any, inflation: Any, *, units: Units = None) -> float | FloatArray:
    """A rate of 5 % is 0.05."""
    given = {"nominal": (nominal, "1"), "inflation": (inflation, "1")}
    return plain(_core.real_rate, units, **given)


@described_by(_core.implied_inflation)
def implied_inflation(nominal: Any, real: Any, *, units: Units = None) -> float | FloatArray:
    """A rate of 5 % is 0.05."""
    given = {"nominal": (nominal, "1"), "real": (real, "1")}
    return plain(_core.implied_inflation, units, **given)


@described_by(_core.rate_for_term)
def rate_for_term(
    term: Any,
    shorter: Any,
    shorter_rate: Any,
    longer: Any,
    longer_rate: Any,
    *,
    units: Units = None,
) -> float | FloatArray:
    """Terms as ``"4 years"``."""
    given = {
        "term": (term, "s"),
        "shorter": (shorter, "s"),
        "shorter_rate": (shorter_rate, "1"),
        "longer": (longer, "s"),
        "longer_rate": (longer_rate, "1"),
    }
    return plain(_core.rate_for_term, units, **given)


@described_by(_core.present_worth)
def present_worth(
    annual: Any, interest: Any, years: Any, *, units: Units = None
) -> float | FloatArray:
    """A rate of 5 % is 0.05. In the currency of the prices."""
    given = {"annual": (annual, "currency"), "interest": (interest, "1"), "years": (years, "1")}
    return amount_of(_core.present_worth, units, **given)


@described_by(_core.escalated)
def escalated(
    amount: Any, inflation: Any, start: Any, length: Any, *, units: Units = None
) -> float | FloatArray:
    """`inflation` a year; `start` and `length` as ``"8 weeks"``. In the currency of the prices."""
    given = {
        "amount": (amount, "currency"),
        "inflation": (inflation, "1"),
        "start": (start, "s"),
        "length": (length, "s"),
    }
    return amount_of(_core.escalated, units, **given)
