"""The files of a programme: tables as CSV and a summary, whole or not at all."""

from __future__ import annotations

import os
import shutil
import tempfile
from pathlib import Path
from typing import TYPE_CHECKING

from scupper import _report
from scupper._files import not_writable
from scupper._progress import Progress
from scupper.inventory import Inventory, Selection
from scupper.programme import Programme, estimate_all
from scupper.taking_off import take_off

if TYPE_CHECKING:
    import pandas as pd

    from scupper.job import Job

#: What a spreadsheet takes for a formula.
FORMULA_SIGNS = ("=", "+", "-", "@", "\t", "\r")


def write_results(
    folder: str | os.PathLike[str],
    inventory: Inventory,
    chosen: Inventory,
    job: Job,
    threads: int | None = None,
    progress: Progress = False,
) -> str:
    """Prices structures and writes the results into a folder.

    Parameters
    ----------
    folder
        Made where it is not there. estimate.csv, unpriced.csv, take_off.csv, doubts.csv,
        rejected.csv and summary.txt are written when all of them are ready.
    inventory
        The whole inventory: its rejected records are reported.
    chosen
        The structures to price: the inventory or a selection of it.
    job
        The job.
    threads
        How many; None for as many as the machine has.
    progress
        As for `estimate_all`.

    Returns
    -------
    str
        The summary.
    """
    programme = estimate_all(chosen, job, threads, progress)
    units = "us" if job.units == "us" else "si"
    tables = {
        "estimate": programme.to_pandas(),
        "unpriced": programme.unpriced,
        "take_off": take_off(chosen, units, threads, progress),
        "doubts": chosen.doubts,
        "rejected": inventory.rejected,
    }
    summary = _report.text(_summary_lines(inventory, chosen, programme))
    _publish(Path(folder), tables, summary)
    return summary


def _summary_lines(inventory: Inventory, chosen: Inventory, programme: Programme) -> _report.Lines:
    """From the rows of the file to the structures, then what they need."""
    lines = [
        ("rows in the file", f"{inventory.rows:,}"),
        ("  rejected", f"{len(inventory.rejected):,}"),
        ("  routes under", f"{inventory.routes_under:,}"),
        ("  structures", f"{len(inventory):,}"),
    ]
    if isinstance(chosen, Selection):
        lines += [
            (f"  not found: {number}", f"near: {', '.join(near) or 'nothing'}")
            for number, near in chosen.missing.items()
        ]
        lines += [("  given twice", number) for number in chosen.repeated]
    lines.append(("fields in doubt", f"{len(chosen.doubts):,}"))
    return lines + _report.programme_lines(programme)


def safe_cells(table: pd.DataFrame) -> pd.DataFrame:
    """A copy whose text no spreadsheet runs: an apostrophe before = + - @ at the beginning."""
    safe = table.copy()
    for name in safe.columns:
        if safe[name].dtype.kind not in "fiub" and safe[name].dtype.name != "category":
            safe[name] = safe[name].map(_safe)
    return safe


def _safe(cell: object) -> object:
    risky = isinstance(cell, str) and cell.startswith(FORMULA_SIGNS)
    return f"'{cell}" if risky else cell


def _publish(folder: Path, tables: dict[str, pd.DataFrame], summary: str) -> None:
    """Writes everything beside the folder, then moves it in: into a new folder at one stroke."""
    try:
        folder.parent.mkdir(parents=True, exist_ok=True)
        partial = Path(tempfile.mkdtemp(prefix=f".{folder.name}-", dir=folder.parent))
    except OSError as e:
        raise not_writable(folder, e) from None
    try:
        for name, table in tables.items():
            safe_cells(table).to_csv(partial / f"{name}.csv", index=False)
        (partial / "summary.txt").write_text(summary + "\n", encoding="utf-8")
        _move_in(partial, folder)
    except OSError as e:
        raise not_writable(folder, e) from None
    finally:
        shutil.rmtree(partial, ignore_errors=True)


def _move_in(partial: Path, folder: Path) -> None:
    if folder.exists():
        for file in sorted(partial.iterdir()):
            os.replace(file, folder / file.name)
    else:
        partial.chmod(0o755)
        os.replace(partial, folder)
