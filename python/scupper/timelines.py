"""Pictures of shifts, to scale: travel, closure, the work of every party, standby, the meal."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from scupper.errors import InputError

if TYPE_CHECKING:
    import pandas as pd
    from matplotlib.axes import Axes

#: What a stretch of a shift is spent on: words, colour, hatch. Colours that print in grey as well.
LOOKS = {
    "travel": ("travel", "#b9c4cf", ""),
    "briefing": ("briefing, pack-up", "#dfe5ea", ""),
    "wait": ("wait for the window", "#ffffff", "...."),
    "set_up": ("closure set-up", "#e69f00", ""),
    "work": ("work", "#2a7f9e", ""),
    "standby": ("standby", "#ffffff", "////"),
    "meal": ("meal", "#f7f3d7", ""),
    "removal": ("closure removal", "#c77c02", ""),
    "idle": ("idle", "#ffffff", ""),
}
_BAR = 0.62
#: Hours of the picture that a letter takes.
_LETTER = 0.11


def draw(segments: pd.DataFrame, ax: Axes | None = None, title: str = "") -> Axes:
    """Draws shifts, one row a shift and party, on a common scale of hours.

    Parameters
    ----------
    segments
        row (a label), spent, what, site, start_h, end_h; rows in the order of the picture.
    ax
        Where to draw; a new figure where it is left out.
    title
        What stands above.

    Returns
    -------
    matplotlib.axes.Axes
        The picture.
    """
    import matplotlib.pyplot as plt

    if segments.empty:
        raise InputError("timeline.empty", "shifts", "no shift", "at least one shift")
    rows = list(dict.fromkeys(segments["row"]))
    if ax is None:
        _, ax = plt.subplots(figsize=(11, 1.6 + 0.42 * len(rows)), layout="constrained")
    for segment in segments.to_dict("records"):
        _bar(ax, rows.index(segment["row"]), segment)
    _axes(ax, rows, float(segments["end_h"].max()), title)
    return ax


def _bar(ax: Axes, row: int, segment: Mapping[Any, Any]) -> None:
    _, colour, hatch = LOOKS[segment["spent"]]
    start, end = segment["start_h"], segment["end_h"]
    edge = "#5b6770" if segment["spent"] != "idle" else "#c9d0d6"
    ax.barh(row, end - start, left=start, height=_BAR, color=colour, edgecolor=edge,
            linewidth=0.6, hatch=hatch, zorder=2)  # fmt: skip
    label = _label(segment, end - start)
    if label:
        dark = segment["spent"] == "work"
        ax.text((start + end) / 2, row, label, ha="center", va="center", fontsize=7,
                color="white" if dark else "#22303a", zorder=3, clip_on=True)  # fmt: skip


def _label(segment: Mapping[Any, Any], width: float) -> str:
    """The operation, or what stands for it, in one or two lines where it fits."""
    words = str(segment["what"]).replace("_", " ")
    if segment["spent"] in ("travel", "meal", "idle", "wait", "standby"):
        words = LOOKS[segment["spent"]][0]
    for text in (words, _in_two_lines(words)):
        if text and max(map(len, text.split("\n"))) * _LETTER <= width:
            return text
    return ""


def _in_two_lines(words: str) -> str:
    """Broken where the longer line is shortest."""
    parts = words.split()
    breaks = [f"{' '.join(parts[:i])}\n{' '.join(parts[i:])}" for i in range(1, len(parts))]
    return min(breaks, key=lambda text: max(map(len, text.split("\n"))), default=words)


def by_site(segments: pd.DataFrame) -> pd.DataFrame:
    """The work at a structure as one stretch, which has its name."""
    same = ["row", "spent", "site"]
    work = segments["spent"] == "work"
    new = (segments[same] != segments[same].shift()).any(axis=1) | ~work
    first = segments.groupby(new.cumsum()).first()
    first["end_h"] = segments.groupby(new.cumsum())["end_h"].last()
    first["what"] = first["site"].where(first["spent"] == "work", first["what"])
    return first.reset_index(drop=True)


def _axes(ax: Axes, rows: list[str], longest: float, title: str) -> None:
    from matplotlib.patches import Patch

    ax.set_yticks(range(len(rows)), rows, fontsize=8)
    ax.set_ylim(len(rows) - 0.4, -0.6)
    ax.set_xlim(0, longest * 1.005)
    ax.set_xticks(range(int(longest) + 1))
    ax.set_xlabel("hours of the shift")
    ax.grid(axis="x", color="#d7dde2", linewidth=0.6, zorder=0)
    for side in ("top", "right", "left"):
        ax.spines[side].set_visible(False)
    ax.tick_params(axis="y", length=0)
    ax.set_title(title, loc="left", fontsize=10)
    keys = [Patch(facecolor=c, edgecolor="#5b6770", hatch=h, label=w) for w, c, h in LOOKS.values()]
    ax.legend(handles=keys, ncols=5, fontsize=7, loc="upper left", bbox_to_anchor=(0, -0.32 / max(
        1.0, 0.28 * len(rows))), frameon=False, borderaxespad=0.0)  # fmt: skip
