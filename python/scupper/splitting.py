"""Which structures own people clean and which go out, so that the whole costs least."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from math import inf
from typing import TYPE_CHECKING, Any

from scupper import _core, _report
from scupper._arguments import single
from scupper._frames import frame
from scupper.errors import InputError, SolveError, UnknownNameError

if TYPE_CHECKING:
    import pandas as pd

    from scupper._priced_ways import PricedWays

#: What sizes of contracts are of, and a unit of each.
_SIZES = {"price": "currency", "area": "m2", "structures": "1"}
#: Which rule to lift, in words, to see what stands in the way of any split.
_LIFTED: dict[str, dict[str, Any]] = {
    "the hours there are": {"time_there": inf},
    "the least size of a contract": {"least": 0.0},
    "the most of a contract": {"most": inf},
    "keeping regions together": {"together": False},
}


@dataclass(frozen=True)
class Rules:
    """What a split keeps to, in SI."""

    time_there: float = inf
    kept: float = 0.0
    per_contract: float = 0.0
    contracts: int = 1
    least: float = 0.0
    most: float = inf
    within_regions: bool = False
    together: bool = False
    nothing_in_house: bool = False

    def on(self, problem: _core.SplitProblem) -> _core.SplitProblem:
        """The structures under these rules."""
        return problem.under(**vars(self))


@dataclass(frozen=True)
class Labels:
    """What people call structures, hours and money."""

    structures: dict[str, list[Any]]
    regions: list[str]
    currency: str


class Split:
    """The split that costs least, and what it saves.

    Attributes
    ----------
    cost : float
        Of the year: structures either way, keeping the crew, letting contracts.
    proven : bool
        Whether the solver proved that nothing costs less; else the time ran out, and `bound` is
        what no split can be cheaper than.
    """

    def __init__(
        self, problem: _core.SplitProblem, rules: Rules, labels: Labels, seconds: float
    ) -> None:
        self._problem = problem
        self._rules = rules
        self._labels = labels
        self._seconds = seconds
        unknowns, self.proven, self.bound = _solved(rules.on(problem), seconds)
        if unknowns is None:
            raise _infeasible(problem, rules, seconds)
        under = rules.on(problem)
        self._split = under.split(unknowns)
        if fault := under.fault(self._split["to"]):
            raise SolveError("delivery.split", "split", fault, "a split that keeps to its rules")
        self.cost: float = self._split["cost"]

    @cached_property
    def table(self) -> pd.DataFrame:
        """One row a structure: structure_id, state, carries, crosses, region, way.

        ``way`` is ``"in-house"`` or ``"contract 1"``, ``"contract 2"`` and so on.
        """
        ways = ["in-house" if k == 0 else f"contract {k}" for k in self._split["to"]]
        return frame({**self._labels.structures, "region": self._labels.regions, "way": ways})

    @cached_property
    def parts(self) -> pd.Series[float]:
        """What the cost is made of: in_house, contract, kept, letting."""
        import pandas as pd

        return pd.Series({k: self._split[k] for k in ("in_house", "contract", "kept", "letting")})

    @property
    def contracts(self) -> int:
        """How many contracts are let."""
        return int(self._split["contracts"])

    @property
    def hours_used(self) -> float:
        """Paid crew hours of what own people clean."""
        return float(_core.from_si(self._split["time"], "h"))

    @cached_property
    def all_in_house(self) -> float:
        """Cost of everything in-house, however many hours that takes; NaN where it cannot be."""
        return float(self._problem_of(time_there=inf).priced([0] * len(self.table))["cost"])

    @cached_property
    def all_contract(self) -> float:
        """Least cost of everything by contract under the same rules; NaN where it cannot be."""
        under = self._problem_of(nothing_in_house=True)
        unknowns, _, _ = _solved(under, self._seconds)
        return float("nan") if unknowns is None else float(under.split(unknowns)["cost"])

    @property
    def fits_in_house(self) -> bool:
        """Whether there are hours enough to do everything in-house."""
        return not self._rules.on(self._problem).fault([0] * len(self.table))

    def value_of_hours(self, more: float = 10.0) -> float:
        """What an hour more would be worth: the split is solved again with some hours more.

        Parameters
        ----------
        more
            How many; a single one rarely fits another structure.

        Returns
        -------
        float
            Saving over the hours, in the currency for an hour; 0 where hours are not limited.
        """
        if self._rules.time_there == inf:
            return 0.0
        there = self._rules.time_there + float(_core.to_si(more, "h", "h", "more"))
        under = self._problem_of(time_there=there)
        unknowns, _, _ = _solved(under, self._seconds)
        if unknowns is None:
            raise SolveError("delivery.solver", "split", "no answer", "a longer time")
        saved = self.cost - under.split(unknowns)["cost"]
        return float(_core.unit_cost(saved, more))

    def _problem_of(self, **changes: Any) -> _core.SplitProblem:
        return replace(self._rules, **changes).on(self._problem)

    def _lines(self) -> _report.Lines:
        money = self._labels.currency
        counts = self.table["way"].value_counts()
        lines = [(str(way), f"{n:,} structures") for way, n in counts.items()]
        lines += [
            ("cost", f"{money} {self.cost:,.0f}{'' if self.proven else ', not proven least'}"),
            ("crew hours", f"{self.hours_used:,.0f}"),
            ("all in-house", f"{money} {self.all_in_house:,.0f}"
             f"{'' if self.fits_in_house else ', more hours than there are'}"),
            ("all by contract", f"{money} {self.all_contract:,.0f}"),
        ]  # fmt: skip
        return lines

    def __repr__(self) -> str:
        return _report.text(self._lines())

    def _repr_html_(self) -> str:
        return _report.html(self._lines())


def size_of(name: str, value: Any, size: str) -> float:
    """The size of a contract in SI."""
    return single(name, value, _SIZES.get(size, "1"), None)


def problem_of(
    ways: PricedWays, on_top: tuple[float, float], size: str, by: str | None
) -> tuple[_core.SplitProblem, list[str]]:
    """What has a price one way at least, as a split's structures, and the region of each.

    Parameters
    ----------
    ways
        The list priced both ways.
    on_top
        Administration and inspection over the price.
    size
        What sizes of contracts are of.
    by
        The field of the record that says the region.
    """
    import numpy as np

    if size not in _SIZES:
        raise UnknownNameError("delivery.size", "size", f'"{size}"', ", ".join(_SIZES))
    rows = ways.either
    regions = _regions(ways, rows, by)
    columns = {name: column[rows] for name, column in ways.columns.items()}
    sizes = {
        "price": np.nan_to_num(columns["price"]),
        "area": np.nan_to_num(columns["areas"]),
        "structures": np.ones(len(rows)),
    }[size]
    numbers = list(ways.names(rows)["structure_id"])
    time = np.nan_to_num(columns["crew_time"])
    lists = (columns["direct"], columns["price"], time, sizes)
    direct, price, hours, size_list = (numbers_of.tolist() for numbers_of in lists)
    problem = _core.SplitProblem(*on_top, numbers, regions, direct, price, hours, size_list)
    return problem, regions


def _regions(ways: PricedWays, rows: list[int], by: str | None) -> list[str]:
    if by is None:
        return [""] * len(rows)
    if by not in ("county", "district"):
        raise UnknownNameError("delivery.by", "by", f'"{by}"', '"county", "district"')
    recorded = ways.inventory._core.recorded({by})[by]
    return [str(recorded[i]) for i in rows]


def _solved(problem: _core.SplitProblem, seconds: float) -> tuple[list[float] | None, bool, float]:
    """Unknowns of least cost, or None where there are none; whether proven; the bound."""
    optimize, sparse = _solver()
    model = problem.model()
    shape = (len(model["low"]), len(model["cost"]))
    rows = sparse.csr_matrix((model["entries"], model["columns"], model["starts"]), shape=shape)
    found = optimize.milp(
        model["cost"],
        integrality=1,
        bounds=optimize.Bounds(0, model["upper"]),
        constraints=optimize.LinearConstraint(rows, model["low"], model["high"]),
        options={"mip_rel_gap": 0.0, "time_limit": seconds},
    )
    if found.x is None and found.status != 2:
        raise SolveError("delivery.solver", "split", found.message, "a longer time")
    bound = found.get("mip_dual_bound")
    unknowns = None if found.x is None else found.x.tolist()
    return unknowns, found.status == 0, float("nan") if bound is None else float(bound)


def _solver() -> tuple[Any, Any]:
    try:
        from scipy import optimize, sparse
    except ImportError:
        raise InputError(
            "delivery.solver", "split", "no scipy", "scipy: pip install 'scupper[split]'"
        ) from None
    return optimize, sparse


def _infeasible(problem: _core.SplitProblem, rules: Rules, seconds: float) -> InputError:
    """Which rule stands in the way: the one without which there is a split."""
    found = []
    for words, changes in _LIFTED.items():
        lifted = replace(rules, **changes)
        if lifted != rules and _solved(lifted.on(problem), seconds)[0] is not None:
            found.append(words)
    allowed = (
        f"without {', or without '.join(found)} one does"
        if found
        else "fewer rules: several rules at once stand in the way"
    )
    return InputError("delivery.no_split", "split", "no split keeps to all rules", allowed)
