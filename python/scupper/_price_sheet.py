"""The price of a contract on paper: by structure with totals, terms, guesses, cautions."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper._paper import render
from scupper._price_facts import FIGURES, PriceFacts

if TYPE_CHECKING:
    from scupper.programme import Programme

_DEAREST = 5
_SHORT = 3


def price_sheet(programme: Programme) -> str:
    """The sheet as HTML."""
    facts = PriceFacts(programme)
    short = facts.shortfalls
    return render(
        "price_sheet.html",
        programme=programme,
        chances=_chances(programme),
        figures=FIGURES,
        parts_of_price=facts.parts,
        totals={key: programme.total_of(key)[0] for key in (*FIGURES, *facts.parts)},
        rows=facts.rows.to_dict("records"),
        terms=facts.terms,
        guesses=facts.guesses.head(_DEAREST).to_dict("records"),
        short=short.head(_SHORT).to_dict("records"),
        short_more=max(len(short) - _SHORT, 0),
        cautions=facts.cautions,
        unpriced=programme.unpriced.to_dict("records"),
    )


def _chances(programme: Programme) -> Any:
    """Quantiles of the price before any contingency, which is there to cover them."""
    from scupper.programme import estimate_all

    bare = programme.job.replace({"margin.contingency": 0.0})
    before = estimate_all(programme.inventory, bare)
    return before.ranges(quantiles=[0.05, 0.5, 0.8, 0.95]).loc["cost.total"].to_dict()
