"""Bid forms as owners get them: read, with a preview of what was understood."""

from __future__ import annotations

import csv
import io
import os
from collections.abc import Sequence
from decimal import Decimal
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._files import read_text
from scupper._frames import frame
from scupper.errors import FileError, InputError, UnknownNameError

if TYPE_CHECKING:
    import pandas as pd

    Path_ = str | os.PathLike[str]

_FIGURES = ("quantity", "unit_price", "extension", "price_in_words")
_DOUBTS = ["file", "sheet", "line", "column", "text", "why", "taken"]
_OTHERS = ["file", "sheet", "line", "text", "taken_for"]


class ReadBids:
    """Bids as they were read; nothing is corrected.

    `core` is the plain data that checks and comparisons take.
    """

    def __init__(
        self, core: _core.BidSet, sheets: Sequence[_core.SheetRead], doubts: Sequence[Any]
    ) -> None:
        self.core = core
        self.sheets = list(sheets)
        self._doubts = list(doubts)

    @property
    def currency(self) -> str:
        """Three-letter code of every amount."""
        return self.core.currency

    @property
    def title(self) -> str:
        """The first line above the headings of the first form; empty where there is none."""
        others = self.sheets[0].others()
        rows = zip(others["text"], others["taken_for"], strict=True)
        titles = [str(text) for text, taken_for in rows if taken_for == "title"]
        return titles[0] if titles and not titles[0].lower().startswith("bidder") else ""

    @property
    def bidders(self) -> list[str]:
        """Who bids, in the order of the files."""
        return [bid.bidder for bid in self.core.bids]

    @cached_property
    def items(self) -> pd.DataFrame:
        """The items that are bid on: code, group, description, unit, kind, quantity."""
        columns: dict[str, Any] = dict(self.core.items())
        columns["quantity"] = [Decimal(text) for text in columns["quantity"]]
        return frame(columns)

    @cached_property
    def totals(self) -> pd.Series[Any]:
        """Totals as written, by bidder; None where a form has none."""
        import pandas as pd

        totals = {bid.bidder: _decimal(bid.total) for bid in self._all}
        return pd.Series(totals, dtype=object)

    @property
    def _all(self) -> list[_core.Bid]:
        engineer = self.core.engineer
        return [*self.core.bids, *([engineer] if engineer else [])]

    def lines(self, bidder: str) -> pd.DataFrame:
        """What a bidder wrote: code, quantity, unit_price, extension, words, price_in_words, line.

        Figures are exact (``decimal.Decimal``); None where there is none to take.
        """
        for bid in self._all:
            if bid.bidder == bidder:
                columns: dict[str, Any] = dict(bid.lines())
                for name in _FIGURES:
                    columns[name] = [_decimal(text) for text in columns[name]]
                return frame(columns).astype(dict.fromkeys(_FIGURES, object))
        names = [bid.bidder for bid in self._all]
        near = _core.nearest_name(bidder, names)
        allowed = f'"{near}"?' if near else ", ".join(names)
        raise UnknownNameError("bid.bidder", "bidder", f'"{bidder}"', allowed)

    def to_pandas(self) -> pd.DataFrame:
        """The unit prices side by side: one row an item, one column a bidder."""
        table = self.items[["code", "description", "unit", "quantity"]].set_index("code")
        for bid in self._all:
            lines = self.lines(bid.bidder).drop_duplicates("code").set_index("code")
            table[bid.bidder] = lines["unit_price"].reindex(table.index)
        return table

    @cached_property
    def doubts(self) -> pd.DataFrame:
        """Every cell that may have been misread: file, sheet, line, column, text, why, taken."""
        return frame(_core.doubt_columns(self._doubts), _DOUBTS)

    @cached_property
    def other_rows(self) -> pd.DataFrame:
        """Rows that are no item: file, sheet, line, text and what each was taken for; ``"?"`` where
        it was not understood. Blank rows are left out, all others are items."""
        import pandas as pd

        tables = [frame(sheet.others(), _OTHERS) for sheet in self.sheets]
        return pd.concat(tables, ignore_index=True)

    @property
    def preview(self) -> str:
        """What was understood, sheet by sheet: headings, columns, items, total, doubts."""
        lines = []
        for sheet in self.sheets:
            lines += _sheet_lines(sheet)
        lines.append(
            f"{len(self.bidders)} bids, {len(self.items)} items, {len(self.doubts)} doubts"
        )
        for row in self.doubts.to_dict("records"):
            where = f"{row['file']} {row['sheet']}".strip()
            cell = f":{row['line']} {row['column']}".rstrip() if row["line"] else ""
            lines.append(f'  {where}{cell} "{row["text"]}": {row["why"]}; taken: {row["taken"]}')
        return "\n".join(lines)

    def __repr__(self) -> str:
        return self.preview


def _decimal(text: str | None) -> Decimal | None:
    return None if text is None else Decimal(text)


