"""Rate books as sheets: CSV, or the first sheet of a workbook. One row a value, one a part."""

from __future__ import annotations

import csv
import io
import json
import os
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from scupper import _core
from scupper._files import read_text
from scupper.errors import Error, FileError, InputError
from scupper.results import FORMULA_SIGNS

COLUMNS = (
    "key",
    "label",
    "low",
    "likely",
    "high",
    "unit",
    "shared_share",
    "source",
    "date",
    "note",
)
#: Of a row whose `likely` cell lists the values it takes; a list without it is a sample.
WEIGHTS = "weights"
#: Between the values of a list.
BETWEEN = ";"
#: Rows at the top whose `likely` cell says something of the book itself.
ABOUT = ("name", "version", "date", "currency", "source", "note")
_VALUES = ("low", "likely", "high")
#: Groups whose fields may be built up from parts, which stand behind another dot.
_BUILT_UP = ("labour", "equipment", "haul")


@dataclass(frozen=True)
class Row:
    """One line of a sheet that is not empty."""

    line: int
    cells: dict[str, str]

    @property
    def key(self) -> str:
        return self.cells["key"]


def is_sheet(path: str | os.PathLike[str]) -> bool:
    """Whether a file is a sheet by its name."""
    return Path(path).suffix.lower() in (".csv", ".xlsx")


def sheet_rows(path: str | os.PathLike[str]) -> list[Row]:
    """The rows of a sheet; its first line names the columns, in any order."""
    name = os.fspath(path)
    lines = _workbook_lines(path) if Path(path).suffix.lower() == ".xlsx" else _csv_lines(path)
    if not lines:
        raise FileError("rates.header", name, "no line", f"columns {', '.join(COLUMNS)}")
    (top, header), *rest = lines
    known = [column.strip().lower() for column in header]
    for column in ("key", "likely"):
        if column not in known:
            raise FileError("rates.header", f"{name}:{top}", ", ".join(known), f"a column {column}")
    rows = []
    for line, cells in rest:
        if len(cells) > len(known):
            found = f"{len(cells)} cells"
            raise InputError("rates.cells", f"{name}:{line}", found, f"{len(known)} cells")
        named = dict.fromkeys((*COLUMNS, WEIGHTS), "") | dict(zip(known, cells, strict=False))
        rows.append(Row(line, named))
    return rows


def _csv_lines(path: str | os.PathLike[str]) -> list[tuple[int, list[str]]]:
    text = read_text(path).removeprefix("\ufeff")
    reader = csv.reader(io.StringIO(text, newline=""), strict=True)
    lines = []
    try:
        for row in reader:
            cells = [_as_written(cell.strip()) for cell in row]
            if any(cells):
                lines.append((reader.line_num, cells))
    except csv.Error as e:
        where = f"{os.fspath(path)}:{reader.line_num}"
        raise FileError("rates.csv", where, str(e), "CSV text") from None
    return lines


def _as_written(cell: str) -> str:
    """A cell without the apostrophe that keeps spreadsheets from running it."""
    return cell[1:] if cell[:1] == "'" and cell[1:].startswith(FORMULA_SIGNS) else cell


def _workbook_lines(path: str | os.PathLike[str]) -> list[tuple[int, list[str]]]:
    import openpyxl

    try:
        book = openpyxl.load_workbook(path, read_only=True, data_only=True)
    except OSError as e:
        reason = e.strerror or str(e)
        raise FileError("file.open", os.fspath(path), reason, "a readable file") from None
    except Exception as e:  # whatever a broken archive makes the reader say
        raise FileError("rates.workbook", os.fspath(path), str(e), "a workbook (.xlsx)") from None
    lines = []
    for line, row in enumerate(book.worksheets[0].iter_rows(values_only=True), start=1):
        cells = [_cell_text(value) for value in row]
        while cells and not cells[-1]:
            cells.pop()
        if any(cells):
            lines.append((line, cells))
    book.close()
    return lines


def _cell_text(value: Any) -> str:
    """A cell of a workbook as text; dates as ISO 8601."""
    if value is None:
        return ""
    if hasattr(value, "isoformat"):
        return str(value.isoformat())[:10]
    return str(value).strip()


def sheet_document(rows: list[Row]) -> dict[str, Any]:
    """The document that the rows of a sheet stand for."""
    document: dict[str, Any] = {"scupper_rates": 1}
    inputs: dict[str, Any] = {}
    for row in rows:
        if row.key in ABOUT:
            document[row.key] = row.cells["likely"]
        elif row.key:
            _put(inputs, row)
    document["inputs"] = inputs
    return document


