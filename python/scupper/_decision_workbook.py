"""A decision as a workbook: the sums are formulas over the lines."""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from typing import TYPE_CHECKING, Any

import xlsxwriter
from xlsxwriter.utility import xl_rowcol_to_cell

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
        _write_rows(book, looks, "Split", split.table)
        hours = split.capacity.join(split.worth.drop(columns=["used", "available"]))
        _write_rows(book, looks, "Hours", hours.reset_index())
        if split.over != "nothing":
            law = split.law.rename_axis("least saving by law").reset_index()
            _write_rows(book, looks, "Least saving", law)
    book.close()
    return file.getvalue()


def _write_ways(sheet: Any, looks: Looks, decision: Decision) -> None:
    columns = {"line": 30.0, "amount": 14.0, "side": 14.0, "why": 60.0, "source": 60.0}
    table = Table(sheet, looks, decision.recommendation, columns)
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
    widths = {str(column): 24.0 if i == 0 else 18.0 for i, column in enumerate(rows.columns)}
    Table(sheet, looks, name, widths)
    for at, record in enumerate(rows.to_dict("records"), start=Table.FIRST_ROW):
        for column, value in enumerate(record.values()):
            if isinstance(value, bool | str):
                sheet.write_string(at, column, str(value), looks.text)
            elif value == value and abs(value) < float("inf"):
                sheet.write_number(at, column, value, looks.figure)
