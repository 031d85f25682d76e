"""Many structures priced under one job."""

from __future__ import annotations

import os
from collections.abc import Iterable
from functools import cached_property
from typing import TYPE_CHECKING, Any

from scupper import _core, _report
from scupper._core import Structure
from scupper._files import write_whole
from scupper._frames import frame, suffixed
from scupper._progress import Progress, told
from scupper._stamp import stamp
from scupper.errors import UnknownNameError
from scupper.inventory import Inventory, gathered

if TYPE_CHECKING:
    import pandas as pd

    from scupper.job import Job

#: Column names of figures whose key would read badly; the others are key and unit.
_STEMS = {
    "water.volume": "water",
    "water.refills": "refills",
    "debris.mass": "debris",
    "hours.productive": "productive",
    "hours.on_site": "on_site",
    "hours.lost": "lost",
    "hours.paid": "paid",
    "hours.labour": "labour",
    "shift.count": "shifts",
}
_FIRST = ["structure_id", "state", "carries", "crosses"]


def identities(inventory: Inventory, rows: Iterable[int]) -> dict[str, Any]:
    """Columns that say which structures stand in some rows of an inventory."""
    recorded = inventory._core.recorded(set(_FIRST))
    at = list(rows)
    return {name: [recorded[name][i] for i in at] for name in _FIRST}


class Programme:
    """A list of structures priced. Each is in exactly one of the priced rows and `unpriced`."""

    def __init__(self, core: _core.Programme, inventory: Inventory, job: Job) -> None:
        self._core = core
        self.inventory = inventory
        self.job = job

    @property
    def currency(self) -> str:
        """Three-letter code of every amount."""
        return self.job.currency

    def to_pandas(self, units: str | None = None) -> pd.DataFrame:
        """The priced rows.

        Parameters
        ----------
        units
            ``"us"``, ``"metric"`` or ``"si"``; None for the job's.

        Returns
        -------
        pandas.DataFrame
            structure_id, state, carries, crosses, then hours, water, dirt, cost and the take-off
            quantities, units in the column names.
        """
        columns = identities(self.inventory, self._core.priced().tolist())
        table = self._core.table()
        for i, (name, unit) in enumerate(self._columns(units)):
            columns[name] = _core.from_si(table[:, i], unit)
        return frame(columns)

    def _columns(self, units: str | None) -> list[tuple[str, str]]:
        """Name and unit of every column."""
        keys = self._core.columns(units or self.job.units)
        return [(_column_name(key, unit, self.currency), unit) for key, unit in keys]

    def total_of(self, key: str) -> tuple[float, str]:
        """The sum of a figure over the priced rows, and its unit.

        Parameters
        ----------
        key
            As ``"water.volume"`` or ``"takeoff[wash_area_total].quantity"``.
        """
        keys = [known for known, _ in self._core.columns(self.job.units)]
        if key not in keys:
            near = _core.nearest_name(key, keys)
            raise UnknownNameError("programme.key", "total_of", f'"{key}"', f'"{near}"?')
        at = keys.index(key)
        return float(self.totals.iloc[at]), self._columns(None)[at][1]

    @cached_property
    def unpriced(self) -> pd.DataFrame:
        """The structures without a price: structure_id, state, reason."""
        return frame(self._core.unpriced(), ["structure_id", "state", "reason"])

    @cached_property
    def totals(self) -> pd.Series[float]:
        """Sums over the priced rows in the job's units; NaN where a sum makes no sense."""
        return self.totals_in(None)

    def totals_in(self, units: str | None) -> pd.Series[float]:
        """Sums over the priced rows: see `totals`.

        Parameters
        ----------
        units
            ``"us"``, ``"metric"`` or ``"si"``; None for the job's.
        """
        import pandas as pd

        sums = self._core.totals()
        columns = self._columns(units)
        values = {n: float(_core.from_si(sums[i], u)) for i, (n, u) in enumerate(columns)}
        return pd.Series(values, dtype=float)

    @property
    def total(self) -> float:
        """Total cost in `currency`."""
        return self.total_of("cost.total")[0]

    def ranges(
        self,
        draws: int = 512,
        seed: int = 1,
        threads: int | None = None,
        progress: Progress = False,
    ) -> pd.DataFrame:
        """The totals with the range that draws of all uncertain inputs give them.

        In every draw what structures have in common (a wage, part of the spread of a rate) is the
        same for all of them, and the rest is each one's own.

        Parameters
        ----------
        draws
            How many, of every structure.
        seed
            The same seed gives the same draws, whatever the number of threads.
        threads
            How many; None for as many as the machine has.
        progress
            As for `estimate_all`.

        Returns
        -------
        pandas.DataFrame
            By key: label, unit, value, P5, P50, P95, in the job's units. NaN where a draw leaves a
            structure without a number.

        Raises
        ------
        Interrupted
            Where `progress` returns False.
        """
        with told(progress, "drawing") as watch:
            rows = self._core.ranges(self.inventory._core, draws, seed, threads or 0, watch)
        return frame(rows).set_index("key")

    @cached_property
    def counts(self) -> dict[str, int]:
        """Structures read = priced + unpriced."""
        return {
            "read": len(self.inventory),
            "priced": len(self._core.priced()),
            "unpriced": len(self._core.unpriced()["reason"]),
        }

    @cached_property
    def stamp(self) -> dict[str, str]:
        """What this rests on: version, date, hashes of the records and of the job."""
        return stamp(self.job, self.inventory._core)

    def report(self, progress: Progress = False) -> str:
        """A report as HTML in the job's units: totals, reasons, charts, structures by cost.

        Charts need matplotlib; without it the report says so in their place. Ranges draw every
        structure many times: `progress` as for `estimate_all`.
        """
        from scupper._county_report import report

        return report(self, progress)

    def save_report(self, path: str | os.PathLike[str], progress: Progress = False) -> None:
        """Writes the report whole, or not at all."""
        write_whole(path, self.report(progress))

    def __repr__(self) -> str:
        return _report.text(_report.programme_lines(self))

    def _repr_html_(self) -> str:
        return _report.html(_report.programme_lines(self))


def _column_name(key: str, unit: str, currency: str) -> str:
    """As ``water_gal``, ``labour_h``, ``cost_total_usd``, ``wash_area_total_ft2``."""
    slot = key.removeprefix("takeoff[").removesuffix("].quantity")
    stem = _STEMS.get(key, slot.replace(".", "_"))
    short = {"labour-h": "h", "s*each": "s", currency: currency.lower()}.get(unit, unit)
    return suffixed(stem, short)


def estimate_all(
    inventory: Inventory | Iterable[Structure],
    job: Job,
    threads: int | None = None,
    progress: Progress = False,
) -> Programme:
    """Prices a list of structures.

    Parameters
    ----------
    inventory
        An inventory, a selection of one, or structures.
    job
        The job.
    threads
        How many; None for as many as the machine has. The result is the same to the bit.
    progress
        True for a bar on standard error, or a function of (done, all).

    Returns
    -------
    Programme
        Priced rows, unpriced structures with reasons, totals.

    Raises
    ------
    InputError
        Where the job cannot be made ready.
    Interrupted
        Where `progress` returns False.
    """
    inv = gathered(inventory)
    with told(progress, "pricing") as watch:
        core = _core.estimate_all(inv._core, job.plan, threads or 0, watch)
    return Programme(core, inv, job)
