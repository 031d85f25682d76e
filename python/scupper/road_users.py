"""What the closure of an estimate does to those who drive past. Beside the price, not in it."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Any

from scupper import _core, _report
from scupper._frames import frame
from scupper._traffic import TrafficQueue
from scupper.units import in_pint

if TYPE_CHECKING:
    import pandas as pd

    from scupper.units import Quantity


class RoadUsers:
    """When the road may be closed, and what one closure of the visit costs its traffic.

    With several stages the figures of one closure are those of the first stage that has one, and
    `total` is the sum over `stages`.

    Attributes
    ----------
    stage : str
        Name of the stage; empty where there is one for all.
    kind : str
        How the road is narrowed or closed.
    known : bool
        Whether anybody tells how many vehicles pass; without, there is nothing but the cautions.
    open, past_closure : pint.Quantity
        Vehicles that the busier direction carries without the closure and past it.
    window : tuple of int
        First hour and number of the permitted hours in the part of the day that is worked.
    start : int
        Hour at which a closure begins.
    closed : pint.Quantity
        How long one closure stands.
    closures : float
        Closures of the visit; a part of one where structures share it.
    queue : TrafficQueue
        Of one closure, in the busier direction.
    queue_length : pint.Quantity
        How far the longest queue reaches back.
    queue_delay, slow_delay : pint.Quantity
        Vehicles times the time lost in the queue, and by slower driving and taking turns.
    per_hour, per_closure, total : float
        Road-user cost while a closure stands, of one, and of all; NaN where it cannot be figured.
    stages : list of RoadUsers
        Every stage with a closure, with its own total.
    not_figured : list of str
        What no record or job tells, so that the total is not known. It is among the warnings.
    sources : list of str
        Values of time and of a detour, and whose they are.
    cautions : list of str
        What these figures rest on.
    """

    def __init__(self, core: _core.RoadUsers, currency: str) -> None:
        self._core = core
        self.currency = currency
        self.stage: str = core.stage
        self.kind: str = core.kind
        self.known: bool = core.known
        self.open: Quantity = in_pint(core.open, "each/s")
        self.past_closure: Quantity = in_pint(core.past_closure, "each/s")
        self.window: tuple[int, int] = core.window
        self.start: int = core.start
        self.closed: Quantity = in_pint(core.closed, "s")
        self.closures: float = core.closures
        self.queue = TrafficQueue(core.queue)
        self.queue_length: Quantity = in_pint(core.queue_length, "m")
        self.queue_delay: Quantity = in_pint(core.queue_delay, "s*each")
        self.slow_delay: Quantity = in_pint(core.slow_delay, "s*each")
        self.per_hour: float = core.hourly_cost
        self.per_closure: float = core.per_closure
        self.total: float = core.total
        self.sources: list[str] = core.sources
        self.cautions: list[str] = core.cautions
        self.not_figured: list[str] = core.not_figured
        self.stages = [RoadUsers(stage, currency) for stage in core.stages]

    @cached_property
    def hours(self) -> pd.DataFrame:
        """By the hour from midnight: demand of the busier direction in vehicles an hour, and for
        how many hours the road may be closed from then on."""
        columns = self._core.hours()
        return frame({"demand_per_h": columns["demand"], "permitted_h": columns["permitted"]})

    def _permitted(self) -> str:
        """As "7 h from 22:00"; any hour where neither queue nor delay is limited or reached."""
        first, hours = self.window
        if min(self._core.hours()["permitted"]) == 24:
            return "any hour"
        return f"{hours} h from {first}:00" if hours else "no hour"

    def _lines(self) -> _report.Lines:
        if not self.known:
            return [("caution", caution) for caution in self.cautions]
        flow = "count/hour"
        return [
            ("closure", self.kind.replace("_", " ")),
            ("permitted", self._permitted()),
            ("begins", f"{self.start}:00, {self.closed.to('h').magnitude:,.1f} h"),
            ("passes", f"{self.past_closure.to(flow).magnitude:,.0f} vehicles an hour "
                       f"of {self.open.to(flow).magnitude:,.0f}"),
            ("queue", f"{self.queue.longest.magnitude:,.0f} vehicles, "
                      f"{self.queue.longest_delay.to('min').magnitude:,.1f} min"),
            ("delay", f"{(self.queue_delay + self.slow_delay).to('count*hour').magnitude:,.1f} "
                      "vehicle-hours a closure"),
            ("road-user cost", f"{self.currency} {self.per_hour:,.0f} an hour, "
                               f"{self.per_closure:,.0f} a closure, {self.total:,.0f} in all"),
            *((f"  {_named(stage)}", f"{self.currency} {stage.total:,.0f}")
              for stage in self.stages if len(self.stages) > 1),
            *(("caution", caution) for caution in self.cautions),
        ]  # fmt: skip

    def __repr__(self) -> str:
        return _report.text(self._lines())

    def _repr_html_(self) -> str:
        return _report.html(self._lines())


def _named(stage: RoadUsers) -> str:
    return f"{stage.stage}, {stage.kind}".replace("_", " ").removeprefix(", ")


def effort(core: _core.Estimate) -> pd.DataFrame:
    """The table of `Estimate.closure_effort`."""
    columns: dict[str, Any] = dict(_core.closure_effort(core))
    names = {"time": "time_h", "labour": "labour_h"}
    return frame({names.get(name, name): column for name, column in columns.items()})
