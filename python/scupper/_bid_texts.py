"""Bids as texts for the core: from forms that were read, or from tables."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from scupper.errors import InputError

if TYPE_CHECKING:
    import pandas as pd

_ENGINEER = "engineer's estimate"


@dataclass
class FrameBids:
    """Bids given as tables, in the shape of forms that were read."""

    table: pd.DataFrame
    by_bidder: dict[str, pd.DataFrame]
    estimate: pd.DataFrame | None
    written: dict[str, Any]
    days: dict[str, Any]
    currency: str

    @property
    def items(self) -> pd.DataFrame:
        """The items with every column."""
        given = {"description": "", "kind": "base", "group": ""}
        blank = {name: value for name, value in given.items() if name not in self.table}
        return self.table.assign(**blank)

    @property
    def title(self) -> str:
        """Tables have none."""
        return ""

    @property
    def bidders(self) -> list[str]:
        """Who bids."""
        return list(self.by_bidder)

    @property
    def totals(self) -> dict[str, Any]:
        """Totals as written."""
        return self.written

    @property
    def engineer(self) -> str | None:
        """The name under which the estimate stands."""
        return None if self.estimate is None else _ENGINEER

    def lines(self, bidder: str) -> pd.DataFrame:
        """What a bidder wrote."""
        table = self.by_bidder.get(bidder, self.estimate)
        if table is None:
            raise InputError("bid.bidder", "bidder", f'"{bidder}"', "one of the bidders")
        return table


def item_texts(bids: Any, ranges: Any) -> list[Any]:
    """Code, description, unit, quantity, low, high, kind and group of every item."""
    table = _ranges(ranges)
    rows = []
    for row in bids.items.to_dict("records"):
        quantity = str(row["quantity"])
        low, high = table.get(str(row["code"]), (quantity, quantity))
        rows.append((str(row["code"]), row["description"], row["unit"], quantity, low, high,
                     row["kind"], row["group"]))  # fmt: skip
    return rows


def bid_texts(bids: Any) -> tuple[list[Any], Any]:
    """Every bid, and the engineer's estimate."""
    days, engineer = _days(bids), _engineer(bids)
    given = [_bid(bids, bidder, days) for bidder in bids.bidders]
    return given, None if engineer is None else _bid(bids, engineer, days)


def _bid(bids: Any, bidder: str, days: dict[str, Any]) -> tuple[Any, ...]:
    lines = []
    file, sheet = _sheets(bids).get(bidder, ("", ""))
    for row in bids.lines(bidder).to_dict("records"):
        figure = {k: _text(row.get(k)) for k in ("quantity", "unit_price", "extension",
                                                 "price_in_words")}  # fmt: skip
        lines.append((str(row["code"]), figure["quantity"], figure["unit_price"],
                      figure["extension"], _text(row.get("words")) or "", figure["price_in_words"],
                      file, sheet, int(row.get("line") or 0)))  # fmt: skip
    return bidder, lines, _text(bids.totals.get(bidder)), _text(days.get(bidder))


def _sheets(bids: Any) -> dict[str, tuple[str, str]]:
    """The file and sheet of every bid that was read."""
    sheets = getattr(bids, "sheets", [])
    return {bid.bidder: (sheet.file, sheet.sheet) for sheet in sheets for bid in sheet.bids}


def _engineer(bids: Any) -> str | None:
    if hasattr(bids, "engineer"):
        return bids.engineer  # type: ignore[no-any-return]
    engineer = bids.core.engineer
    return None if engineer is None else engineer.bidder


def _days(bids: Any) -> dict[str, Any]:
    if hasattr(bids, "days"):
        return bids.days  # type: ignore[no-any-return]
    return {bid.bidder: bid.days for bid in bids.core.bids}


def _ranges(ranges: Any) -> dict[str, tuple[str, str]]:
    if ranges is None:
        return {}
    table = ranges.to_pandas() if hasattr(ranges, "to_pandas") else ranges
    table = table.set_index("code") if "code" in table else table
    for name in ("low", "high"):
        if name not in table:
            raise InputError("bid.range", "ranges", f"no column {name}", "columns low and high")
    return {str(code): (str(row["low"]), str(row["high"])) for code, row in table.iterrows()}


def _text(value: Any) -> str | None:
    """A figure as text; None for what is blank or not a number."""
    if value is None or value != value or value == "":
        return None
    return str(value)
