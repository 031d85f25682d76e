"""What a decision says in words: the recommendation, what would turn it, what to mind."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from typing import TYPE_CHECKING

from scupper import _report
from scupper._delivery_terms import fields
from scupper._paper import counted, nice
from scupper._paper import invented as made_up

if TYPE_CHECKING:
    from scupper.deciding import Decision
    from scupper.splitting import Split

#: Not to be torn from its number at the end of a line.
PER_CENT = "\N{NO-BREAK SPACE}%"
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
    own = "Keep the work in-house: own people cost"
    verb = own if decision.own_people else "Let the work by contract: a contract costs"
    chance = sure(decision)
    word = "" if chance >= SETTLED else "; the draws do not settle it"
    return (
        f"{verb} {money} less a year at {decision.basis} cost, "
        f"with a chance of {_share(chance)} to be the cheaper way{word}."
    )


def shown(value: float, unit: str) -> str:
    """A value of an input for people; shares as per cent."""
    if unit == "1":
        return f"{100 * value:.3g}{PER_CENT}"
    number = f"{value:.3g}" if abs(value) < 10 else counted(value)
    return f"{number} {nice(unit)}".rstrip()


def turning(decision: Decision, most: int = 8, but: Collection[str] = ()) -> list[dict[str, str]]:
    """The nearest values at which the choice turns: label, now, at, whether within its range."""
    rows = []
    flips = decision.flips[~decision.flips.index.isin(but)]
    stated = dict(decision.sensitivity["given"])
    for key, row in flips.head(most).iterrows():
        near = "within the range stated" if stated[key] else "within 20 % of it"
        unit = str(row["unit"])
        rows.append({
            "label": str(row["label"]), "now": shown(row["value"], unit),
            "at": shown(row["flips_at"], unit),
            "within": near if row["turns"] else "",
        })  # fmt: skip
    return rows


def brief(decision: Decision, split: Split | None) -> _report.Lines:
    """What a reader asks first: by how much, how sure, what would change it, capacity."""
    money = decision.currency
    low, _, high = decision.range
    chance = decision.chance
    regret = float(chance["value"]["regret_in_house" if decision.own_people else "regret_contract"])
    turns = [
        f"{row['label']} at {row['at']} (now {row['now']}{', ' if row['within'] else ''}"
        f"{row['within']})"
        for row in turning(decision, 3)
    ]
    lines = [
        ("By how much", f"{way(decision)}: {money} {abs(decision.advantage):,.0f} less a year; the "
                        f"advantage of own people is {low:,.0f} to {high:,.0f} (P5 to P95)"),
        ("How sure", f"a chance of {_share(sure(decision))} that it is the cheaper way; against "
                     f"knowing beforehand it costs {money} {regret:,.0f} a year on average"),
        ("What would change it", "; ".join(turns) if turns else "no single input within its reach"),
        ("Capacity", _capacity(decision, split)),
    ]  # fmt: skip
    if decision.differential:
        without = f"{decision.advantage - decision.differential:,.0f}"
        asked = f"a contract has to save {money} {decision.differential:,.0f} a year"
        text = f"{asked}; without that the advantage of own people is {money} {without}"
        lines.append(("Least saving by law", text))
    return lines


def _share(chance: float) -> str:
    return f"{100 * chance:.0f}{PER_CENT}" if chance < 0.995 else f"more than 99{PER_CENT}"


def _capacity(decision: Decision, split: Split | None) -> str:
    """The hours that all of it takes, and whether they are there."""
    if split is None:
        return (
            f"all in-house takes {decision.crew_hours:,.0f} paid crew hours a year; nobody stated "
            "how many there are"
        )
    if split.fits_in_house:
        return "the hours stated are enough to do all of it in-house"
    short = split.capacity[split.capacity["all_in_house"] > split.capacity["available"]]
    hours = [
        f"{row['all_in_house']:,.0f} hours of the {str(name).replace('_', ' ')} where there are "
        f"{row['available']:,.0f}"
        for name, row in short.iterrows()
    ]
    return f"all in-house takes {', '.join(hours) or 'what has no price in-house'}"


def possible(decision: Decision, split: Split | None) -> str:
    """What of a recommendation the hours allow; empty where nothing is in its way."""
    if split is None or split.fits_in_house or not decision.own_people:
        return ""
    return f"There are not hours enough for all of it. Least cost within them: {split.verdict}"


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
    return [*invented(decision), *_of_choice(decision), *_of_inputs(decision)]


def invented(decision: Decision) -> Iterator[str]:
    """Whether the jobs rest on values that somebody made up."""
    counts = [made_up(job) for job in decision.jobs]
    if any(counts):
        yield (
            f"Invented data: {counts[0]} values of the in-house job and {counts[1]} of the "
            "contract job are made up for an example. Nothing is to be decided by them."
        )


def _of_choice(decision: Decision) -> Iterator[str]:
    if sure(decision) < SETTLED:
        worth = float(decision.chance["value"]["information"])
        yield (
            f"The chance is below {100 * SETTLED:.0f}{PER_CENT}: knowing more before choosing is "
            f"worth up to {decision.currency} {worth:,.0f} a year."
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
