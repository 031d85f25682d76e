"""One structure's estimate on one page."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._job_facts import (
    a_year,
    asked_before,
    beside_the_price,
    devices,
    hours_by_crew,
    money_by_kind,
    past_closure,
    scope,
    stretches,
    unit_prices,
)
from scupper._paper import counted, measured, money, nice, render, short, words
from scupper._structure_facts import described

if TYPE_CHECKING:
    import pandas as pd

    from scupper.estimating import Estimate

Step = dict[str, Any]
Ranges = dict[str, dict[str, Any]]

#: A time on the clock below this is a rounding of zero [h].
_NO_TIME = 1e-6
_DEAREST = 5
#: Rows that one page holds beside everything else.
_MOST_COMPONENTS = 7
_MOST_OPERATIONS = 9
_MOST_QUANTITIES = 14
_MOST_NAMES = 2
_BY_CONDITION = ("drain_free_count", "drain_clogged_count", "drain_frozen_count")
#: Bookings of what is no part of a structure.
_BESIDES = ("traffic_control", "supply", "disposal", "visit")


def page(estimate: Estimate) -> str:
    """The page as HTML."""
    ranges = ranges_of(estimate)
    return render(
        "page.html",
        est=estimate,
        about=described(estimate.structure, estimate.job.units),
        heads=_heads(estimate, ranges),
        strip=_strip(ranges["cost.total"]),
        components=bars(dearest(estimate.cost.by("component"), _MOST_COMPONENTS)),
        operations=_operations(estimate),
        guesses=_guesses(estimate),
        quantities=_quantities(estimate),
        scope=scope(estimate),
        kinds=money_by_kind(estimate),
        unit_prices=unit_prices(estimate),
        stretches=stretches(estimate),
        users=past_closure(estimate),
        asked=asked_before(estimate),
        most_quantities=_MOST_QUANTITIES,
        hours=hours_by_crew(estimate),
        beside=beside_the_price(estimate),
        year=a_year(estimate),
        people=listed(crew(estimate)),
        pieces=listed(equipment(estimate)),
    )


def ranges_of(estimate: Estimate) -> Ranges:
    """P5, P50, P95 and value of the main figures, by key."""
    table: Any = estimate.ranges().to_dict("index")
    return dict(table)


def inputs_of(estimate: Estimate, key: str) -> dict[str, Step]:
    """The inputs that a figure rests on, by key."""
    steps: list[Step] = estimate.explain(key).to_dict()["steps"]
    return {step["key"]: step for step in steps if step["kind"] == "input"}


def crew(estimate: Estimate) -> dict[str, float]:
    """People at work, by crew."""
    return _numbered(inputs_of(estimate, "hours.labour"), "labour[", "].people")


def equipment(estimate: Estimate) -> dict[str, float]:
    """Pieces of equipment on site, by name."""
    return _numbered(inputs_of(estimate, "cost.equipment"), "equipment[", "].number")


def _numbered(inputs: dict[str, Step], before: str, after: str) -> dict[str, float]:
    return {
        key[len(before) : -len(after)]: step["value"]
        for key, step in inputs.items()
        if key.startswith(before) and key.endswith(after) and step["value"] > 0
    }


def listed(numbers: dict[str, float]) -> str:
    """As "4 × wash crew, 2 × flagger"."""
    return ", ".join(f"{counted(n)} × {words(name)}" for name, n in numbers.items())


def shown(estimate: Estimate, key: str) -> str:
    """A figure with its unit, in as many digits as people say."""
    return measured(*estimate._core.figure(key))


def active_operations(estimate: Estimate) -> list[str]:
    """The operations that take time here, in the order of the job; travel and the like last."""
    times = estimate.to_pandas().set_index("key")["value"]
    before, after = "operation[", "].time"
    return [
        key[len(before) : -len(after)]
        for key, hours in times.items()
        if isinstance(key, str) and key.startswith(before) and key.endswith(after)
        if hours > _NO_TIME
    ]


def drains(estimate: Estimate) -> tuple[str, str]:
    """How many drains, and how that is known."""
    number = shown(estimate, "drain_count")
    for label, low, high, *_ in estimate._core.untold():
        if label == "drains":
            return f"{low:,.0f}–{high:,.0f}", f"not counted; priced at {number}"
    return number, known(estimate, "drain_count")[0]


def _heads(estimate: Estimate, ranges: Ranges) -> list[dict[str, Any]]:
    """The figures at the top: what, figure, what goes with it."""

    def between(key: str) -> str:
        return f"{short(ranges[key]['P5'])}–{short(ranges[key]['P95'])}"

    tank = _size(estimate, "water.refills", "truck[", "].fill")
    payload = _size(estimate, "debris.loads", "haul[", "].payload")
    shift = _size(estimate, "shift.count", "shift.length", "")
    people = counted(sum(crew(estimate).values()))
    number, how = drains(estimate)
    markers, beside = devices(estimate)

    def head(what: str, figure: str, *notes: str) -> dict[str, Any]:
        return {"what": what, "figure": figure, "notes": notes}

    return [
        head("crew-shifts", shown(estimate, "shift.count"), between("shift.count"),
             f"{people} people", f"shift{shift}"),
        head("truckloads of water", shown(estimate, "water.refills"), between("water.refills"),
             *([f"tank{tank}"] if tank else [])),
        head("truckloads of debris", shown(estimate, "debris.loads"), between("debris.loads"),
             shown(estimate, "debris.mass"), *([f"load{payload}"] if payload else [])),
        head("water", shown(estimate, "water.volume"), between("water.volume")),
        head("drains", number, how),
        head("closure devices", markers, ", ".join(beside)),
        head("labour-hours", shown(estimate, "hours.labour").removesuffix(" labour-h"),
             between("hours.labour"),
             f"on site {shown(estimate, 'hours.on_site')}",
             f"paid {shown(estimate, 'hours.paid')} a person"),
    ]  # fmt: skip


def _size(estimate: Estimate, figure: str, before: str, after: str) -> str:
    """The size of a tank, truck or shift that a figure is divided by; none where there are many."""
    steps: list[Step] = estimate.explain(figure).to_dict()["steps"]
    sizes = [s for s in steps if s["key"].startswith(before) and s["key"].endswith(after)]
    return f" of {short(sizes[0]['value'])} {nice(sizes[0]['unit'])}" if len(sizes) == 1 else ""


def _strip(row: dict[str, Any]) -> dict[str, Any]:
    """Where P5, P50, P95 and the price stand on a line from 0, in per cent of its length."""
    end = float(row["P95"]) * 1.2 or 1.0
    places = {name: 100 * float(row[name]) / end for name in ("P5", "P50", "P95", "value")}
    return {"at": places, **{name: money(row[name]) for name in places}}


def dearest(amounts: pd.Series[float], most: int) -> pd.Series[float]:
    """The dearest of many amounts; what is left over stands in one row, so that nothing is lost."""
    if len(amounts) <= most + 1:
        return amounts
    import pandas as pd

    ordered = amounts.sort_values(ascending=False)
    rest = ordered.iloc[most:]
    return pd.concat([ordered.iloc[:most], pd.Series({f"{len(rest)} others": rest.sum()})])


def bars(amounts: pd.Series[float]) -> list[dict[str, Any]]:
    """Amounts with the length of their bar in per cent of the longest."""
    longest = max((float(a) for a in amounts), default=0.0) or 1.0
    return [
        {"name": str(name), "amount": float(amount), "width": 100 * max(float(amount), 0) / longest}
        for name, amount in amounts.items()
    ]


def _guesses(estimate: Estimate) -> list[dict[str, Any]]:
    """The dearest guesses; low and likely without the unit where high has the same."""
    table: Any = estimate.assumptions.head(_DEAREST).to_dict("records")
    rows: list[dict[str, Any]] = table
    for row in rows:
        unit = row["high"].partition(" ")[2]
        low, likely = (row[name].removesuffix(f" {unit}") for name in ("low", "likely"))
        row["span"] = nice(f"{low} – {likely} – {row['high']}")
    return rows


def _operations(estimate: Estimate) -> list[dict[str, Any]]:
    """The operations that cost money, the dearest first, with quantity and time."""
    at_work = active_operations(estimate)
    return [
        row
        | {
            "quantity": worked(estimate, row["name"]) if row["name"] in at_work else "",
            "time": shown(estimate, f"operation[{row['name']}].time")
            if row["name"] in at_work
            else "",
        }
        for row in bars(dearest(estimate.cost.by("operation"), _MOST_OPERATIONS))
    ]


def worked(estimate: Estimate, operation: str) -> str:
    """The quantity that an operation works, empty where it works none."""
    number, unit = estimate._core.figure(f"operation[{operation}].quantity")
    return measured(number, unit) if number > 0 else ""


def known(estimate: Estimate, key: str) -> tuple[str, str]:
    """How a figure is known: the least sure basis among its inputs, and the inputs that have it.

    One that rests on no input follows from the record alone.
    """
    order = _core.basis_names()
    inputs = inputs_of(estimate, key).values()
    found = [basis for basis in order if any(step["basis"] == basis for step in inputs)]
    if not found:
        return "recorded", ""
    names = list(dict.fromkeys(step["name"] for step in inputs if step["basis"] == found[-1]))
    more = f" and {len(names) - _MOST_NAMES} more" if len(names) > _MOST_NAMES + 1 else ""
    return found[-1], ", ".join(names[:_MOST_NAMES] if more else names) + more


def _quantities(estimate: Estimate) -> list[dict[str, Any]]:
    """What there is to clean, those that drive this job's work first."""
    return sorted(_quantity_rows(estimate), key=lambda row: not row["priced"])