def _sheet_lines(sheet: _core.SheetRead) -> list[str]:
    first, rows = sheet.header_row, sheet.header_rows
    where = f"line {first}" if rows == 1 else f"lines {first} to {first + rows - 1}"
    lines = [f"{sheet.file} {sheet.sheet}".strip() + f": headings in {where}"]
    for letter, heading, role, bidder in sheet.columns():
        whose = f" of {bidder}" if bidder else ""
        lines.append(f'  {letter:3} "{heading}": {role.replace("_", " ")}{whose}')
    others = list(sheet.others()["taken_for"])
    counts = {what: others.count(what) for what in dict.fromkeys(others)}
    rest = ", ".join(f"{n} {'not understood' if w == '?' else w}" for w, n in counts.items())
    total = f"total in line {sheet.total_row}" if sheet.total_row else "no total"
    items = len(sheet.items()["code"])
    lines.append(f"  {items} items, {total}" + (f"; other rows: {rest}" if rest else ""))
    return lines


def read_bids(
    paths: Path_ | Sequence[Path_], mapping: Path_ | _core.FormMapping | None = None
) -> ReadBids:
    """Reads bid forms, CSV or XLSX: one file a bidder, or one tabulation with columns for each.

    Title rows, headings over two or three rows, merged ones, signs and commas, brackets for
    negatives, subtotals, totals and notes are understood; what is doubtful is listed, what is not
    understood too.

    Parameters
    ----------
    paths
        A file, or several for one contract.
    mapping
        A small JSON document that says what headings do not: ``{"scupper_form": 1, "header_row": 4,
        "columns": {"code": "A", "unit_price": "Price"}, "bidder": "...", "currency": "USD"}``; for
        a tabulation ``"bidders": [{"bidder": "...", "unit_price": "E", "extension": "F"}]``.

    Returns
    -------
    ReadBids
        ``.preview``, ``.doubts``, ``.items``, ``.lines(bidder)``, ``.totals``, ``.other_rows``.

    Raises
    ------
    InputError
        Where no row of headings is found, or two bids have one name.
    FileError
        Where a file cannot be read.
    """
    listed = [paths] if isinstance(paths, str | os.PathLike) else list(paths)
    known = _mapping(mapping)
    sheets = []
    for path in listed:
        sheets += _read_file(Path(path), known)
    core, found = _core.join_bid_sheets(sheets, known)
    doubts = [doubt for sheet in sheets for doubt in sheet.doubts]
    return ReadBids(core, sheets, [*doubts, *found])


def _mapping(mapping: Path_ | _core.FormMapping | None) -> _core.FormMapping:
    if mapping is None:
        return _core.FormMapping()
    if isinstance(mapping, _core.FormMapping):
        return mapping
    return _core.FormMapping.read(read_text(mapping), os.fspath(mapping))


def _read_file(path: Path, mapping: _core.FormMapping) -> list[_core.SheetRead]:
    """The sheets of a file that hold a form; of a workbook without one, the first one's fault."""
    ending = path.suffix.lower()
    if ending == ".csv":
        return [_core.read_bid_sheet(path.name, "", _csv_rows(path), mapping)]
    if ending != ".xlsx":
        raise FileError("file.kind", os.fspath(path), f'"{ending}"', ".csv or .xlsx")
    read, faults = [], []
    for name, rows in _workbook_rows(path):
        try:
            read.append(_core.read_bid_sheet(path.name, name, rows, mapping))
        except InputError as fault:
            if fault.id not in ("bid.header", "bid.no_item"):
                raise
            faults.append(fault)
    if not read:
        raise faults[0] if faults else FileError("file.sheet", os.fspath(path), "no sheet", "one")
    return read


def _csv_rows(path: Path) -> list[list[str]]:
    text = read_text(path).removeprefix("\ufeff")
    head = text[:4096]
    mark = max(",;\t", key=head.count)  # of equals the comma
    try:
        return [list(row) for row in csv.reader(io.StringIO(text, newline=""), delimiter=mark)]
    except csv.Error as e:
        raise FileError("file.text", os.fspath(path), str(e), "a CSV file") from None


def _workbook_rows(path: Path) -> list[tuple[str, list[list[str]]]]:
    """Cells as text: numbers by their shortest digits, so that they become exact decimals."""
    import zipfile

    import openpyxl

    try:
        book = openpyxl.load_workbook(path)
        computed = openpyxl.load_workbook(path, data_only=True)
    except (OSError, KeyError, ValueError, zipfile.BadZipFile) as e:
        raise FileError("file.open", os.fspath(path), str(e), "a workbook (.xlsx)") from None
    visible = [sheet for sheet in book.worksheets if sheet.sheet_state == "visible"]
    return [(sheet.title, _cells(sheet, computed[sheet.title])) for sheet in visible]


def _cells(written: Any, computed: Any) -> list[list[str]]:
    """Text of every cell: of a formula what it came to, or itself where nobody computed it."""
    pairs = zip(written.iter_rows(values_only=True), computed.iter_rows(values_only=True),
                strict=True)  # fmt: skip
    return [[_text(w if c is None else c) for w, c in zip(*rows, strict=True)] for rows in pairs]


def _text(cell: Any) -> str:
    if cell is None:
        return ""
    if isinstance(cell, float) and cell.is_integer() and abs(cell) < 1e15:
        return str(int(cell))
    return str(cell)  # of a float the shortest digits that read back
