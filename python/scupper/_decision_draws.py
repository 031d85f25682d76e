"""How sure a choice is: both ways in the same draws, and what each uncertain input does to it."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from math import isnan
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._frames import frame
from scupper.simulating import Simulation, simulate

if TYPE_CHECKING:
    import pandas as pd

    from scupper._delivery_terms import Range
    from scupper._priced_ways import PricedWays
    from scupper.job import Job

_CHANCES = ("cheaper", "advantage", "regret_in_house", "regret_contract", "information")


@dataclass(frozen=True)
class Draws:
    """How both ways are drawn."""

    number: int = 2000
    seed: int = 1
    threads: int | None = None


@dataclass(frozen=True)
class Case:
    """The numbers of a choice in SI, the in-house cost it rests on, and terms with a range."""

    values: list[float]
    basis: str
    ranges: list[Range]


class DrawnChoice:
    """Both ways drawn alike; nothing is drawn before it is asked for."""

    def __init__(self, ways: PricedWays, jobs: tuple[Job, Job], case: Case, draws: Draws) -> None:
        self._ways = ways
        self._jobs = jobs
        self._case = case
        self._draws = draws

    @cached_property
    def _simulations(self) -> tuple[Simulation, Simulation]:
        """Both ways in the same draws of the same structures."""
        rows = self._ways.both
        while True:
            found = [
                simulate(self._ways.listed(rows), job, self._draws.number, self._draws.seed,
                         threads=self._draws.threads)
                for job in self._jobs
            ]  # fmt: skip
            lost = {s for f in found for s in zip(f.left_out["state"], f.left_out["structure_id"],
                                                  strict=True)}  # fmt: skip
            if not lost:
                return found[0], found[1]
            names = self._ways.names(rows)
            keys = zip(rows, names["state"], names["structure_id"], strict=True)
            rows = [row for row, *key in keys if tuple(key) not in lost]

    @cached_property
    def advantages(self) -> Any:
        """The advantage of own people in every draw."""
        import numpy as np

        own, out = self._simulations
        direct, hours, price = (own._total("cost"), own._total("hours"), out._total("cost"))
        drawn = _core.drawn_advantages(
            self._case.values, self._case.basis, direct.draws(), hours.draws(), price.draws(),
            [direct.estimated, hours.estimated, price.estimated], own._core.replicates,
            self._draws.seed, self._case.ranges,
        )  # fmt: skip
        return np.asarray(drawn)

    @cached_property
    def chance(self) -> pd.DataFrame:
        """Chances and regrets: see `Decision.chance`."""
        found = _core.chance_of(self.advantages, self._simulations[0]._core.replicates)
        rows = {name: found[name] for name in _CHANCES}
        import pandas as pd

        return pd.DataFrame.from_dict(rows, orient="index", columns=["value", "standard_error"])

    @cached_property
    def range(self) -> tuple[float, float, float]:
        """P5, P50 and P95 of the advantage of own people."""
        replicates = self._simulations[0]._core.replicates
        low, middle, high = _core.chance_of(self.advantages, replicates)["quantiles"]
        return float(low), float(middle), float(high)

    @cached_property
    def job_swings(self) -> pd.DataFrame:
        """What every uncertain input of the jobs alone does to the advantage, the widest first.

        Returns
        -------
        pandas.DataFrame
            By key: label, at_low and at_high (advantage with the input at its P10 and P90 in every
            job that has it), turns. Crew hours are held.
        """
        listed = self._ways.listed(self._ways.both)._core
        swings = [_core.swings(listed, j.plan, "cost", 0.1, self._draws.threads or 0, None)
                  for j in self._jobs]  # fmt: skip
        tables = [frame(s.columns()).set_index("key") for s in swings]
        rows: dict[str, dict[str, Any]] = {}
        for key in dict.fromkeys([*tables[0].index, *tables[1].index]):
            at: Any = {}
            for end in ("low", "high"):
                first, second = (
                    float(t[f"at_{end}"][key]) if key in t.index else s.estimated
                    for t, s in zip(tables, swings, strict=True)
                )
                estimated = (swings[0].estimated, swings[1].estimated)
                at[end] = _core.advantage_at(
                    self._case.values, self._case.basis, (first, second), estimated
                )
            label = next(t["label"][key] for t in tables if key in t.index)
            turns = (at["low"] > 0) != (at["high"] > 0) and not isnan(at["low"] + at["high"])
            rows[key] = {"label": label, "at_low": at["low"], "at_high": at["high"], "turns": turns}
        import pandas as pd

        table = pd.DataFrame.from_dict(rows, orient="index").rename_axis("key")
        order = (table["at_high"] - table["at_low"]).abs().sort_values(ascending=False).index
        return table.loc[order]
