"""The price of a contract as a workbook whose sums are live."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from io import BytesIO
from math import isfinite
from typing import TYPE_CHECKING, Any

import xlsxwriter
from xlsxwriter.utility import xl_range, xl_rowcol_to_cell
from xlsxwriter.worksheet import Worksheet

from scupper._paper import words
from scupper._price_facts import FIGURES, PriceFacts
from scupper._workbook_looks import Looks, Table

if TYPE_CHECKING:
    from scupper.programme import Programme

_NAMES = ("structure_id", "carries", "crosses", "closure")


def price_workbook(programme: Programme) -> bytes:
    """The file's bytes."""
    file = BytesIO()
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False}
    book = xlsxwriter.Workbook(file, options)
    book.set_properties({"created": datetime.fromisoformat(programme.stamp["date"])})
    _PriceWriter(programme, book).write()
    book.close()
    return file.getvalue()


class _PriceWriter:
    """Writes sheet by sheet; a total is a formula over the cells beside or above it."""

    def __init__(self, programme: Programme, book: xlsxwriter.Workbook) -> None:
        self._programme = programme
        self._facts = PriceFacts(programme)
        self._book = book
        self._looks = Looks(book)

    def write(self) -> None:
        names = ("Prices", "Unit costs", "Guesses", "Shortfalls", "Terms", "No price")
        sheets = {name: self._book.add_worksheet(name) for name in names}
        self._write_prices(sheets["Prices"])
        write_unit_costs(sheets["Unit costs"], self._looks, self._facts.unit_costs,
                         self._programme.currency, "all structures together")  # fmt: skip
        self._write_guesses(sheets["Guesses"])
        self._write_shortfalls(sheets["Shortfalls"])
        self._write_terms(sheets["Terms"])
        unpriced: Any = self._programme.unpriced.to_dict("records")
        columns = {"structure_id": 18.0, "state": 8.0, "reason": 90.0}
        self._write_rows(sheets["No price"], "Structures without a price", columns, unpriced)

    def _write_prices(self, sheet: Worksheet) -> None:
        facts, currency = self._facts, self._programme.currency
        money = dict(facts.parts)
        columns = dict.fromkeys(("structure", "carries", "crosses", "closure"), 18.0)
        numbers = [*FIGURES.values(), *money.values(), "price"]
        title = f"{self._programme.job.name}: price by structure, {currency}"
        table = Table(sheet, self._looks, title, columns | dict.fromkeys(numbers, 14.0), numbers)
        rows: Any = facts.rows.to_dict("records")
        first = len(_NAMES)
        for at, row in enumerate(rows, Table.FIRST_ROW):
            table.row(at, [str(row[name]) for name in _NAMES])
            amounts = [row[key] for key in (*FIGURES, *money)]
            write_numbers(sheet, at, first, amounts, self._looks)
            sums = xl_range(at, first + len(FIGURES), at, first + len(numbers) - 2)
            sheet.write_formula(at, first + len(numbers) - 1, f"=SUM({sums})",
                                self._looks.money, row["cost.total"])  # fmt: skip
        self._write_totals(sheet, table, len(rows), numbers)

    def _write_totals(
        self, sheet: Worksheet, table: Table, rows: int, numbers: Sequence[str]
    ) -> None:
        last = Table.FIRST_ROW + rows
        table.row(last, [f"total of {rows} structures"])
        keys = [*FIGURES, *self._facts.parts, "cost.total"]
        for column, (_, key) in enumerate(zip(numbers, keys, strict=True), len(_NAMES)):
            above = xl_range(Table.FIRST_ROW, column, max(last - 1, Table.FIRST_ROW), column)
            sheet.write_formula(last, column, f"=SUM({above})" if rows else "=0",
                                self._looks.total, self._programme.total_of(key)[0])  # fmt: skip

    def _write_guesses(self, sheet: Worksheet) -> None:
        currency = self._programme.currency
        columns = {"guess": 48.0, "structures": 12.0, "worth": 16.0, "total at low": 16.0,
                   "total at high": 16.0, "key": 44.0}  # fmt: skip
        title = f"What the price moves by between low and high of each guess alone, {currency}"
        table = Table(sheet, self._looks, title, columns, list(columns)[1:5])
        rows: Any = self._facts.guesses.to_dict("records")
        for at, row in enumerate(rows, Table.FIRST_ROW):
            table.row(at, [row["label"], None, None, None, None, row["key"]])
            amounts = [row[n] for n in ("structures", "worth", "total_at_low", "total_at_high")]
            write_numbers(sheet, at, 1, amounts, self._looks)

    def _write_shortfalls(self, sheet: Worksheet) -> None:
        texts = {"structure_id": 18.0, "method": 18.0, "flow": 12.0, "pressure": 12.0,
                 "least_flow": 12.0, "least_pressure": 14.0, "remedy": 60.0}  # fmt: skip
        title = f"Nozzles that fall short, with the cheapest remedy, {self._programme.currency}"
        columns = {words(name): width for name, width in texts.items()}
        table = Table(sheet, self._looks, title, columns | {"price with it": 16.0, "change": 16.0},
                      ["price with it", "change"])  # fmt: skip
        rows: Any = self._facts.shortfalls.to_dict("records")
        for at, row in enumerate(rows, Table.FIRST_ROW):
            table.row(at, [words(str(row[name])) for name in texts])
            write_numbers(sheet, at, len(texts), [row["cost"], row["change"]], self._looks)

    def _write_terms(self, sheet: Worksheet) -> None:
        stamp = [(name, str(value)) for name, value in self._programme.stamp.items()]
        cautions = [(f"caution at {c['structures']} structures", f"{c['text']} [{c['source']}]")
                    for c in self._facts.cautions]  # fmt: skip
        lines = [*self._facts.terms, *stamp, *cautions]
        rows = [{"what": what, "text": text} for what, text in lines]
        self._write_rows(sheet, "What the price rests on", {"what": 44, "text": 110}, rows)

    def _write_rows(
        self, sheet: Worksheet, title: str, columns: dict[str, float], rows: list[dict[str, Any]]
    ) -> None:
        table = Table(sheet, self._looks, title, {words(n): w for n, w in columns.items()})
        for at, row in enumerate(rows, Table.FIRST_ROW):
            table.row(at, [str(row[name]) for name in columns])


