"""Rates learned from a log of finished jobs: old against new, and how sure."""

from __future__ import annotations

import os
from collections.abc import Iterable, Mapping
from datetime import date
from functools import cached_property
from typing import TYPE_CHECKING, Any

from scupper import _core, _report
from scupper._core import Structure
from scupper._files import read_text, require_new, write_whole
from scupper._frames import frame
from scupper.inventory import Inventory, gathered
from scupper.rates import RateBook
from scupper.results import safe_cells

if TYPE_CHECKING:
    import pandas as pd
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

    from scupper.job import Job

_FORM_HEADERS = {"water": "water [gal]", "debris": "debris [yd3]"}
_RANGE = ["low", "likely", "high"]


class Learned:
    """What a log taught of the rates of a job."""

    def __init__(self, core: _core.Learned, job: Job) -> None:
        self._core = core
        self.job = job

    def to_pandas(self) -> pd.DataFrame:
        """One row a value of which the log says anything, learned or not.

        key, label, unit; old and new low, likely and high, in the job's units; learned; jobs and
        crews behind it, outliers among them; worth_jobs (how many jobs the log is worth for the
        level) and log_share (share of the log in it); level with level_p10 and level_p90 (how sure
        the rate is) and job_p10, job_p90 (what the next job may be); level_sd and job_sd of the
        logarithm; reason. ``pace`` and ``debris`` are factors common to several values.
        """
        return self._table.copy()

    @cached_property
    def _table(self) -> pd.DataFrame:
        table = frame(self._core.rates())
        first = ["key", "label", "unit"]
        ranges = [f"{when}_{what}" for when in ("old", "new") for what in _RANGE]
        rest = [c for c in table.columns if c not in first + ranges]
        return table[first + ranges + rest]

    @cached_property
    def jobs(self) -> pd.DataFrame:
        """One row an observation: key, line, date, structure, crew, value, far_out, counted."""
        return frame(self._core.jobs())

    @property
    def outliers(self) -> pd.DataFrame:
        """The observations that lie far from the others of their crew; look at them first."""
        return self.jobs[self.jobs["far_out"]]

    @cached_property
    def faults(self) -> pd.DataFrame:
        """Whatever in the log says nothing: place (file, line, column), found, reason."""
        return frame(self._core.faults())

    @cached_property
    def rates(self) -> RateBook:
        """What was learned as a rate book: ``job.with_rates(learned.rates)``, ``.save(path)``."""
        return RateBook(self._core.book())

    def save(self, path: str | os.PathLike[str]) -> None:
        """Writes the table as CSV, whole or not at all."""
        write_whole(path, safe_cells(self._table).to_csv(index=False))

    def plot(self) -> Figure:
        """Old ranges against new ones, a strip a value; the thick part is how sure the level is."""
        from matplotlib.figure import Figure

        rows = self._table[self._table["learned"]].to_dict("records")
        figure = Figure(figsize=(7.3, 0.6 + 0.75 * max(len(rows), 1)), layout="constrained")
        strips = figure.subplots(max(len(rows), 1), squeeze=False)[:, 0]
        for strip, row in zip(strips, rows, strict=False):
            _strip(strip, row)
        if not rows:
            strips[0].set_axis_off()
            strips[0].set_title("nothing was learned", fontsize=9)
        return figure

    def _lines(self) -> _report.Lines:
        core = self._core
        lines = [
            ("log", f"{core.name}, {core.first or 'undated'} to {core.last or 'undated'}"),
            ("rows", f"{core.lines} read, {core.used} used, {len(self.faults)} faults in .faults"),
            ("outliers", f"{len(self.outliers)}, in .outliers"),
        ]
        for row in self._table.to_dict("records"):
            old, new = (_range_text(row, when) for when in ("old", "new"))
            what = f"{new} {row['unit']}, was {old}" if row["learned"] else f"{old} {row['unit']}"
            lines.append((row["label"], f"{what}; {row['reason']}"))
        return lines

    def __repr__(self) -> str:
        return _report.text(self._lines())

    def _repr_html_(self) -> str:
        return _report.html(self._lines())


