"""What an award sheet shows, the same on paper and in a workbook."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    import pandas as pd

    from scupper._daily_cost import DailyCost
    from scupper.bid_review import BidReview

#: Symbols beside a price, so that nothing rests on colour.
MARKS = {"above": "▲", "below": "▼", "token": "○", "outlier": "◆", "corrected": "✎"}
MEANINGS = {
    "▲": "far above the level of the rest of the bid",
    "▼": "far below it",
    "○": "next to nothing",
    "◆": "far from the other bids",
    "✎": "the written extension, total or words say otherwise",
}
CAUTIONS = (
    "A mark is a question to ask, not a verdict; the agency decides by its own rules.",
    "Not legal advice: procurement rules are local, and the instructions to bidders govern.",
)


class AwardFacts:
    """Facts of an award sheet, from a review and what was asked of it beside."""

    def __init__(
        self,
        review: BidReview,
        reversal: Mapping[str, Any] | None = None,
        early: Mapping[str, Mapping[str, Any]] | None = None,
        time: pd.DataFrame | None = None,
    ) -> None:
        self.review = review
        self.reversal = reversal
        self.early = dict(early or {})
        self.time = time
        self.flags = review.unbalanced()
        self.reference = "estimate" if review.has_estimate else "median"

    @property
    def bids(self) -> list[dict[str, Any]]:
        """Rows of bids, the low one first, those without a total last."""
        table = self.review.summary.reset_index()
        table["order"] = table["rank"].where(table["rank"] > 0, len(table) + 1)
        rows: Any = table.sort_values(["order", "bidder"]).to_dict("records")
        return list(rows)

    @property
    def low_as_read(self) -> str | None:
        """Who is low by the totals as read."""
        summary = self.review.summary
        return next(iter(summary.index[summary["rank_as_read"] == 1]), None)

    def marks(self, bidder: str) -> dict[str, str]:
        """Symbols by item of one bid."""
        found: dict[str, str] = {}
        review = self.review
        for table, kinds in (
            (review.findings.query("irregular"), None),
            (self.flags, "kind"),
            (review.outliers, None),
        ):
            for row in table[table["bidder"] == bidder].to_dict("records"):
                plain = "outlier" if "score" in row else "corrected"
                mark = MARKS[row[kinds] if kinds else plain]
                if mark not in found.get(row["item"], ""):
                    found[row["item"]] = found.get(row["item"], "") + mark
        return found

    @property
    def ties(self) -> list[dict[str, Any]]:
        """Crossover quantities within the range of their item, the nearest to the form first."""
        table = self.review.crossovers.query("in_range").copy()
        if table.empty:
            return []
        form = self.review.items["quantity"].map(float)
        table["form"] = table["item"].map(form)
        table["change"] = table["quantity"] / table["form"] - 1.0
        table["unit"] = table["item"].map(self.review.items["unit"])
        rows: Any = table.sort_values("change", key=abs).to_dict("records")
        return list(rows)

    @property
    def joint(self) -> list[dict[str, Any]]:
        """Bids that the low one can lose to where all quantities move, the nearest first."""
        table = self.review.joint_changes.query("share == share").sort_values("share")
        rows: Any = table.to_dict("records")
        return list(rows)

    @property
    def timed(self) -> list[dict[str, Any]]:
        """Rows of bids with their days counted, the least first; nothing where nobody asked."""
        if self.time is None:
            return []
        table = self.time.reset_index()
        table["order"] = table["rank"].where(table["rank"] > 0, len(table) + 1)
        rows: Any = table.sort_values(["order", "bidder"]).to_dict("records")
        return list(rows)

    @property
    def daily_cost(self) -> DailyCost | None:
        """What a day was counted at."""
        return None if self.time is None else self.time.attrs["daily_cost"]

    @property
    def telling_item(self) -> str | None:
        """The item whose quantity turns the order with the least change."""
        return self.ties[0]["item"] if self.ties else None

    @property
    def sentences(self) -> list[str]:
        """The sheet in a few sentences."""
        review, spread = self.review, self.review.spread
        if review.low is None:
            return ["No bid prices every base item; none can be ranked."]
        lines = [
            f"Low as read: {self.low_as_read}. Low as corrected: {review.low}, "
            f"{amount(spread['low'])}."
        ]
        if spread["left_on_the_table"] is not None:
            lines.append(
                f"Left on the table: {amount(spread['left_on_the_table'])} "
                f"({spread['left_share']:.1%} of the low bid)."
            )
        near = f"{spread['within_20_percent']} of {len(review.bidders)} bids within 20 % of low"
        lines.append(near + (": excellent." if spread["excellent_competition"] else "."))
        if self.reversal is not None:
            lines.append(reversal_sentence(self.reversal, review.currency))
        return lines


def reversal_sentence(found: Mapping[str, Any], currency: str) -> str:
    """The chance in words."""
    return (
        f"In {found['chance']:.1%} (± {found['error']:.1%}) of {found['draws']:,} draws of the "
        f"quantities {found['low']} is not the low bid at the end; over all draws it costs "
        f"{currency} {found['regret']:,.0f} more than the least, on average."
    )


def amount(value: Decimal | None) -> str:
    """An exact amount in print, with cents at least; a dash where there is none."""
    if value is None:
        return "–"
    return f"{value:,}" if int(value.as_tuple().exponent) < -1 else f"{value:,.2f}"


def counted(value: Decimal) -> str:
    """An exact quantity in print."""
    return f"{value:,}"
