"""A foreman's card for one structure."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

from scupper._estimate_page import (
    active_operations,
    crew,
    drains,
    equipment,
    inputs_of,
    listed,
    shown,
    worked,
)
from scupper._job_facts import asked_before
from scupper._paper import render
from scupper._structure_facts import described

if TYPE_CHECKING:
    from scupper.estimating import Estimate

#: Drains a card has boxes for; more go on a second card.
_MOST_DRAINS = 60
_DRAIN_COLUMNS = 3
_SPARE_DRAINS = 2


def work_card(estimate: Estimate) -> str:
    """The card as HTML."""
    at_work, besides = _work(estimate)
    number, how = drains(estimate)
    return render(
        "card.html",
        est=estimate,
        about=described(estimate.structure, estimate.job.units),
        people=listed(crew(estimate)),
        pieces=listed(equipment(estimate)),
        nozzles=estimate.nozzles,
        work=at_work,
        besides=besides,
        asked=asked_before(estimate),
        on_site=shown(estimate, "hours.on_site"),
        water=shown(estimate, "water.volume"),
        refills=shown(estimate, "water.refills"),
        tank=inputs_of(estimate, "water.refills").get("tank.volume"),
        debris=shown(estimate, "debris.mass"),
        drains=number,
        drains_how=how,
        drain_columns=_columns(_boxes(estimate)),
    )


def _work(estimate: Estimate) -> tuple[list[dict[str, Any]], list[dict[str, Any]]]:
    """The operations at work in the job's order, and what is paid besides: travel and the like."""
    notes = {row["name"]: row["note"] for row in estimate.job.to_dict()["operations"]}
    rows = [
        {
            "name": name,
            "note": notes.get(name, ""),
            "quantity": worked(estimate, name),
            "minutes": _minutes(estimate, name),
            "water": _water(estimate, name),
        }
        for name in active_operations(estimate)
    ]
    return (
        [row for row in rows if row["name"] in notes],
        [row for row in rows if row["name"] not in notes],
    )


def _minutes(estimate: Estimate, operation: str) -> str:
    time = estimate.figure(f"operation[{operation}].time")
    return f"{time.to('minute').magnitude:,.0f} min"


def _water(estimate: Estimate, operation: str) -> str:
    key = f"operation[{operation}].water"
    return shown(estimate, key) if estimate._core.figure(key)[0] > 0 else ""


def _boxes(estimate: Estimate) -> int:
    """Drains to print boxes for: as many as there may be, and some spare."""
    counted = estimate._core.figure("drain_count")[0]
    highest = max([counted, *(row[2] for row in estimate._core.untold() if row[0] == "drains")])
    return min(math.ceil(highest) + _SPARE_DRAINS, _MOST_DRAINS)


def _columns(boxes: int) -> list[range]:
    """Numbers of the drains, in columns of like length."""
    height = math.ceil(boxes / _DRAIN_COLUMNS)
    return [range(n, min(n + height, boxes + 1)) for n in range(1, boxes + 1, height)]
