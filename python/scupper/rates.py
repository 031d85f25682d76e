"""Rate books: dated, versioned, sourced collections of what work and things cost."""

from __future__ import annotations

import json
import os
from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._files import read_text, require_new, write_whole
from scupper._frames import frame
from scupper._rate_sheet_files import sheet_bytes
from scupper._rate_sheets import faults_of, is_sheet, sheet_document, sheet_rows
from scupper.errors import UnknownNameError

if TYPE_CHECKING:
    import pandas as pd

    from scupper._core import Structure
    from scupper.inventory import Inventory
    from scupper.job import Job

__all__ = ["RateBook", "compare", "faults", "merge", "read", "write_rate_form"]

#: Groups of values that stand in the form of a rate book.
_FORM_GROUPS = ("operation", "labour", "equipment", "charge", "price", "margin", "closure")
_FORM_KEYS = ("haul.load_charge", "haul.wage", "shift.overtime_factor", "shift.productive_share")


class RateBook:
    """A dated, versioned, sourced collection of operations and values."""

    def __init__(self, core: _core.RateBook) -> None:
        self._core = core

    @classmethod
    def shipped(cls) -> RateBook:
        """The book that every job stands on unless it is read on another."""
        return cls(_core.RateBook.shipped())

    @classmethod
    def of_job(cls, job: Job) -> RateBook:
        """The values of a job as a book."""
        return cls(_core.rate_book_of(job._core))

    @classmethod
    def from_file(cls, path: str | os.PathLike[str]) -> RateBook:
        """Reads a book from JSON, or from a sheet: CSV, or the first one of a workbook (.xlsx).

        Raises
        ------
        InputError
            Naming file, line and column of the first thing that cannot be used; `faults` lists all.
        """
        name = os.fspath(path)
        if not is_sheet(path):
            return cls(_core.RateBook.read(read_text(path), name))
        rows = sheet_rows(path)
        for fault in faults_of(rows, name, first_only=True):
            raise fault
        return cls(_core.RateBook.read(json.dumps(sheet_document(rows)), name))

    @classmethod
    def from_dict(cls, document: Mapping[str, Any]) -> RateBook:
        """A book from a document as `to_dict` gives it."""
        return cls(_core.RateBook.read(json.dumps(document), "rate book"))

    def to_dict(self, units: str = "us") -> dict[str, Any]:
        """The whole book as a document, values as text with their units."""
        document: dict[str, Any] = json.loads(self._core.write(units))
        return document

    def to_pandas(self, units: str = "us") -> pd.DataFrame:
        """Every value: key, label, low, likely, high, unit, basis, source, date and the like.

        The parts of a built-up rate follow it, as ``labour[wash_crew].wage.cash``.
        """
        return frame(self._core.columns(units))

    def save(self, path: str | os.PathLike[str], units: str = "us") -> None:
        """Writes the book by the ending of the name: .json, .csv or .xlsx; whole or not at all.

        A sheet holds the values, not the operations: those stand in JSON only. What is stated by
        several values has them in the cell `likely`, "1; 2; 4": a sample, or with a cell `weights`
        the values it takes.
        """
        if not is_sheet(path):
            write_whole(path, self._core.write(units) + "\n")
            return
        table = self.to_pandas(units)
        write_whole(path, sheet_bytes(path, self._core, table, self.to_dict(units)))

    @property
    def name(self) -> str:
        """What people call the book."""
        return self._core.name

    @property
    def version(self) -> str:
        """Edition of the book; may be empty."""
        return self._core.version

    @property
    def date(self) -> str:
        """When its prices were made, ISO 8601."""
        return self._core.date

    @property
    def currency(self) -> str:
        """Three-letter code of every amount."""
        return self._core.currency

    @property
    def source(self) -> str:
        """Where its values come from unless they say so themselves."""
        return self._core.source

    @property
    def title(self) -> str:
        """What it is cited as: name, version and date."""
        return self._core.title

    @property
    def beneath(self) -> list[str]:
        """Titles of the books that it was laid over by `merge`."""
        return list(self._core.beneath)

    def __repr__(self) -> str:
        return f"<RateBook {self.title!r}: {self.currency}, {len(self.to_pandas())} values>"


