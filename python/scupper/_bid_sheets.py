"""Pay items and bid forms as workbooks, CSV and HTML."""

from __future__ import annotations

import csv
import io
from datetime import datetime
from typing import TYPE_CHECKING, Any

import xlsxwriter
from xlsxwriter.utility import xl_range, xl_rowcol_to_cell
from xlsxwriter.worksheet import Worksheet

from scupper._paper import render
from scupper._workbook_looks import Looks, Table
from scupper.results import safe_cells

if TYPE_CHECKING:
    from scupper.pay_items import PayItems

#: Headings of a form, in its order; `read_bids` knows them.
FORM = ("Item", "Description", "Unit", "Quantity", "Unit price", "Extension")
_BIDDER = "Bidder:"
_TOTAL = "Total bid"
_ASKED = "Fill in the bidder's name and a unit price for every item; the rest is figured."
_WIDTHS = {"Item": 16.0, "Description": 60.0, "Unit": 8.0, "Quantity": 14.0, "Unit price": 16.0,
           "Extension": 18.0}  # fmt: skip
_NUMBERS = ("Quantity", "low", "high", "Unit price", "Extension", "in the estimate", "difference",
            "amount")  # fmt: skip


def form_bytes(items: PayItems) -> bytes:
    """The blank form as a workbook: extensions and total follow from the prices."""
    file, book = _book(items)
    looks = Looks(book)
    sheet = book.add_worksheet("Form of bid")
    name = f"{items.programme.job.name}: form of bid, {items.currency}"
    table = Table(sheet, looks, name, _WIDTHS, _NUMBERS)
    sheet.write_string(1, 0, _BIDDER, looks.header)
    sheet.write_blank(1, 1, None, looks.input)
    last = _form_rows(sheet, table, looks, items)
    _total(sheet, table, looks, last, 5, None)
    table.note(last + 2, _ASKED)
    book.close()
    return file.getvalue()


def _form_rows(sheet: Worksheet, table: Table, looks: Looks, items: PayItems) -> int:
    """The row beneath the last item."""
    rows: Any = items.to_pandas().to_dict("records")
    for at, row in enumerate(rows, Table.FIRST_ROW):
        table.row(at, [row["code"], row["description"], row["unit"]])
        sheet.write_number(at, 3, float(row["quantity"]), looks.figure)
        sheet.write_blank(at, 4, None, looks.input)
        _extension(sheet, looks, at, "")
    return Table.FIRST_ROW + len(rows)


def _extension(sheet: Worksheet, looks: Looks, at: int, value: Any) -> None:
    quantity, price = xl_rowcol_to_cell(at, 3), xl_rowcol_to_cell(at, 4)
    formula = f'=IF(ISNUMBER({price}),ROUND({quantity}*{price},2),"")'
    sheet.write_formula(at, 5, formula, looks.money, value)


def _total(
    sheet: Worksheet, table: Table, looks: Looks, last: int, column: int, value: Any
) -> None:
    table.row(last, [_TOTAL])
    cells = xl_range(Table.FIRST_ROW, column, last - 1, column)
    count = xl_range(Table.FIRST_ROW, column - 1, last - 1, column - 1)
    rows = last - Table.FIRST_ROW
    formula = f'=IF(COUNT({count})={rows},SUM({cells}),"")'
    sheet.write_formula(last, column, formula, looks.total, "" if value is None else value)


def form_csv(items: PayItems) -> str:
    """The blank form as CSV."""
    text = io.StringIO(newline="")
    writer = csv.writer(text)
    writer.writerow([f"{items.programme.job.name}: form of bid, {items.currency}"])
    writer.writerow([_BIDDER, ""])
    writer.writerow(FORM)
    rows: Any = safe_cells(items.to_pandas()).to_dict("records")
    for row in rows:
        writer.writerow([row["code"], row["description"], row["unit"], row["quantity"], "", ""])
    writer.writerow([_TOTAL, "", "", "", "", ""])
    return text.getvalue()


def items_bytes(items: PayItems) -> bytes:
    """The priced items as a workbook: extensions, total and difference are formulas."""
    file, book = _book(items)
    looks = Looks(book)
    sheet = book.add_worksheet("Pay items")
    columns = _WIDTHS | {"low": 12.0, "high": 12.0, "in the estimate": 18.0, "difference": 14.0}
    title = f"{items.programme.job.name}: pay items, {items.currency}"
    table = Table(sheet, looks, title, columns, _NUMBERS)
    rows: Any = items._table.to_dict("records")
    for at, row in enumerate(rows, Table.FIRST_ROW):
        table.row(at, [row["code"], row["description"], row["unit"]])
        sheet.write_number(at, 3, float(row["quantity"]), looks.figure)
        sheet.write_number(at, 4, float(row["unit_price"]), looks.money)
        _extension(sheet, looks, at, float(row["extension"]))
        for column, name in ((6, "low"), (7, "high"), (8, "amount")):
            sheet.write_number(at, column, float(row[name]), looks.money)
        cells = xl_rowcol_to_cell(at, 5), xl_rowcol_to_cell(at, 8)
        sheet.write_formula(at, 9, f"={cells[0]}-{cells[1]}", looks.money, float(row["difference"]))
    last = Table.FIRST_ROW + len(rows)
    _total(sheet, table, looks, last, 5, float(items.total))
    for column, value in ((8, items.estimated), (9, items.residue)):
        cells_above = xl_range(Table.FIRST_ROW, column, last - 1, column)
        sheet.write_formula(last, column, f"=SUM({cells_above})", looks.total, float(value))
    table.note(last + 2, rounding(items))
    _write_lines(book.add_worksheet("Cost lines"), looks, items)
    book.close()
    return file.getvalue()


def _write_lines(sheet: Worksheet, looks: Looks, items: PayItems) -> None:
    """Which cost lines make which item."""
    names = {"Item": 16.0, "component": 22.0, "operation": 26.0, "resource": 26.0, "amount": 16.0}
    table = Table(sheet, looks, f"What makes the items, {items.currency}", names, _NUMBERS)
    at = Table.FIRST_ROW
    for code in items._table["code"]:
        rows: Any = items.explain(code).to_dict("records")
        for row in rows:
            table.row(at, [code, row["component"], row["operation"], row["resource"]])
            sheet.write_number(at, 4, row["amount"], looks.money)
            at += 1


def rounding(items: PayItems) -> str:
    """Where the difference went that rounding unit prices leaves, in a sentence."""
    if items.rounding:
        table = items._table.set_index("code")
        taken: Any = table.loc[items.rounding, "difference"]
        if not taken:
            return "The total is the price of the estimate."
        return (
            f"What rounding unit prices leaves, {items.currency} {taken:,}, is in "
            f"{items.rounding}: the total is the price of the estimate."
        )
    return (
        f"Unit prices are rounded: the total differs from the estimate by {items.currency} "
        f"{items.residue:,}."
    )


def _book(items: PayItems) -> tuple[io.BytesIO, xlsxwriter.Workbook]:
    file = io.BytesIO()
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False}
    book = xlsxwriter.Workbook(file, options)
    book.set_properties({"created": datetime.fromisoformat(items.programme.stamp["date"])})
    return file, book


def items_page(items: PayItems) -> str:
    """The priced items as HTML that prints."""
    rows = items.to_pandas().to_dict("records")
    return render("items.html", items=items, rows=rows, rounding=rounding(items))


def items_table(items: PayItems) -> str:
    """The table of that page alone, for a notebook."""
    rows = items.to_pandas().to_dict("records")
    return render("_items.html", items=items, rows=rows, rounding=rounding(items))
