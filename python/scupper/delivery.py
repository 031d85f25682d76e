"""In-house or contract: both ways for a year, where the choice turns, how sure it is.

``decide`` holds own people against a contract; ``Decision.split`` says which structures to keep and
which to let. The rest answers questions about equipment that would have to be bought.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import single
from scupper._delivery_terms import STATUTORY, fields, follows
from scupper._equipment_choice import (
    annual_cost,
    available_time,
    discount_rate,
    discount_rates,
    economic_life,
    net_present_value,
)
from scupper._frames import frame
from scupper.deciding import Decision, decide
from scupper.splitting import Split
from scupper.units import in_pint

if TYPE_CHECKING:
    from collections.abc import Iterable

    import pandas as pd

    from scupper._core import Structure
    from scupper.inventory import Inventory
    from scupper.job import Job
    from scupper.units import Quantity

__all__ = [
    "STATUTORY",
    "Decision",
    "Split",
    "annual_cost",
    "available_time",
    "decide",
    "discount_rate",
    "discount_rates",
    "economic_life",
    "hours_by_crew",
    "net_present_value",
    "one_way_distance",
    "terms",
]


def terms() -> pd.DataFrame:
    """Every term that `decide` takes.

    Returns
    -------
    pandas.DataFrame
        By key: label, unit (SI), without (what counts where nobody states it), source.
    """
    rows = {key: row for key, row in fields().items() if not follows(key)}
    columns = {name: [row[name] for row in rows.values()]
               for name in ("label", "si_unit", "without", "source")}  # fmt: skip
    table = frame({"key": list(rows), **columns}).set_index("key")
    return table.rename(columns={"si_unit": "unit"})


def hours_by_crew(inventory: Inventory | Iterable[Structure], job: Job) -> pd.DataFrame:
    """The hours that a list takes of every crew: sums of the structures' hours tables.

    Returns
    -------
    pandas.DataFrame
        By crew: shifts, then hours of one person by what they go to, as `Estimate.hours_table`.
    """
    import pandas as pd

    from scupper.estimating import estimate
    from scupper.programme import estimate_all

    whole = estimate_all(inventory, job)
    priced = (whole.inventory[i] for i in whole._core.priced().tolist())
    tables = [estimate(structure, job).hours_table for structure in priced]
    return pd.concat(tables).drop(columns="people").groupby(level="crew", sort=False).sum()


def one_way_distance(travel: Any, speed: Any) -> Quantity:
    """How far the yard lies from the work, by the travel time there and back and a speed."""
    si = (single("travel", travel, "s", None), single("speed", speed, "m/s", None))
    return in_pint(_core.one_way_distance(*si), "m")
