"""Several structures in one outing, and the shifts of one structure."""

from __future__ import annotations

import os
from collections.abc import Iterable, Mapping, Sequence
from functools import cached_property
from typing import TYPE_CHECKING, Any

from scupper import _core, _report
from scupper._arguments import Arguments
from scupper._core import Structure
from scupper._files import write_whole
from scupper._frames import frame
from scupper._result import ListResult
from scupper.inventory import Inventory, gathered
from scupper.payments import CashFlow, cash_flow_of
from scupper.results import safe_cells
from scupper.scheduling import Day, _iso, air_rows

if TYPE_CHECKING:
    import pandas as pd
    from matplotlib.axes import Axes

    from scupper.estimating import Estimate
    from scupper.job import Job
    from scupper.units import Quantity

_MONEY = ["labour", "overtime", "show_up", "equipment"]


def shifts_of(estimate: Estimate) -> pd.DataFrame:
    """The shifts of one structure: see `Estimate.shift_plan`."""
    import pandas as pd

    stages = []
    for name, columns in _core.shift_plan(estimate._core):
        stages.append(frame(columns).drop(columns="outing").assign(stage=name))
    table = pd.concat(stages, ignore_index=True)
    table["shift"] += 1
    return table[["stage", "shift", "party", "spent", "what", "site", "start_h", "end_h"]]


def _rows(table: pd.DataFrame, shift: Sequence[str]) -> pd.DataFrame:
    """The label of the row in which a picture shows each segment."""
    party = table["party"].where(table["party"] == "", ", " + table["party"].str.replace("_", " "))
    return table.assign(row=[f"{s}{p}" for s, p in zip(shift, party, strict=True)])


def picture_of(estimate: Estimate, ax: Axes | None = None) -> Axes:
    """The shifts of one structure as a picture: see `Estimate.plot_shifts`."""
    from scupper.timelines import draw

    table = shifts_of(estimate)
    named = table["stage"].where(table["stage"] == "", table["stage"] + ", ")
    shift = [f"{s}shift {n}" for s, n in zip(named, table["shift"], strict=True)]
    structure = estimate.structure
    title = f"{structure.id}: {structure.carries} over {structure.crosses}"
    return draw(_rows(table, shift), ax, title)


