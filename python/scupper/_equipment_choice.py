"""Equipment that would have to be bought, worth of flows of money, time of a season."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import described_by, single
from scupper._frames import frame
from scupper.units import in_pint

if TYPE_CHECKING:
    import pandas as pd

    from scupper.units import Quantity


def _purchase(price: Any, loses: Any, operating: Any, growth: Any, interest: Any) -> _core.Purchase:
    return _core.Purchase(
        single("price", price, "currency", None),
        single("loses", loses, "1", None),
        single("operating", operating, "currency", None),
        single("growth", growth, "currency", None),
        single("interest", interest, "1", None),
    )


@described_by(_core.annual_cost)
def annual_cost(
    price: Any,
    years: int,
    *,
    loses: Any = "20 %",
    operating: Any = "0 USD",
    growth: Any = "0 USD",
    interest: Any = "3 %",
) -> float:
    """`loses` is the share of its value that equipment loses a year; amounts in one currency."""
    return _core.annual_cost(_purchase(price, loses, operating, growth, interest), years)


def economic_life(
    price: Any,
    *,
    loses: Any = "20 %",
    operating: Any = "0 USD",
    growth: Any = "0 USD",
    interest: Any = "3 %",
    most: int = 30,
) -> pd.DataFrame:
    """Equivalent annual cost by the age at which equipment is replaced by its like.

    Parameters
    ----------
    price
        What it is bought for.
    loses
        Share of its value at a year's beginning that it loses in the year.
    operating, growth
        Operating and repair in the first year, and by how much that grows every year.
    interest
        A year; real where costs are of today, and it may be below 0.
    most
        The last age that is looked at.

    Returns
    -------
    pandas.DataFrame
        By years kept: annual_cost, least (where it is least; at `most` it may lie beyond).
    """
    purchase = _purchase(price, loses, operating, growth, interest)
    years, _, by_age, _ = _core.economic_life(purchase, most)
    ages = range(1, len(by_age) + 1)
    rows = {"years": list(ages), "annual_cost": by_age, "least": [age == years for age in ages]}
    return frame(rows).set_index("years")


@described_by(_core.net_present_value)
def net_present_value(
    flows: Sequence[float],
    rate: Any,
    *,
    prices: str,
    rate_of: str,
    inflation: Any = None,
) -> float:
    """`prices` and `rate_of` are ``"real"`` or ``"nominal"``; two kinds need `inflation`."""
    known = None if inflation is None else single("inflation", inflation, "1", None)
    si = single("rate", rate, "1", None)
    return _core.net_present_value(list(flows), prices, si, rate_of, known)


def discount_rates() -> pd.DataFrame:
    """Published discount rates: edition, kind, years, rate, source, note."""
    return frame(_core.discount_rates())


@described_by(_core.discount_rate)
def discount_rate(years: float, *, edition: int = 2021, kind: str = "real") -> float:
    """`kind` is ``"real"`` or ``"nominal"``; a rate of 5 % is 0.05."""
    return _core.discount_rate(edition, kind, years)


@described_by(_core.available_time)
def available_time(
    number: float,
    days: float,
    shift: Any,
    *,
    shifts: float = 1.0,
    leave: Any = 0.0,
    lost: Any = 0.0,
) -> Quantity:
    """`sc.year(...).load` counts the days of a calendar's season."""
    length = single("shift", shift, "s", None)
    share = [single(name, value, "1", None) for name, value in (("leave", leave), ("lost", lost))]
    return in_pint(_core.available_time(number, days, shifts, length, *share), "s")
