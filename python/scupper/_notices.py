"""Warnings of an estimate, in words."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from scupper import _core
from scupper._paper import nice, short

if TYPE_CHECKING:
    from scupper.estimating import Estimate


def warnings_of(estimate: Estimate) -> list[str]:
    """The bridge's weight posting; what lies around and is not priced; quantities no record tells,
    and how the price moves with them; a nozzle that pushes hard; washing that is refused because no
    water may be used; road users whose cost cannot be figured."""
    posting = estimate._core.posting_warnings()
    jets = [*_shortfalls(estimate), *_too_strong(estimate), *_reaction(estimate)]
    around = _core.unpriced_surroundings(estimate._core)
    return [*posting, *around, *_untold(estimate), *jets, *_refused(estimate), *_users(estimate)]


def _users(estimate: Estimate) -> Iterator[str]:
    for text in estimate.road_users.not_figured:
        yield f"road users: {text[0].lower()}{text[1:]}"


def _shortfalls(estimate: Estimate) -> Iterator[str]:
    for row in estimate._shortfalls:
        line = row["method"].replace("_", " ")
        found = (
            f"the {line} has {row['flow']} at {row['pressure']} at the tip, less than "
            f"{row['least_flow']} at {row['least_pressure']} ({row['source']})"
        )
        if not row["remedies"]:
            yield f"{found}; no single change mends it"
            continue
        what, flow, pressure, total = row["remedies"][0]
        yield (
            f"{found}; cheapest remedy: {what}, {flow} at {pressure}, "
            f"{estimate.currency} {total:,.0f} in all"
        )


def _too_strong(estimate: Estimate) -> Iterator[str]:
    for row in _core.too_strong(estimate._core):
        line = row["method"].replace("_", " ")
        yield (
            f"the {line} has {row['pressure']} at the tip; {row['surface']} is limited to between "
            f"{row['from']} and {row['to']} ({row['source']})"
        )


def _untold(estimate: Estimate) -> Iterator[str]:
    for label, low, high, unit, worth in estimate._core.untold():
        counted = unit in ("each", "1")
        shown = f"{short(low)}–{short(high)}" + ("" if counted else f" {nice(unit)}")
        yield (
            f"{label} {shown}, not counted: over that range the price moves by "
            f"{estimate.currency} {worth:,.0f}"
        )


def _refused(estimate: Estimate) -> Iterator[str]:
    names = [name.replace("_", " ") for name in estimate._core.refused()]
    if names:
        yield f"no wash water may be used: not priced are {', '.join(names)}; dry removal alone is"


def _reaction(estimate: Estimate) -> Iterator[str]:
    for row in _core.hard_to_hold(estimate._core):
        line = row["method"].replace("_", " ")
        what = "too much from a bucket" if row["from_bucket"] else "more than one person holds"
        yield (
            f"nozzle reaction of the {line} {row['reaction']}: {what} ({row['limit']}, common "
            "practice); the employer's rules decide"
        )
