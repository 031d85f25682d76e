"""The road-user cost of a day of closures, for bids that are compared by cost plus time."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal, InvalidOperation
from typing import Any

from scupper import _core, _report
from scupper.errors import InputError
from scupper.estimating import Estimate
from scupper.programme import Programme
from scupper.road_users import RoadUsers


@dataclass(frozen=True)
class DailyCost:
    """What a day on which a road is closed costs its users, and what that rests on.

    Attributes
    ----------
    amount : decimal.Decimal
        Cost of a day, to the minor unit; exact from here on.
    currency : str
        Three-letter code.
    by_hand : bool
        Whether somebody gave the amount; then the rest is empty.
    total, days : float
        Road-user cost of all closures, and the days they take: `amount` is one over the other.
    closures : float
        How many there are.
    structures : int
        How many have a closure.
    closed_h : float
        Hours that a closure stands, on average.
    begins : tuple of int
        Hours at which the earliest and the latest closure begin.
    sources, cautions : tuple of str
        Values of time and whose they are; what the figures rest on.
    """

    amount: Decimal
    currency: str
    by_hand: bool = True
    total: float = 0.0
    days: float = 0.0
    closures: float = 0.0
    structures: int = 0
    closed_h: float = 0.0
    begins: tuple[int, int] = (0, 0)
    sources: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()

    @property
    def text(self) -> str:
        """How the amount comes about, in a sentence."""
        if self.by_hand:
            return f"{self.currency} {self.amount:,} a day, as given."
        first, last = self.begins
        hours = f"{first}:00" if first == last else f"{first}:00 to {last}:00"
        places = "1 structure" if self.structures == 1 else f"{self.structures:,} structures"
        return (
            f"{self.currency} {self.amount:,} a day: road-user cost of {self.total:,.2f} over "
            f"{self.days:,.4g} days with {self.closures:,.4g} closures at {places}; a closure "
            f"stands {self.closed_h:,.1f} h on average and begins at {hours}."
        )

    def _lines(self) -> _report.Lines:
        return [
            ("daily cost", self.text),
            *(("source", source) for source in self.sources),
            *(("caution", caution) for caution in self.cautions),
        ]

    def __repr__(self) -> str:
        return _report.text(self._lines())

    def _repr_html_(self) -> str:
        return _report.html(self._lines())


def daily_cost_of(cost: Any, currency: str) -> DailyCost:
    """An amount by hand, or the cost of a day of closures, in the currency of the bids."""
    if isinstance(cost, RoadUsers | Estimate | Programme):
        cost = daily_cost(cost)
    if not isinstance(cost, DailyCost):
        return DailyCost(_decimal(cost), currency)
    if cost.currency != currency:
        raise InputError("bid.currency", "daily_cost", cost.currency, currency)
    return cost


def _decimal(amount: Any) -> Decimal:
    try:
        return Decimal(str(amount))
    except InvalidOperation:
        allowed = "an amount, road users, an estimate or a programme"
        raise InputError("bid.daily_cost", "daily_cost", f'"{amount}"', allowed) from None


def daily_cost(closures: RoadUsers | Estimate | Programme) -> DailyCost:
    """The road-user cost of a day of closures: what an owner counts a day of a bid at.

    At one structure a closure stands once a day. A programme's crew may close two structures in a
    day, so that its days are its crew-shifts. An agency that has published its own cost of a day
    gives that number instead.

    Parameters
    ----------
    closures
        The traffic past a closure (``est.road_users``), an estimate, or a programme.

    Raises
    ------
    InputError
        Where there is no closure, or where a cost cannot be figured: it says what is missing.
    """
    days: float | None = None
    if isinstance(closures, RoadUsers):
        users = [closures]
    elif isinstance(closures, Estimate):
        users = [closures.road_users]
    elif isinstance(closures, Programme):
        users = [one.road_users for one in closures.estimates()]
        days, _ = closures.total_of("shift.count")
    else:
        raise InputError("bid.daily_cost", "closures", type(closures).__name__,
                         "road users, an estimate or a programme")  # fmt: skip
    currency = closures.currency
    core = _core.daily_cost([one._core for one in users], currency, days)
    return DailyCost(
        amount=Decimal(core.amount),
        currency=currency,
        by_hand=False,
        total=core.total,
        days=core.days,
        closures=core.closures,
        structures=core.structures,
        closed_h=core.closed_hours,
        begins=(core.earliest, core.latest),
        sources=tuple(core.sources),
        cautions=tuple(core.cautions),
    )
