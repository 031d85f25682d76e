"""The award sheet on paper."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Any

from scupper._award_facts import CAUTIONS, MEANINGS, AwardFacts, amount, counted
from scupper._bid_charts import svg
from scupper._paper import render

if TYPE_CHECKING:
    from scupper.bid_review import BidReview


def award_sheet(review: BidReview, **asked: Any) -> str:
    """The sheet as HTML."""
    from scupper import __version__
    from scupper.bid_review import words_of

    facts = AwardFacts(review, **asked)
    marks = {bidder: facts.marks(bidder) for bidder in review.bidders}
    charts = {
        f"Bids by group of items, {review.currency}": review.plot_groups(),
        "Along the items of the form": review.plot_cumulative(),
    }
    if facts.telling_item is not None:
        telling = f"Totals over the quantity of {facts.telling_item}"
        charts[telling] = review.plot_crossover(facts.telling_item)
    return render(
        "award.html",
        version=__version__,
        date=date.today().isoformat(),
        facts=facts,
        review=review,
        rule=words_of(review.governs),
        amount=amount,
        counted=counted,
        marks=marks,
        prices=review.table("price"),
        items=review.items.reset_index().to_dict("records"),
        findings=review.findings.to_dict("records"),
        flags=facts.flags.to_dict("records"),
        meanings=MEANINGS,
        stages=_stages(review),
        charts={title: svg(chart) for title, chart in charts.items()},
        cautions=CAUTIONS,
    )


def _stages(review: BidReview) -> list[tuple[str, list[tuple[str, int]]]]:
    """Totals and ranks by stage; nothing where the form has base items only."""
    rows = [
        (str(stage), list(zip(table["total"].map(amount), table["rank"], strict=True)))
        for stage, table in review.stages.groupby("stage", sort=False)
    ]
    return rows if len(rows) > 1 else []
