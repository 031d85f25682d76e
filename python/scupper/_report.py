"""Short summaries as lines of (what, figure): the same for text and HTML."""

from __future__ import annotations

from html import escape
from math import isnan
from typing import TYPE_CHECKING

from scupper import _core

if TYPE_CHECKING:
    from scupper.estimating import Estimate
    from scupper.programme import Programme

Lines = list[tuple[str, str]]


def number(value: float) -> str:
    """A number to four digits as people write it: "12,880"; a dash where there is none."""
    return "–" if isnan(value) else _core.format_quantity(value, "1", 4)


def text(lines: Lines) -> str:
    """Lines as aligned text."""
    width = max(len(what) for what, _ in lines)
    return "\n".join(f"{what:{width}}  {figure}".rstrip() for what, figure in lines)


def html(lines: Lines) -> str:
    """Lines as a table."""
    rows = "".join(
        f'<tr><th style="text-align:left">{escape(what)}</th>'
        f'<td style="text-align:left">{escape(figure)}</td></tr>'
        for what, figure in lines
    )
    return f"<table>{rows}</table>"


def estimate_lines(estimate: Estimate) -> Lines:
    """Structure, shifts, hours, water, dirt, loads, money with its range, and what that is."""
    structure = estimate.structure
    loads = estimate.text("debris.loads").removesuffix(" each")
    ranges = estimate.ranges().loc["cost.total"]
    lines = [
        ("structure", f"{structure.key}, {structure.carries} over {structure.crosses}"),
        ("crew-shifts", f"{estimate.shifts:.2f}"),
        ("labour", estimate.text("hours.labour")),
        ("water", estimate.text("water.volume")),
        ("dirt", f"{estimate.text('debris.mass')}, {loads} loads"),
        *(
            (f"nozzle, {method.replace('_', ' ')}", repr(nozzle))
            for method, nozzle in estimate.nozzles.items()
        ),
        ("cost", f"{estimate.cost!r} (P5–P95 {ranges['P5']:,.0f}–{ranges['P95']:,.0f})"),
        ("priced at", f"the {estimate.job.price_at} value of every input"),
        ("outing", "a group of one: this structure alone"),
    ]
    users = estimate.road_users
    if users.known and users.total > 0:
        lines.append(("road users", f"{users.currency} {users.total:,.0f}, beside the cost"))
    lines += [("warning", warning) for warning in estimate.warnings]
    cautions = estimate.cautions
    return lines + [("cautions", f"{len(cautions)}, in .cautions: {cautions[0]['text']}")]


def programme_lines(programme: Programme) -> Lines:
    """Counts that add up, reasons, totals, stamp."""
    counts = programme.counts
    reasons = programme.unpriced["reason"].value_counts()
    lines = [
        ("structures read", f"{counts['read']:,}"),
        ("priced", f"{counts['priced']:,}"),
        ("unpriced", f"{counts['unpriced']:,}"),
        *((f"  {count:,}", str(reason)) for reason, count in reasons.items()),
    ]
    for key, what in TOTALS.items():
        total, unit = programme.total_of(key)
        number = f"{total:,.0f}" if total >= 100 else f"{total:,.3g}"
        lines.append((what, f"{number} {unit}".removesuffix(" 1")))
    lines.append(("cost", f"{programme.currency} {programme.total:,.0f}"))
    stamp = ", ".join(f"{k} {v}" for k, v in programme.stamp.items())
    return [*lines, ("stamp", stamp)]


#: Totals a summary shows.
TOTALS = {
    "takeoff[wash_area_total].quantity": "wash area",
    "water.volume": "water",
    "debris.mass": "dirt",
    "hours.labour": "labour-hours",
    "shift.count": "crew-shifts",
}
