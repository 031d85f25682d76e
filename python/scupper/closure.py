"""Closures: tapers, buffers, signs, devices, and a first lay-out of the whole.

A starting point only: the agency's traffic control plan and the manual it has adopted govern, and a
trained person adapts both to the site. Arguments are text with their unit (``"55 mph"``), pint
quantities, or bare numbers and arrays with ``units={"speed": "mph"}``. Arrays broadcast as in
numpy. Results are pint quantities in SI units; ``.to("ft")`` shows them otherwise.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property
from typing import TYPE_CHECKING, Any, NamedTuple

from scupper import _core, _report
from scupper._arguments import Arguments, Units, described_by, result, single
from scupper._core import kind_by_record
from scupper._frames import frame
from scupper._traffic import (
    TrafficQueue,
    bid_with_time,
    capacity_before_queue,
    closure_queue,
    closure_severity,
    delay_cost,
    detour_cost,
    heavy_vehicle_factor,
    hourly_shares,
    one_lane_speed,
    optimal_green,
    passenger_car_demand,
    permitted_hours,
    queue,
    queue_discharge,
    queue_length,
    slowing_delay,
    time_value,
    truck_equivalent,
    turn_delay,
    work_zone_capacity,
    work_zone_speed,
)
from scupper.errors import InputError
from scupper.units import in_pint

if TYPE_CHECKING:
    import pandas as pd
    from matplotlib.figure import Figure

    from scupper.units import Quantity

__all__ = [
    "Plan",
    "SignSpacing",
    "TrafficQueue",
    "Window",
    "advance_warning_may_be_omitted",
    "bid_with_time",
    "buffer_length",
    "capacity_before_queue",
    "closure_queue",
    "closure_severity",
    "delay_cost",
    "detour_cost",
    "device_count",
    "heavy_vehicle_factor",
    "hourly_demand",
    "hourly_shares",
    "kind_by_record",
    "one_lane_capacity",
    "one_lane_cycle",
    "one_lane_speed",
    "optimal_green",
    "passenger_car_demand",
    "permitted_hours",
    "plan",
    "queue",
    "queue_discharge",
    "queue_length",
    "roll_ahead",
    "sign_spacing",
    "slowing_delay",
    "tangent_device_spacing",
    "taper_device_spacing",
    "taper_length",
    "time_value",
    "truck_equivalent",
    "turn_delay",
    "window",
    "work_zone_capacity",
    "work_zone_speed",
]


class Window(NamedTuple):
    """A run of hours: the place of the first among those given, and how many."""

    first: int
    hours: int


class SignSpacing(NamedTuple):
    """Distances of the three advance warning signs; a driver passes C first."""

    a: Quantity
    b: Quantity
    c: Quantity


@described_by(_core.taper_length)
def taper_length(
    speed: Any, offset: Any, kind: str = "merging", *, units: Units = None
) -> Quantity:
    """`kind` is merging, shifting, shoulder, one_lane_two_way or downstream."""
    given = Arguments(units)
    given.add("speed", speed, "m/s")
    given.add("offset", offset, "m")
    speed_si, offset_si = given.shaped()
    return result(_core.taper_length(speed_si, offset_si, kind), "m")


@described_by(_core.buffer_length)
def buffer_length(speed: Any, downgrade: Any = 0, *, units: Units = None) -> Quantity:
    """A downgrade of 6 % is 0.06."""
    given = Arguments(units)
    given.add("speed", speed, "m/s")
    given.add("downgrade", downgrade, "1")
    return result(_core.buffer_length(*given.shaped()), "m")


@described_by(_core.sign_spacing)
def sign_spacing(road: str, edition: str | int = "2023") -> SignSpacing:
    """`road` is a class or a line of a printed table, `edition` the year of the manual."""
    a, b, c = (in_pint(si, "m") for si in _core.sign_spacing(road, str(edition)))
    return SignSpacing(a, b, c)


@described_by(_core.taper_device_spacing)
def taper_device_spacing(speed: Any, kind: str = "merging", *, units: Units = None) -> Quantity:
    """`kind` as for `taper_length`."""
    given = Arguments(units)
    given.add("speed", speed, "m/s")
    (speed_si,) = given.shaped()
    return result(_core.taper_device_spacing(speed_si, kind), "m")


@described_by(_core.tangent_device_spacing)
def tangent_device_spacing(speed: Any, *, units: Units = None) -> Quantity:
    """In metre."""
    given = Arguments(units)
    given.add("speed", speed, "m/s")
    return result(_core.tangent_device_spacing(*given.shaped()), "m")


@described_by(_core.device_count)
def device_count(length: Any, spacing: Any, *, units: Units = None) -> Quantity:
    """The unit of the result is pint's ``count``."""
    given = Arguments(units)
    given.add("length", length, "m")
    given.add("spacing", spacing, "m")
    return result(_core.device_count(*given.shaped()), "each")


