"""The estimate of one structure."""

from __future__ import annotations

import os
from collections.abc import Iterable, Mapping
from functools import cached_property
from typing import TYPE_CHECKING, Any

from scupper import _core, _report, _saved, comparing
from scupper._core import Derivation, Structure
from scupper._files import write_whole
from scupper._frames import frame
from scupper._notices import warnings_of
from scupper._shown import Nozzle, Quantities
from scupper._stamp import stamp
from scupper.closure import Plan as ClosurePlan
from scupper.cost import Cost
from scupper.payments import CashFlow, cash_flow_of
from scupper.road_users import RoadUsers, effort
from scupper.scheduling import Day, Schedule, schedule
from scupper.units import in_pint

if TYPE_CHECKING:
    import pandas as pd
    from matplotlib.axes import Axes

    from scupper.job import Job
    from scupper.units import Quantity

_ASSUMPTIONS = ["key", "label", "low", "likely", "high", "basis", "source", "worth",
                "total_at_low", "total_at_high"]  # fmt: skip
_HOURS = ["people", "shifts", "productive", "breaks", "waiting", "travel", "briefing", "closure",
          "meal", "standby", "paid", "overtime", "unpaid_meal", "elapsed", "show_up"]  # fmt: skip
_VARIATION = ["component", "share", "quantity", "unit", "planned", "paid", "price"]
_REMEDIES = ["method", "remedy", "flow", "pressure", "total", "change"]


