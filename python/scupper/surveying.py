"""Which few measurements, at which structures, would narrow a programme's cost most."""

from __future__ import annotations

import os
from collections.abc import Iterable
from functools import cached_property
from typing import TYPE_CHECKING, Any

from scupper import _core, _report
from scupper._core import Structure
from scupper._files import require_new, write_whole
from scupper._frames import frame
from scupper._progress import Progress, told
from scupper._result import ListResult
from scupper.inventory import Inventory, gathered
from scupper.results import safe_cells

if TYPE_CHECKING:
    import pandas as pd
    from matplotlib.axes import Axes

    from scupper.job import Job

_IDENTITY = ["state", "structure_id", "carries", "crosses"]


class SurveyList(ListResult[_core.SurveyList]):
    """Visits in the order in which they narrow the cost of a programme, with what to measure."""

    @property
    def mean(self) -> float:
        """Mean cost of the programme over the draws."""
        return self._core.mean

    @property
    def range(self) -> tuple[float, float]:
        """P5 and P95 of the programme's cost as things are known now."""
        return self._core.low, self._core.high

    @property
    def middle_range(self) -> float:
        """Width of P10 to P90 of the programme's cost as things are known now."""
        return self._core.middle_range

    @cached_property
    def visits(self) -> pd.DataFrame:
        """One row a structure, the visit that narrows most first.

        visit, state, structure_id, carries, crosses, measurements (how many), narrows (how much
        the width of the programme's P5–P95 shrinks by this visit alone), range_left (that width
        after this visit and all before it), narrows_by_draws and left_by_draws (the same of
        P10–P90, found by drawing anew with the measurements certain), in `currency`. What is found
        decides: these are the widths to be expected.
        """
        return self._with_structures(frame(self._core.visits()).drop(columns="index"))

    @cached_property
    def measurements(self) -> pd.DataFrame:
        """One row a measurement, by visit, the one that narrows most first.

        visit, state, structure_id, carries, crosses, measure (what to do), low, likely, high,
        unit, basis (how that is known now), narrows (this alone, in `currency`), key (the input
        it is written down as).
        """
        rows = frame(self._core.measurements())
        which = rows.pop("visit").to_numpy()
        return self._with_structures(rows, which)

    def _with_structures(self, table: pd.DataFrame, which: Any = None) -> pd.DataFrame:
        """A table with the number of the visit and the structure in front."""
        import pandas as pd

        recorded = self.inventory._core.recorded(set(_IDENTITY))
        at = self._core.visits()["index"]
        identity = pd.DataFrame(
            {name: [recorded[name][i] for i in at.tolist()] for name in _IDENTITY},
            index=pd.RangeIndex(1, len(at) + 1, name="visit"),
            dtype=object,
        ).reset_index()
        if which is not None:
            identity = identity.iloc[which].reset_index(drop=True)
        order = [c for c in table.columns if c != "key"] + [c for c in table.columns if c == "key"]
        return pd.concat([identity, table[order]], axis=1)

    @property
    def left_out(self) -> list[str]:
        """Structures that have a price, but not in every draw: no range rests on them."""
        return [self.inventory[int(i)].key for i in self._core.left_out()]

    def to_pandas(self) -> pd.DataFrame:
        """The list as one table: the measurements, and beside each what its whole visit does."""
        widths = ["narrows", "range_left", "narrows_by_draws", "left_by_draws"]
        visits = self.visits[["visit", *widths]].rename(columns={"narrows": "visit_narrows"})
        suffix = f"_{self.currency.lower()}"
        money = {name: name + suffix for name in ("visit_narrows", *widths)}
        table = self.measurements.merge(visits, on="visit")
        key = table.pop("key")
        return table.assign(key=key).rename(columns=money)

    def save(self, path: str | os.PathLike[str]) -> None:
        """Writes the list as CSV, whole or not at all."""
        write_whole(path, safe_cells(self.to_pandas()).to_csv(index=False))

    def write_sheet(self, path: str | os.PathLike[str]) -> None:
        """Writes a sheet to fill in: a row a visit, a column for whatever is asked somewhere.

        Cells that are not asked say so. Filled in, `Job.with_survey` reads it.

        Parameters
        ----------
        path
            The CSV file; it must not be there yet.

        Raises
        ------
        FileError
            Where the file exists or cannot be written.
        """
        require_new(path)
        rows = self.measurements
        sheet = self.visits[_IDENTITY].astype(object)
        for key in rows["key"].unique():
            asked = set(rows.loc[rows["key"] == key, "visit"])
            header = _core.survey_header(self.job._core, key)
            sheet[header] = ["" if v in asked else _core.NOT_ASKED for v in self.visits["visit"]]
        write_whole(path, safe_cells(sheet).to_csv(index=False))

    def plot(self, most: int = 12, ax: Axes | None = None) -> Axes:
        """Draws what to measure first: by how much each visit alone narrows P10–P90.

        Parameters
        ----------
        most
            How many visits are shown.
        ax
            Axes to draw on; None for a figure of its own.
        """
        from scupper._risk_charts import survey_bars

        return survey_bars(self, most, ax)

    def _lines(self) -> _report.Lines:
        low, high = self.range
        lines = [
            ("programme", f"{self.currency} {self.mean:,.0f} (P5–P95 {low:,.0f}–{high:,.0f})"),
            ("visits", f"{len(self.visits):,}"),
            ("width of P5–P95", f"{self.currency} {high - low:,.0f} now"),
        ]
        for visit, rows in self.measurements.groupby("visit", sort=True):
            after = self.visits["range_left"].iloc[int(str(visit)) - 1]
            what = ", ".join(rows["measure"])
            name = rows["structure_id"].iloc[0]
            lines.append((f"  after {name}", f"{self.currency} {after:,.0f}: {what}"))
        if self.left_out:
            lines.append(("left out", ", ".join(self.left_out)))
        return lines