@described_by(_core.one_lane_cycle)
def one_lane_cycle(length: Any, speed: Any, green: Any, *, units: Units = None) -> Quantity:
    """In second."""
    given = Arguments(units)
    given.add("length", length, "m")
    given.add("speed", speed, "m/s")
    given.add("green", green, "s")
    return result(_core.one_lane_cycle(*given.shaped()), "s")


@described_by(_core.one_lane_capacity)
def one_lane_capacity(
    length: Any, speed: Any, green: Any, saturation: Any, *, units: Units = None
) -> Quantity:
    """`saturation` as ``"1,500 vehicle/h"``; the unit of the result is pint's ``count/second``."""
    given = Arguments(units)
    given.add("length", length, "m")
    given.add("speed", speed, "m/s")
    given.add("green", green, "s")
    given.add("saturation", saturation, "each/s")
    return result(_core.one_lane_capacity(*given.shaped()), "each/s")


@described_by(_core.hourly_demand)
def hourly_demand(
    daily: Any, hourly_share: Any, directional_share: Any = 1, *, units: Units = None
) -> Quantity:
    """`daily` is a plain number of vehicles; shares as 0.06; the result in ``count/second``."""
    given = Arguments(units)
    given.add("daily", daily, "1")
    given.add("hourly_share", hourly_share, "1")
    given.add("directional_share", directional_share, "1")
    return result(_core.hourly_demand(*given.shaped()), "each/s")


@described_by(_core.closure_window)
def window(demand: Any, capacity: Any, *, units: Units = None) -> Window:
    """`demand` hour by hour as `hourly_demand` gives it, `capacity` one value."""
    given = Arguments(units)
    given.add("demand", demand, "each/s")
    (hours,) = given.shaped()
    if hours.ndim != 1:
        raise InputError("arguments.shape", "demand", f"an array {hours.shape}", "one row of hours")
    return Window(
        *_core.closure_window(hours.tolist(), single("capacity", capacity, "each/s", units))
    )


class Plan:
    """A first lay-out of a closure. Lengths are pint quantities, counts whole numbers.

    Attributes
    ----------
    kind : str
        How the road is narrowed or closed.
    taper, buffer : pint.Quantity
        Tapers before the work space together; the empty stretch between them and the work space.
    length : pint.Quantity
        From the first advance sign to the end of the last stretch.
    opposite_approach : pint.Quantity
        Advance warning for the other direction, or 0 m.
    devices : int
        Channelizing devices, the sum over the elements.
    advance_signs, arrow_boards, shadow_vehicles : int
        What else stands on the road; shadow vehicles have a truck-mounted attenuator.
    flaggers : int
        On duty at a time.
    cautions : list of str
        What governs instead of this plan, then what it leaves open.
    """

    def __init__(self, core: _core.ClosurePlan) -> None:
        self._core = core
        self.kind: str = core.kind
        self.taper: Quantity = in_pint(core.taper, "m")
        self.buffer: Quantity = in_pint(core.buffer, "m")
        self.length: Quantity = in_pint(core.length, "m")
        self.opposite_approach: Quantity = in_pint(core.opposite_approach, "m")
        self.devices: int = core.devices
        self.advance_signs: int = core.advance_signs
        self.arrow_boards: int = core.arrow_boards
        self.shadow_vehicles: int = core.shadow_vehicles
        self.flaggers: int = core.flaggers
        self.cautions: list[str] = core.cautions

    @cached_property
    def elements(self) -> pd.DataFrame:
        """The stretches as a driver meets them: name, start, length, devices.

        Start and length are pint quantities; a stretch that goes on with a line of devices shares
        one device with it, counted before.
        """
        return _elements(self._core.elements())

    @cached_property
    def removal_order(self) -> pd.DataFrame:
        """The same stretches in the order in which they are taken away, the first sign last."""
        return _elements(self._core.removal_order())

    @cached_property
    def placing(self) -> pd.DataFrame:
        """What to place in which order: the first sign that a driver meets first, of both
        directions, the arrow board lit before the taper, then devices with the traffic.

        Columns: what, approach, station from the first sign, length, pieces.
        """
        return _steps(self._core.placing())

    @cached_property
    def removal(self) -> pd.DataFrame:
        """The same in the order of removal: that of placing, reversed."""
        return _steps(self._core.taking())

    @cached_property
    def places(self) -> pd.DataFrame:
        """Where every sign, device, board, vehicle and flagger stands.

        Columns: what, station from the first sign, offset to the left of the right edge of the
        travelled way. For a picture; no survey.
        """
        return _lengths(self._core.places(), ("station", "offset"))

    def picture(self, units: str = "us") -> Figure:
        """The lay-out as a matplotlib figure: the whole with its breadth stretched, then the part
        from the first taper on at one scale both ways.

        Parameters
        ----------
        units
            ``"us"`` for feet, ``"metric"`` or ``"si"`` for metres.
        """
        from scupper._closure_picture import picture

        return picture(self, units)

    def _lines(self) -> _report.Lines:
        """Stretches, counts, cautions; lengths in feet, as the manual has them."""
        stretches = self._core.elements()
        lines = [
            (name.replace("_", " "), f"{_feet(length)}, {devices} devices")
            for name, length, devices in zip(
                stretches["name"], stretches["length"], stretches["devices"], strict=True
            )
        ]
        return [
            ("kind", self.kind.replace("_", " ")),
            *lines,
            ("whole length", _feet(self._core.length)),
            ("opposite approach", _feet(self._core.opposite_approach)),
            ("devices", str(self.devices)),
            ("advance signs", str(self.advance_signs)),
            ("arrow boards", str(self.arrow_boards)),
            ("shadow vehicles", str(self.shadow_vehicles)),
            ("flaggers", str(self.flaggers)),
            *(("caution", caution) for caution in self.cautions),
        ]

    def __repr__(self) -> str:
        return _report.text(self._lines())

    def _repr_html_(self) -> str:
        return _report.html(self._lines())