class OutingPlan(ListResult[_core.OutingPlan]):
    """The outings of one crew, one after the other, with shifts, hours and cost."""

    @property
    def price(self) -> float:
        """Everything with the job's margins, in `currency`."""
        return self._core.price

    @property
    def price_alone(self) -> float:
        """The same had every structure whole shifts of its own."""
        return self._core.price_alone

    @property
    def price_shared(self) -> float:
        """The sum of the estimates, with shifts shared as the job says."""
        return self._core.price_shared

    @cached_property
    def cost(self) -> pd.Series[float]:
        """People and equipment of the shifts, and the visits: labour, overtime (what it costs
        beyond the plain wage), show_up (expected for shifts called off), equipment, visits (water,
        disposal, dump runs, charges)."""
        import pandas as pd

        parts = self._core.cost()
        return pd.Series({name: parts[name] for name in _MONEY} | {"visits": self._core.visits})

    @cached_property
    def outings(self) -> pd.DataFrame:
        """One row an outing: name, stage, structures in the order of the way, shifts, labour_h,
        and labour, overtime, show_up, equipment in `currency`."""
        table = frame(self._core.outings())
        ids = self.inventory._core.recorded({"structure_id"})["structure_id"]
        table.insert(2, "structures", [[ids[i] for i in m] for m in table.pop("members")])
        return table

    @cached_property
    def shifts(self) -> pd.DataFrame:
        """One row a shift: outing (its name), stage, shift, date (NaT where no first day is known),
        stops, paid_h and overtime_h of each person."""
        import pandas as pd

        table = self._named(frame(self._core.shifts()))
        table["date"] = pd.to_datetime(table["date"].replace("", None))
        return table

    @cached_property
    def lost_days(self) -> pd.DataFrame:
        """The days without a shift before each outing: outing, stage, date, use (why: a notice, a
        weekday, a holiday, a closed season, cold or dark), season."""
        import pandas as pd

        table = frame(self._core.lost_days())
        at = table.pop("outing").to_numpy()
        table.insert(0, "outing", self.outings["name"].to_numpy()[at])
        table.insert(1, "stage", self.outings["stage"].to_numpy()[at])
        table["date"] = pd.to_datetime(table["date"])
        return table

    @cached_property
    def cash_flow(self) -> CashFlow:
        """What is earned, kept back and paid, period by period, by the job's ``terms``."""
        return cash_flow_of(_core.cash_flow_of_outings(self._core), self.currency)

    @cached_property
    def segments(self) -> pd.DataFrame:
        """Every stretch of every party's shift: outing, stage, shift, party, spent, what, site,
        start_h, end_h; those of a party fill its shift."""
        return self._named(frame(self._core.segments()))

    def _named(self, table: pd.DataFrame) -> pd.DataFrame:
        """A table whose outings have names instead of positions, and whose shifts count from 1."""
        at = table.pop("outing").to_numpy()
        for place, column in enumerate(("name", "stage")):
            word = "outing" if column == "name" else column
            table.insert(place, word, self.outings[column].to_numpy()[at])
        table["shift"] += 1
        return table

    @cached_property
    def unpriced(self) -> pd.DataFrame:
        """The structures without a price: structure_id and reason."""
        ids = self.inventory._core.recorded({"structure_id"})["structure_id"]
        rows = self._core.unpriced
        return frame({"structure_id": [ids[i] for i, _ in rows], "reason": [r for _, r in rows]})

    def plot(self, first: int = 0, shifts: int = 5, ax: Axes | None = None) -> Axes:
        """A picture of some shifts, to scale; the first week of five where nothing is said.

        Parameters
        ----------
        first
            Shifts before it, counted over all outings.
        shifts
            How many.
        ax
            Where to draw; a new figure where it is left out.
        """
        from scupper.timelines import by_site, draw

        table = self.shifts.iloc[first : first + shifts]
        key = ["outing", "stage", "shift"]
        chosen = table[[*key, "date"]].merge(self.segments, on=key)
        day = chosen["date"].dt.strftime("%a %d %b: ").fillna("")
        stage = chosen["stage"].where(chosen["stage"] == "", ", " + chosen["stage"])
        names = zip(day, chosen["outing"], stage, chosen["shift"], strict=True)
        label = [f"{d}{o}{s}, shift {n}" for d, o, s, n in names]
        title = f"Shifts {first + 1} to {first + len(table)} of {len(self.shifts)}"
        return draw(by_site(_rows(chosen, label)), ax, title)

    def save(self, path: str | os.PathLike[str]) -> None:
        """Writes the shifts with their structures as CSV, whole or not at all."""
        key = ["outing", "stage", "shift"]
        here = self.segments[self.segments["site"] != ""]
        sites = here.groupby(key, sort=False)["site"].agg(lambda s: "; ".join(dict.fromkeys(s)))
        table = self.shifts.join(sites.rename("structures"), on=key)
        write_whole(path, safe_cells(table).to_csv(index=False))

    def _lines(self) -> _report.Lines:
        shifts = self.shifts
        money = f"{self.currency} "
        lines = [
            ("structures", f"{sum(map(len, self.outings['structures'])):,}"),
            ("outings", f"{len(self.outings):,}"),
            ("shifts", f"{len(shifts):,}"),
            ("overtime", f"{shifts['overtime_h'].sum():,.1f} h of each person"),
            ("price", f"{money}{self.price:,.0f}"),
            ("alone", f"{money}{self.price_alone:,.0f}, had every structure its own shifts"),
            ("estimates", f"{money}{self.price_shared:,.0f}, shared as the job says"),
        ]
        return lines + [(f"  {name}", f"{money}{x:,.0f}") for name, x in self.cost.items() if x]


