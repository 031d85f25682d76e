"""The report of a programme: totals, what has no price, charts, structures by cost."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from importlib.util import find_spec
from typing import TYPE_CHECKING, Any

from scupper import _charts, _core
from scupper._estimate_page import ranges_of
from scupper._frames import frame
from scupper._paper import nice, render, words
from scupper._progress import Progress
from scupper.results import safe_cells

if TYPE_CHECKING:
    import pandas as pd

    from scupper.programme import Programme

#: Bars with a range: each takes as many draws as an estimate, so that only the dearest have one.
_BARS = 20
#: Figures of the table, and what it calls them.
_FIGURES = {
    "shift.count": "crew-shifts",
    "hours.labour": "labour-hours",
    "water.volume": "water",
    "debris.mass": "dirt",
    "cost.total": "cost",
}


def report(programme: Programme, progress: Progress) -> str:
    """The report as HTML."""
    table = structures(programme)
    ranges: Any = programme.ranges(progress=progress).to_dict("index")
    units = dict(programme._core.columns(programme.job.units))
    return render(
        "report.html",
        programme=programme,
        cost=ranges["cost.total"],
        totals=_totals(ranges),
        reasons=programme.unpriced["reason"].value_counts().to_dict(),
        unpriced=safe_cells(programme.unpriced).to_dict("records"),
        heads=[(what, _printed(units[key])) for key, what in _FIGURES.items()],
        keys=list(_FIGURES),
        rows=safe_cells(table).to_dict("records"),
        charts=_pictures(programme, table),
        length_unit=_core.shown_unit("m", programme.job.units),
    )


def structures(programme: Programme, figures: Iterable[str] = tuple(_FIGURES)) -> pd.DataFrame:
    """The priced structures, the dearest first: names, closure, length, figures by key."""
    inventory, units = programme.inventory, programme.job.units
    names = ("structure_id", "carries", "crosses")
    recorded = inventory._core.recorded({*names, "length_m"})
    rows = programme._core.priced().tolist()
    columns: dict[str, Any] = {"row": rows}
    for name in names:
        columns[name] = [recorded[name][i] for i in rows]
    columns["closure"] = [words(kind) for kind in programme._core.closures()]
    lengths = _core.from_si(recorded["length_m"], _core.shown_unit("m", units))
    columns["length"] = [float(lengths[i]) for i in rows]
    values = programme._core.table()
    for i, (key, unit) in enumerate(programme._core.columns(units)):
        if key in set(figures):
            columns[key] = _core.from_si(values[:, i], unit)
    return frame(columns).sort_values("cost.total", ascending=False, kind="stable")


def _totals(ranges: dict[str, dict[str, Any]]) -> list[dict[str, Any]]:
    """What, how much with its range, and the unit of every total but the money."""
    return [
        ranges[key] | {"what": what, "unit": _printed(ranges[key]["unit"])}
        for key, what in _FIGURES.items()
        if what != "cost"
    ]


def _printed(unit: str) -> str:
    """A unit in print; that of labour-hours stands in their name."""
    return "" if unit == "labour-h" else nice(unit)


def _pictures(programme: Programme, table: pd.DataFrame) -> list[dict[str, str]]:
    """Titles and pictures; none where nothing has a price or nobody can draw."""
    if len(table) == 0 or find_spec("matplotlib") is None:
        return []
    money = f"cost, {programme.currency}"
    length = f"length, {_core.shown_unit('m', programme.job.units)}"
    dearest = table.head(_BARS)
    kinds = table.groupby("closure")["cost.total"].sum().sort_values(ascending=False)
    ranges = list(_ranges(programme, dearest))
    hours = table["hours.labour"].tolist()
    x, y = table["length"].tolist(), table["cost.total"].tolist()
    title = f"The {len(dearest)} dearest structures; the line is P5–P95 of the structure alone"
    pictures = {
        "Labour-hours a structure": _charts.histogram(hours, "labour-hours"),
        "Cost by kind of closure": _charts.bars(kinds.index.tolist(), kinds.tolist(), money),
        title: _charts.ranged_bars(dearest["structure_id"].tolist(), ranges, money),
        "Length against cost": _charts.scatter(x, y, (length, money)),
    }
    return [{"title": title, "svg": svg} for title, svg in pictures.items()]


def _ranges(programme: Programme, table: pd.DataFrame) -> Iterator[_charts.Range]:
    """P5, cost and P95 of each structure."""
    from scupper.estimating import estimate

    for row, cost in zip(table["row"], table["cost.total"], strict=True):
        drawn = ranges_of(estimate(programme.inventory[int(row)], programme.job))["cost.total"]
        yield drawn["P5"], cost, drawn["P95"]
