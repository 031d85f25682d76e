"""A decision on paper."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper._charts import advantage_svg
from scupper._decision_facts import shown, turning
from scupper._paper import render

if TYPE_CHECKING:
    from scupper.deciding import Decision
    from scupper.splitting import Split

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
        sides=_sides(decision),
        chance={name: (row["value"], row["standard_error"]) for name, row in chance.iterrows()},
        chart=advantage_svg(decision.advantages, decision.currency),
        turning=turning(decision),
        break_even=_break_even(decision),
        split=split,
        counts=_counts(split),
        cautions=decision.cautions,
        stamp=decision.stamp,
    )


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


def _counts(split: Split | None) -> list[tuple[str, int]]:
    if split is None:
        return []
    return [(str(way), int(n)) for way, n in split.table["way"].value_counts().items()]