def outings(
    inventory: Inventory | Iterable[Structure],
    job: Job,
    *,
    groups: Mapping[str, Sequence[str]] | None = None,
    one_closure: Iterable[str] = (),
    within: str | Quantity | None = None,
    most: int | None = None,
    twins: str | Quantity | None = None,
    twins_one_closure: bool = False,
    speed: str | Quantity = "30 mph",
    detour: float = 1.3,
    move: str | Quantity = "15 min",
    day_limit: str | Quantity | None = None,
    week_limit: str | Quantity | None = None,
    cancelled: float | None = None,
    show_up: str | Quantity | None = None,
    first: Day | None = None,
    daylight: bool = False,
    air: Mapping[Day, Any] | None = None,
    falling: Iterable[Day] = (),
) -> OutingPlan:
    """Puts structures together into outings and lays out the shifts of one crew.

    Parameters
    ----------
    inventory
        An inventory, a selection of one, or structures.
    job
        The job.
    groups
        Structure numbers by the name of their outing, in the order of the way.
    one_closure
        Names of groups whose structures stand under one closure, as twins do.
    within
        How far apart neighbours may lie, as the crow flies; None: only `groups` share outings.
    most
        Neighbours in one outing; None for as many as fit into a shift.
    twins
        How far apart the two of a pair may lie (one called right, the other left by their records,
        over the same thing) to share an outing; None: only `groups` and neighbours do.
    twins_one_closure
        Whether one closure covers both of a pair: not where each carries a direction of its own.
    speed, detour, move
        On the way between structures: mean speed, way by road to the way of a crow, and the time
        where a place is not recorded (common practice).
    day_limit, week_limit
        Plain hours of a day and of a week, as ``"8 h"`` and ``"40 h"``; None: no overtime by them.
    cancelled, show_up
        Shifts called off for each one worked, and the hours each of them still pays; None for the
        job's ``shift.cancelled`` and ``shift.show_up_time``, else none of them and 3 h (two to four
        are common practice).
    first
        The first day; None for the day of asking in the job's calendar.
    daylight
        Whether all work on site is done between sunrise and sunset; the job's calendar may ask for
        it too.
    air, falling
        Lowest temperature of known days, and on which of them it falls, as for
        `Estimate.schedule`.

    Returns
    -------
    OutingPlan
        ``.outings``, ``.shifts``, ``.cost``, ``.price``, ``.plot()``.

    Raises
    ------
    InputError
        Where a rule cannot be, a structure is in two groups, or the calendar has no day.
    UnknownNameError
        Where a group names a structure that is not there, with the nearest.
    """
    inv = gathered(inventory)
    given: dict[str, Any] = {
        "speed": (speed, "m/s"),
        "move": (move, "s"),
        "show_up": (show_up, "s"),
        "within": (within, "m"),
        "twins": (twins, "m"),
        "day_limit": (day_limit, "s"),
        "week_limit": (week_limit, "s"),
    }
    si = {name: _si(name, *pair) for name, pair in given.items() if pair[0] is not None}
    si |= {"detour": float(detour), "most": float(most or 0)}
    si["twins_one_closure"] = float(twins_one_closure)
    if cancelled is not None:
        si["cancelled"] = float(cancelled)
    together = set(one_closure)
    rows = [(name, list(ids), name in together) for name, ids in (groups or {}).items()]
    day = "" if first is None else _iso(first)
    core = _core.plan_outings(inv._core, job.plan, rows, si, day, daylight, air_rows(air, falling))
    return OutingPlan(core, inv, job)


def _si(name: str, value: str | Quantity, unit: str) -> float:
    """One value with its unit in SI."""
    given = Arguments()
    given.add(name, value, unit)
    return float(given.shaped()[0])
