"""Rate books written as sheets: CSV, or a workbook."""

from __future__ import annotations

import io
import os
from pathlib import Path
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._rate_sheets import ABOUT, BETWEEN, COLUMNS, WEIGHTS
from scupper.results import safe_cells

if TYPE_CHECKING:
    import pandas as pd

Document = dict[str, Any]


def sheet_bytes(
    path: str | os.PathLike[str], book: _core.RateBook, values: pd.DataFrame, document: Document
) -> str | bytes:
    """The whole sheet by the ending of its name, from the table and the document of a book."""
    import pandas as pd

    about = pd.DataFrame(
        [{"key": name, "likely": getattr(book, name), "label": "of the book"} for name in ABOUT]
    )
    certain = values["low"] == values["high"]
    values = values.assign(
        low=values["low"].where(~certain), high=values["high"].where(~certain),
        shared_share=values["shared_share"].where(~certain),
        unit=values["unit"].replace({"1": "", "each": ""}),
    )  # fmt: skip
    values = _with_lists(_with_words(values.astype(object)), document)
    columns = [*COLUMNS, WEIGHTS] if WEIGHTS in values else list(COLUMNS)
    table = pd.concat([about, values]).reindex(columns=columns).astype(object)
    table = table.where(table.notna(), "")
    if Path(path).suffix.lower() == ".csv":
        return safe_cells(table).to_csv(index=False)
    return _workbook(table)


def _with_words(values: pd.DataFrame) -> pd.DataFrame:
    """How ownership is reckoned is a word, not its number."""
    words = values["key"].str.endswith(".ownership")
    values.loc[words, "likely"] = [
        _core.ownership_names()[int(n)] for n in values.loc[words, "likely"]
    ]
    return values


def _with_lists(values: pd.DataFrame, document: Document) -> pd.DataFrame:
    """A value that is stated by those it takes, or by a sample, has them all in one cell."""
    for key, entry in document["inputs"].items():
        stated = entry.get("sample", entry.get("values")) if isinstance(entry, dict) else None
        if stated is None:
            continue
        row = values["key"] == key
        unit = f" {values.loc[row, 'unit'].iloc[0]}"
        numbers = [str(text).removesuffix(unit).replace(",", "") for text in stated]
        values.loc[row, ["low", "likely", "high"]] = [None, f"{BETWEEN} ".join(numbers), None]
        if WEIGHTS in entry:
            values.loc[row, WEIGHTS] = f"{BETWEEN} ".join(str(w) for w in entry[WEIGHTS])
    return values


def _workbook(table: pd.DataFrame) -> bytes:
    import xlsxwriter

    file = io.BytesIO()
    book = xlsxwriter.Workbook(file, {"in_memory": True, "strings_to_formulas": False,
                                      "strings_to_urls": False})  # fmt: skip
    sheet = book.add_worksheet("rates")
    bold = book.add_format({"bold": True})
    sheet.write_row(0, 0, list(table.columns), bold)
    for line, row in enumerate(table.itertuples(index=False), start=1):
        sheet.write_row(line, 0, list(row))
    sheet.freeze_panes(1, 1)
    sheet.set_column(0, 1, 42)
    sheet.set_column(2, 6, 11)
    sheet.set_column(7, 9, 30)
    book.close()
    return file.getvalue()