@described_by(_core.closure_plan)
def plan(
    *,
    speed: Any,
    kind: str,
    road: str,
    work_length: Any,
    lane_width: Any = "12 ft",
    shoulder_width: Any = "0 ft",
    lanes_closed: int = 0,
    edition: str | int = "2023",
    divided: bool = False,
    downgrade: Any = 0,
    lanes: int = 0,
    set_back: Any = "0 ft",
    at_curb: bool = False,
    units: Units = None,
) -> Plan:
    """One site, one plan: no arrays. `lanes_closed` 0 stands for as many as the kind says; `lanes`
    are those of the picture; `set_back` and `at_curb` are for work off the road."""
    given = {
        "speed": single("speed", speed, "m/s", units),
        "lane_width": single("lane_width", lane_width, "m", units),
        "shoulder_width": single("shoulder_width", shoulder_width, "m", units),
        "work_length": single("work_length", work_length, "m", units),
        "downgrade": single("downgrade", downgrade, "1", units),
        "set_back": single("set_back", set_back, "m", units),
    }
    return Plan(
        _core.closure_plan(
            kind=kind,
            road=road,
            lanes_closed=lanes_closed,
            edition=str(edition),
            divided=divided,
            lanes=lanes,
            at_curb=at_curb,
            **given,
        )
    )


@described_by(_core.advance_warning_may_be_omitted)
def advance_warning_may_be_omitted(
    set_back: Any, at_curb: bool = False, *, units: Units = None
) -> bool:
    """One value, no array."""
    return _core.advance_warning_may_be_omitted(single("set_back", set_back, "m", units), at_curb)


@described_by(_core.roll_ahead)
def roll_ahead(speed: Any, *, units: Units = None) -> Quantity:
    """In metre."""
    given = Arguments(units)
    given.add("speed", speed, "m/s")
    return result(_core.roll_ahead(*given.shaped()), "m")


def _elements(columns: Mapping[str, Any]) -> pd.DataFrame:
    return _lengths(columns, ("start", "length"))


def _steps(columns: Mapping[str, Any]) -> pd.DataFrame:
    return _lengths(columns, ("station", "length"))


def _lengths(columns: Mapping[str, Any], names: tuple[str, ...]) -> pd.DataFrame:
    """A table whose named columns are lengths."""
    lengths = {name: [in_pint(float(si), "m") for si in columns[name]] for name in names}
    return frame({**columns, **lengths})


def _feet(si: float) -> str:
    return _core.format_quantity(si, "ft", 4)
