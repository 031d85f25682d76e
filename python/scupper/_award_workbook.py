"""The award sheet as a workbook: extensions, totals, ranks and crossovers are live."""

from __future__ import annotations

from decimal import Decimal
from io import BytesIO
from typing import TYPE_CHECKING, Any

import xlsxwriter
from xlsxwriter.utility import xl_range_abs, xl_rowcol_to_cell
from xlsxwriter.worksheet import Worksheet

from scupper._award_facts import CAUTIONS, MEANINGS, AwardFacts
from scupper._workbook_looks import Looks, Table

if TYPE_CHECKING:
    from scupper._daily_cost import DailyCost
    from scupper.bid_review import BidReview

_FIRST = Table.FIRST_ROW
_KIND, _QUANTITY, _PRICES = 3, 5, 7  # columns of the items; before the prices the estimate


def award_workbook(review: BidReview, **asked: Any) -> bytes:
    """The file's bytes."""
    file = BytesIO()
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False}
    book = xlsxwriter.Workbook(file, options)
    _AwardWriter(AwardFacts(review, **asked), book).write()
    book.close()
    return file.getvalue()


def _titled(review: BidReview) -> str:
    title = f": {review.title}" if review.title else ""
    return f"Bids compared{title}, {review.currency}"


class _AwardWriter:
    """Writes sheet by sheet; whatever can be figured from the prices is a formula."""

    def __init__(self, facts: AwardFacts, book: xlsxwriter.Workbook) -> None:
        self._facts = facts
        self._review = facts.review
        self._looks = Looks(book)
        self._sheets = {name: book.add_worksheet(name) for name in
                        ("Award", "Items", "Crossovers", "Findings", "Out of balance",
                         *(["Cost plus time"] if facts.timed else []))}  # fmt: skip
        self._last = _FIRST + len(self._review.items) - 1

    def write(self) -> None:
        self._write_items()
        self._write_award()
        self._write_crossovers()
        findings = self._review.findings.to_dict("records")
        columns = {"bidder": 24.0, "item": 14.0, "text": 80.0, "remedy": 60.0}
        self._write_texts("Findings", "What was found in the forms", findings, columns)
        flags = self._facts.flags.to_dict("records")
        for row in flags:
            row["ratios"] = f"{row['ratio']:.2f}, {row['relative']:.2f}"
        title = (
            f"Prices out of balance: ratio to the {self._facts.reference}, and to the bid's level"
        )
        columns = {"bidder": 24.0, "item": 14.0, "ratios": 14.0, "means": 60.0, "ask": 60.0}
        self._write_texts("Out of balance", title, flags, columns)
        if self._facts.daily_cost is not None:
            self._write_time(self._facts.daily_cost)

    def _place(self, bidder: str) -> int:
        """The column of a bidder's prices; the extensions stand beside."""
        return _PRICES + 2 * self._review.bidders.index(bidder)

    def _column(self, column: int) -> str:
        return f"Items!{xl_range_abs(_FIRST, column, self._last, column)}"

    def _write_items(self) -> None:
        review, sheet = self._review, self._sheets["Items"]
        columns = {"item": 14.0, "what": 44.0, "group": 18.0, "kind": 10.0, "unit": 8.0,
                   "quantity": 12.0, "estimate": 14.0}  # fmt: skip
        money = ["quantity", "estimate"]
        for bidder in review.bidders:
            for what in ("price", "extension"):
                money.append(f"{bidder}: {what}")
                columns[money[-1]] = 16.0
        marks = " · ".join(f"{mark} {what}" for mark, what in MEANINGS.items())
        table = Table(sheet, self._looks, f"Unit prices, {review.currency}", columns, money)
        sheet.write_string(1, 0, marks, self._looks.status)
        texts: Any = review.items.reset_index().to_dict("records")
        for at, row in enumerate(texts, _FIRST):
            table.row(at, [row[k] for k in ("item", "description", "group", "kind", "unit")])
            self._number(sheet, at, _QUANTITY, row["quantity"])
            self._number(sheet, at, _QUANTITY + 1, row["estimate"])
        for bidder in review.bidders:
            self._write_prices(sheet, bidder)
        table.row(self._last + 1, ["total of base items"])

    def _write_prices(self, sheet: Worksheet, bidder: str) -> None:
        place, prices = self._place(bidder), self._review.prices(bidder)
        marks = self._facts.marks(bidder)
        for at, (item, row) in enumerate(prices.iterrows(), _FIRST):
            if row["price"] is None:
                continue
            self._number(sheet, at, place, row["price"])
            if mark := marks.get(str(item)):
                sheet.write_comment(at, place, mark + " " + MEANINGS[mark[0]])
            cells = xl_rowcol_to_cell(at, _QUANTITY, col_abs=True), xl_rowcol_to_cell(at, place)
            sheet.write_formula(at, place + 1, f"=ROUND({cells[0]}*{cells[1]},2)",
                                self._looks.money, float(row["extension"]))  # fmt: skip
        total: Any = self._review.summary.loc[bidder, "corrected"]
        if total is not None:
            kinds, amounts = self._column(_KIND), self._column(place + 1)
            sheet.write_formula(self._last + 1, place + 1, f'=SUMIF({kinds},"base",{amounts})',
                                self._looks.total, float(total))  # fmt: skip

    def _write_award(self) -> None:
        sheet, review = self._sheets["Award"], self._review
        columns = {"bidder": 26.0, "as read": 18.0, "rank as read": 12.0, "corrected": 18.0,
                   "rank": 8.0, "over low": 10.0, "over estimate": 14.0, "note": 16.0}  # fmt: skip
        table = Table(sheet, self._looks, _titled(review), columns,
                      list(columns)[1:7])  # fmt: skip
        last = _FIRST + len(review.bidders) - 1
        for at, row in enumerate(self._facts.bids, _FIRST):
            note = "irregular" if row["irregular"] else ""
            table.row(at, [row["bidder"], *[None] * 6, note])
            self._number(sheet, at, 1, row["as_read"])
            self._ranked(sheet, at, 1, last, row["rank_as_read"])
            if row["corrected"] is not None:
                total = xl_rowcol_to_cell(self._last + 1, self._place(row["bidder"]) + 1)
                sheet.write_formula(at, 3, f"=Items!{total}", self._looks.money,
                                    float(row["corrected"]))  # fmt: skip
                self._ranked(sheet, at, 3, last, row["rank"])
                self._ratios(sheet, at, last, row)
        for below, text in enumerate([*self._facts.sentences, *CAUTIONS], last + 2):
            table.note(below, text)

    def _ranked(self, sheet: Worksheet, at: int, column: int, last: int, rank: int) -> None:
        if rank:
            cells = xl_rowcol_to_cell(at, column), xl_range_abs(_FIRST, column, last, column)
            sheet.write_formula(at, column + 1, f"=RANK({cells[0]},{cells[1]},1)",
                                self._looks.flag, rank)  # fmt: skip

    def _ratios(self, sheet: Worksheet, at: int, last: int, row: dict[str, Any]) -> None:
        own = xl_rowcol_to_cell(at, 3)
        low = f"={own}/MIN({xl_range_abs(_FIRST, 3, last, 3)})"
        sheet.write_formula(at, 5, low, self._looks.figure, row["over_low"])
        if self._review.spread["estimate"] is not None:
            base = f'({self._column(_KIND)}="base")'
            estimate = f"SUMPRODUCT({base}*ROUND({self._column(_QUANTITY)}*{self._column(6)},2))"
            sheet.write_formula(at, 6, f"={own}/{estimate}", self._looks.figure,
                                row["over_estimate"])  # fmt: skip

    def _write_crossovers(self) -> None:
        sheet, review = self._sheets["Crossovers"], self._review
        columns = {"item": 14.0, "unit": 8.0, "then lower": 26.0, "which way": 12.0,
                   "on the form": 14.0, "ties at": 16.0, "exactly": 22.0, "least": 14.0,
                   "most": 14.0, "in range": 10.0}  # fmt: skip
        title = f"Quantities at which {review.low or 'no bid'} stops being low, one at a time"
        table = Table(sheet, self._looks, title, columns,
                      ("on the form", "ties at", "least", "most"))  # fmt: skip
        if review.low is None:
            return
        rows: Any = review.crossovers.to_dict("records")
        for at, row in enumerate(rows, _FIRST):
            item = review.items.loc[row["item"]]
            way = "beyond" if row["upward"] else "below"
            table.row(at, [row["item"], item["unit"], row["other"], way, None, None, row["exact"]])
            for column, name in ((4, "quantity"), (7, "least"), (8, "most")):
                self._number(sheet, at, column, item[name])
            sheet.write_formula(at, 5, self._tie(at, row), self._looks.money, row["quantity"])
            tie, least, most = (xl_rowcol_to_cell(at, c) for c in (5, 7, 8))
            inside = f'=IF(AND({tie}>={least},{tie}<={most}),"yes","no")'
            sheet.write_formula(at, 9, inside, self._looks.flag, "yes" if row["in_range"] else "no")

    def _tie(self, at: int, row: dict[str, Any]) -> str:
        """Quantity + gap / (price of the low bid - price of the other)."""
        low, other = self._place(str(self._review.low)), self._place(row["other"])
        here = _FIRST + list(self._review.items.index).index(row["item"])
        prices = [f"Items!{xl_rowcol_to_cell(here, c)}" for c in (low, other)]
        gap = (f'SUMPRODUCT(({self._column(_KIND)}="base")*{self._column(_QUANTITY)}*'
               f"({self._column(other)}-{self._column(low)}))")  # fmt: skip
        return f"={xl_rowcol_to_cell(at, 4)}+{gap}/({prices[0]}-{prices[1]})"

    def _write_time(self, cost: DailyCost) -> None:
        """The bid and its days at the cost of a day, which stands in a cell of its own."""
        sheet, rows = self._sheets["Cost plus time"], self._facts.timed
        columns = {"bidder": 26.0, "corrected": 18.0, "days": 10.0, "sum": 18.0, "rank": 8.0}
        title = f"Cost plus time, {self._review.currency}: what bids are compared by"
        table = Table(sheet, self._looks, title, columns, list(columns)[1:])
        last = _FIRST + len(rows) - 1
        daily = xl_range_abs(last + 2, 1, last + 2, 1)
        table.row(last + 2, ["cost of a day"])
        self._number(sheet, last + 2, 1, cost.amount)
        for at, row in enumerate(rows, _FIRST):
            table.row(at, [row["bidder"]])
            self._number(sheet, at, 1, row["corrected"])
            self._number(sheet, at, 2, row["days"])
            if row["sum"] is not None:
                bid, days = xl_rowcol_to_cell(at, 1), xl_rowcol_to_cell(at, 2)
                sheet.write_formula(at, 3, f"={bid}+{days}*{daily}", self._looks.money,
                                    float(row["sum"]))  # fmt: skip
                self._ranked(sheet, at, 3, last, row["rank"])
        for below, text in enumerate([cost.text, *cost.sources, *cost.cautions], last + 4):
            table.note(below, text)

    def _write_texts(
        self, name: str, title: str, rows: list[Any], columns: dict[str, float]
    ) -> None:
        table = Table(self._sheets[name], self._looks, title, columns, ())
        for at, row in enumerate(rows, _FIRST):
            table.row(at, [str(row[column]) for column in columns])

    def _number(self, sheet: Worksheet, row: int, column: int, value: Decimal | None) -> None:
        if value is not None:
            sheet.write_number(row, column, float(value), self._looks.money)
