"""Bids checked by a rule and beside each other. A flag is a question; the agency decides."""

from __future__ import annotations

import os
from collections.abc import Mapping, Sequence
from decimal import Decimal
from functools import cached_property
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._bid_texts import FrameBids, bid_texts, item_texts
from scupper._files import write_whole
from scupper._frames import frame
from scupper.errors import FileError, InputError, UnknownNameError

if TYPE_CHECKING:
    import pandas as pd
    from matplotlib.figure import Figure

_MONEY = ("as_read", "corrected", "sum", "gap", "least_gap", "left_on_the_table", "second", "price",
          "read_price", "extension", "read_extension", "quantity", "least", "most", "estimate",
          "low", "median", "high", "deviation", "days")  # fmt: skip


class BidReview:
    """Bids on one form: as read and corrected, ranked, item by item, with what is out of line.

    Amounts are exact (``decimal.Decimal``, None where there is none); ratios are numbers. Not legal
    advice: procurement rules are local.
    """

    def __init__(self, core: _core.BidReview, currency: str, governs: str, title: str = "") -> None:
        self._core = core
        self.currency = currency
        self.governs = governs
        #: What the contract is called, as on the first form; empty where that does not say.
        self.title = title

    @cached_property
    def summary(self) -> pd.DataFrame:
        """One row a bidder, in the order of the files: as_read, rank_as_read, corrected, rank (0
        without a total), over_low, over_estimate (ratios), irregular, days."""
        return _exact(self._core.summary()).set_index("bidder")

    @cached_property
    def findings(self) -> pd.DataFrame:
        """What does not multiply, add up or belong: bidder, item, kind, irregular, text, remedy,
        file, sheet, line."""
        return frame(self._core.findings())

    @cached_property
    def items(self) -> pd.DataFrame:
        """One row an item: quantity with least and most, the estimate's price, and low, median,
        high and median absolute deviation of the prices bid."""
        return _exact(self._core.items()).set_index("item")

    @cached_property
    def spread(self) -> dict[str, Any]:
        """Low, second and high total, money left on the table, competition."""
        found: Any = dict(self._core.spread())
        return {key: _decimal(v) if isinstance(v, str) else v for key, v in found.items()}

    @cached_property
    def outliers(self) -> pd.DataFrame:
        """Prices far from the others of their item: bidder, item, score (modified z-score)."""
        return frame(self._core.outliers())

    @property
    def bidders(self) -> list[str]:
        """Who bids, in the order of the files."""
        return list(self.summary.index)

    @property
    def low(self) -> str | None:
        """The low bidder by corrected totals; None without a complete bid."""
        return next(iter(self.summary.index[self.summary["rank"] == 1]), None)

    @property
    def has_estimate(self) -> bool:
        """Whether an engineer's estimate stands beside the bids."""
        return bool(self.items["estimate"].notna().any())

    def prices(self, bidder: str) -> pd.DataFrame:
        """One row an item: price and extension as read and as they govern, and how many times the
        estimate and the median the price is."""
        table = _exact(self._core.prices(self._place(bidder)))
        ratios = {"over_estimate": float, "over_median": float}
        table = table.astype(ratios)
        table.index = self.items.index
        return table

    def table(self, figure: str = "price") -> pd.DataFrame:
        """One figure of `prices` side by side: one row an item, one column a bidder."""
        return frame({bidder: self.prices(bidder)[figure] for bidder in self.bidders})

    @cached_property
    def stages(self) -> pd.DataFrame:
        """Totals and ranks with alternates in the owner's order and with each optional item: one
        row a stage and bidder."""
        found = self._core.stages()
        rows = [
            (stage, bidder, _decimal(total), rank)
            for stage, totals, ranks in zip(
                found["stage"], found["totals"], found["ranks"], strict=True
            )
            for bidder, total, rank in zip(self.bidders, totals, ranks, strict=True)
        ]
        return frame(
            dict(zip(("stage", "bidder", "total", "rank"), zip(*rows, strict=True), strict=True))
        )

    def with_time(self, daily_cost: Any) -> pd.DataFrame:
        """Sums that cost-plus-time bids are compared by: the bid and its days at the road-user cost
        of a day; what is paid stays the bid.

        Parameters
        ----------
        daily_cost
            An amount that was advertised, or what it follows from: a `DailyCost`, the traffic past
            a closure (``est.road_users``), an estimate or a programme.

        Returns
        -------
        pandas.DataFrame
            By bidder: corrected, days, sum, rank. Its ``attrs["daily_cost"]`` says what a day costs
            and what that rests on.
        """
        from scupper._daily_cost import daily_cost_of

        cost = daily_cost_of(daily_cost, self.currency)
        table = _exact(self._core.with_time(str(cost.amount)))
        table.index = self.summary.index
        table.insert(0, "days", self.summary["days"])
        table.insert(0, "corrected", self.summary["corrected"])
        table.attrs["daily_cost"] = cost
        return table

    def unbalanced(
        self,
        reference: str | None = None,
        *,
        above: float = 1.5,
        below: float = 0.5,
        token: float = 0.05,
        weight: float = 0.02,
    ) -> pd.DataFrame:
        """Items priced out of the level of their bid.

        Parameters
        ----------
        reference
            ``"estimate"`` or ``"median"``; the estimate where there is one.
        above, below, token
            From how many times the level of the bid a price is flagged; common practice differs.
        weight
            Share of the total from which ``above`` and ``below`` count.

        Returns
        -------
        pandas.DataFrame
            bidder, item, kind, ratio to the reference, the same relative to the bid's level,
            weight, what it means, what the owner may ask.
        """
        found = self._core.flags(self._reference(reference), above, below, token, weight)
        return frame(found)

    def early_payment(
        self,
        bidder: str,
        schedule: pd.DataFrame | Mapping[str, Sequence[float]],
        interest: float,
        reference: str | None = None,
        *,
        limit: float = 0.005,
    ) -> dict[str, Any]:
        """What a bid gains by being paid earlier than a balanced one of the same total.

        Parameters
        ----------
        bidder
            Whose bid.
        schedule
            Share of each item that is paid at the end of each period: one row an item.
        interest
            Rate a period, as 0.005.
        reference
            As in `unbalanced`.
        limit
            Share of the total from which it is flagged.
        """
        shares = _shares(schedule, list(self.items.index))
        return dict(
            self._core.early_payment(
                self._place(bidder), self._reference(reference), shares, interest, limit
            )
        )

    @cached_property
    def crossovers(self) -> pd.DataFrame:
        """The quantity of each item at which the low bidder stops being low against each other:
        other, item, exact, quantity, upward (low beyond it), in_range."""
        return frame(self._core.crossovers())

    @cached_property
    def joint_changes(self) -> pd.DataFrame:
        """What all quantities together can do within their ranges: gap now, least gap, and the
        share of the way at which the two tie (NaN where they never do)."""
        return _exact(self._core.joint_changes())

    def totals_at(self, quantities: Mapping[str, Any]) -> pd.Series[Any]:
        """Totals with other quantities of some items, by code; the others as on the form.

        A ``float`` is taken to six decimals, text and ``Decimal`` exactly.
        """
        import pandas as pd

        wanted = {
            str(code): f"{q:.6f}" if isinstance(q, float) else str(q)
            for code, q in quantities.items()
        }
        for code in wanted:
            _known(code, list(self.items.index), "bid.code", "quantities")
        texts = [wanted.get(str(code), str(q)) for code, q in self.items["quantity"].items()]
        totals = [_decimal(t) for t in self._core.totals_at(texts)]
        return pd.Series(totals, self.summary.index, dtype=object)

    def draw_quantities(self, draws: int = 10_000, seed: int = 1, shared: float = 0.0) -> Any:
        """Quantities drawn from least, quantity and most (PERT): a row a draw, a column an item.

        `shared` is the share of the spread that all items have in common.
        """
        import pandas as pd

        values = self._core.draw_quantities(draws, seed, shared)
        return pd.DataFrame(values, columns=self.items.index, copy=False)

    def reversal(self, quantities: Any = None) -> dict[str, Any]:
        """The chance that the bid that is low on the form is not low at the end.

        Parameters
        ----------
        quantities
            Draws of the quantities: a DataFrame with a column an item, as `PayItems.draws` makes of
            a simulation (items that it lacks stay as on the form), or an array of draws x items;
            None draws them here, from least and most of each item.

        Returns
        -------
        dict
            low, draws, chance, its standard error (an upper limit where draws fill even parts, as
            those of `scupper.simulate` do), regret (what the low bid costs over the least,
            on average), and by bidder: lowest (share of draws), mean_total.
        """
        import pandas as pd

        drawn = self.draw_quantities() if quantities is None else quantities
        if isinstance(drawn, pd.DataFrame):
            codes = list(self.items.index)
            for code in drawn.columns:
                _known(str(code), codes, "bid.code", "quantities")
            fixed = {code: float(q) for code, q in self.items["quantity"].items()}
            drawn = drawn.reindex(columns=codes).fillna(fixed).to_numpy(float)
        found: Any = dict(self._core.reversal(drawn))
        for key in ("lowest", "mean_total"):
            found[key] = pd.Series(found[key], self.summary.index, name=key)
        return dict(found)

    def plot_groups(self) -> Figure:
        """Bids by group of items, beside the estimate."""
        from scupper._bid_charts import by_group

        return by_group(self)

    def plot_cumulative(self) -> Figure:
        """Bids along the items of the form, less the estimate or the median bid."""
        from scupper._bid_charts import cumulative

        return cumulative(self)

    def plot_crossover(self, item: str) -> Figure:
        """Totals of the nearest bids over the quantity of one item."""
        from scupper._bid_charts import crossover

        _known(item, list(self.items.index), "bid.code", "item")
        return crossover(self, item)

    def save(self, path: str | os.PathLike[str], **facts: Any) -> None:
        """Writes the award sheet: a workbook with live formulas (.xlsx), or a page (.html).

        `facts` may be ``reversal=``, ``early=`` (by bidder) and ``time=``, as `reversal`,
        `early_payment` and `with_time` return them.
        """
        ending = os.path.splitext(os.fspath(path))[1].lower()
        if ending == ".xlsx":
            from scupper._award_workbook import award_workbook

            write_whole(path, award_workbook(self, **facts))
        elif ending == ".html":
            from scupper._award_sheet import award_sheet

            write_whole(path, award_sheet(self, **facts))
        else:
            raise InputError("file.kind", "path", f'"{os.fspath(path)}"', ".xlsx or .html")

    def _place(self, bidder: str) -> int:
        _known(bidder, self.bidders, "bid.bidder", "bidder")
        return self.bidders.index(bidder)

    def _reference(self, word: str | None) -> str:
        return word or ("estimate" if self.has_estimate else "median")

    def __repr__(self) -> str:
        rows = [f"{len(self.bidders)} bids, {len(self.items)} items, {words_of(self.governs)}"]
        for bidder, row in self.summary.sort_values("rank").iterrows():
            read, corrected = (_shown(row[k]) for k in ("as_read", "corrected"))
            mark = "  irregular" if row["irregular"] else ""
            rank = row["rank"] or "-"
            rows.append(f"{rank:>3} {bidder!s:24} read {read:>16} corrected {corrected:>16}{mark}")
        return "\n".join(rows)


