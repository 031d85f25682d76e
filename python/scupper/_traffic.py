"""Traffic past a closure: hours of the day, capacity by method, queues, windows, cost."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Arguments, Units, answer, described_by, plain, single
from scupper._frames import frame
from scupper.errors import InputError
from scupper.units import in_pint, is_quantity

if TYPE_CHECKING:
    import numpy as np
    import pandas as pd

    from scupper.units import Quantity

    FloatArray = np.ndarray[Any, np.dtype[np.float64]]


@described_by(_core.hourly_shares)
def hourly_shares(pattern: str = "rural") -> FloatArray:
    """`pattern` is rural or urban; 24 plain numbers from midnight."""
    return _core.hourly_shares(pattern)


@described_by(_core.closure_severity)
def closure_severity(lanes: int, open: int) -> float:
    """Whole numbers of lanes."""
    return _core.closure_severity(lanes, open)


@described_by(_core.queue_discharge)
def queue_discharge(
    lanes: int,
    open: int,
    *,
    barrier: bool = False,
    rural: bool = False,
    night: bool = False,
    clearance: Any = "0 ft",
    units: Units = None,
) -> Quantity:
    """In passenger cars of each open lane; ``.to("count/hour")``."""
    si = single("clearance", clearance, "m", units)
    return in_pint(_core.queue_discharge(lanes, open, barrier, rural, night, si), "each/s")


@described_by(_core.capacity_before_queue)
def capacity_before_queue(discharge: Any, drop: Any = 0.134, *, units: Units = None) -> Quantity:
    """A drop of 13.4 % is 0.134."""
    return answer(_core.capacity_before_queue, "each/s", units,
                  discharge=(discharge, "each/s"), drop=(drop, "1"))  # fmt: skip


@described_by(_core.heavy_vehicle_factor)
def heavy_vehicle_factor(share: Any, equivalent: Any, *, units: Units = None) -> Any:
    """Plain numbers or arrays."""
    return plain(
        _core.heavy_vehicle_factor, units, share=(share, "1"), equivalent=(equivalent, "1")
    )


@described_by(_core.work_zone_capacity)
def work_zone_capacity(
    method: str,
    lanes: int,
    open: int,
    *,
    barrier: bool = False,
    rural: bool = False,
    night: bool = False,
    clearance: Any = "0 ft",
    truck_share: Any = 0,
    truck_equivalent: Any = 1.5,
    intensity: Any = "0 vehicle/h",
    units: Units = None,
) -> Quantity:
    """`method` is hcm_2000, hcm_2010, hcm_7, missouri_2011 or north_carolina_1996."""
    return in_pint(
        _core.work_zone_capacity(
            method,
            lanes,
            open,
            barrier=barrier,
            rural=rural,
            night=night,
            clearance=single("clearance", clearance, "m", units),
            truck_share=single("truck_share", truck_share, "1", units),
            truck_equivalent=single("truck_equivalent", truck_equivalent, "1", units),
            intensity=single("intensity", intensity, "each/s", units),
        ),
        "each/s",
    )


@described_by(_core.work_zone_speed)
def work_zone_speed(
    lanes: int,
    open: int,
    limit: Any,
    zone_limit: Any,
    *,
    ramps: Any = "0 each/mi",
    barrier: bool = False,
    night: bool = False,
    units: Units = None,
) -> Quantity:
    """One closure, no arrays."""
    speed = _core.work_zone_speed(
        lanes,
        open,
        barrier,
        night,
        single("limit", limit, "m/s", units),
        single("zone_limit", zone_limit, "m/s", units),
        single("ramps", ramps, "each/m", units),
    )
    return in_pint(speed, "m/s")


@described_by(_core.optimal_green)
def optimal_green(length: Any, *, units: Units = None) -> Quantity:
    """In second."""
    return answer(_core.optimal_green, "s", units, length=(length, "m"))


@described_by(_core.truck_equivalent)
def truck_equivalent(flow: Any, terrain: str = "level", *, units: Units = None) -> Any:
    """`terrain` is level or rolling; a plain number or array."""
    return plain(lambda si: _core.truck_equivalent(si, terrain), units, flow=(flow, "each/s"))


@described_by(_core.passenger_car_demand)
def passenger_car_demand(
    demand: Any, peak_factor: Any, grade_factor: Any, heavy_factor: Any, *, units: Units = None
) -> Quantity:
    """Factors are plain numbers."""
    return answer(_core.passenger_car_demand, "each/s", units, demand=(demand, "each/s"),
                  peak_factor=(peak_factor, "1"), grade_factor=(grade_factor, "1"),
                  heavy_factor=(heavy_factor, "1"))  # fmt: skip


@described_by(_core.one_lane_speed)
def one_lane_speed(limit: Any, *, units: Units = None) -> Quantity:
    """In metre per second."""
    return answer(_core.one_lane_speed, "m/s", units, limit=(limit, "m/s"))


def _vehicles(value: Any) -> tuple[Any, str]:
    """A number of vehicles: plain, as text, or a count of pint."""
    plain_number = not isinstance(value, str) and not is_quantity(value)
    return value, "1" if plain_number else "each"


class TrafficQueue:
    """A queue from its beginning on.

    Attributes
    ----------
    longest, arrived, delayed, left : pint.Quantity
        Vehicles: the most that wait at a time, those that came, those of them that waited, and
        those still waiting at the end.
    longest_at, longest_delay : pint.Quantity
        When the queue is longest, and how long the vehicle waits that waits longest.
    delay : pint.Quantity
        Vehicles times the time each lost.
    cleared : pint.Quantity or None
        When the last queue was gone; None without one, or where some are left.
    """

    def __init__(self, core: _core.TrafficQueue) -> None:
        self._core = core
        self.longest: Quantity = in_pint(core.longest, "each")
        self.arrived: Quantity = in_pint(core.arrived, "each")
        self.delayed: Quantity = in_pint(core.delayed, "each")
        self.left: Quantity = in_pint(core.left, "each")
        self.longest_at: Quantity = in_pint(core.longest_at, "s")
        self.longest_delay: Quantity = in_pint(core.longest_delay, "s")
        self.delay: Quantity = in_pint(core.delay, "s*each")
        cleared = core.cleared
        self.cleared: Quantity | None = None if cleared is None else in_pint(cleared, "s")

    @property
    def steps(self) -> pd.DataFrame:
        """One row a period: end_s, waiting at its end, longest within it, delay_s of all."""
        columns = self._core.steps()
        names = {"end": "end_s", "delay": "delay_s"}
        return frame({names.get(name, name): column for name, column in columns.items()})

    def __repr__(self) -> str:
        return (
            f"<TrafficQueue: at most {self.longest.magnitude:,.0f} vehicles, longest delay "
            f"{self.longest_delay.to('min').magnitude:,.1f} min, "
            f"{self.delay.to('count*hour').magnitude:,.1f} vehicle-hours>"
        )


@described_by(_core.traffic_queue)
def queue(demand: Any, capacity: Any, lengths: Any = "1 h", *, units: Units = None) -> TrafficQueue:
    """Arrays of one row: demand and capacity as ``"80 vehicle/min"``, how long each holds."""
    import numpy as np

    given = Arguments(units)
    given.add("lengths", lengths, "s")
    given.add("demand", demand, "each/s")
    given.add("capacity", capacity, "each/s")
    rows = [np.atleast_1d(row) for row in given.shaped()]
    if rows[0].ndim != 1:
        raise InputError("arguments.shape", "demand", f"an array {rows[0].shape}", "one row")
    return TrafficQueue(_core.traffic_queue(*(row.tolist() for row in rows)))


@described_by(_core.queue_length)
def queue_length(
    waiting: Any, spacing: Any = "25 ft/each", lanes: Any = 1, *, units: Units = None
) -> Quantity:
    """Vehicles are plain numbers or a count."""
    return answer(_core.queue_length, "m", units, waiting=_vehicles(waiting),
                  spacing=(spacing, "m/each"), lanes=(lanes, "1"))  # fmt: skip


def _day(demand: Any, units: Units) -> list[float]:
    given = Arguments(units)
    given.add("demand", demand, "each/s")
    hours: list[float] = given.shaped()[0].reshape(-1).tolist()
    return hours


@described_by(_core.closure_queue)
def closure_queue(
    demand: Any, open_capacity: Any, closed_capacity: Any, first: int, time: Any,
    *, units: Units = None,
) -> TrafficQueue:  # fmt: skip
    """`demand` by the hour from midnight, `first` the hour at which the closure begins."""
    return TrafficQueue(
        _core.closure_queue(
            _day(demand, units),
            single("open_capacity", open_capacity, "each/s", units),
            single("closed_capacity", closed_capacity, "each/s", units),
            first,
            single("time", time, "s", units),
        )
    )


@described_by(_core.permitted_hours)
def permitted_hours(
    demand: Any, open_capacity: Any, closed_capacity: Any,
    *, longest_queue: Any = None, longest_delay: Any = None, units: Units = None,
) -> Sequence[int]:  # fmt: skip
    """`longest_queue` in vehicles; a limit that is left out limits nothing."""
    return _core.permitted_hours(
        _day(demand, units),
        single("open_capacity", open_capacity, "each/s", units),
        single("closed_capacity", closed_capacity, "each/s", units),
        _limit("longest_queue", longest_queue, "each", units),
        _limit("longest_delay", longest_delay, "s", units),
    )


def _limit(name: str, value: Any, like: str, units: Units) -> float:
    if value is None:
        return float("inf")
    return single(name, value, _vehicles(value)[1] if like == "each" else like, units)


@described_by(_core.slowing_delay)
def slowing_delay(
    vehicles: Any, length: Any, usual: Any, slow: Any, *, units: Units = None
) -> Quantity:
    """In vehicle-seconds; ``.to("count*hour")``."""
    return answer(_core.slowing_delay, "s*each", units, vehicles=_vehicles(vehicles),
                  length=(length, "m"), usual=(usual, "m/s"), slow=(slow, "m/s"))  # fmt: skip


@described_by(_core.turn_delay)
def turn_delay(vehicles: Any, cycle: Any, green: Any, *, units: Units = None) -> Quantity:
    """In vehicle-seconds; ``.to("count*hour")``."""
    return answer(_core.turn_delay, "s*each", units, vehicles=_vehicles(vehicles),
                  cycle=(cycle, "s"), green=(green, "s"))  # fmt: skip


def _in_money(name: str, value: Any) -> tuple[Any, str]:
    """An amount without its currency, and the currency: ``"23 USD/h"``; text, or a list of it.

    Bare numbers and pint quantities without a currency, as this module gives them, pass.
    """
    if isinstance(value, str):
        si, unit, currency = _core.parse_quantity(value, name)
        if not currency:
            raise InputError("arguments.money", name, f'"{value}"', 'an amount, as "23 USD/h"')
        return in_pint(si, _without_money(unit)), currency
    if isinstance(value, list | tuple):
        pairs = [_in_money(f"{name}[{i}]", item) for i, item in enumerate(value)]
        return [amount for amount, _ in pairs], pairs[0][1] if pairs else ""
    return value, ""


def _without_money(unit: str) -> str:
    """As "currency/s": "1/s"."""
    return unit.replace("currency", "1")


def _money(
    core: Any, unit: str, units: Units, amounts: dict[str, tuple[Any, str]],
    **given: tuple[Any, str],
) -> Any:  # fmt: skip
    """The core's function of amounts and quantities, in its order of arguments."""
    plain_amounts = {}
    currencies = set()
    for name, (value, like) in amounts.items():
        amount, currency = _in_money(name, value)
        currencies |= {currency} - {""}
        plain_amounts[name] = (amount, like)
    if len(currencies) > 1:
        raise InputError("arguments.currency", ", ".join(amounts), ", ".join(sorted(currencies)),
                         "amounts in one currency")  # fmt: skip
    ordered = {name: {**plain_amounts, **given}[name] for name in _ORDER[core.__name__]}
    if unit == "1":
        return plain(core, units, **ordered)
    return answer(core, unit, units, **ordered)


