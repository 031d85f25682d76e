"""Sheets of a workbook that stand beside the price: hours by crew, payments by period."""

from __future__ import annotations

from typing import TYPE_CHECKING

from xlsxwriter.utility import xl_range, xl_rowcol_to_cell
from xlsxwriter.worksheet import Worksheet

from scupper._workbook_looks import Looks, Table

if TYPE_CHECKING:
    import pandas as pd

#: What adds up to the paid hours.
_PARTS = ("productive", "breaks", "waiting", "travel", "briefing", "closure", "meal", "standby")


def write_hours(sheet: Worksheet, looks: Looks, table: pd.DataFrame) -> None:
    """Hours of one person by crew, as priced; paid and elapsed hours are sums of their parts."""
    columns = list(table.columns)
    widths = {"crew": 24.0} | {name.replace("_", " "): 13.0 for name in columns}
    title = "Hours of one person by crew, as priced: the parts add up to paid hours"
    rows = Table(sheet, looks, title, widths)
    first, last = (1 + columns.index(name) for name in (_PARTS[0], _PARTS[-1]))
    paid, unpaid = (1 + columns.index(name) for name in ("paid", "unpaid_meal"))
    for row, (crew, hours) in enumerate(table.iterrows(), Table.FIRST_ROW):
        rows.row(row, [str(crew).replace("_", " ")])
        sums = {
            "paid": f"=SUM({xl_range(row, first, row, last)})",
            "elapsed": f"={xl_rowcol_to_cell(row, paid)}+{xl_rowcol_to_cell(row, unpaid)}",
        }
        for column, name in enumerate(columns, 1):
            number = float(hours[name])
            if name in sums:
                sheet.write_formula(row, column, sums[name], looks.figure, number)
            else:
                sheet.write_number(row, column, number, looks.figure)


def write_payments(sheet: Worksheet, looks: Looks, table: pd.DataFrame, currency: str) -> None:
    """What is earned, held back and paid by period, as priced."""
    widths = {"period": 10.0, "begins": 14.0, "earned": 16.0, "kept": 16.0, "paid": 16.0,
              "outstanding": 16.0}  # fmt: skip
    title = f"Payments, {currency}, beside the price: earned, held back, paid"
    rows = Table(sheet, looks, title, widths)
    for row, (period, values) in enumerate(table.iterrows(), Table.FIRST_ROW):
        begins = values["begins"]
        rows.row(row, [str(period), "" if begins != begins else f"{begins:%Y-%m-%d}"])
        for column, name in enumerate(("earned", "kept", "paid", "outstanding"), 2):
            sheet.write_number(row, column, float(values[name]), looks.money)
