"""A list priced under two jobs: what every structure costs and takes, either way."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._progress import Progress
from scupper.errors import InputError, MoneyError
from scupper.inventory import Inventory, gathered
from scupper.programme import Programme, estimate_all, identities

if TYPE_CHECKING:
    import numpy as np
    import pandas as pd

    from scupper.job import Job

    Numbers = np.ndarray[Any, np.dtype[np.float64]]

_AREA, _TOTAL, _WAGES, _TIME = (
    "takeoff[wash_area_total].quantity", "cost.total", "cost.labour", "hours.paid"
)  # fmt: skip


@dataclass
class PricedWays:
    """Columns in SI by position in the inventory; NaN where a job gives no price."""

    inventory: Inventory
    own: Programme
    out: Programme
    columns: dict[str, Numbers]
    threads: int | None = None

    @classmethod
    def of(
        cls,
        inventory: Inventory,
        in_house: Job,
        contract: Job,
        threads: int | None = None,
        progress: Progress = False,
    ) -> PricedWays:
        """Prices the list under both jobs."""
        if in_house.currency != contract.currency:
            raise MoneyError("money.currency", "contract", contract.currency, in_house.currency)
        inv = gathered(inventory)
        own = estimate_all(inv, in_house, threads=threads, progress=progress)
        out = estimate_all(inv, contract, threads=threads, progress=progress)
        places = {"areas": _AREA, "direct": _TOTAL, "wages": _WAGES, "crew_time": _TIME}
        columns = {name: _column(own, key) for name, key in places.items()}
        return cls(inv, own, out, {**columns, "price": _column(out, _TOTAL)}, threads)

    @property
    def both(self) -> list[int]:
        """Positions with a price either way."""
        first, second = self.own._core.priced().tolist(), set(self.out._core.priced().tolist())
        return [i for i in first if i in second]

    @property
    def either(self) -> list[int]:
        """Positions with a price one way at least."""
        return sorted({*self.own._core.priced().tolist(), *self.out._core.priced().tolist()})

    def case(self, terms: list[float]) -> list[float]:
        """The case of what has a price either way."""
        rows = self.both
        if not rows:
            reasons = [*self.own.unpriced["reason"], *self.out.unpriced["reason"], "an empty list"]
            raise InputError("delivery.structures", "inventory", str(reasons[0]),
                             "a structure with a price under both jobs")  # fmt: skip
        return _core.delivery_case(terms, *(column[rows] for column in self.columns.values()))

    def fits(self) -> dict[str, float]:
        """Which share of the variance between structures the parts by number and area explain."""
        rows, areas = self.both, self.columns["areas"]
        return {
            name: _core.two_part(self.columns[name][rows], areas[rows])[2]
            for name in ("direct", "crew_time", "price")
        }

    def listed(self, rows: list[int]) -> Inventory:
        """The structures of some positions."""
        return gathered([self.inventory[i] for i in rows])

    @cached_property
    def equipment_times(self) -> dict[str, Numbers]:
        """Seconds of every kind of equipment of the in-house job by position in the inventory."""
        import numpy as np

        times = _core.equipment_times(self.inventory._core, self.own.job.plan, self.threads or 0)
        return {name: np.asarray(column) for name, column in times}

    def names(self, rows: list[int]) -> dict[str, Any]:
        """Columns that say which structures stand at some positions."""
        return identities(self.inventory, rows)

    @property
    def unpriced(self) -> pd.DataFrame:
        """Structures without a price: structure_id, state, way, reason."""
        import pandas as pd

        parts = [
            programme.unpriced.assign(way=way)
            for way, programme in (("in-house", self.own), ("contract", self.out))
        ]
        columns = ["structure_id", "state", "way", "reason"]
        return pd.concat(parts, ignore_index=True)[columns]


def _column(programme: Programme, key: str) -> Numbers:
    """A figure by position in the inventory."""
    import numpy as np

    keys = [known for known, _ in programme._core.columns("si")]
    values = np.full(len(programme.inventory), np.nan)
    values[programme._core.priced()] = programme._core.table()[:, keys.index(key)]
    return values