#: Arguments of the core's functions of money, in their order.
_ORDER = {
    "time_value": ("car", "truck", "truck_share"),
    "delay_cost": ("delay", "value"),
    "detour_cost": ("vehicles", "detour", "speed", "value", "running"),
    "bid_with_time": ("bid", "time", "daily_cost"),
}


@described_by(_core.time_value)
def time_value(car: Any, truck: Any, truck_share: Any, *, units: Units = None) -> Quantity:
    """Amounts as ``"23 USD/h"``; the result is a number by time: ``.to("1/hour")``."""
    amounts = {"car": (car, "1/s"), "truck": (truck, "1/s")}
    value: Quantity = _money(
        _core.time_value, "1/s", units, amounts, truck_share=(truck_share, "1")
    )
    return value


@described_by(_core.delay_cost)
def delay_cost(delay: Any, value: Any, *, units: Units = None) -> Any:
    """`delay` as `TrafficQueue` has it, `value` as `time_value` or text; a plain amount."""
    return _money(_core.delay_cost, "1", units, {"value": (value, "1/s")},
                  delay=(delay, "s*each"))  # fmt: skip


@described_by(_core.detour_cost)
def detour_cost(
    vehicles: Any, detour: Any, speed: Any, value: Any, running: Any, *, units: Units = None
) -> Any:
    """`value` as ``"23 USD/h"``, `running` as ``"0.5 USD/mi"``; a plain amount."""
    return _money(_core.detour_cost, "1", units,
                  {"value": (value, "1/s"), "running": (running, "1/m")},
                  vehicles=_vehicles(vehicles), detour=(detour, "m"),
                  speed=(speed, "m/s"))  # fmt: skip


@described_by(_core.bid_with_time)
def bid_with_time(bid: Any, time: Any, daily_cost: Any, *, units: Units = None) -> Any:
    """As ``"1,000,000 USD"``, ``"60 day"``, ``"5,000 USD/day"``; a plain amount."""
    return _money(_core.bid_with_time, "1", units,
                  {"bid": (bid, "1"), "daily_cost": (daily_cost, "1/s")},
                  time=(time, "s"))  # fmt: skip
