"""How sure a price is: every structure priced in many draws of what is uncertain."""

from __future__ import annotations

import os
from collections.abc import Iterable
from functools import cached_property
from typing import TYPE_CHECKING, Any

from scupper import _core, _report
from scupper._core import Structure
from scupper._files import write_whole
from scupper._frames import frame, suffixed
from scupper._parquet import write_tables
from scupper._progress import Progress, told
from scupper._result import Result
from scupper._stamp import job_stamp
from scupper.errors import InputError, UnknownNameError
from scupper.inventory import Inventory, gathered
from scupper.programme import identities
from scupper.results import safe_cells

if TYPE_CHECKING:
    import numpy as np
    import pandas as pd
    from matplotlib.axes import Axes

    from scupper._pieces import Records
    from scupper.job import Job

_NAMES = [f"P{round(100 * level)}" for level in _core.kept_levels()]
_SPREADS = ["estimate", "mean", "sd", *_NAMES]


class Simulation(Result[_core.Simulation]):
    """A list of structures priced in many draws. Runs over parts of a list can be joined."""

    def __init__(self, core: _core.Simulation, job: Job, identity: dict[str, list[Any]]) -> None:
        super().__init__(core, job)
        self._identity = identity
        #: What the files held that it was read from a part at a time; None without such files.
        self.records: Records | None = None

    @property
    def draws(self) -> int:
        """How many draws there are of every structure."""
        return self._core.draws

    @property
    def _units(self) -> dict[str, str]:
        """The unit of every figure by its name."""
        return {name: unit for name, _, unit in self._core.figures(self.job.units)}

    def _place(self, figure: str) -> int:
        names = list(self._units)
        if figure not in names:
            raise UnknownNameError("simulate.figure", "figure", f'"{figure}"', ", ".join(names))
        return names.index(figure)

    def to_pandas(self) -> pd.DataFrame:
        """One row a structure: the estimate, mean, sd, P5 … P95 of each figure.

        Returns
        -------
        pandas.DataFrame
            structure_id, state, carries, crosses, then ``cost_estimate_usd``, ``cost_mean_usd``,
            ``cost_P5_usd`` and so on for cost, hours, water, debris and closure.
        """
        columns: dict[str, Any] = dict(self._identity)
        table = self._core.ranges()
        for f, (name, unit) in enumerate(self._units.items()):
            for k, spread in enumerate(_SPREADS):
                column = suffixed(f"{name}_{spread}", _short(unit, self.currency))
                columns[column] = _core.from_si(table[:, f, k], unit)
        return frame(columns)

    def _total(self, figure: str) -> _core.DrawnTotal:
        return self._core.total(self._place(figure))

    def _shown(self, pair: tuple[float, float], figure: str) -> tuple[float, float]:
        """A value and its standard error in the unit of the figure."""
        unit = self._units[figure]
        return float(_core.from_si(pair[0], unit)), float(_core.from_si(pair[1], unit))

    @cached_property
    def total(self) -> pd.DataFrame:
        """The totals of all structures: one row a figure, in the job's units.

        Returns
        -------
        pandas.DataFrame
            By figure: unit, estimate, mean, sd, P5 … P95, and beside each its standard error
            (``mean_se``, ``P80_se``), which says how far more draws might move it.
        """
        rows: dict[str, dict[str, Any]] = {}
        for name, unit in self._units.items():
            total = self._total(name)
            row: dict[str, Any] = {
                "unit": unit,
                "estimate": float(_core.from_si(total.estimated, unit)),
            }
            found = {"mean": total.mean(), "sd": total.sd()}
            for label, level in zip(_NAMES, _core.kept_levels(), strict=True):
                found[label] = total.quantile(level)
            for label, pair in found.items():
                row[label], row[f"{label}_se"] = self._shown(pair, name)
            rows[name] = row
        import pandas as pd

        return pd.DataFrame.from_dict(rows, orient="index").rename_axis("figure")

    def total_draws(self, figure: str = "cost") -> np.ndarray[Any, Any]:
        """The total of all structures in every draw, in the job's units."""
        return _core.from_si(self._total(figure).draws(), self._units[figure])

    def quantile(self, level: float, figure: str = "cost") -> float:
        """The total that is not exceeded with a probability of `level`.

        Parameters
        ----------
        level
            Probability, 0 to 1.
        figure
            ``"cost"``, ``"hours"``, ``"water"``, ``"debris"`` or ``"closure"``.
        """
        return self._shown(self._total(figure).quantile(level), figure)[0]

    def interval(
        self, level: float, figure: str = "cost", confidence: float = 0.95
    ) -> tuple[float, float]:
        """Between which limits `quantile` would lie with any number of draws.

        Parameters
        ----------
        level
            Probability of the quantile, 0 to 1.
        figure
            As for `quantile`.
        confidence
            That the limits hold it; they rest on what the replicates differ by.
        """
        total = self._total(figure)
        found = total.quantile(level)
        middle, half = self._shown((found[0], total.half_width(found, confidence)), figure)
        return middle - half, middle + half

    def chance_above(self, limit: float, figure: str = "cost") -> float:
        """The chance that the total exceeds a limit: a budget, the hours of a season.

        Parameters
        ----------
        limit
            In the job's unit of the figure.
        figure
            As for `quantile`.
        """
        total = self._total(figure)
        unit = self._units[figure]
        return total.chance_above(float(_core.to_si(limit, unit, unit, "limit")))[0]

    def plot(
        self, figure: str = "cost", limit: float | None = None, ax: Axes | None = None
    ) -> Axes:
        """Draws the chance that the total stays below an amount.

        Parameters
        ----------
        figure
            As for `quantile`.
        limit
            A budget or the hours of a season, in the job's unit of the figure.
        ax
            Axes to draw on; None for a figure of its own.
        """
        from scupper._risk_charts import cumulative

        return cumulative(self, figure, limit, ax)

    def contingency(self, level: float = 0.8, figure: str = "cost") -> float:
        """What has to be set aside beyond the estimate to be right with a probability of `level`.

        Parameters
        ----------
        level
            Probability, 0 to 1.
        figure
            As for `quantile`.
        """
        return self._shown(self._total(figure).contingency(level), figure)[0]

    def relative_error(self, figure: str = "cost") -> float:
        """Standard error of the mean total, as a part of it."""
        mean, error = self._total(figure).mean()
        return error / mean

    @cached_property
    def unpriced(self) -> pd.DataFrame:
        """Structures without a price: structure_id, state, reason."""
        return frame(self._core.unpriced(), ["structure_id", "state", "reason"])

    @cached_property
    def left_out(self) -> pd.DataFrame:
        """Structures with a price, but not in every draw; no total holds them."""
        return frame(self._core.left_out(), ["structure_id", "state", "reason"])

    def save(self, path: str | os.PathLike[str]) -> None:
        """Writes the rows of the structures as CSV, whole or not at all."""
        write_whole(path, safe_cells(self.to_pandas()).to_csv(index=False))

    def to_parquet(self, path: str | os.PathLike[str]) -> None:
        """Writes the rows of the structures as Parquet, whole or not at all.

        Parameters
        ----------
        path
            Columns as `to_pandas` has them; the `stamp` stands in the metadata as ``scupper``.

        Raises
        ------
        FileError
            Where it cannot be written.
        Error
            Where pyarrow is not installed.
        """
        write_tables(path, [self.to_pandas()], self._facts())

    @property
    def stamp(self) -> dict[str, Any]:
        """What this rests on: version, date, hash of the job, and how it was drawn."""
        return {
            **job_stamp(self.job),
            "seed": self._core.seed,
            "draws": self._core.draws,
            "replicates": self._core.replicates,
        }

    def _facts(self) -> dict[str, Any]:
        return {"kind": "simulation", "currency": self.currency, **self.stamp}

    def _number(self) -> int:
        """How many structures are in the totals."""
        return len(self._core.simulated())

    def joined(self, following: Simulation) -> Simulation:
        """This run and that over the next part of a list: bit for bit the run over both.

        Parameters
        ----------
        following
            A run under the same job with the same draws.
        """
        whole = _core.Simulation.of_state(self.job.plan, self._core.state())
        whole.append(following._core)
        identity = {k: v + following._identity[k] for k, v in self._identity.items()}
        return Simulation(whole, self.job, identity)

    def __reduce__(self) -> Any:
        return _restored, (self.job, self._core.state(), self._identity)

    def _lines(self) -> _report.Lines:
        rows = self.total
        cost, hours = rows.loc["cost"], rows.loc["hours"]
        lines = [
            ("simulated", f"{self._number():,} structures, {self.draws:,} draws"),
            ("estimate", f"{self.currency} {cost['estimate']:,.0f}"),
            ("P5–P95", f"{self.currency} {cost['P5']:,.0f}–{cost['P95']:,.0f}"),
            ("sure to 80 %", f"{self.currency} {cost['P80']:,.0f} (± {cost['P80_se']:,.0f})"),
            ("labour-hours", f"{hours['P5']:,.0f}–{hours['P95']:,.0f}"),
        ]
        if len(self.unpriced):
            lines.append(("unpriced", f"{len(self.unpriced):,}"))
        if len(self.left_out):
            lines.append(("left out", ", ".join(self.left_out["structure_id"])))
        return lines