def survey_list(
    inventory: Inventory | Iterable[Structure],
    job: Job,
    visits: int = 20,
    *,
    least_share: float = 0.02,
    draws: int = 512,
    seed: int = 1,
    threads: int | None = None,
    progress: Progress = False,
) -> SurveyList:
    """Which few measurements would narrow the cost of a programme most.

    A visit to a structure counts and measures what is uncertain there: dimensions, counts, dirt;
    rates and wages are nobody's to measure. A visit is worth what its measurements together take
    from the variance of the programme's cost, whatever they turn out to be; a measurement what it
    takes alone. Both are told as how much the width of P5–P95 shrinks, if its shape stays. What
    is measured at a structure tells nothing of the others: they keep what they share of a spread.
    Where the job's ``correlations`` name a measured input, measuring it also tells of those that
    vary together with it at its structure.

    Parameters
    ----------
    inventory
        An inventory, a selection of one, or structures.
    job
        The job.
    visits
        How many structures the list may hold.
    least_share
        Measurements that take away less than this share of the variance of all at the structure
        are left out.
    draws
        How many, of all structures and of each visit; at least 16. The worth of a visit has a
        standard error of about 10 % with the default.
    seed
        The same seed gives the same list, whatever the threads and the order.
    threads
        How many; None for as many as the machine has.
    progress
        As for `estimate_all`.

    Returns
    -------
    SurveyList
        ``.visits``, ``.measurements``, ``.save(path)``, ``.write_sheet(path)``.

    Raises
    ------
    InputError
        Where there are too few draws, or the job cannot be made ready.
    Interrupted
        Where `progress` returns False.
    """
    inv = gathered(inventory)
    with told(progress, "surveying") as watch:
        core = _core.survey_list(
            inv._core, job.plan, visits, least_share, draws, seed, threads or 0, watch
        )
    return SurveyList(core, inv, job)
