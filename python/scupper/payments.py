"""Money in time: what a contract pays when, and what waiting for it costs."""

from __future__ import annotations

import datetime
from typing import TYPE_CHECKING, Any

from scupper._frames import frame

if TYPE_CHECKING:
    import pandas as pd


class CashFlow:
    """Payments period by period under the ``terms`` of a job; no price contains them.

    Attributes
    ----------
    first : datetime.date or None
        The first day of work, with which the first period begins; None without a calendar.
    held_cost : float
        Present worth lost by waiting for what is kept back, in `currency`.
    table : pandas.DataFrame
        By period, from 1: begins (NaT without a calendar), earned, kept, paid, outstanding.
    """

    def __init__(
        self, first: datetime.date | None, table: pd.DataFrame, held_cost: float, currency: str
    ) -> None:
        self.first = first
        self.table = table
        self.held_cost = held_cost
        self.currency = currency

    def __repr__(self) -> str:
        money = f"{self.currency} "
        kept = self.table["outstanding"].max()
        earned = self.table["earned"].sum()
        return (
            f"<CashFlow: {len(self.table)} periods, earned {money}{earned:,.0f}, at most "
            f"{money}{kept:,.0f} held back, which costs {money}{self.held_cost:,.2f}>"
        )


def cash_flow_of(core: tuple[str, float, dict[str, Any], float], currency: str) -> CashFlow:
    """The payments that the core laid out."""
    import pandas as pd

    begins, interval, columns, held_cost = core
    table = frame(columns, ["earned", "kept", "paid", "outstanding"])
    periods = pd.RangeIndex(1, len(table) + 1, name="period")
    table.index = periods
    start = pd.to_datetime(begins) if begins else pd.NaT
    table.insert(0, "begins", [start + pd.Timedelta(seconds=interval) * (k - 1) for k in periods])
    table["begins"] = pd.to_datetime(table["begins"]).dt.floor("D")
    first = datetime.date.fromisoformat(begins) if begins else None
    return CashFlow(first, table, held_cost, currency)
