"""Charts of bids that print without colour: lines by their dashes, bars by their hatching."""

from __future__ import annotations

from decimal import Decimal
from itertools import cycle
from typing import TYPE_CHECKING, Any

from scupper._charts import as_svg

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

    from scupper.bid_review import BidReview

_HATCHES = ("", "////", "....", "xxxx", "\\\\\\\\", "----", "oooo", "++++")
_GREYS = ("0.15", "1.0", "1.0", "0.85", "1.0", "0.7", "1.0", "1.0")
_DASHES = ("-", "--", "-.", ":", (0, (7, 1, 1, 1, 1, 1)), (0, (1, 3)), (0, (10, 3)))
_MARKS = ("o", "s", "^", "D", "v", "P", "X")
_NEAREST = 6
_WIDTH, _HEIGHT = 7.3, 2.05  # inches: three stand on a page
_POINTS = 8


def by_group(review: BidReview) -> Figure:
    """A bar a bidder and group of items."""
    base = review.items["kind"] == "base"
    groups = review.items["group"].replace("", "items")[base]
    rows = {"estimate": _extended(review, "estimate")} if review.has_estimate else {}
    rows |= {bidder: review.prices(bidder)["extension"] for bidder in _complete(review)}
    sums = {name: amounts[base].map(_number).groupby(groups, sort=False).sum()
            for name, amounts in rows.items()}  # fmt: skip
    figure, axes = _figure()
    names = list(dict.fromkeys(groups))
    width = 0.84 / max(len(sums), 1)
    looks = zip(sums.items(), cycle(_HATCHES), cycle(_GREYS))
    for at, ((name, amounts), hatch, grey) in enumerate(looks):
        places = [i - 0.42 + width * (at + 0.5) for i in range(len(names))]
        axes.bar(places, [amounts[group] for group in names], width, label=name, hatch=hatch,
                 facecolor=grey, edgecolor="black", linewidth=0.7)  # fmt: skip
    axes.set_xticks(range(len(names)), names)
    axes.set_ylabel(review.currency)
    _legend(axes)
    return figure


def cumulative(review: BidReview) -> Figure:
    """Bids along the items of the form, less the estimate or the median prices."""
    base = review.items["kind"] == "base"
    against = "estimate" if review.has_estimate else "median"
    known = base & review.items[against].notna()
    reference = _extended(review, against)[known].cumsum()
    figure, axes = _figure(_HEIGHT + 0.35)  # names of items stand beneath
    looks = zip(_complete(review), cycle(_DASHES), cycle(_MARKS))
    for bidder, dash, mark in looks:
        extension = review.prices(bidder)["extension"][known].map(_number)
        axes.plot(range(len(extension)), extension.cumsum() - reference, color="black", lw=1.1,
                  ls=dash, marker=mark, ms=3.5, mfc="white", label=bidder)  # fmt: skip
    axes.axhline(0, color="black", lw=0.6)
    axes.set_xticks(range(int(known.sum())), list(review.items.index[known]), rotation=40,
                    ha="right", rotation_mode="anchor")  # fmt: skip
    axes.set_ylabel(review.currency)
    axes.set_title(f"bids so far, less the {against}", loc="left", fontsize=_POINTS)
    _legend(axes)
    return figure


def crossover(review: BidReview, item: str) -> Figure:
    """Totals of the nearest bids over one quantity, with its range and the ties of the low one."""
    row = review.items.loc[item]
    least, quantity, most = (float(str(row[k])) for k in ("least", "quantity", "most"))
    ties = review.crossovers.query("item == @item")
    inside = ties.loc[ties["in_range"], "quantity"]
    low, high = min([least, quantity, *inside]), max([most, quantity, *inside])
    margin = 0.15 * ((high - low) or quantity or 1.0)
    ends = [max(low - margin, 0.0), high + margin]
    figure, axes = _figure()
    if most > least:
        axes.axvspan(least, most, color="0.92", label="range of the quantity")
    _lines(review, axes, item, ends)
    axes.axvline(quantity, color="black", lw=0.7, ls=(0, (1, 1)), label="on the form")
    for tie in inside:
        total = review.totals_at({item: float(tie)})[str(review.low)]
        axes.plot(float(tie), float(total), "o", color="black", ms=6, zorder=5)
    axes.set_xlim(*ends)
    axes.set_xlabel(f"{item}, {row['unit']}: {row['description']}")
    axes.set_ylabel(f"total, {review.currency}")
    axes.xaxis.set_major_formatter("{x:,.0f}")
    _legend(axes)
    return figure


def _lines(review: BidReview, axes: Axes, item: str, ends: list[float]) -> None:
    totals = [review.totals_at({item: float(end)}) for end in ends]
    nearest = review.summary.query("rank > 0").sort_values("rank").index[:_NEAREST]
    for bidder, dash in zip(nearest, cycle(_DASHES)):
        weight = 1.8 if bidder == review.low else 1.0
        axes.plot(ends, [float(t[bidder]) for t in totals], color="black", ls=dash, lw=weight,
                  label=f"{bidder}{' (low)' if bidder == review.low else ''}")  # fmt: skip


def svg(figure: Figure) -> str:
    """A chart that stands in HTML."""
    return as_svg(figure)


def _extended(review: BidReview, prices: str) -> Any:
    return review.items[prices].map(_number) * review.items["quantity"].map(_number)


def _complete(review: BidReview) -> list[str]:
    return list(review.summary.index[review.summary["rank"] > 0])


def _number(amount: Decimal | None) -> float:
    return float("nan") if amount is None else float(amount)


def _legend(axes: Axes) -> None:
    """Beside the picture, at the size of its figures."""
    axes.legend(frameon=False, loc="center left", bbox_to_anchor=(1.0, 0.5), fontsize=_POINTS)


def _figure(height: float = _HEIGHT) -> tuple[Figure, Axes]:
    from matplotlib.figure import Figure

    figure = Figure(figsize=(_WIDTH, height), layout="constrained")
    axes = figure.add_subplot()
    axes.spines[["top", "right"]].set_visible(False)
    axes.yaxis.set_major_formatter("{x:,.0f}")
    axes.tick_params(labelsize=_POINTS)
    for axis in (axes.xaxis, axes.yaxis):
        axis.label.set_fontsize(_POINTS)
    return figure, axes
