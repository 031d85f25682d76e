"""A season's programme: how often what is cleaned, and whether the crews are enough."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cached_property
from typing import TYPE_CHECKING

from scupper import _core, _report
from scupper._core import Structure
from scupper._frames import frame
from scupper._progress import Progress, told
from scupper._result import ListResult
from scupper.inventory import Inventory, gathered
from scupper.programme import _FIRST, _column_name, identities
from scupper.scheduling import Day, _iso

if TYPE_CHECKING:
    import pandas as pd

    from scupper.job import Job


class Year(ListResult[_core.Year]):
    """What a year of cleaning takes, structure by structure and in all."""

    @cached_property
    def rounds(self) -> pd.DataFrame:
        """The visits of a year by kind: visits_a_year, components, cost_of_a_visit to every
        structure, priced (how many structures)."""
        return frame(
            dict(zip(("visits_a_year", "components", "cost_of_a_visit", "priced"),
                     map(list, zip(*self._core.rounds(), strict=True)), strict=True))
        )  # fmt: skip

    @cached_property
    def table(self) -> pd.DataFrame:
        """One row a structure that every round has a price for: structure_id, state, carries,
        crosses, then a year's hours, water, dirt, cost and quantities worked, with units."""
        columns = identities(self.inventory, self._core.priced)
        currency = self.job.currency
        for key, unit, values in self._core.table(self.job._core):
            if not key.startswith("takeoff["):
                columns[_column_name(key, unit, currency)] = values
        return frame(columns)

    @cached_property
    def totals(self) -> pd.Series[float]:
        """Sums of a year in the job's units."""
        return self.table.drop(columns=_FIRST).sum()

    @property
    def total(self) -> float:
        """Cost of a year in the job's currency."""
        return float(self.totals[f"cost_total_{self.job.currency.lower()}"])

    def load(
        self, first: Day, last: Day, crews: float = 1.0, lost: float = 0.0
    ) -> pd.Series[float]:
        """A year's work against the crews of a season.

        Parameters
        ----------
        first, last
            The season, both days in it; the job's calendar says which days are days of work.
        crews
            How many; each works one shift a day.
        lost
            Share of the days that weather takes.

        Returns
        -------
        pandas.Series
            days, shifts_there, shifts_needed (crew-shifts), hours_there, hours_needed (paid hours
            of a crew), share (needed of what is there).

        Raises
        ------
        InputError
            Where the season has no day of work, or there is no crew.
        """
        import pandas as pd

        found = self._core.load(self.job._core, _iso(first), _iso(last), crews, lost)
        order = ["days", "shifts_there", "shifts_needed", "hours_there", "hours_needed", "share"]
        return pd.Series(found)[order]

    def _lines(self) -> _report.Lines:
        totals, currency = self.totals, self.job.currency
        lines = [("structures", f"{len(self.table):,}")]
        for visit in self.rounds.to_dict("records"):
            components = ", ".join(c.replace("_", " ") for c in visit["components"])
            lines.append((f"  {visit['visits_a_year']:g} a year", components))
        lines += [("labour-hours a year", f"{totals['labour_h']:,.0f}"),
                  ("crew-shifts a year", f"{totals['shifts']:,.1f}"),
                  ("cost a year", f"{currency} {self.total:,.0f}")]  # fmt: skip
        return lines


def year(
    inventory: Inventory | Iterable[Structure],
    job: Job,
    frequency: Mapping[str, float] | None = None,
    threads: int | None = None,
    progress: Progress = False,
) -> Year:
    """What a year of cleaning takes where components are cleaned more or less often.

    What is cleaned seldom is cleaned along with what is cleaned often: drains three times a year
    and the deck once are two visits for the drains alone and one for both.

    Parameters
    ----------
    inventory
        An inventory, a selection of one, or structures.
    job
        The job; what its service leaves out is never cleaned.
    frequency
        Times a year by component: 2 is twice a year, 1 / 3 every third year; None for the job's
        own ``frequency``. A component that is not named is cleaned once a year.
    threads
        How many; None for as many as the machine has.
    progress
        As for `estimate_all`, round by round.

    Returns
    -------
    Year
        ``.rounds``, ``.table``, ``.totals``, ``.load(first, last, crews)``.

    Raises
    ------
    InputError
        Where a frequency is none.
    UnknownNameError
        Where there is no such component, with the nearest.
    """
    inv = gathered(inventory)
    often = job._core.frequency if frequency is None else frequency
    times = {component: float(number) for component, number in often.items()}
    with told(progress, "pricing") as watch:
        core = _core.year_of(inv._core, job._core, times, threads or 0, watch)
    return Year(core, inv, job)