def _restored(job: Job, state: Any, identity: dict[str, list[Any]]) -> Simulation:
    return Simulation(_core.Simulation.of_state(job.plan, state), job, identity)


def _short(unit: str, currency: str) -> str:
    """A unit as column names have it."""
    return {"labour-h": "h", "s*each": "s", currency: currency.lower()}.get(unit, unit)


def simulate(
    inventory: Inventory | Iterable[Structure],
    job: Job,
    draws: int = 10_000,
    seed: int = 1,
    *,
    sampling: str = "latin_hypercube",
    replicates: int | None = None,
    relative_error: float | None = None,
    threads: int | None = None,
    progress: Progress = False,
) -> Simulation:
    """Prices a list of structures in many draws of everything that is uncertain.

    In every draw what structures have in common (a wage, part of the spread of a rate) is the same
    for all of them, and the rest is each one's own. The result is the same to the bit for any
    number of threads, order of structures or division of the list.

    Parameters
    ----------
    inventory
        An inventory, a selection of one, or structures.
    job
        The job.
    draws
        How many, in all; with `relative_error` the most.
    seed
        The same seed gives the same draws.
    sampling
        ``"latin_hypercube"``: n draws hit each of n equally probable parts of every input once;
        ``"plain"``; ``"sobol"``: scrambled Sobol' points for what structures share, parts for what
        is each one's own, and a power of two draws in each replicate; ``"sobol_single"``: such
        points for everything, of one structure.
    replicates
        Independent samples that the draws are made of: standard errors rest on what they differ
        by. None for the most of at most ten that divide the draws.
    relative_error
        Stop once the standard error of the mean total cost is at most this part of it; looked at
        between replicates.
    threads
        How many; None for as many as the machine has.
    progress
        True for a bar on standard error, or a function of (done, all).

    Returns
    -------
    Simulation
        Ranges by structure, totals with standard errors, chances, contingency.

    Raises
    ------
    InputError
        Where draws are no whole multiple of replicates, replicates of Sobol' points are no power of
        two (the error names draws that will do), or the job cannot be made ready.
    Interrupted
        Where `progress` returns False.
    """
    inv = gathered(inventory)
    number = _core.replicates_for(max(draws, 1)) if replicates is None else replicates
    require_limit(relative_error)
    with told(progress, "simulating") as watch:
        core = _core.simulate(
            inv._core,
            job.plan,
            draws,
            number,
            seed,
            sampling,
            relative_error or 0.0,
            threads or 0,
            watch,
        )
    return Simulation(core, job, identities(inv, core.simulated().tolist()))