def write_numbers(
    sheet: Worksheet, row: int, column: int, numbers: Sequence[float], looks: Looks
) -> None:
    """Numbers side by side; one that is none leaves its cell empty."""
    for at, number in enumerate(numbers, column):
        if isfinite(number):
            sheet.write_number(row, at, number, looks.money)


def write_unit_costs(
    sheet: Worksheet, looks: Looks, costs: Any, currency: str, of: str, still: str = ""
) -> None:
    """Costs by component and by the unit of each; sums and unit costs are live.

    `still` is the formula of a condition under which the costs hold; empty where they always do.
    """
    numbers = ["quantity", "direct", "distributed", "margins", "total", "per unit"]
    columns = {"component": 26.0, "quantity": 14.0, "unit": 8.0, "direct": 14.0,
               "distributed": 14.0, "margins": 14.0, "total": 14.0, "per unit": 14.0,
               "in": 14.0}  # fmt: skip
    title = f"Unit costs, {of}; travel, closure and disposal shared by direct cost"
    table = Table(sheet, looks, title, columns, numbers)
    for at, row in enumerate(costs.reset_index().to_dict("records"), Table.FIRST_ROW):
        unit = "" if row["unit"] in ("", "1") else row["unit"]
        table.row(at, [words(row["component"]), None, unit, *[None] * 5, f"{currency}/{unit}"])
        write_numbers(sheet, at, 1, [row["quantity"]], looks)
        write_numbers(sheet, at, 3, [row[n] for n in ("direct", "distributed", "margins")], looks)
        cell = {c: xl_rowcol_to_cell(at, c) for c in (1, 3, 5, 6)}
        total = f"SUM({cell[3]}:{cell[5]})"
        held = f'=IF({still},{total},"")' if still else f"={total}"
        sheet.write_formula(at, 6, held, looks.money, row["total"])
        if row["quantity"] > 0:
            each = f'=IF(ISNUMBER({cell[6]}),{cell[6]}/{cell[1]},"")'
            sheet.write_formula(at, 7, each, looks.bold_figure, row["total"] / row["quantity"])
