"""The engine against published figures: every row that was gathered, and why a figure differs."""

from __future__ import annotations

import csv
import json
import os
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._check_forms import Check, LackingError, Reason, evaluate, in_unit
from scupper._files import write_whole
from scupper._frames import frame
from scupper.errors import FileError

if TYPE_CHECKING:
    import pandas as pd

COLUMNS = (
    "file",
    "id",
    "quantity",
    "inputs",
    "published",
    "ours",
    "difference",
    "share",
    "unit",
    "verdict",
    "source",
    "locator",
    "basis",
    "notes",
)
AGREES, NOT_CHECKED, UNEXPLAINED = "agrees", "not checked", "unexplained"
#: Rows without a formula behind them, each with its reason.
APART = "not_checked"


@dataclass(frozen=True)
class _Row:
    """One published figure."""

    file: str
    cells: dict[str, str]

    @property
    def expected(self) -> float:
        return float(self.cells["expected"])

    @property
    def half_step(self) -> float:
        return 0.5 * float(self.cells["printed_precision"] or 0) * (1 + 1e-9)

    @property
    def inputs(self) -> dict[str, Any]:
        found: dict[str, Any] = json.loads(self.cells["inputs_json"] or "{}")
        return found

    def says(self, text: str) -> bool:
        return any(text in cell for cell in self.cells.values())


def verification() -> pd.DataFrame:
    """Every published figure that was gathered, beside the engine's.

    Returns
    -------
    pandas.DataFrame
        file, id, quantity, inputs, published, ours, difference (ours less published), share (of
        the published figure), unit, verdict, source, locator, basis, notes. The verdict is
        ``agrees`` where ours rounds to the printed figure, else the reason for the difference:
        a publisher's own constant, digits cut off, a coefficient that he keeps for himself;
        ``not checked: `` with the reason where no formula stands behind a row, and ``unexplained``
        where none of the reasons holds. The basis tells whether the printed figure was ``seen``,
        ``computed`` by a named library, or stands there from ``memory``.

    Raises
    ------
    FileError
        Where the figures are not there: they come with an installed package.
    """
    rows = [_line(row) for row in _rows()]
    return frame({name: [row[name] for row in rows] for name in COLUMNS})


def verification_counts(table: pd.DataFrame | None = None) -> pd.DataFrame:
    """How many rows agree, by file and reason.

    Parameters
    ----------
    table
        What `verification` gave; None for a fresh one.

    Returns
    -------
    pandas.DataFrame
        file, verdict, rows. Figures from memory are counted apart.
    """
    table = verification() if table is None else table
    apart = table["verdict"].str.startswith(NOT_CHECKED)
    verdict = table["verdict"].mask(apart, NOT_CHECKED)
    verdict = verdict.mask((table["basis"] == "memory") & ~apart, verdict + ", from memory")
    return (
        table.assign(verdict=verdict).groupby(["file", "verdict"]).size().reset_index(name="rows")
    )


def write_verification(
    folder: str | os.PathLike[str], table: pd.DataFrame | None = None
) -> list[Path]:
    """Writes the table as CSV and as HTML to print.

    Parameters
    ----------
    folder
        It is made where it is not there.
    table
        What `verification` gave; None for a fresh one.

    Returns
    -------
    list of pathlib.Path
        The files written.
    """
    from scupper._paper import render

    table = verification() if table is None else table
    Path(folder).mkdir(parents=True, exist_ok=True)
    sheet, page = Path(folder) / "verification.csv", Path(folder) / "verification.html"
    write_whole(sheet, table.to_csv(index=False))
    counts = verification_counts(table)
    write_whole(page, render("verification.html", counts=counts, table=table))
    return [sheet, page]


def _folder() -> Path:
    """The published figures stand beside the compiled core."""
    folder = Path(_core.__file__).parent / "published"
    if not folder.is_dir():
        raise FileError(
            "verify.files", str(folder), "no such folder", "an installed package, which has it"
        )
    return folder


def _rows() -> Iterator[_Row]:
    from scupper._checks import CHECKS

    found = sorted(_folder().glob("*.csv"))
    order = {name: place for place, name in enumerate(CHECKS)}
    for path in sorted(found, key=lambda path: (order.get(path.stem, len(order)), path.stem)):
        with path.open(encoding="utf-8", newline="") as file:
            for cells in csv.DictReader(file):
                yield _Row(path.stem, cells)


def _line(row: _Row) -> dict[str, Any]:
    """One row of the table."""
    from scupper._checks import NOT_ANSWERED, UNITS

    ours, verdict = float("nan"), ""
    if row.file == APART:
        verdict = f"{NOT_CHECKED}: {row.cells['reason']}"
    else:
        check = _check_of(row)
        if check is None:
            verdict = f"{NOT_CHECKED}: {NOT_ANSWERED.get(row.cells['id'], 'nobody mapped it')}"
        else:
            unit = check.unit or UNITS.get(row.cells["unit"], row.cells["unit"])
            ours = in_unit(evaluate(check.value, row.inputs), unit)
            verdict = _verdict(row, check, ours, unit)
    difference = ours - row.expected
    return {
        "file": row.file,
        "inputs": row.cells["inputs_json"],
        "published": row.expected,
        "ours": ours,
        "difference": difference,
        "share": difference / row.expected if row.expected else float("nan"),
        "verdict": verdict,
    } | {
        name: row.cells[name]
        for name in ("id", "quantity", "unit", "source", "locator", "basis", "notes")
    }


def _check_of(row: _Row) -> Check | None:
    """The first check of the file that fits the row."""
    from scupper._checks import CHECKS

    for check in CHECKS.get(row.file, ()):
        fits = (
            row.cells["quantity"].startswith(check.quantity)
            and all(name in row.inputs for name in check.given)
            and (not check.only or row.says(check.only))
        )
        if fits and _is_complete(check, row):
            return check
    return None


def _is_complete(check: Check, row: _Row) -> bool:
    """Whether the row has the inputs that the check needs."""
    try:
        evaluate(check.value, row.inputs)
    except LackingError:
        return False
    return True


def _verdict(row: _Row, check: Check, ours: float, unit: str) -> str:
    if abs(ours - row.expected) <= row.half_step:
        return AGREES
    return next((r.name for r in check.reasons if _holds(r, row, ours, unit)), UNEXPLAINED)


def _holds(reason: Reason, row: _Row, ours: float, unit: str) -> bool:
    if reason.only and not row.says(reason.only):
        return False
    steps = 2 * row.half_step * (reason.steps or 0.5)
    if reason.between is not None:
        first, last = (in_unit(evaluate(end, row.inputs), unit) for end in reason.between)
        return min(first, last) - row.half_step <= row.expected <= max(first, last) + row.half_step
    if reason.over is not None:
        return reason.over[0] <= row.expected / ours <= reason.over[1]
    if reason.share is not None:
        return abs(ours - row.expected) <= reason.share * abs(row.expected)
    others = reason.other or (None,)
    values = (ours if o is None else in_unit(evaluate(o, row.inputs), unit) for o in others)
    return any(abs(value - row.expected) <= steps for value in values)