def require_limit(relative_error: float | None) -> None:
    """Refuses a standard error that no number of draws has."""
    if relative_error is not None and not relative_error > 0:
        raise InputError(
            "simulate.relative_error", "relative_error", str(relative_error), "above 0"
        )


def swings(
    inventory: Inventory | Iterable[Structure],
    job: Job,
    level: float = 0.1,
    threads: int | None = None,
    progress: Progress = False,
    figure: str = "cost",
) -> pd.DataFrame:
    """What each uncertain input alone does to a total, moved at all structures at once.

    Parameters
    ----------
    inventory
        An inventory, a selection of one, or structures.
    job
        The job.
    level
        Probability of the low values, below 0.5; the high ones are at 1 - `level`.
    threads
        How many; None for as many as the machine has.
    progress
        As for `simulate`.
    figure
        ``"cost"``, ``"hours"``, ``"water"``, ``"debris"`` or ``"closure"``.

    Returns
    -------
    pandas.DataFrame
        By key, the widest first: label, structures, cost_estimate, cost_at_low, cost_at_high, width
        (named after the figure) and their unit. NaN where a structure then has no price. `tornado`
        draws it, as it is or read back from a file.
    """
    inv = gathered(inventory)
    with told(progress, "moving inputs") as watch:
        found = _core.swings(inv._core, job.plan, figure, level, threads or 0, watch)
    names = {f"at_{end}": f"{figure}_at_{end}" for end in ("low", "high")}
    table = frame(found.columns()).rename(columns=names).set_index("key")
    table.insert(2, f"{figure}_estimate", found.estimated)
    return table.assign(unit=found.unit)


def sensitivity(
    inventory: Inventory | Iterable[Structure],
    job: Job,
    figure: str = "cost",
    draws: int = 1000,
    seed: int = 1,
    *,
    top: int = 12,
    together: Iterable[Iterable[str]] = (),
    sampling: str = "latin_hypercube",
    threads: int | None = None,
    progress: Progress = False,
) -> pd.DataFrame:
    """How much of the variance of a total each uncertain input stands for.

    The first-order index is the share that goes with the input alone; the total index has its part
    in what several do together as well. Inputs that the job correlates are one factor, for their
    shares cannot be told apart.

    Parameters
    ----------
    inventory
        An inventory, a selection of one, or structures.
    job
        The job.
    figure
        As for `swings`.
    draws
        Of each of two samples; every factor takes as many prices again.
    seed
        The same seed gives the same draws.
    top
        Factors by themselves, those with the widest swings; all others are one.
    together
        Lists of input keys that are one factor.
    sampling
        As for `simulate`.
    threads
        How many; None for as many as the machine has.
    progress
        As for `simulate`.

    Returns
    -------
    pandas.DataFrame
        By key, the greatest total index first: label, first_order, first_order_se, total, total_se,
        rank_correlation (Spearman's, of the input with the figure; NaN where there are several).

    Raises
    ------
    InputError
        Where a key stands in two lists.
    UnknownNameError
        Where the figure or a key is unknown.
    """
    inv = gathered(inventory)
    with told(progress, "exchanging inputs") as watch:
        found = _core.sensitivity(
            inv._core,
            job.plan,
            figure,
            draws,
            _core.replicates_for(max(draws, 1)),
            seed,
            sampling,
            top,
            [list(keys) for keys in together],
            threads or 0,
            watch,
        )
    return frame(found.columns()).set_index("key")
