"""A decision on paper."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper._charts import advantage_svg
from scupper._decision_facts import brief, invented, possible, shown, turning
from scupper._paper import money, render
from scupper._split_facts import OVER, capacity_rows

if TYPE_CHECKING:
    from scupper.deciding import Decision
    from scupper.splitting import Split

#: Of one way, as many as a page has room for.
MOST_LISTED = 120
_SIDES = {
    "avoidable": "In-house, avoidable",
    "overhead": "In-house, there either way",
    "contract": "By contract",
    "differential": "Besides",
}


def page(decision: Decision, split: Split | None) -> str:
    """The page as HTML; without colour nothing is lost."""
    chance = decision.chance
    return render(
        "decision.html",
        decision=decision,
        structures=f"{decision.structures:,}",
        sides=_sides(decision),
        chance={name: (row["value"], row["standard_error"]) for name, row in chance.iterrows()},
        cheaper=_per_cent(float(chance["value"]["cheaper"])),
        chart=advantage_svg(decision.advantages, decision.currency),
        turning=turning(decision, but=decision.break_even.index),
        break_even=_break_even(decision),
        brief=brief(decision, split),
        possible=possible(decision, split),
        invented=list(invented(decision)),
        split=split,
        capacity=[] if split is None else capacity_rows(split),
        law=[] if split is None or split.over == "nothing" else _law(split),
        over=OVER.get(split.over, "") if split else "",
        out=[] if split is None else split.out.reset_index().to_dict("records"),
        going=[] if split is None else _going(split),
        cautions=[text for text in decision.cautions if text not in list(invented(decision))],
        stamp=decision.stamp,
    )


def _per_cent(chance: float) -> str:
    """A chance that draws never settle to the last."""
    if chance > 0.999:
        return "over 99.9 %"
    return "under 0.1 %" if chance < 0.001 else f"{100 * chance:.1f} %"


def _sides(decision: Decision) -> list[dict[str, Any]]:
    """Lines by what they count in, those of nothing left out, with their sum."""
    table = decision.to_pandas()
    sides = []
    for side, title in _SIDES.items():
        rows = table[(table["side"] == side) & (table["amount"] != 0)]
        if len(rows):
            records = rows.to_dict("records")
            sides.append({"title": title, "rows": records, "sum": float(rows["amount"].sum())})
    return sides


def _break_even(decision: Decision) -> list[dict[str, str]]:
    rows = []
    for _, row in decision.break_even.iterrows():
        unit = str(row["unit"])
        at = ", ".join(shown(value, unit) for value in row["at"])
        rows.append({
            "label": str(row["label"]), "now": shown(row["now"], unit),
            "at": f"{at}; above, {row['above']}" if at else
                  f"nowhere from {shown(row['low'], unit)} to {shown(row['high'], unit)}",
        })  # fmt: skip
    return rows


def _law(split: Split) -> list[tuple[str, str, str]]:
    """The split without and with what law asks, row by row."""
    rows = {
        "structures in-house": "in_house",
        "structures that go out": "out",
        "contracts": "contracts",
        "cost": "cost",
        "saving against the cheaper single way": "saving",
        "to be saved by law, in no cost": "saving_asked",
    }
    table = split.law
    without, with_it = dict(table["without"]), dict(table["with"])
    return [(label, money(without[row]), money(with_it[row])) for label, row in rows.items()]


def _going(split: Split) -> list[tuple[str, int, str]]:
    """Ways with how many structures, and which they are where these can be listed."""
    rows = []
    for way, number in split.counts.items():
        listed = split.table.loc[split.table["way"] == way, "structure_id"]
        text = ", ".join(map(str, listed)) if number <= MOST_LISTED else "listed in the workbook"
        rows.append((way, number, text))
    return rows