def words_of(governs: str) -> str:
    """The rule in words."""
    return f"the {governs.replace('_', ' ')} govern{'' if governs == 'words' else 's'}"


def review(
    bids: Any,
    *,
    governs: str = "unit_price",
    ranges: Any = None,
    outlier: float = 3.5,
    fewest: int = 5,
) -> BidReview:
    """Checks the arithmetic of bids and lays them beside each other.

    Parameters
    ----------
    bids
        What `scupper.read_bids` returns, or `scupper.bids.from_frames`.
    governs
        ``"unit_price"``, ``"words"`` or ``"extension"``: what holds where figures contradict each
        other. The instructions to bidders say.
    ranges
        Least and most of the quantities: a DataFrame by item with ``low`` and ``high``, or pay
        items with theirs. Without them every quantity is certain.
    outlier, fewest
        Modified z-score from which a price is an outlier, and bids that it takes.

    Raises
    ------
    InputError
        Naming what cannot be used.
    """
    items = item_texts(bids, ranges)
    given, engineer = bid_texts(bids)
    core = _core.BidReview(bids.currency, items, given, engineer, governs, outlier, fewest)
    return BidReview(core, bids.currency, governs, bids.title)


def read_ranges(path: str | os.PathLike[str]) -> pd.DataFrame:
    """Ranges of quantities from CSV: code, low, high, exact."""
    import pandas as pd

    try:
        return pd.read_csv(path, dtype=str, encoding="utf-8-sig")
    except OSError as e:
        raise FileError("file.open", os.fspath(path), e.strerror or str(e), "a file") from None
    except (UnicodeDecodeError, pd.errors.ParserError, pd.errors.EmptyDataError) as e:
        raise FileError("file.text", os.fspath(path), str(e), "a CSV file") from None


