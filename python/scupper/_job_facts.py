"""What a job asks for, and the closure its work needs, in a few words."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._paper import measured, money, words
from scupper.closure import Plan
from scupper.errors import InputError

if TYPE_CHECKING:
    from scupper.estimating import Estimate

_WASH_WATER = {
    "release": "wash water released as permitted",
    "collect": "all wash water collected",
    "none": "no water: dry removal alone",
}
#: Components that owners ask a unit price of.
_UNIT_PRICED = ("deck_top", "joint", "drain", "girder", "bearing")
#: Sums of other figures.
_SUMS = ("cost.direct", "cost.total")


#: Hours below this would print as zero.
_LEAST_TIME = 0.05


def asked_before(estimate: Estimate) -> str:
    """What is asked for days before the work, and the days that leaves; empty without a notice."""
    schedule = estimate.schedule()
    rows = schedule.notices.to_dict("records")
    asked = "; ".join(
        f"{words(row['notice'])} {row['days_shortest']}–{row['days_usual']}–{row['days_longest']}"
        for row in rows
    )
    notices = f"To ask for, days before the work: {asked}." if asked else ""
    days = schedule.work_days
    if not days:
        return notices
    first = f"The calendar allows work from {days[0]}, the last shift on {days[-1]}."
    return f"{notices} {first}".strip()


def scope(estimate: Estimate) -> str:
    """As "rinse of deck top, gutter; full clean of joint; wash water released as permitted"."""
    job = estimate.job.to_dict()
    by_level: dict[str, list[str]] = {}
    for component, level in job["service"].items():
        if level != "none":
            by_level.setdefault(level, []).append(words(component))
    parts = [f"{words(level)} of {', '.join(names)}" for level, names in by_level.items()]
    ways = [f"{words(component)} by {words(way)}" for component, way in job["ways"].items()]
    return "; ".join([*parts, *([", ".join(ways)] if ways else []), _WASH_WATER[job["wash_water"]]])


def money_by_kind(estimate: Estimate) -> str:
    """As "labour 2,913 · equipment 871": what adds up to the total."""
    rows = estimate.to_pandas()
    rows = rows[rows["key"].str.startswith("cost.") & ~rows["key"].isin(_SUMS)]
    kinds = zip(rows["label"], rows["value"], strict=True)
    return " · ".join(f"{kind.removesuffix(' cost')} {money(n)}" for kind, n in kinds if n)


def unit_prices(estimate: Estimate) -> str:
    """As "drain 92.4 USD/each · whole 1.34 USD/ft² of deck": all in, indirect cost shared out."""
    table = estimate.unit_costs.dropna(subset=["per_unit"])
    chosen = table[table.index.isin([*_UNIT_PRICED, "structure"])]
    texts = [
        f"{'whole' if name == 'structure' else words(str(name))} {measured(price, unit)}"
        for name, price, unit in zip(
            chosen.index, chosen["per_unit"], chosen["price_unit"], strict=True
        )
    ]
    return " · ".join(texts) + (" of deck" if "structure" in chosen.index else "")


def devices(estimate: Estimate) -> tuple[str, list[str]]:
    """How many channelizing devices the closure takes, and what else stands on the road."""
    plan, why = _plan(estimate)
    if plan is None:
        return ("none" if estimate.closure == "none" else "not laid out"), [why]
    others = {
        "advance sign": plan.advance_signs,
        "arrow board": plan.arrow_boards,
        "shadow vehicle": plan.shadow_vehicles,
        "flagger": plan.flaggers,
    }
    notes = [f"{n} {what}{'s' if n > 1 else ''}" for what, n in others.items() if n]
    return f"{plan.devices:,}", notes


def stretches(estimate: Estimate) -> list[str]:
    """The closure's stretches as a driver meets them, as "buffer 305 ft, 5 devices"."""
    plan, _ = _plan(estimate)
    if plan is None:
        return []
    unit = _core.shown_unit("m", estimate.job.units)
    rows: Any = plan.elements.to_dict("records")
    return [
        f"{words(row['name'])} {row['length'].to(unit).magnitude:,.0f} {unit}"
        + (f", {row['devices']} devices" if row["devices"] else "")
        for row in rows
    ]


def hours_by_crew(estimate: Estimate) -> list[str]:
    """Where the hours of one person go, as "productive 3.2 + travel 1.0 = paid 8.0 h", by crew."""
    table = estimate.hours_table
    parts = ["productive", "breaks", "waiting", "travel", "briefing", "closure", "meal", "standby"]
    lines = []
    for name, row in table.iterrows():
        who = "" if len(table) == 1 else f"{words(str(name))}: "
        there = " + ".join(f"{part} {row[part]:.1f}" for part in parts if row[part] >= _LEAST_TIME)
        meal = f", unpaid meal {row['unpaid_meal']:.1f}" if row["unpaid_meal"] > 0 else ""
        beside = f", show-up {row['show_up']:.1f} expected besides" if row["show_up"] > 0 else ""
        overtime = f", {row['overtime']:.1f} of it overtime" if row["overtime"] > 0 else ""
        lines.append(
            f"{who}{there} = paid {row['paid']:.1f} h{overtime}{meal}; elapsed "
            f"{row['elapsed']:.1f} h{beside}"
        )
    return lines


def a_year(estimate: Estimate) -> str:
    """What a year takes where the job says how often; empty where it does not."""
    if not estimate.job._core.frequency:
        return ""
    totals, currency = estimate.annual, estimate.currency
    return (
        f"A year, by how often each component is cleaned: {currency} "
        f"{money(totals[f'cost_total_{currency.lower()}'])}, "
        f"{totals['labour_h']:,.1f} labour-hours, {totals['shifts']:,.2f} crew-shifts."
    )


def beside_the_price(estimate: Estimate) -> str:
    """What the contract's terms hold back; empty where they hold nothing."""
    flow = estimate.cash_flow
    if not flow.table["kept"].any():
        return ""
    most = flow.table["outstanding"].max() or flow.table["kept"].sum()
    return (
        f"Retainage, beside the price: {flow.currency} {money(most)} held back at most, "
        f"{len(flow.table)} periods of payment; the wait costs {flow.currency} "
        f"{money(flow.held_cost)}."
    )


def past_closure(estimate: Estimate) -> str:
    """What the closure does to traffic, beside the price; empty where nobody is held up."""
    users = estimate.road_users
    if not users.known or not (users.total > 0):
        return ""
    delay = (users.queue_delay + users.slow_delay).to("count*hour").magnitude
    queue = users.queue.longest.magnitude
    waits = f"a queue of {queue:,.0f} vehicles at most" if queue >= 1 else "no queue"
    return (
        f"Road users, beside the price: {users.currency} {money(users.total)} "
        f"({delay:,.0f} vehicle-hours a closure, {waits})."
    )


def _plan(estimate: Estimate) -> tuple[Plan | None, str]:
    """The closure laid out, or why there is no lay-out."""
    if estimate.closure == "none":
        return None, "no closure"
    try:
        return estimate.closure_plan, ""
    except InputError as error:  # the road leaves no room: the estimate stands, the lay-out waits
        return None, error.found