def _put(inputs: dict[str, Any], row: Row) -> None:
    whole, part = _whole_and_part(row.key)
    entry = inputs.setdefault(whole, {})
    if part:
        for name in _VALUES:
            entry.pop(name, None)
        entry.setdefault("built_up", {})[part] = _part(row)
    elif _is_list(row):
        entry |= _list(row)
    elif "built_up" not in entry:
        low, likely, high = (_value(row, name) for name in _VALUES)
        if low is None and high is None:
            entry["value"] = likely
        else:
            entry |= {"low": low, "likely": likely, "high": high}
    if row.cells["shared_share"]:
        entry["shared_share"] = _number(row.cells["shared_share"])
    for name in ("source", "date", "note"):
        if row.cells[name]:
            entry[name] = row.cells[name]
    if part:
        entry.pop("value", None)


def _is_list(row: Row) -> bool:
    return BETWEEN in row.cells["likely"] or bool(row.cells[WEIGHTS])


def _list(row: Row) -> dict[str, Any]:
    """Values in proportion to weights, or a sample: "1; 2; 4", in the unit of the row."""
    stated = [_with_unit(text, row) for text in _split(row.cells["likely"])]
    weights = [_number(text) for text in _split(row.cells[WEIGHTS])]
    return {"values": stated, WEIGHTS: weights} if weights else {"sample": stated}


def _split(cell: str) -> list[str]:
    return [text.strip() for text in cell.split(BETWEEN)] if cell else []


def _part(row: Row) -> Any:
    """A part of what is built up: one value, or low, likely and high."""
    low, likely, high = (_value(row, name) for name in _VALUES)
    if low in (None, likely) and high in (None, likely):
        return likely
    return {"low": low, "likely": likely, "high": high}


def _whole_and_part(key: str) -> tuple[str, str]:
    """``labour[crew].wage.cash`` is the part ``cash`` of ``labour[crew].wage``."""
    row, closed, rest = key.rpartition("]")
    group = (row or rest).partition("[")[0].partition(".")[0]
    fields = (rest if closed else key.partition(".")[2]).removeprefix(".").split(".")
    if group in _BUILT_UP and len(fields) == 2:
        return key.rpartition(".")[0], fields[1]
    return key, ""


def _value(row: Row, column: str) -> Any:
    """Number and unit as one text; a number alone where the row has no unit; else as it stands."""
    text = row.cells[column]
    return _with_unit(text, row) if text else None


def _with_unit(text: str, row: Row) -> Any:
    number = _number(text)
    if isinstance(number, str):
        return text
    unit = row.cells["unit"]
    return number if unit in ("", "1", "each") else f"{text} {unit}"


def _number(text: str) -> float | str:
    try:
        return float(text.replace(",", ""))
    except ValueError:
        return text


def faults_of(rows: list[Row], name: str, *, first_only: bool = False) -> list[Error]:
    """What cannot be used, each with file, line and column; every value is read by itself."""
    about = {r.key: r.cells["likely"] for r in rows if r.key in ABOUT}
    parts: dict[str, list[Row]] = {}
    for row in rows:
        whole, part = _whole_and_part(row.key)
        if part:
            parts.setdefault(whole, []).append(row)
    faults: list[Error] = []
    seen: dict[str, int] = {}
    for row in rows:
        fault = _bad_key(row, seen, name)
        if fault is None and row.key not in ABOUT:
            whole, part = _whole_and_part(row.key)
            family = parts.get(whole, [row])
            if row is family[-1]:
                fault = _unreadable(family, about, name)
        if fault is not None:
            faults.append(fault)
            if first_only:
                break
    return faults


def _bad_key(row: Row, seen: dict[str, int], name: str) -> Error | None:
    place = f"{name}:{row.line} key"
    if not row.key:
        return InputError("rates.key", place, "a row without a key", "a key of the rates")
    if row.key in seen:
        allowed = f"each key once: it stands in line {seen[row.key]} too"
        return InputError("rates.twice", place, row.key, allowed)
    seen[row.key] = row.line
    return None


def _unreadable(family: list[Row], about: dict[str, str], name: str) -> Error | None:
    """What the core says of a value, or of the parts of one, with the line it speaks of."""
    for row in family:
        if not row.cells["likely"]:
            return InputError("rates.empty", f"{name}:{row.line} likely", "nothing", "a number")
        for end in ("low", "high"):
            if _is_list(row) and row.cells[end]:
                allowed = "nothing beside several values"
                place = f"{name}:{row.line} {end}"
                return InputError("rates.list", place, row.cells[end], allowed)
    try:
        _core.RateBook.read(json.dumps(sheet_document(family) | about), name)
    except Error as e:
        row = next((r for r in family if e.path.endswith(r.key)), family[0])
        for r in family:
            if f".built_up.{_whole_and_part(r.key)[1]}" in e.path or f'"{r.key}"' in e.found:
                row = r
        return type(e)(e.id, f"{name}:{row.line} {_column(row, e)}", e.found, e.allowed)
    return None


def _column(row: Row, e: Error) -> str:
    """The column that an error speaks of."""
    if e.id in ("schema.key", "cost.part", "json.key"):
        return "key"
    if e.path.endswith(f".{WEIGHTS}"):
        return WEIGHTS
    for column in (*_VALUES, "shared_share", "unit"):
        if row.cells[column] and row.cells[column] in e.found:
            return column
    return "likely"
