"""What an hour of a person costs."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Units, described_by
from scupper._money import amount_of, plain, rate_of, time_of

if TYPE_CHECKING:
    from scupper._arguments import FloatArray
    from scupper.units import Quantity


@described_by(_core.capped_tax_share)
def capped_tax_share(
    tax_rate: Any, year_pay: Any, cap: Any, *, units: Units = None
) -> float | FloatArray:
    """A tax of 6.2 % is 0.062; money as ``"168,600 USD"``."""
    given = {
        "tax_rate": (tax_rate, "1"),
        "year_pay": (year_pay, "currency"),
        "cap": (cap, "currency"),
    }
    return plain(_core.capped_tax_share, units, **given)


@described_by(_core.capped_tax)
def capped_tax(
    tax_rate: Any, earned: Any, pay: Any, cap: Any, *, units: Units = None
) -> float | FloatArray:
    """A tax of 6.2 % is 0.062. In the currency of the prices."""
    given = {
        "tax_rate": (tax_rate, "1"),
        "earned": (earned, "currency"),
        "pay": (pay, "currency"),
        "cap": (cap, "currency"),
    }
    return amount_of(_core.capped_tax, units, **given)


@described_by(_core.leave_factor)
def leave_factor(paid: Any, worked: Any, *, units: Units = None) -> float | FloatArray:
    """As ``"2,080 h"`` and ``"1,776 h"``."""
    given = {"paid": (paid, "s"), "worked": (worked, "s")}
    return plain(_core.leave_factor, units, **given)


@described_by(_core.overtime_base)
def overtime_base(cash: Any, basic: Any, *, units: Units = None) -> float | FloatArray:
    """As ``"22 USD/h"``. In the currency of the prices, an hour."""
    given = {"cash": (cash, "currency/s"), "basic": (basic, "currency/s")}
    return rate_of(_core.overtime_base, units, **given)


@described_by(_core.week_pay)
def week_pay(
    hours: Any,
    cash: Any,
    fringe: Any,
    basic: Any,
    limit: Any = "40 h",
    factor: Any = 1.5,
    *,
    units: Units = None,
) -> float | FloatArray:
    """As ``week_pay("44 h", "20 USD/h", "7 USD/h", "22 USD/h")``. In the currency of the prices."""
    given = {
        "hours": (hours, "s"),
        "cash": (cash, "currency/s"),
        "fringe": (fringe, "currency/s"),
        "basic": (basic, "currency/s"),
        "limit": (limit, "s"),
        "factor": (factor, "1"),
    }
    return amount_of(_core.week_pay, units, **given)


@described_by(_core.labour_hour)
def labour_hour(
    cash: Any,
    fringe: Any,
    burden: Any,
    leave: Any = 1.0,
    allowance: Any = "0 USD/h",
    *,
    units: Units = None,
) -> float | FloatArray:
    """A burden of 20 % is 0.2. In the currency of the prices, an hour."""
    given = {
        "cash": (cash, "currency/s"),
        "fringe": (fringe, "currency/s"),
        "burden": (burden, "1"),
        "leave": (leave, "1"),
        "allowance": (allowance, "currency/s"),
    }
    return rate_of(_core.labour_hour, units, **given)


@described_by(_core.overtime_premium)
def overtime_premium(
    cash: Any, basic: Any, factor: Any = 1.5, burden: Any = 0.0, *, units: Units = None
) -> float | FloatArray:
    """A burden of 20 % is 0.2. In the currency of the prices, an hour."""
    given = {
        "cash": (cash, "currency/s"),
        "basic": (basic, "currency/s"),
        "factor": (factor, "1"),
        "burden": (burden, "1"),
    }
    return rate_of(_core.overtime_premium, units, **given)


@described_by(_core.show_up_time)
def show_up_time(worked: Any, least: Any, *, units: Units = None) -> Quantity:
    """In s."""
    given = {"worked": (worked, "s"), "least": (least, "s")}
    return time_of(_core.show_up_time, units, **given)
