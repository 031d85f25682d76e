"""What a price sheet of a whole contract says, gathered once for paper and workbook."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Any

from scupper._frames import frame
from scupper._job_facts import scope
from scupper._paper import words
from scupper._report import number

if TYPE_CHECKING:
    import pandas as pd

    from scupper.estimating import Estimate
    from scupper.programme import Programme

#: Parts of the price that stand apart, and what a price sheet calls them.
PARTS = {
    "cost.direct": "direct",
    "cost.mobilization": "mobilization",
    "cost.overhead": "overhead",
    "cost.profit": "profit",
    "cost.bond": "bond",
    "cost.contingency": "contingency",
}
#: Figures beside the money.
FIGURES = {"shift.count": "crew-shifts", "hours.labour": "labour-hours"}
#: Inputs that are terms of a contract.
_TERMS = ("margin.", "contract.", "shift.length", "traffic.queue_limit", "traffic.delay_limit")


class PriceFacts:
    """The price of a contract and what it rests on."""

    def __init__(self, programme: Programme) -> None:
        self.programme = programme
        self.guesses = programme.guesses
        self.shortfalls = programme.shortfalls

    @cached_property
    def _estimates(self) -> list[Estimate]:
        return list(self.programme.estimates())

    @cached_property
    def parts(self) -> dict[str, str]:
        """The parts of the price that are not zero everywhere: key and name."""
        totals = {key: self.programme.total_of(key)[0] for key in PARTS}
        return {key: PARTS[key] for key, total in totals.items() if total or key == "cost.direct"}

    @cached_property
    def rows(self) -> pd.DataFrame:
        """The priced structures in the order of the list: names, closure, figures by key."""
        from scupper._county_report import structures

        return structures(self.programme, [*FIGURES, *self.parts, "cost.total"]).sort_index()

    @cached_property
    def terms(self) -> list[tuple[str, str]]:
        """What is asked for and on what terms, as (what, text)."""
        job = self.programme.job
        document = job.to_dict()
        terms = [("scope", scope(self._estimates[0]))] if self._estimates else []
        terms += [(words(key), words(document[key])) for key in ("work_time", "sharing")]
        terms.append(("rates", "; ".join(job.rate_books) or "of the job itself"))
        return terms + [(row["label"], _amount(row)) for row in self._term_rows()]

    def _term_rows(self) -> list[dict[str, Any]]:
        keys = self.programme.job.keys()
        chosen = keys[keys["key"].str.startswith(_TERMS) & keys["likely"].gt(0)]
        rows: Any = chosen.to_dict("records")
        return list(rows)

    @cached_property
    def cautions(self) -> list[dict[str, Any]]:
        """The cautions of all structures, each once, with the number of structures it holds at."""
        found: dict[str, dict[str, Any]] = {}
        for one in self._estimates:
            for caution in one.cautions:
                found.setdefault(caution["id"], {**caution, "structures": 0})["structures"] += 1
        return sorted(found.values(), key=lambda row: -row["structures"])

    @cached_property
    def unit_costs(self) -> pd.DataFrame:
        """By component over all structures: quantity, unit, direct, distributed, margins, total."""
        import pandas as pd

        tables = [one.unit_costs for one in self._estimates]
        if not tables:
            return frame({}, ["quantity", "unit", "direct", "distributed", "margins", "total"])
        amounts = ["quantity", "direct", "distributed", "margins", "total"]
        rows = pd.concat(tables).groupby(level=0, sort=False)
        table = rows[amounts].sum()
        table.insert(1, "unit", rows["unit"].first())
        return pd.concat([table.drop("structure"), table.loc[["structure"]]])


def _amount(row: dict[str, Any]) -> str:
    """As "12 %", "10 h" or "850 USD/h"."""
    if row["key"].startswith("margin."):
        return f"{row['likely']:.1%}"
    unit = "" if row["unit"] in ("1", "each") else f" {row['unit']}"
    return f"{number(row['likely'])}{unit}"
