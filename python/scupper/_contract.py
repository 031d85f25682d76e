"""Water, disposal, and terms of a contract that cost money."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Arguments, Units, described_by
from scupper._frames import frame
from scupper._money import amount_of, require_one_currency
from scupper.errors import InputError

if TYPE_CHECKING:
    import pandas as pd

    from scupper._arguments import FloatArray


@described_by(_core.hydrant_water)
def hydrant_water(
    volume: Any, price: Any, fee: Any = "0 USD", *, units: Units = None
) -> float | FloatArray:
    """In the currency of the prices."""
    given = {"volume": (volume, "m3"), "price": (price, "currency/m3"), "fee": (fee, "currency")}
    return amount_of(_core.hydrant_water, units, **given)


@described_by(_core.hauled_water)
def hauled_water(
    volume: Any, price: Any, tank: Any, trip: Any, rate: Any, *, units: Units = None
) -> float | FloatArray:
    """In the currency of the prices."""
    given = {
        "volume": (volume, "m3"),
        "price": (price, "currency/m3"),
        "tank": (tank, "m3"),
        "trip": (trip, "s"),
        "rate": (rate, "currency/s"),
    }
    return amount_of(_core.hauled_water, units, **given)


@described_by(_core.disposal_by_mass)
def disposal_by_mass(
    mass: Any, price: Any, least: Any = "0 USD", *, units: Units = None
) -> float | FloatArray:
    """In the currency of the prices."""
    given = {"mass": (mass, "kg"), "price": (price, "currency/kg"), "least": (least, "currency")}
    return amount_of(_core.disposal_by_mass, units, **given)


@described_by(_core.disposal_by_load)
def disposal_by_load(loads: Any, charge: Any, *, units: Units = None) -> float | FloatArray:
    """In the currency of the prices."""
    given = {"loads": (loads, "1"), "charge": (charge, "currency")}
    return amount_of(_core.disposal_by_load, units, **given)


@described_by(_core.varied_payment)
def varied_payment(
    quantity: Any,
    planned: Any,
    price: Any,
    limit: Any = 0.25,
    price_over: Any = None,
    price_under: Any = None,
    *,
    units: Units = None,
) -> float | FloatArray:
    """Quantities in the unit of the item; in the currency of the prices.

    Prices over and under the limit that are not given are that of the contract.
    """
    over = price if price_over is None else price_over
    under = price if price_under is None else price_under
    given = {
        "quantity": (quantity, "1"),
        "planned": (planned, "1"),
        "price": (price, "currency"),
        "limit": (limit, "1"),
        "price_over": (over, "currency"),
        "price_under": (under, "currency"),
    }
    return amount_of(_core.varied_payment, units, **given)


@described_by(_core.retained)
def retained(
    earned: Any, share: Any, kept: Any, limit: Any, *, units: Units = None
) -> float | FloatArray:
    """A share of 5 % is 0.05. In the currency of the prices."""
    given = {
        "earned": (earned, "currency"),
        "share": (share, "1"),
        "kept": (kept, "currency"),
        "limit": (limit, "currency"),
    }
    return amount_of(_core.retained, units, **given)


@described_by(_core.conversion_differential)
def conversion_differential(
    personnel_cost: Any, share: Any = 0.1, most: Any = "10,000,000 USD", *, units: Units = None
) -> float | FloatArray:
    """In the currency of the prices."""
    given = {
        "personnel_cost": (personnel_cost, "currency"),
        "share": (share, "1"),
        "most": (most, "currency"),
    }
    return amount_of(_core.conversion_differential, units, **given)


@described_by(_core.distributed)
def distributed(indirect: Any, direct: Any, all: Any, *, units: Units = None) -> float | FloatArray:
    """In the currency of the prices."""
    given = {
        "indirect": (indirect, "currency"),
        "direct": (direct, "currency"),
        "all": (all, "currency"),
    }
    return amount_of(_core.distributed, units, **given)


@described_by(_core.unit_cost)
def unit_cost(amount: Any, quantity: Any, *, units: Units = None) -> float | FloatArray:
    """For one unit of the quantity, in the currency of the amount."""
    given = {"amount": (amount, "currency"), "quantity": (quantity, "1")}
    return amount_of(_core.unit_cost, units, **given)


@described_by(_core.hire)
def hire(time: Any, pieces: Any, rate: Any, *, units: Units = None) -> float | FloatArray:
    """As ``hire("16.3 h", 1, "268.97 USD/h")``; in the currency of the rate."""
    given = {"time": (time, "s"), "pieces": (pieces, "1"), "rate": (rate, "currency/s")}
    return amount_of(_core.hire, units, **given)


@dataclass(frozen=True)
class CashFlow:
    """The payments of a contract with retainage.

    Attributes
    ----------
    periods : pandas.DataFrame
        By period from 1: earned, kept, paid, outstanding.
    waiting_cost : float
        Present worth lost by waiting for what is kept back.
    """

    periods: pd.DataFrame
    waiting_cost: float


@described_by(_core.retainage)
def retainage(
    earned: Any,
    share: float = 0.05,
    *,
    limit_share: float = 1.0,
    release_after: int = 0,
    interest: float = 0.0,
    units: Units = None,
) -> CashFlow:
    """`earned` as a list of amounts; `interest` is the rate of a period."""
    given = {"earned": (earned, "currency")}
    require_one_currency(units, given)
    arguments = Arguments(units)
    arguments.add("earned", earned, "currency")
    (worth,) = arguments.shaped()
    if worth.ndim != 1 or release_after < 0:
        found = f"{worth.shape} amounts, released after {release_after} periods"
        raise InputError(
            "cost.periods", "earned", found, "a list of amounts, and 0 or more periods"
        )
    columns, waiting = _core.retainage(worth, share, limit_share, release_after, interest)
    periods = frame(columns)
    periods.index = periods.index + 1
    return CashFlow(periods.rename_axis("period"), waiting)
