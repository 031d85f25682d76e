"""A decision as a workbook: the sums are formulas over the lines."""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from typing import TYPE_CHECKING, Any

import xlsxwriter
from xlsxwriter.utility import xl_rowcol_to_cell

from scupper._decision_facts import invented
from scupper._workbook_looks import Looks, Table

if TYPE_CHECKING:
    from scupper.deciding import Decision
    from scupper.splitting import Split

_SUMS = {
    "in-house, avoidable": ("avoidable",),
    "in-house, full": ("avoidable", "overhead"),
    "by contract": ("contract",),
    "a contract has to save": ("differential",),
}


def workbook(decision: Decision, split: Split | None) -> bytes:
    """The file's bytes."""
    file = BytesIO()
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False}
    book = xlsxwriter.Workbook(file, options)
    looks = Looks(book)
    _write_ways(book.add_worksheet("Both ways"), looks, decision)
    _write_rows(book, looks, "What turns it", decision.sensitivity.reset_index())
    chance = decision.chance.rename_axis("figure").reset_index()
    _write_rows(book, looks, "How sure", chance)
    if split is not None:
        _write_rows(book, looks, "Split", split.table.drop(columns=_empty(split.table)))
        hours = split.capacity.join(split.worth.drop(columns=["used", "available"]))
        _write_rows(book, looks, "Hours", hours.reset_index())
        if split.over != "nothing":
            law = split.law.rename_axis("least saving by law").reset_index()
            _write_rows(book, looks, "Least saving", law)
        _write_rows(book, looks, "What goes out", split.out.reset_index())
    book.close()
    return file.getvalue()


def _empty(table: Any) -> list[str]:
    """Columns of nothing but empty text: regions that nobody asked for."""
    return [str(column) for column in table if (table[column] == "").all()]


def _write_ways(sheet: Any, looks: Looks, decision: Decision) -> None:
    columns = {"line": 30.0, "amount": 14.0, "side": 14.0, "why": 60.0, "source": 60.0}
    table = Table(sheet, looks, decision.recommendation, columns)
    for text in invented(decision):
        sheet.write_string(1, 0, text, looks.status)
    row = Table.FIRST_ROW
    cells: dict[str, list[str]] = {}
    for line in decision.to_pandas().to_dict("records"):
        table.row(row, [line["label"], None, line["side"], line["why"], line["source"]])
        sheet.write_number(row, 1, line["amount"], looks.money)
        cells.setdefault(line["side"], []).append(xl_rowcol_to_cell(row, 1))
        row += 1
    values = {"in-house, avoidable": decision.avoidable, "in-house, full": decision.full,
              "by contract": decision.contract,
              "a contract has to save": decision.differential}  # fmt: skip
    at = {}
    for name, sides in _SUMS.items():
        terms = [cell for side in sides for cell in cells[side]]
        at[name] = _sum(sheet, looks, row, name, terms, values[name])
        row += 1
    own = at["in-house, full" if decision.basis == "full" else "in-house, avoidable"]
    sheet.write_string(row, 0, "advantage of own people", looks.text)
    formula = f"={at['by contract']}+{at['a contract has to save']}-{own}"
    sheet.write_formula(row, 1, formula, looks.total, decision.advantage)
    for text in decision.cautions:
        row += 1
        table.note(row, text)


def _sum(sheet: Any, looks: Looks, row: int, name: str, terms: Sequence[str], value: float) -> str:
    sheet.write_string(row, 0, name, looks.text)
    sheet.write_formula(row, 1, "=" + "+".join(terms), looks.total, value)
    return str(xl_rowcol_to_cell(row, 1))


def _write_rows(book: xlsxwriter.Workbook, looks: Looks, name: str, rows: Any) -> None:
    """A table as it is; what is no number is text, and NaN an empty cell."""
    sheet = book.add_worksheet(name)
    numbers = list(rows.select_dtypes("number").columns)
    widths = {_heading(column): _width(rows[column], column in numbers) for column in rows.columns}
    table = Table(sheet, looks, name, widths, [_heading(column) for column in numbers])
    for at, record in enumerate(rows.to_dict("records"), start=Table.FIRST_ROW):
        table.row(at, [None if key in numbers else _text(x) for key, x in record.items()])
        for column, (key, value) in enumerate(record.items()):
            if key in numbers and value == value and abs(value) < float("inf"):
                small = 0 < abs(value) < 10 and value != int(value)  # 0.0994 by area, not 0.10
                sheet.write_number(at, column, value, looks.plain if small else looks.money)


def _heading(column: Any) -> str:
    return str(column).replace("_", " ")


def _text(value: Any) -> str:
    """Words for yes, no and nothing."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    return str(value) if value == value else ""


def _width(column: Any, number: bool) -> float:
    """As wide as what stands in it, within what a page has room for."""
    longest = max((len(str(x)) for x in column), default=0)
    if number:
        return max(14.0, len(_heading(column.name)) + 3.0)
    return min(max(longest, len(_heading(column.name)), 8) + 3.0, 36.0)
