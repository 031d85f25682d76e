"""The price of a contract on paper: by structure with totals, terms, guesses, cautions."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper._paper import render
from scupper._price_facts import FIGURES, PriceFacts
from scupper.results import safe_cells

if TYPE_CHECKING:
    from scupper.programme import Programme

_DEAREST = 5
_SHORT = 3


def price_sheet(programme: Programme) -> str:
    """The sheet as HTML."""
    facts = PriceFacts(programme)
    ranges: Any = programme.ranges(quantiles=[0.05, 0.5, 0.8, 0.95]).to_dict("index")
    short = facts.shortfalls
    return render(
        "price_sheet.html",
        programme=programme,
        cost=ranges["cost.total"],
        figures=FIGURES,
        parts_of_price=facts.parts,
        totals={key: programme.total_of(key)[0] for key in (*FIGURES, *facts.parts)},
        rows=safe_cells(facts.rows).to_dict("records"),
        terms=facts.terms,
        guesses=facts.guesses.head(_DEAREST).to_dict("records"),
        short=short.head(_SHORT).to_dict("records"),
        short_more=max(len(short) - _SHORT, 0),
        cautions=facts.cautions,
        unpriced=safe_cells(programme.unpriced).to_dict("records"),
    )
