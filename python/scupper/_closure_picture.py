"""A closure as a picture: what stands where, with its distances."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

    from scupper.closure import Plan

_ROAD, _LINE, _CLOSED, _WORK = "#e4e4e0", "#8a8a84", "#f3c98b", "#d98e4a"
#: Marker, size and colour of what stands on the road.
_MARKS: dict[str, tuple[str, float, str]] = {
    "device": (".", 14.0, "#c8501e"),
    "sign": ("D", 34.0, "#e08a1e"),
    "arrow_board": (">", 60.0, "#2b2b2b"),
    "shadow_vehicle": ("s", 46.0, "#5b8c85"),
    "flagger": ("P", 56.0, "#3a5fa0"),
}
_NAMES = {
    "device": "channelizing device",
    "sign": "advance warning sign",
    "arrow_board": "arrow board",
    "shadow_vehicle": "shadow vehicle with attenuator",
    "flagger": "flagger",
}
_FREE_TRAVEL = ("advance_warning_c", "advance_warning_b", "advance_warning_a")
_SETTINGS: Any = {"font.family": "sans-serif", "font.size": 8.0, "text.parse_math": False}


class _Drawing:
    """The plan in one unit of length, ready to draw."""

    def __init__(self, plan: Plan, units: str) -> None:
        core = plan._core
        self.unit = _core.shown_unit("m", units)
        self.elements: list[dict[str, Any]] = [
            {"name": row["name"], "start": self._in_unit(row["start"]),
             "length": self._in_unit(row["length"]), "devices": row["devices"]}
            for row in plan.elements.to_dict("records")
        ]  # fmt: skip
        self.places: list[tuple[str, float, float]] = [
            (row["what"], self._in_unit(row["station"]), self._in_unit(row["offset"]))
            for row in plan.places.to_dict("records")
        ]
        self.lanes: int = core.lanes_shown
        self.lane = self._si(core.lane_width)
        self.shoulder = self._si(core.shoulder_width)
        self.length = self._in_unit(plan.length)
        self.opposite = self._in_unit(plan.opposite_approach)

    def _in_unit(self, length: Any) -> float:
        return float(length.to(self.unit).magnitude)

    def _si(self, metres: float) -> float:
        from scupper.units import in_pint

        return self._in_unit(in_pint(metres, "m"))

    @property
    def closed_from(self) -> float:
        """Station of the first stretch after the advance warning."""
        starts = [e["start"] for e in self.elements if e["name"] not in _FREE_TRAVEL]
        return float(min(starts, default=0.0))


def picture(plan: Plan, units: str) -> Figure:
    """See `Plan.picture`."""
    from matplotlib import rc_context
    from matplotlib.figure import Figure

    drawing = _Drawing(plan, "us" if units == "us" else "si")
    with rc_context(_SETTINGS):
        figure = Figure(figsize=(13, 6.2), layout="constrained")
        whole, near = figure.subplots(2, 1, height_ratios=(1.25, 1.0))
        kind = plan.kind.replace("_", " ")
        figure.suptitle(f"Closure, {kind}: {_counts(plan)}", fontsize=11, x=0.01, ha="left")
        if drawing.elements:
            _draw_whole(whole, drawing)
            _draw_near(near, drawing)
        else:
            for axes in (whole, near):
                axes.set_axis_off()
        figure.supxlabel("\n".join(plan.cautions[:3]), fontsize=7.5, x=0.01, ha="left")
    return figure


def _counts(plan: Plan) -> str:
    counts = {
        "advance sign": plan.advance_signs, "channelizing device": plan.devices,
        "arrow board": plan.arrow_boards, "shadow vehicle": plan.shadow_vehicles,
        "flagger": plan.flaggers,
    }  # fmt: skip
    told = [f"{n} {what}{'s' if n != 1 else ''}" for what, n in counts.items() if n]
    return ", ".join(told) or "nothing stands on the road"


def _draw_whole(axes: Axes, d: _Drawing) -> None:
    """From the first sign to the last; its breadth is stretched so that lanes can be told."""
    end = d.length + d.opposite
    _road(axes, d, 0.0, end)
    _marks(axes, d)
    top = d.lanes * d.lane
    for i, e in enumerate(d.elements):
        _dimension(axes, d, e, top + d.lane * (1.1 + 0.95 * (i % 2)))
    if d.opposite:
        opposite = {"name": "advance warning, opposite", "start": d.length, "length": d.opposite}
        _dimension(axes, d, opposite, top + d.lane * 1.1)
    axes.set_xlim(-0.02 * end, 1.02 * end)
    axes.set_ylim(-d.shoulder - 1.6 * d.lane, top + 3.4 * d.lane)
    axes.set_title("whole closure: along the road to scale, across it stretched", loc="left")
    _legend(axes, d)
    _bare(axes, d, "from the first advance sign")


def _draw_near(axes: Axes, d: _Drawing) -> None:
    """From the first taper to the last device, at one scale along and across the road."""
    start, end = d.closed_from, d.length
    margin = 0.03 * (end - start)
    _road(axes, d, start - margin, end + margin)
    _marks(axes, d, size=0.35)
    axes.set_xlim(start - margin, end + margin)
    axes.set_ylim(-d.shoulder - 1.2 * d.lane, (d.lanes + 1.2) * d.lane)
    axes.set_aspect("equal")
    axes.set_title("from the first taper on, to scale both ways", loc="left")
    _bare(axes, d, "")


def _road(axes: Axes, d: _Drawing, start: float, end: float) -> None:
    top = d.lanes * d.lane
    axes.fill_between([start, end], -d.shoulder, top, color=_ROAD, lw=0)
    axes.hlines([0.0, top], start, end, color=_LINE, lw=0.8)
    for lane in range(1, d.lanes):
        axes.hlines(lane * d.lane, start, end, color=_LINE, lw=0.8, linestyles=(0, (9, 9)))
    edge = _closed_edge(d)
    if edge:
        stations, offsets = zip(*edge, strict=True)
        axes.fill_between(stations, -d.shoulder, offsets, color=_CLOSED, lw=0)
    for e in d.elements:
        if e["name"] == "work_space":
            axes.fill_between([e["start"], e["start"] + e["length"]], -d.shoulder,
                              _offset_at(edge, e["start"], top), color=_WORK, lw=0)  # fmt: skip


def _closed_edge(d: _Drawing) -> list[tuple[float, float]]:
    """The line of devices in the order of its stations."""
    return sorted((station, offset) for what, station, offset in d.places if what == "device")


def _offset_at(edge: list[tuple[float, float]], station: float, otherwise: float) -> float:
    """The closed breadth where the work begins; the whole road where no devices stand."""
    before = [offset for at, offset in edge if at <= station]
    return before[-1] if before else otherwise


def _marks(axes: Axes, d: _Drawing, size: float = 1.0) -> None:
    for what, (marker, area, colour) in _MARKS.items():
        found = [(station, offset) for kind, station, offset in d.places if kind == what]
        if found:
            x, y = zip(*found, strict=True)
            axes.scatter(x, y, s=area * size, marker=marker, color=colour, zorder=3,
                         label=_NAMES[what], clip_on=True)  # fmt: skip


def _dimension(axes: Axes, d: _Drawing, e: dict[str, Any], height: float) -> None:
    """A stretch with its length, between two arrows."""
    if not e["length"]:
        return
    start, end = e["start"], e["start"] + e["length"]
    axes.annotate("", (start, height), (end, height),
                  arrowprops={"arrowstyle": "<->", "lw": 0.7, "color": _LINE})  # fmt: skip
    for at in (start, end):
        axes.vlines(at, 0, height, color=_LINE, lw=0.4, linestyles=":")
    name = e["name"].replace("_", " ").replace("advance warning ", "advance warning, ")
    label = f"{name}\n{e['length']:,.0f} {d.unit}"
    axes.text((start + end) / 2, height + 0.1 * d.lane, label, ha="center", va="bottom",
              fontsize=7, linespacing=1.1)  # fmt: skip


def _legend(axes: Axes, d: _Drawing) -> None:
    from matplotlib.patches import Patch

    handles, labels = axes.get_legend_handles_labels()
    handles += [Patch(color=_CLOSED), Patch(color=_WORK)]
    axes.legend(handles, [*labels, "closed", "work space"], loc="upper center", frameon=False,
                ncols=7, bbox_to_anchor=(0.5, -0.22), fontsize=7.5)  # fmt: skip


def _bare(axes: Axes, d: _Drawing, label: str) -> None:
    axes.set_yticks([])
    for side in ("top", "left", "right"):
        axes.spines[side].set_visible(False)
    axes.xaxis.set_major_formatter("{x:,.0f}")
    axes.set_xlabel(f"station {label} [{d.unit}]".replace("  ", " "))