def estimate_accuracy(projects: Sequence[tuple[Any, Any]]) -> tuple[int, int, bool]:
    """Projects, how many estimates were within a tenth of the low bid, and whether half were."""
    return _core.estimate_accuracy([(str(estimate), str(low)) for estimate, low in projects])


def from_frames(
    items: pd.DataFrame,
    bids: Mapping[str, pd.DataFrame],
    *,
    engineer: pd.DataFrame | None = None,
    totals: Mapping[str, Any] | None = None,
    days: Mapping[str, Any] | None = None,
    currency: str = "USD",
) -> FrameBids:
    """Bids from tables: `items` with code, unit, quantity (and description, kind, group); each bid
    with code, unit_price (and extension, quantity, words, price_in_words)."""
    return FrameBids(items, dict(bids), engineer, dict(totals or {}), dict(days or {}), currency)


def _exact(columns: Mapping[str, Any]) -> pd.DataFrame:
    import pandas as pd

    exact = {
        name: pd.Series([_decimal(text) for text in values], dtype=object)
        if name in _MONEY
        else values
        for name, values in columns.items()
    }
    return frame(exact)


def _decimal(text: Any) -> Decimal | None:
    return None if text is None else Decimal(text)


def _shown(amount: Decimal | None) -> str:
    return "none" if amount is None else f"{amount:,.2f}"


def _known(name: str, names: list[str], kind: str, path: str) -> None:
    if name not in names:
        near = _core.nearest_name(name, names)
        raise UnknownNameError(kind, path, f'"{name}"', f'"{near}"?' if near else ", ".join(names))


def _shares(schedule: Any, codes: list[str]) -> Any:
    import pandas as pd

    table = pd.DataFrame(schedule)
    if not isinstance(schedule, pd.DataFrame):
        table = table.T
    for code in table.index:
        _known(str(code), codes, "bid.code", "schedule")
    return table.reindex(codes).to_numpy(float)
