"""Charts as SVG that stands in HTML. Text is never read as markup or mathematics."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from io import StringIO
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

ACCENT = "#5b8c85"
_SETTINGS: Any = {
    "svg.fonttype": "none",
    "text.parse_math": False,
    "font.family": "sans-serif",
    "font.size": 8.0,
    "axes.spines.top": False,
    "axes.spines.right": False,
}
Range = tuple[float, float, float]


def ranged_bars(names: Sequence[str], rows: Sequence[Range], label: str) -> str:
    """A bar for each value with its range: rows of low, value and high, the first on top."""

    def draw(axes: Axes) -> None:
        places = range(len(rows))
        axes.barh(places, [value for _, value, _ in rows], color=ACCENT, alpha=0.75)
        axes.hlines(places, [row[0] for row in rows], [row[2] for row in rows], color="black", lw=1)
        axes.set_yticks(places, names)
        axes.invert_yaxis()
        axes.margins(y=0.01)
        axes.set_xlabel(label)

    return _svg("bars", (7.3, 0.5 + 0.13 * max(len(rows), 3)), draw)


def bars(names: Sequence[str], values: Sequence[float], label: str) -> str:
    """A bar for each value, the first on top."""

    def draw(axes: Axes) -> None:
        axes.barh(range(len(values)), values, color=ACCENT)
        axes.set_yticks(range(len(values)), names)
        axes.invert_yaxis()
        axes.set_xlabel(label)

    return _svg("kinds", (3.6, 1.9), draw)


def histogram(values: Sequence[float], label: str) -> str:
    """How many values lie where."""

    def draw(axes: Axes) -> None:
        axes.hist(values, bins=min(20, max(len(values), 1)), color=ACCENT, edgecolor="white")
        axes.set_xlabel(label)
        axes.set_ylabel("structures")

    return _svg("histogram", (3.6, 1.9), draw)


def scatter(x: Sequence[float], y: Sequence[float], labels: tuple[str, str]) -> str:
    """One quantity against another."""

    def draw(axes: Axes) -> None:
        axes.scatter(x, y, s=12, color=ACCENT, edgecolor="black", linewidth=0.4)
        axes.set_xlim(left=0)
        axes.set_ylim(bottom=0)
        axes.yaxis.set_major_formatter("{x:,.0f}")
        axes.set_xlabel(labels[0])
        axes.set_ylabel(labels[1])

    return _svg("scatter", (7.3, 1.75), draw)


def _svg(name: str, size: tuple[float, float], draw: Callable[[Axes], None]) -> str:
    """The picture without a document's prologue; `name` keeps ids of several on a page apart."""
    from matplotlib import rc_context
    from matplotlib.figure import Figure

    with rc_context(_SETTINGS | {"svg.hashsalt": name}):
        figure = Figure(figsize=size, layout="constrained")
        axes = figure.add_subplot()
        axes.xaxis.set_major_formatter("{x:,.0f}")
        draw(axes)
        return _text(figure)


def as_svg(figure: Figure) -> str:
    """A figure without a document's prologue, its text as text."""
    from matplotlib import rc_context

    with rc_context(_SETTINGS | {"svg.hashsalt": "figure"}):
        return _text(figure)


def _text(figure: Figure) -> str:
    out = StringIO()
    figure.savefig(out, format="svg", transparent=True, metadata={"Date": None})
    text = out.getvalue()
    return text[text.index("<svg") :]


def advantage_svg(values: Sequence[float], currency: str) -> str:
    """How the advantage of own people is distributed, as SVG."""
    return _svg("advantage", (3.6, 1.7), lambda axes: _draw_advantage(axes, values, currency))


def advantage_chart(values: Sequence[float], currency: str, axes: Axes | None = None) -> Axes:
    """The same on axes of a figure."""
    if axes is None:
        from matplotlib.figure import Figure

        axes = Figure(figsize=(7.0, 3.0), layout="constrained").add_subplot()
    _draw_advantage(axes, values, currency)
    axes.xaxis.set_major_formatter("{x:,.0f}")
    return axes


def _draw_advantage(axes: Axes, values: Sequence[float], currency: str) -> None:
    axes.hist(values, bins=40, color=ACCENT, edgecolor="white", linewidth=0.3)
    axes.axvline(0.0, color="black", lw=1.2)
    axes.locator_params(axis="x", nbins=5)
    axes.set_yticks([])
    axes.set_xlabel(
        f"advantage of own people, {currency} a year\n(left of 0 a contract is cheaper)"
    )
