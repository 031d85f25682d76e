"""Reading workbooks in tests, and recalculating them by an independent spreadsheet."""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import openpyxl
import pytest

needs_spreadsheet = pytest.mark.skipif(
    shutil.which("soffice") is None, reason="no soffice (libreoffice-calc) to recalculate with"
)


def rows(book: Any, sheet: str, label: str) -> dict[str, int]:
    """Row numbers of a sheet by the text in the column that has this heading."""
    table = book[sheet]
    column = next(cell.column for cell in table[3] if cell.value == label)
    found: dict[str, int] = {}
    for row in range(4, table.max_row + 1):
        text = table.cell(row, column).value
        if text:
            found.setdefault(text, row)
    return found


def changed(source: Path, target: Path, values: Mapping[str, Any]) -> None:
    """Sets inputs by key. The copy has no values of formulas: they must be worked out anew."""
    book = openpyxl.load_workbook(source)
    inputs = rows(book, "Inputs", "key")
    for key, value in values.items():
        book["Inputs"].cell(inputs[key], 2).value = value
    book.save(target)


def recalculated(path: Path) -> Any:
    """The workbook as another spreadsheet works it out."""
    out = path.parent / "recalculated"
    profile = path.parent / "profile"
    command = ["soffice", f"-env:UserInstallation=file://{profile}", "--headless", "--convert-to",
               "xlsx:Calc MS Excel 2007 XML", "--outdir", str(out), str(path)]  # fmt: skip
    subprocess.run(command, check=True, capture_output=True, timeout=240)
    return openpyxl.load_workbook(out / path.name, data_only=True)


def summary(book: Any) -> dict[str, Any]:
    """The live figures of the first sheet by label."""
    labels = rows(book, "Summary", "figure")
    table = book["Summary"]
    return {
        k: table.cell(r, 2).value for k, r in labels.items() if table.cell(r, 4).value is not None
    }