class Estimate:
    """One structure priced under one job, at the mean of every input unless the job says likely.

    It is priced as an outing group of one; in a programme it shares as the job says. It pickles as
    its document: record, job and figures, priced again.
    """

    def __init__(self, core: _core.Estimate, job: Job) -> None:
        self._core = core
        self.job = job
        self.cost = Cost(core, job.currency)

    @property
    def structure(self) -> Structure:
        """The record that was priced."""
        return self._core.structure

    @property
    def closure(self) -> str:
        """How the road is closed, as the job or else the record has it: ``"freeway_lane"``.

        Where the work has several stages, of the first that has a closure.
        """
        return self._core.closure

    @property
    def closures(self) -> dict[str, str]:
        """How the road is closed in every stage, by its name; ``""`` where there is one for all."""
        return dict(self._core.closures)

    @property
    def currency(self) -> str:
        """Three-letter code of every amount."""
        return self.job.currency

    def figure(self, key: str) -> Quantity:
        """One figure of the schema, in the job's units.

        Parameters
        ----------
        key
            As ``"water.volume"``, ``"operation[deck_hand_line].time"``, ``"drain_count"``.

        Raises
        ------
        UnknownNameError
            Naming the nearest known key.
        """
        number, unit = self._core.figure(key)
        return in_pint(number, "1" if unit == self.currency else unit)

    def text(self, key: str) -> str:
        """One figure as text in the job's units, as ``"1,600 gal"``."""
        return self._core.text(key)

    @property
    def unit_costs(self) -> pd.DataFrame:
        """What each component costs by the unit of its quantity: see `Cost.unit_costs`."""
        return self.cost.unit_costs

    @cached_property
    def quantities(self) -> Quantities:
        """What there is to wash, by quantity slot."""
        return Quantities(self)

    @property
    def water(self) -> Quantity:
        """Volume of water used."""
        return self.figure("water.volume")

    @property
    def debris(self) -> Quantity:
        """Mass of the dirt."""
        return self.figure("debris.mass")

    @property
    def debris_volume(self) -> Quantity:
        """Volume of the dirt."""
        return self.figure("debris.volume")

    @property
    def hours(self) -> Quantity:
        """Paid labour-hours of everybody."""
        return self.figure("hours.labour")

    @cached_property
    def hours_table(self) -> pd.DataFrame:
        """Where the hours of one person of every crew go, in hours: one row a crew.

        productive, breaks (short ones, inside the productive factor), waiting (for water and at
        the dump), travel, briefing, closure (set-up, change of sides, removal), meal (the paid
        part) and standby add up to paid; paid and unpaid_meal to elapsed. overtime is part of
        paid; show_up is what shifts called off are expected to pay besides. people and shifts
        stand before them.
        """
        return frame(_core.hours_table(self._core)).set_index("crew")[_HOURS]

    @cached_property
    def cash_flow(self) -> CashFlow:
        """What is earned, kept back and paid, period by period, by the job's ``terms``; what
        waiting costs. It stands beside the price."""
        return cash_flow_of(_core.cash_flow(self._core), self.currency)

    def quantity_variation(
        self, shares: Iterable[float] = (0.5, 0.75, 1.0, 1.25, 1.5)
    ) -> pd.DataFrame:
        """The price where the quantity of one component comes out as a share of what was planned.

        Parameters
        ----------
        shares
            Quantities as built over those planned.

        Returns
        -------
        pandas.DataFrame
            component, share, quantity, unit, planned (its price as planned), paid (at the share,
            with the renegotiated unit price beyond the limit of the job's ``terms``), price (of the
            whole, the others as planned). It stands beside the price.
        """
        table = frame(_core.quantity_variation(self._core, [float(s) for s in shares]))
        return table[_VARIATION]

    @cached_property
    def annual(self) -> pd.Series[float]:
        """The main figures of a year, by how often the job's ``frequency`` has each component
        cleaned: once where it says nothing. In the job's units, named as in `Year.totals`."""
        from scupper.seasons import year

        return year([self.structure], self.job).totals

    @property
    def on_site_hours(self) -> Quantity:
        """Time of the crew at the structure."""
        return self.figure("hours.on_site")

    @property
    def paid_hours(self) -> Quantity:
        """Paid time of each person."""
        return self.figure("hours.paid")

    @property
    def shifts(self) -> float:
        """Crew-shifts."""
        return float(self._core.figure("shift.count")[0])

    @cached_property
    def nozzles(self) -> dict[str, Nozzle]:
        """Flow, pressure and reaction at the nozzle of every method at work."""
        return {method: Nozzle(self, method) for method in self._core.methods()}

    def explain(self, key: str, depth: int | None = 2) -> Derivation:
        """How a figure came about, in the job's units.

        Parameters
        ----------
        key
            As for `figure`.
        depth
            How many levels below the figure are shown at first; a last line says what is folded.
            None for all of them, down to the inputs.

        Returns
        -------
        Derivation
            ``str()``, HTML in a notebook that unfolds, ``.text(depth)``, ``.html(depth)``,
            ``.to_dict()``; the last three whole unless a depth is given.
        """
        return self._core.explain(key, depth)

    @cached_property
    def assumptions(self) -> pd.DataFrame:
        """Every uncertain input that moves the total, the dearest first.

        ``worth`` is the difference of the total between low and high of that input alone, in
        `currency`; low, likely and high are text in the job's units.
        """
        return frame(self._core.assumptions(), _ASSUMPTIONS)

    @cached_property
    def warnings(self) -> list[str]:
        """What to mind or measure: a weight posting, what lies around and is not priced, quantities
        no record tells, a nozzle that pushes hard, washing that is refused where no water may be
        used."""
        return warnings_of(self)

    @cached_property
    def surroundings(self) -> pd.DataFrame:
        """What lies below and around and costs money: a railway, a road, water, old paint, nests.

        Each is in the price (``priced``, with its ``amount`` in `currency`) or is not, and then a
        warning names it. ``usual_low``, ``usual`` and ``usual_high`` are amounts that have been
        seen, by visit or shift; ``caution`` is the id of what to mind with it.
        """
        return frame(_core.surroundings(self._core))

    @cached_property
    def _shortfalls(self) -> list[dict[str, Any]]:
        """Nozzles that fall short; every remedy is priced, so they are looked for once."""
        return _core.shortfalls(self._core)

    @cached_property
    def remedies(self) -> pd.DataFrame:
        """What mends a nozzle that falls short, the cheapest first: method, remedy, flow and
        pressure at the tip with it, total and change of the total in `currency`.

        Each remedy is one change alone, priced with the rest as it is; hire or purchase of a hose
        or pump is not in it. Empty where every nozzle at work has what cleans.
        """
        rows = [
            (short["method"], what, flow, pressure, total, total - self.cost.total)
            for short in self._shortfalls
            for what, flow, pressure, total in short["remedies"]
        ]
        columns = zip(*rows, strict=True) if rows else [[]] * len(_REMEDIES)
        return frame(dict(zip(_REMEDIES, map(list, columns), strict=True)))

    @cached_property
    def closure_plan(self) -> ClosurePlan:
        """Signs, tapers, buffer and devices of the closure, laid out from record and ``road.*``.

        Where the work has several stages, of the first that has a closure: see `closure_plans`.

        Raises
        ------
        InputError
            Where the road leaves no room for it, as a shoulder closure without a shoulder.
        """
        return ClosurePlan(self._core.closure_plan())

    @cached_property
    def closure_plans(self) -> dict[str, ClosurePlan]:
        """The same of every stage that has a closure, by its name; ``""`` where there is one."""
        return {stage: ClosurePlan(plan) for stage, plan in self._core.closure_plans()}

    @cached_property
    def road_users(self) -> RoadUsers:
        """When the road may be closed, and what its closures cost those who drive past: queue,
        delay, road-user cost, the total over every stage. It stands beside the price and is no
        part of it; what cannot be figured is among `warnings`."""
        return RoadUsers(_core.road_users(self._core), self.currency)

    @cached_property
    def closure_effort(self) -> pd.DataFrame:
        """What setting up, changing sides and removing the closures takes, by people: step,
        people, number, time_h of each, labour_h together."""
        return effort(self._core)

    @cached_property
    def cautions(self) -> list[dict[str, str]]:
        """What the crew must mind here: id, text and source of each.

        The usual ones, not a safety plan: the agency's rules, local codes and licensed practice
        govern.
        """
        return self._core.cautions()

    def schedule(
        self, air: Mapping[Day, Any] | None = None, falling: Iterable[Day] = ()
    ) -> Schedule:
        """When the work can be done: notices as earliest dates, shifts as days of the calendar.

        Parameters
        ----------
        air
            Lowest temperature in the working hours by day, forecast or measured:
            ``{"2027-04-05": "38 degF"}``. A day without is taken to be warm enough.
        falling
            Those of the days on which the air falls through the shift.

        Returns
        -------
        Schedule
            ``.notices``, ``.days``, ``.work_days``, ``.shifts``, ``.earliest``.

        Raises
        ------
        InputError
            Where a day is none, or the calendar holds too few days of work.
        """
        return schedule(self, air, falling)

    @cached_property
    def shift_plan(self) -> pd.DataFrame:
        """Who does what when: one row a stretch of a party's shift.

        stage, shift, party, spent (``"travel"``, ``"briefing"``, ``"wait"`` for the window,
        ``"set_up"``, ``"work"``, ``"standby"``, ``"meal"``, ``"removal"``, ``"idle"``), what (the
        operation), site, start_h, end_h. As if the structure shared its shifts with no other: where
        the job shares them, idle time is what is left for others.
        """
        from scupper.outings import shifts_of

        return shifts_of(self)

    def plot_shifts(self, ax: Axes | None = None) -> Axes:
        """The shifts as a picture, to scale; needs matplotlib."""
        from scupper.outings import picture_of

        return picture_of(self, ax)

    def ranges(self, draws: int = 512, seed: int = 1) -> pd.DataFrame:
        """The main figures with the range that draws of all uncertain inputs give them.

        Parameters
        ----------
        draws
            How many.
        seed
            The same seed gives the same draws.

        Returns
        -------
        pandas.DataFrame
            By key: label, unit, value, P5, P50, P95, in the job's units.
        """
        return frame(self._core.ranges(draws, seed)).set_index("key")

    @cached_property
    def moved(self) -> pd.DataFrame:
        """Figures that are not what was saved: key, label, unit, saved, now; see `load`."""
        return _saved.nothing_moved()

    def save(self, path: str | os.PathLike[str]) -> None:
        """Writes record, job, stamp and figures as one JSON document, whole or not at all.

        Raises
        ------
        FileError
            Where the file cannot be written.
        """
        _saved.save(self, path)

    @classmethod
    def load(cls, path: str | os.PathLike[str]) -> Estimate:
        """An estimate that was saved, priced again from its record and its job.

        Where a figure is not what it was to 1e-9 (another version of the rules), a `MovedWarning`
        names it, and `moved` lists all of them with the saved value and the one of now.

        Raises
        ------
        FileError
            Where it cannot be read or is no JSON.
        InputError
            Where it is no saved estimate, or cannot be priced any more.
        """
        return _saved.load(path)

    def diff(self, other: Estimate) -> pd.DataFrame:
        """The figures and inputs on which two estimates differ.

        Parameters
        ----------
        other
            Another estimate: of another job, another structure, or after a survey.

        Returns
        -------
        pandas.DataFrame
            kind (``"figure"`` or ``"input"``), key, label, unit, this, other, change (other less
            this), in the units of this one's job; of inputs the likely values, with low, high and
            source on either side. NaN: one of them has no such figure or input.

        Raises
        ------
        InputError
            Where they are in two currencies.
        """
        return comparing.difference(self, other)

    def __reduce__(self) -> tuple[Any, ...]:
        return _saved.restored, (_saved.document(self),)

    @cached_property
    def stamp(self) -> dict[str, str]:
        """What this rests on: version, date, hashes of the record and of the job with its rates."""
        return stamp(self.job, _core.Inventory.of([self.structure]))

    def save_workbook(self, path: str | os.PathLike[str]) -> None:
        """Writes a workbook (.xlsx) with live formulas, whole or not at all.

        A changed input moves the total as the engine would. Where what changed needs the engine
        itself (the flow of a line, dimensions inferred by rule), the totals go blank and say so.
        """
        from scupper.workbook import workbook_bytes

        write_whole(path, workbook_bytes(self))

    def to_pandas(self) -> pd.DataFrame:
        """Every figure: key, label, value, unit, in the job's units."""
        return frame(self._core.figures())

    def page(self) -> str:
        """The estimate on one page: HTML in the job's units that prints on US Letter."""
        from scupper._estimate_page import page

        return page(self)

    def save_page(self, path: str | os.PathLike[str]) -> None:
        """Writes the page whole, or not at all."""
        write_whole(path, self.page())

    def work_card(self) -> str:
        """A foreman's card: cautions, order of work, drains to tick, room for hours and tickets.

        HTML in the job's units that prints on US Letter.
        """
        from scupper._work_card import work_card

        return work_card(self)

    def save_work_card(self, path: str | os.PathLike[str]) -> None:
        """Writes the card whole, or not at all."""
        write_whole(path, self.work_card())

    def __repr__(self) -> str:
        return _report.text(_report.estimate_lines(self))

    def _repr_html_(self) -> str:
        return _report.html(_report.estimate_lines(self))


def estimate(structure: Structure, job: Job) -> Estimate:
    """Prices one structure.

    Parameters
    ----------
    structure
        A structure of an inventory.
    job
        The job.

    Returns
    -------
    Estimate
        Figures, cost, ranges, assumptions, explanations.

    Raises
    ------
    InputError
        Where it cannot be priced; ``found`` holds the reason.
    """
    return Estimate(_core.estimate(structure, job.plan), job)


def explain(priced: Estimate, key: str, depth: int | None = 2) -> Derivation:
    """How a figure of an estimate came about: the same as ``priced.explain(key, depth)``."""
    return priced.explain(key, depth)
