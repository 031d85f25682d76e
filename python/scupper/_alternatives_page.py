"""Alternatives as text and on paper."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from scupper._paper import money, nice, render, short, words
from scupper._structure_facts import described

if TYPE_CHECKING:
    from scupper.choosing import Alternatives

Row = dict[str, Any]

#: What each question asks.
QUESTIONS = {
    "deck": "By which way is the deck cleaned?",
    "underside": "From where is the underside reached?",
    "closure": "How is the road closed?",
}
#: Criteria as columns: the stem of their name and what people call them.
_COLUMNS = {
    "cost": "cost",
    "labour": "labour",
    "elapsed": "on site",
    "shifts": "shifts",
    "water": "water",
    "closure": "closed",
    "dirt_left": "dirt left",
    "road_users": "road users",
    "score": "score",
}


def weights_text(alternatives: Alternatives) -> str:
    """As "cost 50 %, closure 25 %, dirt left 25 %"."""
    total = sum(alternatives.weights.values()) or 1.0
    counting = {name: w for name, w in alternatives.weights.items() if w > 0}
    by_weight = sorted(counting.items(), key=lambda item: -item[1])
    return ", ".join(f"{words(name)} {100 * w / total:.0f} %" for name, w in by_weight)


def questions(alternatives: Alternatives) -> Iterator[Row]:
    """Structure by structure and question by question: the rows as people read them."""
    table = alternatives.table
    columns = {stem: alternatives.columns[stem] for stem in _COLUMNS}
    heads = [{"what": what, "unit": nice(columns[stem][1])} for stem, what in _COLUMNS.items()]
    for structure in alternatives.structures:
        of_structure = table[table["structure_id"] == structure.id]
        for question, asked in QUESTIONS.items():
            rows: Any = of_structure[of_structure["question"] == question].to_dict("records")
            yield {
                "structure": structure,
                "question": question,
                "asked": asked,
                "heads": heads,
                "in_scope": any(row["in_scope"] for row in rows),
                "rows": [_shown(row, columns) for row in rows],
            }


def _shown(row: Row, columns: dict[str, tuple[str, str]]) -> Row:
    """One row: figures as text, what speaks against it, what to look at."""
    figures = [_figure(row, stem, column) for stem, (column, _) in columns.items()]
    return {
        "name": words(row["alternative"]),
        "mark": _mark(row),
        "current": row["current"],
        "feasible": row["feasible"],
        "figures": figures,
        "against": list(row["reasons"]),
        "doubts": list(row["doubts"]),
        "no_price": row["no_price"],
        "not_figured": list(row["not_figured"]),
        "why": row["why"],
        "note": row["note"],
        "source": row["source"],
    }


def _mark(row: Row) -> str:
    if row["recommended"]:
        return "recommended"
    return "" if row["feasible"] else "cannot be done"


def _figure(row: Row, stem: str, column: str) -> str:
    value = row[column]
    if value != value:  # no price, or nothing to compare by
        return "–"
    if stem in ("cost", "road_users"):
        return money(value)
    if stem == "dirt_left":
        low, high = row["dirt_left_low"], row["dirt_left_high"]
        return f"{100 * value:.0f} % ({100 * low:.0f}–{100 * high:.0f})"
    return f"{value:.2f}" if stem in ("score", "shifts") else short(value)


def _remarks(row: Row) -> Iterator[tuple[str, str]]:
    if row["why"]:
        yield "recommended", row["why"]
    for text in row["against"]:
        yield "cannot be done", text
    if row["no_price"]:
        yield "no price", row["no_price"]
    for text in row["doubts"]:
        yield "mind", text
    for text in row["not_figured"]:
        yield "road users", text


def table_text(alternatives: Alternatives) -> str:
    """Every question as aligned text; beneath each row what speaks for, against, and to be seen."""
    lines = [f"weights: {weights_text(alternatives)}"]
    for part in questions(alternatives):
        structure = part["structure"]
        lines += ["", f"{structure.key}: {part['asked']}"]
        if not part["in_scope"]:
            lines.append("  not in the job's scope; what it would take is shown")
        heads = [" ".join(filter(None, (h["what"], h["unit"]))) for h in part["heads"]]
        cells = [["", *heads]] + [[_title(row), *row["figures"]] for row in part["rows"]]
        widths = [max(len(row[i]) for row in cells) for i in range(len(cells[0]))]
        lines.append(_aligned(cells[0], widths))
        for row, cell in zip(part["rows"], cells[1:], strict=True):
            lines.append(_aligned(cell, widths))
            lines += [f"      {what}: {text}" for what, text in _remarks(row)]
    return "\n".join(lines)


def _title(row: Row) -> str:
    mark = "*" if row["mark"] == "recommended" else " " if row["feasible"] else "x"
    return f"{mark} {row['name']}{' (as now)' if row['current'] else ''}"


def _aligned(cells: list[str], widths: list[int]) -> str:
    first = f"{cells[0]:{widths[0]}}"
    rest = [f"{cell:>{width}}" for cell, width in zip(cells[1:], widths[1:], strict=True)]
    return "  ".join([first, *rest]).rstrip()


def page(alternatives: Alternatives, whole: bool = True) -> str:
    """Every question as HTML, whole or as a part of a notebook."""
    parts = list(questions(alternatives))
    for part in parts:
        part["about"] = described(part["structure"], alternatives.job.units)
        for row in part["rows"]:
            row["remarks"] = list(_remarks(row))
    return render(
        "alternatives.html" if whole else "_alternatives.html",
        parts=parts,
        weights=weights_text(alternatives),
        currency=alternatives.job.currency,
        job=alternatives.job,
        stamp=alternatives.stamp,
    )
