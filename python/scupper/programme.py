"""Many structures priced under one job."""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator, Sequence
from functools import cached_property
from math import nan
from typing import TYPE_CHECKING, Any

from scupper import _core, _report
from scupper._core import Structure
from scupper._files import write_whole
from scupper._frames import frame, suffixed
from scupper._parquet import write_tables
from scupper._progress import Progress, told
from scupper._result import ListResult
from scupper._stamp import stamp
from scupper.errors import InputError, UnknownNameError
from scupper.inventory import Inventory, gathered

if TYPE_CHECKING:
    import pandas as pd

    from scupper.estimating import Estimate
    from scupper.job import Job

#: Columns of `Programme.shortfalls`.
_SHORT = ["structure_id", "method", "flow", "pressure", "least_flow", "least_pressure", "remedy",
          "cost", "change"]  # fmt: skip
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


class Programme(ListResult[_core.Programme]):
    """A list of structures priced. Each is in exactly one of the priced rows and `unpriced`."""

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

    def to_parquet(self, path: str | os.PathLike[str], units: str | None = None) -> None:
        """Writes the priced rows as Parquet, whole or not at all.

        Parameters
        ----------
        path
            Columns as `to_pandas` has them; the `stamp` stands in the metadata as ``scupper``.
        units
            As for `to_pandas`.

        Raises
        ------
        FileError
            Where it cannot be written.
        Error
            Where pyarrow is not installed.
        """
        facts = {"kind": "programme", "currency": self.currency, **self.stamp}
        write_tables(path, [self.to_pandas(units)], facts)

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
        quantiles: Sequence[float] = (0.05, 0.5, 0.95),
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
        quantiles
            Chances that the total is no more than the figure, each 0 to 1: ``[0.5, 0.8]``.

        Returns
        -------
        pandas.DataFrame
            By key: label, unit, value, the quantiles as ``P5``, ``P50``, ``P95``, then how far
            those of other draws would probably lie from them as ``P5_error``, ... (standard error;
            four times the draws halve it), in the job's units. NaN where a draw leaves a structure
            without a number.

        Raises
        ------
        InputError
            Where a quantile is not 0 to 1, or there is no draw.
        Interrupted
            Where `progress` returns False.
        """
        _check_draws(draws, quantiles)
        with told(progress, "drawing") as watch:
            rows: dict[str, Any] = dict(self._core.ranges(
                self.inventory._core, draws, seed, threads or 0, list(quantiles), watch
            ))  # fmt: skip
        values, errors = rows.pop("quantiles"), rows.pop("errors")
        names = [f"P{100 * u:g}" for u in quantiles]
        rows |= dict(zip(names, values, strict=True))
        rows |= dict(zip((f"{name}_error" for name in names), errors, strict=True))
        return frame(rows).set_index("key")

    def quantile(
        self, p: float, key: str = "cost.total", draws: int = 2048, seed: int = 1
    ) -> float:
        """What a total stays within at some chance, as ``quantile(0.8)`` for 80 % confidence.

        Parameters
        ----------
        p
            The chance, 0 to 1.
        key
            A figure, as for `total_of`.
        draws, seed
            As for `ranges`, which also says the standard error.

        Returns
        -------
        float
            In the job's units.
        """
        self.total_of(key)  # an unknown key names the nearest
        row: Any = self.ranges(draws, seed, quantiles=[p]).loc[key]
        return float(row.iloc[3])

    @cached_property
    def guesses(self) -> pd.DataFrame:
        """Every guess by what it moves the total, the dearest first.

        key, label, structures (at how many it moves the price), worth, total_at_low and
        total_at_high in `currency`: that input alone at its low and at its high at all of them. NaN
        where a limit leaves a structure without a price.
        """
        with told(False, "guessing") as watch:
            return frame(self._core.guesses(self.inventory._core, 0, watch))

    @cached_property
    def shortfalls(self) -> pd.DataFrame:
        """Structures where a nozzle falls short of what cleans, with the cheapest remedy.

        structure_id, method, flow and pressure at the tip, least_flow, least_pressure, remedy
        (empty where no single change mends it), cost with it and change in `currency`; the greatest
        change first. Hire or purchase of a hose or pump is not in it.
        """
        rows = [row for one in self.estimates() for row in _falls_short(one)]
        table = frame({name: [row[name] for row in rows] for name in _SHORT})
        return table.sort_values("change", ascending=False, kind="stable", ignore_index=True)

    def estimates(self) -> Iterator[Estimate]:
        """The priced structures one by one, each as an estimate of its own."""
        from scupper.estimating import estimate

        for row in self._core.priced().tolist():
            yield estimate(self.inventory[row], self.job)

    def price_sheet(self) -> str:
        """The price of a contract as HTML that prints: by structure with totals, terms, the dearest
        guesses, nozzles that fall short, cautions, what has no price."""
        from scupper._price_sheet import price_sheet

        return price_sheet(self)

    def save_price_sheet(self, path: str | os.PathLike[str]) -> None:
        """Writes the price sheet whole, or not at all."""
        write_whole(path, self.price_sheet())

    def save_price_workbook(self, path: str | os.PathLike[str]) -> None:
        """Writes the price sheet as a workbook (.xlsx) whose sums are live, whole or not at all.

        Sheets: Prices (a row a structure), Unit costs (by component, over all structures), Guesses,
        Shortfalls, Terms, No price.
        """
        from scupper._price_workbook import price_workbook

        write_whole(path, price_workbook(self))

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

    def _lines(self) -> _report.Lines:
        return _report.programme_lines(self)


def _check_draws(draws: int, quantiles: Sequence[float]) -> None:
    if draws < 1:
        raise InputError("programme.draws", "draws", str(draws), "at least 1")
    for u in quantiles:
        if not 0 <= u <= 1:
            raise InputError("programme.quantile", "quantiles", str(u), "0 to 1")


def _falls_short(one: Estimate) -> Iterator[dict[str, Any]]:
    for short in one._shortfalls:
        what, _, _, total = short["remedies"][0] if short["remedies"] else ("", "", "", nan)
        yield {**short, "structure_id": one.structure.id, "remedy": what, "cost": total,
               "change": total - one.cost.total}  # fmt: skip


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