def learn(
    log: str | os.PathLike[str] | pd.DataFrame,
    job: Job,
    inventory: Inventory | Iterable[Structure] | None = None,
    *,
    crew: str = "",
    agency: str = "",
    least_jobs: int = 5,
    least_gain: float = 2.0,
    leave_out_outliers: bool = False,
) -> Learned:
    """Learns the rates of a job from a log of finished jobs.

    The time per unit, the water and the dirt of each job are taken as log-normal. What the job
    says is believed beforehand and is worth about a job; the log is pooled from crew over agency
    to the operation, so that a crew with few jobs leans on the others.

    Parameters
    ----------
    log
        A CSV file or a table with some of the columns date, structure_id, operation, crew, agency,
        quantity, unit, hours, water, debris, loads, note; units in brackets (``water [gal]``) or
        in the cells. Hours are those of the crew on the clock at work on site. A row without a
        quantity has that of the take-off of its structure. One without an operation is a whole
        visit: its hours tell a pace common to all operations that were not learned for
        themselves, its debris or loads how much dirt there was.
    job
        The job whose rates are believed before.
    inventory
        The structures that the log names; may be left out where every row has a quantity.
    crew, agency
        For whom the rates are to hold; without them for any crew to come.
    least_jobs
        Jobs of theirs below which an old value stays.
    least_gain
        How many jobs the log must be worth for the level; else the old value stays.
    leave_out_outliers
        True: jobs far from the others of their crew do not count. They are listed either way.

    Returns
    -------
    Learned
        ``.to_pandas()``, ``.rates``, ``.jobs``, ``.outliers``, ``.faults``, ``.plot()``.

    Raises
    ------
    FileError
        Where the log cannot be read, or has an unknown column.
    InputError
        Where a setting is out of range.
    """
    inv = gathered(inventory if inventory is not None else [])
    core = _core.learn(
        _read(log), job.plan, inv._core, crew, agency, least_jobs, least_gain, leave_out_outliers
    )
    return Learned(core, job)


def write_log_form(path: str | os.PathLike[str]) -> None:
    """Writes a log to fill in: a CSV file with its header row; it must not be there yet.

    Raises
    ------
    FileError
        Where the file exists or cannot be written.
    """
    require_new(path)
    headers = [_FORM_HEADERS.get(c, c) for c in _core.log_columns()]
    write_whole(path, ",".join(headers) + "\n")


def _read(log: str | os.PathLike[str] | pd.DataFrame) -> _core.JobLog:
    if isinstance(log, (str, os.PathLike)):
        return _core.JobLog.read(read_text(log), os.fspath(log))
    rows = [
        (line, [_cell(value) for value in row])
        for line, row in enumerate(log.itertuples(index=False), start=1)
    ]
    return _core.JobLog.of_table("table", [str(c) for c in log.columns], rows)


def _cell(value: Any) -> str:
    """A cell as text; what is missing is empty, a whole day has no hour."""
    import pandas as pd

    if pd.isna(value):
        return ""
    if isinstance(value, date):
        return value.strftime("%Y-%m-%d")
    return str(value).strip()


def _range_text(row: Mapping[Any, Any], when: str) -> str:
    return " – ".join(_report.number(row[f"{when}_{what}"]) for what in _RANGE)


def _strip(axes: Axes, row: Mapping[Any, Any]) -> None:
    """The old range above, the new one below it, on an axis of its own."""
    from scupper._charts import ACCENT

    for place, when, color in ((1, "old", "0.6"), (0, "new", ACCENT)):
        low, likely, high = (row[f"{when}_{what}"] for what in _RANGE)
        axes.hlines(place, low, high, color=color, lw=2)
        axes.plot([likely], [place], marker="|", color=color, ms=10, mew=2)
    axes.hlines(0, row["level_p10"], row["level_p90"], color=ACCENT, lw=6, alpha=0.6)
    axes.set_yticks([1, 0], ["was", "now"], fontsize=7)
    axes.set_ylim(-0.6, 1.6)
    axes.tick_params(axis="x", labelsize=7)
    axes.set_title(f"{row['label']}, {row['unit']} ({row['jobs']} jobs)", fontsize=8, loc="left")
    for side in ("top", "right", "left"):
        axes.spines[side].set_visible(False)
