"""Pictures of what draws tell, for paper: black, grey and shapes."""

from __future__ import annotations

import io
import os
from collections.abc import Callable
from pathlib import Path
from textwrap import fill, shorten
from typing import TYPE_CHECKING, Any

from scupper._files import write_whole
from scupper._needed import needed
from scupper.errors import InputError

if TYPE_CHECKING:
    import pandas as pd
    from matplotlib.axes import Axes

    from scupper.simulating import Simulation
    from scupper.surveying import SurveyList

_LEVELS = (0.1, 0.5, 0.8, 0.9)
#: Width of a picture [in].
_WIDTH = 7.3
#: How many letters of what is to be done stand in a line beside a bar.
_LETTERS = 52


def _axes(ax: Axes | None, height: float) -> Axes:
    if ax is not None:
        return ax
    import matplotlib.pyplot as plt

    return plt.subplots(figsize=(_WIDTH, height), layout="constrained")[1]


def save(path: str | os.PathLike[str], draw: Callable[[Axes], Axes], height: float = 4.2) -> None:
    """Writes a picture whole, or not at all; the ending of its name says of which kind."""
    figure_of = needed("matplotlib.figure", "a picture", "plot").Figure
    kind = Path(path).suffix[1:].lower()
    figure = figure_of(figsize=(_WIDTH, height), layout="constrained")
    kinds = figure.canvas.get_supported_filetypes()
    if kind not in kinds:
        raise InputError("picture.kind", os.fspath(path), f'".{kind}"', f".{', .'.join(kinds)}")
    draw(figure.subplots())
    image = io.BytesIO()
    figure.savefig(image, format=kind, dpi=200)
    write_whole(path, image.getvalue())


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


def _figure_of(swings: pd.DataFrame) -> str:
    """The figure that a table of swings is of."""
    ends = [name for name in map(str, swings.columns) if name.endswith("_at_low")]
    figure = ends[0].removesuffix("_at_low") if ends else "cost"
    due = ["label", *(f"{figure}_{w}" for w in ("estimate", "at_low", "at_high")), "width", "unit"]
    missing = [name for name in due if name not in swings.columns]
    if missing:
        allowed = f"the columns of scupper.swings: {', '.join(due)}"
        raise InputError("swings.table", "swings", f"no {', '.join(missing)}", allowed)
    return figure


def tornado(swings: pd.DataFrame, most: int = 12, ax: Axes | None = None) -> Axes:
    """How far each input alone moves a total between its P10 and its P90, the widest on top.

    Parameters
    ----------
    swings
        A table of `scupper.swings`, or some of its rows.
    most
        How many inputs are shown.
    ax
        Axes to draw on; None for a figure of its own.

    Raises
    ------
    InputError
        Where a column that `scupper.swings` gives is not there, or no row has a width.
    """
    import numpy as np

    figure = _figure_of(swings)
    rows: Any = swings.dropna(subset=["width"]).head(most)
    if rows.empty:
        raise InputError("swings.table", "swings", "no row with a width", "at least one")
    axes = _axes(ax, 0.9 + 0.24 * len(rows))
    places = np.arange(len(rows))
    ends = (("low", "0.75", "///"), ("high", "0.35", ""))
    middle = float(rows[f"{figure}_estimate"].iloc[0])
    for end, grey, hatch in ends:
        at = rows[f"{figure}_at_{end}"].to_numpy(dtype=float)
        axes.barh(places, at - middle, left=middle, color=grey, hatch=hatch, edgecolor="white",
                  label=f"input at its {'P10' if end == 'low' else 'P90'}")  # fmt: skip
    axes.set_yticks(places, list(rows["label"]))
    axes.invert_yaxis()
    axes.set_xlabel(f"{figure} of all structures, {rows['unit'].iloc[0]}")
    axes.xaxis.set_major_formatter(lambda value, _: _amount(value))
    axes.legend(frameon=False, fontsize=8, loc="lower right")
    return axes


def survey_bars(found: SurveyList, most: int, ax: Axes | None) -> Axes:
    """By how much each visit would narrow P10 to P90 of a programme's cost, the first on top."""
    import numpy as np

    visits: Any = found.visits.head(most)
    axes = _axes(ax, survey_height(len(visits)))
    places = np.arange(len(visits))
    widths = visits["narrows_by_draws"].to_numpy(dtype=float)
    axes.barh(places, np.nan_to_num(widths), color="0.55", edgecolor="black", lw=0.6, height=0.62)
    for place, width in zip(places, widths, strict=True):
        text = "no price in some outcome" if np.isnan(width) else _amount(width)
        axes.annotate(text, (max(np.nan_to_num(width), 0.0), place), (4, 0),
                      textcoords="offset points", va="center", fontsize=8)  # fmt: skip
    axes.set_yticks(places, [_what(found, visit) for visit in visits["visit"]], fontsize=7)
    axes.invert_yaxis()
    axes.margins(x=0.14)
    axes.tick_params(axis="x", labelsize=8)
    axes.set_xlabel(f"each alone narrows P10–P90 of the cost by, {found.currency}", fontsize=8)
    axes.xaxis.set_major_formatter(lambda value, _: _amount(value))
    for side in ("top", "right"):
        axes.spines[side].set_visible(False)
    now, left = found.middle_range, visits["left_by_draws"]
    if len(visits) and not left.isna().any():
        title = f"P10–P90 is {_amount(now)} wide now, {_amount(left.iloc[-1])} after these visits"
        axes.set_title(title, fontsize=9, loc="left")
    return axes


def survey_height(visits: int) -> float:
    """How high the bars of so many visits stand in all [in]."""
    return 1.1 + 0.45 * visits


def _what(found: SurveyList, visit: int) -> str:
    """The structure, and below it what to count and measure there."""
    rows = found.measurements[found.measurements["visit"] == visit]
    measures = shorten("; ".join(rows["measure"]), 2 * _LETTERS, placeholder=" …")
    return f"{visit}. {rows['structure_id'].iloc[0]}\n{fill(measures, _LETTERS)}"
