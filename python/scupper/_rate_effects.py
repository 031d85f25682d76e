"""What the change from one rate book to another does to a price."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING, Any

from scupper._core import Structure
from scupper.estimating import estimate
from scupper.inventory import Inventory
from scupper.job import Job
from scupper.programme import estimate_all

if TYPE_CHECKING:
    import pandas as pd

    from scupper.rates import RateBook


def priced(
    table: pd.DataFrame,
    a: RateBook,
    b: RateBook,
    structures: Structure | Inventory | Iterable[Structure],
    job: Job | None,
) -> pd.DataFrame:
    """The table of changes with the effect of each alone, and a last row for all of them."""
    import pandas as pd

    total = _totals(structures)
    under_a = (job or Job.demo()).with_rates(a)
    under_b = under_a.with_rates(b)
    before, after = total(under_a), total(under_b)
    here = set(under_a.keys()["key"])
    settings = b.to_dict("si")["inputs"]
    effects = [
        total(under_a.replace({key: settings[key]})) - before
        if key in settings and key in here
        else float("nan")
        for key in table.index
    ]
    table = table.assign(effect=effects)
    ordered = table.reindex(table["effect"].abs().sort_values(ascending=False, kind="stable").index)
    last = {"label": "total", "unit": under_a.currency, "a": before, "b": after,
            "change": after - before, "effect": after - before}  # fmt: skip
    return pd.concat([ordered, pd.DataFrame([last], index=["total"])])


def _totals(structures: Any) -> Callable[[Job], float]:
    """The total cost of what there is to price, under a job."""
    if isinstance(structures, Structure):
        return lambda job: float(estimate(structures, job).cost.total)
    listed = structures if isinstance(structures, Inventory) else list(structures)
    return lambda job: float(estimate_all(listed, job).total)