def read(path: str | os.PathLike[str]) -> RateBook:
    """Reads a rate book: see `RateBook.from_file`."""
    return RateBook.from_file(path)


def faults(path: str | os.PathLike[str]) -> pd.DataFrame:
    """Everything in a sheet of rates that cannot be used.

    Returns
    -------
    pandas.DataFrame
        place (file and line, column), found, allowed; empty where the sheet can be read.
    """
    found = faults_of(sheet_rows(path), os.fspath(path))
    return frame({
        "place": [e.path for e in found],
        "found": [e.found for e in found],
        "allowed": [e.allowed for e in found],
    })  # fmt: skip


def merge(base: RateBook, *over: RateBook) -> RateBook:
    """One book over another: what a later one says stands, every value keeps its origin.

    Raises
    ------
    InputError
        Where the books have two currencies.
    """
    core = base._core
    for book in over:
        core = core.merged(book._core)
    return RateBook(core)


def compare(
    a: RateBook,
    b: RateBook,
    structures: Structure | Inventory | Iterable[Structure] | None = None,
    job: Job | None = None,
    units: str = "us",
) -> pd.DataFrame:
    """What changed from one book to another, and what each change does to a price.

    Parameters
    ----------
    a, b
        The books, for instance last year's and this year's.
    structures
        What to price: a structure, an inventory, or structures. Without them nothing is priced.
    job
        The job whose values the books replace; without one that of the demo.
    units
        ``"us"``, ``"metric"`` or ``"si"``.

    Returns
    -------
    pandas.DataFrame
        By key: label, unit, a and b (likely), change, lows, highs and sources. With structures
        also ``effect``: the total with that value of b less the total under a, in the job's
        currency. A last row ``total`` holds the totals under a and b. NaN: one of them has no such
        value. The dearest changes stand first.
    """
    table = _changed(a, b, units)
    if structures is None:
        return table
    from scupper._rate_effects import priced

    return priced(table, a, b, structures, job)


def _changed(a: RateBook, b: RateBook, units: str) -> pd.DataFrame:
    sides = [book.to_pandas(units).set_index("key") for book in (a, b)]
    columns = ["low", "likely", "high", "source"]
    both = sides[0][columns].add_suffix("_a").join(sides[1][columns].add_suffix("_b"), how="outer")
    about = sides[1][["label", "unit"]].combine_first(sides[0][["label", "unit"]])
    table = about.join(both).rename(columns={"likely_a": "a", "likely_b": "b"})
    same = (
        (table["a"] == table["b"])
        & (table["low_a"] == table["low_b"])
        & (table["high_a"] == table["high_b"])
    )
    table = table[~same]
    table.insert(4, "change", table["b"] - table["a"])
    order = ["label", "unit", "a", "b", "change", "low_a", "high_a", "low_b", "high_b",
             "source_a", "source_b"]  # fmt: skip
    return table[order]


def write_rate_form(
    path: str | os.PathLike[str], job: Job | None = None, units: str = "us"
) -> None:
    """Writes a rate book to fill in: a sheet (.csv, .xlsx) or a document (.json).

    Parameters
    ----------
    path
        The file; it must not be there yet.
    job
        The job whose people, equipment and values stand in it; without one that of the demo, whose
        prices are invented.
    units
        ``"us"``, ``"metric"`` or ``"si"``.

    Raises
    ------
    FileError
        Where the file exists or cannot be written.
    """
    from scupper.job import Job

    require_new(path)
    book = _core.rate_book_of((job or Job.demo())._core)
    document = json.loads(book.write(units))
    document |= {"name": "my rates", "version": "1", "operations": [], "source": ""}
    document["inputs"] = {k: v for k, v in document["inputs"].items() if _in_form(k)}
    filled = RateBook.from_dict(document)
    if is_sheet(path) or Path(path).suffix == ".json":
        filled.save(path, units)
        return
    raise UnknownNameError("rates.format", os.fspath(path), Path(path).suffix, ".csv, .xlsx, .json")


def _in_form(key: str) -> bool:
    group, field = key.partition("[")[0].partition(".")[0], key.rpartition(".")[2]
    return group in _FORM_GROUPS or f"{group}.{field}" in _FORM_KEYS
