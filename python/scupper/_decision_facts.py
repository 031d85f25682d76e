"""What a decision says in words: the recommendation, what would turn it, what to mind."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from scupper import _report
from scupper._delivery_terms import fields
from scupper._paper import counted, nice

if TYPE_CHECKING:
    from scupper.deciding import Decision

#: Below this chance the draws do not settle which way is cheaper.
SETTLED = 0.8
#: Below this share of the variance the parts by number and by area say little of a structure.
FITS = 0.5
#: Terms without which a comparison leaves out what usually costs something.
_USUAL = (
    "in_house.ownership", "in_house.supervision", "in_house.overhead", "in_house.facilities",
    "contract.preparation", "contract.administration", "contract.inspection",
)  # fmt: skip


def way(decision: Decision) -> str:
    """The recommended way."""
    return "own people" if decision.own_people else "a contract"


def sure(decision: Decision) -> float:
    """The chance that the recommended way is the cheaper one."""
    cheaper = float(decision.chance["value"]["cheaper"])
    return cheaper if decision.own_people else 1 - cheaper


def recommendation(decision: Decision) -> str:
    """One sentence."""
    if round(abs(decision.advantage)) == 0:
        return f"Neither way is cheaper at {decision.basis} cost: both cost the same."
    money = f"{decision.currency} {abs(decision.advantage):,.0f}"
    verb = "Keep the work in-house" if decision.own_people else "Let the work by contract"
    chance = sure(decision)
    word = "" if chance >= SETTLED else "; the draws do not settle it"
    share = f"{100 * chance:.0f} %" if chance < 0.995 else "more than 99 %"
    return (
        f"{verb}: {way(decision)} cost {money} less a year at {decision.basis} cost, "
        f"with a chance of {share} to be the cheaper way{word}."
    )


def shown(value: float, unit: str) -> str:
    """A value of an input for people; shares as per cent."""
    if unit == "1":
        return f"{100 * value:.3g} %"
    return f"{counted(value)} {nice(unit)}".rstrip()


def turning(decision: Decision, most: int = 8) -> list[dict[str, str]]:
    """The nearest values at which the choice turns: label, now, at, whether within its range."""
    rows = []
    for _, row in decision.flips.head(most).iterrows():
        unit = str(row["unit"])
        rows.append({
            "label": str(row["label"]), "now": shown(row["value"], unit),
            "at": shown(row["flips_at"], unit),
            "within": "within its range" if row["turns"] else "",
        })  # fmt: skip
    return rows


def summary(decision: Decision) -> _report.Lines:
    """Lines of text: both ways, the chance, the nearest turn."""
    money = decision.currency
    low, _, high = decision.range
    lines = [
        ("recommended", recommendation(decision)),
        ("in-house, avoidable", f"{money} {decision.avoidable:,.0f}"),
        ("in-house, full", f"{money} {decision.full:,.0f}"),
        ("by contract", f"{money} {decision.contract:,.0f}"),
        ("advantage of own people", f"{money} {decision.advantage:,.0f} "
                                    f"(P5–P95 {low:,.0f} to {high:,.0f})"),
    ]  # fmt: skip
    lines += [("turns at", f"{row['label']}: {row['at']} (now {row['now']})")
              for row in turning(decision, 2)]  # fmt: skip
    return [*lines, *(("mind", text) for text in decision.cautions)]


def cautions(decision: Decision) -> list[str]:
    """What to mind, the gravest first."""
    return [*_of_choice(decision), *_of_inputs(decision)]


def _of_choice(decision: Decision) -> Iterator[str]:
    if sure(decision) < SETTLED:
        worth = float(decision.chance["value"]["information"])
        yield (
            f"The chance is below {100 * SETTLED:.0f} %: knowing more before choosing is worth up "
            f"to {decision.currency} {worth:,.0f} a year."
        )
    other = "full" if decision.basis == "avoidable" else "avoidable"
    there = float(decision._sums[f"advantage_{other}"])
    if (there > 0) != decision.own_people:
        yield (
            f"At {other} cost it is the other way round: {decision.currency} {abs(there):,.0f} a "
            "year. Avoidable cost is right for one year, full cost for a choice for good."
        )
    if decision.differential:
        yield (
            f"A contract is held to save {decision.currency} {decision.differential:,.0f} a year "
            "besides, by 10 U.S.C. 2461: whether that law binds this owner is for counsel."
        )
    displaced = float(decision.to_pandas().set_index("line")["amount"]["displaced"])
    if displaced > 0:
        yield "Crew time is short: other work waits, and its worth is in the in-house cost."


def _of_inputs(decision: Decision) -> Iterator[str]:
    missing = [fields()[key]["label"] for key in _USUAL if key not in decision._terms.given]
    if missing:
        yield f"Nothing was stated for: {', '.join(missing)}. These count nothing."
    fits = decision._ways.fits()
    loose = [name.replace("_", " ") for name, share in fits.items() if share < FITS]
    if loose:
        yield (
            "Number and area explain less than half of what structures differ by "
            f"({', '.join(loose)}): break-even values of number and area are rough."
        )
    lost = decision.unpriced[["state", "structure_id"]].drop_duplicates()
    if len(lost):
        yield f"Structures without a price under one job or both, in no figure: {len(lost)}."
    yield (
        "Inputs of the same key, wages among them, are drawn alike for both ways; a contractor's "
        "own pace and prices may differ from what the contract job says. Prices are not bids."
    )
