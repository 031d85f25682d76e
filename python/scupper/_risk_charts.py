"""Pictures of what draws tell, for paper: black, grey and shapes."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    import pandas as pd
    from matplotlib.axes import Axes

    from scupper.simulating import Simulation

_LEVELS = (0.1, 0.5, 0.8, 0.9)


def _axes(ax: Axes | None, height: float) -> Axes:
    if ax is not None:
        return ax
    import matplotlib.pyplot as plt

    return plt.subplots(figsize=(7.3, height), layout="constrained")[1]


def _amount(value: float) -> str:
    return f"{value:,.0f}"


def cumulative(found: Simulation, figure: str, limit: float | None, ax: Axes | None) -> Axes:
    """The chance that a total stays below an amount, with its quantiles and a limit."""
    import numpy as np

    axes = _axes(ax, 3.4)
    row: Any = found.total.loc[figure]
    draws = np.sort(found.total_draws(figure))
    axes.plot(draws, np.linspace(0.0, 1.0, len(draws)), color="black", lw=1.4)
    for level in _LEVELS:
        at = found.quantile(level, figure)
        axes.plot(at, level, "o", color="black", ms=4)
        axes.annotate(f"P{100 * level:.0f}  {_amount(at)}", (at, level), (6, -9),
                      textcoords="offset points", fontsize=8)  # fmt: skip
    axes.axvline(float(row["estimate"]), color="0.4", lw=1.0, ls="--",
                 label=f"estimate {_amount(float(row['estimate']))}")  # fmt: skip
    if limit is not None:
        chance = found.chance_above(limit, figure)
        axes.axvline(limit, color="black", lw=1.0, ls=":",
                     label=f"limit {_amount(limit)}, passed in {chance:.0%}")  # fmt: skip
    axes.set_xlabel(f"{figure} of all structures, {row['unit']}")
    axes.set_ylabel("chance to stay below")
    axes.set_ylim(0.0, 1.0)
    axes.xaxis.set_major_formatter(lambda value, _: _amount(value))
    axes.legend(frameon=False, loc="lower right", fontsize=8)
    return axes


def tornado(swings: pd.DataFrame, most: int = 12, ax: Axes | None = None) -> Axes:
    """How far each input alone moves a total between its P10 and its P90, the widest on top.

    Parameters
    ----------
    swings
        A table of `scupper.swings`.
    most
        How many inputs are shown.
    ax
        Axes to draw on; None for a figure of its own.
    """
    import numpy as np

    low = next(name for name in swings.columns if name.endswith("_at_low"))
    figure = low.removesuffix("_at_low")
    rows: Any = swings.dropna(subset=["width"]).head(most)
    axes = _axes(ax, 0.9 + 0.24 * len(rows))
    places = np.arange(len(rows))
    ends = (("low", "0.75", "///"), ("high", "0.35", ""))
    middle = float(swings.attrs["estimate"])
    for end, grey, hatch in ends:
        at = rows[f"{figure}_at_{end}"].to_numpy(dtype=float)
        axes.barh(places, at - middle, left=middle, color=grey, hatch=hatch, edgecolor="white",
                  label=f"input at its {'P10' if end == 'low' else 'P90'}")  # fmt: skip
    axes.set_yticks(places, list(rows["label"]))
    axes.invert_yaxis()
    axes.set_xlabel(f"{figure} of all structures, {swings.attrs['unit']}")
    axes.xaxis.set_major_formatter(lambda value, _: _amount(value))
    axes.legend(frameon=False, fontsize=8, loc="lower right")
    return axes