def _quantity_rows(estimate: Estimate) -> Iterator[dict[str, Any]]:
    columns = [slot for slot, _ in _core.take_off_columns("si")]
    drivers = _drivers(estimate)
    labels = estimate.to_pandas().set_index("key")["label"]
    for slot in dict.fromkeys([*columns, *drivers]):
        key = f"takeoff[{slot}].quantity"
        number, unit = estimate._core.figure(key)
        if number > 0:
            basis, rests = known(estimate, key)
            yield {
                "label": labels[key],
                "figure": measured(number, unit),
                "basis": basis,
                "rests": rests,
                "priced": slot in drivers,
            }


def _drivers(estimate: Estimate) -> list[str]:
    """The quantities of the structure that drive an operation at work here, in the job's order.

    Drains stand in one row whatever their condition. What travel, closures, trips and turns are
    counted by is no part of the structure.
    """
    at_work = active_operations(estimate)
    rows = estimate.job.to_dict()["operations"]
    drivers = [r["driver"] for r in rows if r["name"] in at_work and r["component"] not in _BESIDES]
    drains_too = ["drain_count"] if any(d in _BY_CONDITION for d in drivers) else []
    others = [d for d in drivers if d not in _BY_CONDITION and not d.endswith("_pass_count")]
    return [*drains_too, *others]
