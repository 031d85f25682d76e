"""A priced proposal for a chosen list of structures."""

from __future__ import annotations

import os
import re
from collections.abc import Iterable, Sequence
from functools import cached_property
from typing import TYPE_CHECKING, Any

from scupper._bid_sheets import rounding
from scupper._files import write_whole
from scupper._paper import render, words
from scupper._price_facts import PriceFacts
from scupper.errors import InputError
from scupper.forms import job_schema
from scupper.inventory import Inventory, Selection
from scupper.pay_items import PayItems, pay_items
from scupper.programme import Programme, estimate_all

if TYPE_CHECKING:
    from scupper.job import Job

#: Guesses that stand among the terms of a proposal, and warnings of one kind that stand each alone.
_GUESSES = 5
#: A figure in a sentence, or two with a dash between.
_FIGURE = re.compile(r"\d[\d,]*(?:\.\d+)?(?:–\d[\d,]*(?:\.\d+)?)?")


class Proposal:
    """Prices of a list of structures: a lump price for each, and by quantity; scope, exclusions."""

    def __init__(
        self, programme: Programme, by_structure: PayItems, by_quantity: PayItems, missing: Any
    ) -> None:
        self.programme = programme
        self.by_structure = by_structure
        self.by_quantity = by_quantity
        self._missing: dict[str, Sequence[str]] = dict(missing)
        self._facts = PriceFacts(programme)

    @property
    def currency(self) -> str:
        """Three-letter code of every amount."""
        return self.programme.currency

    @property
    def total(self) -> Any:
        """What the lump prices come to, exact."""
        return self.by_structure.total

    @cached_property
    def scope(self) -> list[tuple[str, str]]:
        """What is offered on what terms, as (what, text)."""
        return self._facts.terms

    @cached_property
    def exclusions(self) -> list[str]:
        """What is not in the price: structures not found or not priced, components that are not
        cleaned. See `open_points` too."""
        lines = [_not_found(number, near) for number, near in self._missing.items()]
        unpriced: Any = self.programme.unpriced.to_dict("records")
        lines += [f"{row['structure_id']}: {row['reason']}" for row in unpriced]
        service = self.programme.job.to_dict()["service"]
        left = [words(part) for part in _parts() if service.get(part, "none") == "none"]
        lines += [f"not cleaned: {', '.join(left)}"] if left else []
        return lines

    @cached_property
    def open_points(self) -> list[str]:
        """Warnings of the estimates, each once, with where it holds: what was not counted, work
        that is refused, what lies around and is not priced. Many that differ in their figures alone
        are one, from the least figure to the greatest."""
        where: dict[str, list[str]] = {}
        alike: dict[str, list[str]] = {}
        for one in self.programme.estimates():
            for warning in one.warnings:
                where.setdefault(warning, []).append(one.structure.id)
                alike.setdefault(_FIGURE.sub("#", warning), []).append(warning)
        lines = []
        for texts in alike.values():
            distinct = list(dict.fromkeys(texts))
            if len(distinct) > _GUESSES:
                places = [place for text in distinct for place in where[text]]
                lines.append(f"{_spanning(distinct)} ({_places(places)})")
            else:
                lines += [f"{text} ({_places(where[text])})" for text in distinct]
        return lines

    @cached_property
    def assumptions(self) -> list[str]:
        """The dearest guesses that the price rests on, in words."""
        rows: Any = self.programme.guesses.head(_GUESSES).to_dict("records")
        return [
            f"{row['label']}, at {row['structures']} structures: moves the price by "
            f"{self.currency} {row['worth']:,.0f} between its limits"
            for row in rows
        ]

    @property
    def cautions(self) -> list[dict[str, Any]]:
        """What the crews must mind, each once: id, text, source, structures."""
        return self._facts.cautions

    def page(self) -> str:
        """The proposal as HTML that prints."""
        return render("proposal.html", proposal=self, items=self.by_structure,
                      rows=self.by_structure.to_pandas().to_dict("records"),
                      quantities=self.by_quantity.to_pandas().to_dict("records"),
                      rounding=rounding(self.by_quantity))  # fmt: skip

    def save(self, path: str | os.PathLike[str]) -> None:
        """Writes that page whole, or not at all; the items save themselves as workbooks."""
        write_whole(path, self.page())

    def __repr__(self) -> str:
        lines = [f"proposal for {self.programme.counts['priced']} structures",
                 f"total  {self.currency} {self.total:,}"]  # fmt: skip
        for title, points in (("not in the price", self.exclusions), ("open", self.open_points)):
            lines += [f"{title}:", *(f"  {point}" for point in points)] if points else []
        return "\n".join(lines)


def _parts() -> list[str]:
    """Components that a job may have cleaned."""
    indirect = ("traffic_control", "supply", "disposal", "visit", "indirect")
    known = job_schema()["properties"]["service"]["properties"]
    return [name for name in known if name not in indirect]


def _not_found(number: str, near: Sequence[str]) -> str:
    return f"{number}: not found" + (f"; near: {', '.join(near)}" if near else "")


def _spanning(texts: Sequence[str]) -> str:
    """Sentences of one wording as one: each figure from the least to the greatest."""
    columns = iter(list(zip(*map(_FIGURE.findall, texts), strict=True)))
    return _FIGURE.sub(lambda _: _span(next(columns)), texts[0])


def _span(figures: Sequence[str]) -> str:
    ends = sorted((end for figure in figures for end in figure.split("–")), key=_worth)
    dash = "–" if "–" in figures[0] else " to "
    return ends[0] if ends[0] == ends[-1] else f"{ends[0]}{dash}{ends[-1]}"


def _worth(figure: str) -> float:
    return float(figure.replace(",", ""))


def _places(ids: Sequence[str], shown: int = 4) -> str:
    more = len(ids) - shown
    return ", ".join(ids[:shown]) + (f" and {more} more" if more > 0 else "")


def proposal(
    inventory: Inventory,
    structures: Iterable[str] | None,
    job: Job,
    items: Any = None,
    *,
    mobilization: str | None = None,
    threads: int | None = None,
) -> Proposal:
    """A priced proposal for chosen structures.

    Parameters
    ----------
    inventory
        The records.
    structures
        Numbers of the structures; None for all of the inventory.
    job
        The job.
    items, mobilization
        As for `scupper.bids.pay_items`.
    threads
        How many; None for as many as the machine has.

    Returns
    -------
    Proposal
        ``.by_structure`` and ``.by_quantity`` (pay items), ``.scope``, ``.exclusions``,
        ``.open_points``, ``.assumptions``, ``.cautions``, ``.save(path)``.

    Raises
    ------
    InputError
        Where no structure has a price.
    """
    chosen = inventory if structures is None else inventory.select(list(structures))
    programme = estimate_all(chosen, job, threads)
    if not programme.counts["priced"]:
        raise InputError("bid.no_item", "structures", "no structure with a price", "at least one")
    lump, measured = (
        pay_items(programme, items, contract=contract, mobilization=mobilization, threads=threads)
        for contract in ("by_structure", "by_quantity")
    )
    missing = chosen.missing if isinstance(chosen, Selection) else {}
    return Proposal(programme, lump, measured, missing)
