"""Estimates and jobs side by side."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING

from scupper import _core
from scupper._core import Structure
from scupper._frames import frame
from scupper._progress import Progress
from scupper.errors import InputError
from scupper.inventory import Inventory
from scupper.programme import Programme, estimate_all

if TYPE_CHECKING:
    import pandas as pd

    from scupper.estimating import Estimate
    from scupper.job import Job

_DIFFERENCE = ["kind", "key", "label", "unit", "this", "other", "change", "this_low", "this_high",
               "other_low", "other_high", "this_source", "other_source"]  # fmt: skip


def difference(this: Estimate, other: Estimate) -> pd.DataFrame:
    """What differs between two estimates: see `Estimate.diff`."""
    import pandas as pd

    _require_one_currency({"this": this.currency, "other": other.currency})
    figures = frame(_core.changed_figures(this._core, other._core)).assign(kind="figure")
    inputs = frame(_core.changed_inputs(this._core, other._core)).assign(kind="input")
    names = {"here": "this", "there": "other"}
    names |= {f"{a}_{part}": f"{b}_{part}" for a, b in names.items()
              for part in ("low", "high", "source")}  # fmt: skip
    table = pd.concat([part for part in (figures, inputs) if len(part)] or [figures])
    table = table.rename(columns=names)
    table["change"] = table["other"] - table["this"]
    return table.reindex(columns=_DIFFERENCE).reset_index(drop=True)


def scenarios(
    inventory: Inventory | Iterable[Structure] | Structure,
    jobs: Mapping[str, Job],
    threads: int | None = None,
    progress: Progress = False,
) -> pd.DataFrame:
    """The same structures priced under several jobs, side by side.

    Parameters
    ----------
    inventory
        An inventory, a selection of one, or structures: their sums are compared. Or one structure:
        all its figures are.
    jobs
        A job by the name of its column.
    threads
        How many; None for as many as the machine has.
    progress
        As for `estimate_all`.

    Returns
    -------
    pandas.DataFrame
        One column a job; rows of figures with the unit in the name, in the units of the first
        job, then how many structures are priced and unpriced. Sums are over the priced ones: jobs
        that price different structures are not alike. NaN: one structure without a price.

    Raises
    ------
    InputError
        Where there is no job, or the jobs have several currencies.
    """
    import pandas as pd

    if not jobs:
        raise InputError("scenarios.jobs", "jobs", "no job", 'at least one, as {"flush": job}')
    _require_one_currency({name: job.currency for name, job in jobs.items()})
    units = next(iter(jobs.values())).units
    single = isinstance(inventory, Structure)
    structures = [inventory] if isinstance(inventory, Structure) else inventory
    if not isinstance(structures, Inventory):
        structures = list(structures)
    columns = {}
    for name, job in jobs.items():
        programme = estimate_all(structures, job, threads, progress)
        figures = _row(programme, units) if single else programme.totals_in(units).dropna()
        counts = {"priced": programme.counts["priced"], "unpriced": programme.counts["unpriced"]}
        columns[name] = pd.concat([figures, pd.Series(counts, dtype=float)])
    return pd.DataFrame(columns)


def _row(programme: Programme, units: str) -> pd.Series[float]:
    """The figures of the only structure; NaN where it has no price."""
    table = programme.to_pandas(units).reindex([0])
    return table.select_dtypes("number").iloc[0].astype(float)


def _require_one_currency(currencies: Mapping[str, str]) -> None:
    if len(set(currencies.values())) > 1:
        found = ", ".join(f"{name} in {currency}" for name, currency in currencies.items())
        raise InputError("compare.currency", "jobs", found, "amounts in one currency")
