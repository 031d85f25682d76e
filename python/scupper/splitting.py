"""Which structures own people clean and which go out, so that the whole costs least."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from math import inf, isnan
from typing import TYPE_CHECKING, Any

from scupper import _core, _report
from scupper._arguments import single
from scupper._frames import frame
from scupper._split_solver import Rules, infeasible, solved
from scupper.errors import InputError, SolveError

if TYPE_CHECKING:
    import pandas as pd


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
    saving_asked : float
        What the contracts have to save besides by the terms' least saving; in no cost, but in what
        the split is chosen by.
    proven : bool
        Whether the solver proved that no cost with `saving_asked` is less; else the time ran out,
        and `bound` is what none can be less than.
    """

    def __init__(
        self, problem: _core.SplitProblem, rules: Rules, labels: Labels, seconds: float
    ) -> None:
        self._problem = problem
        self._rules = rules
        self._labels = labels
        self._seconds = seconds
        under = rules.on(problem)
        unknowns, self.proven, self.bound = solved(under, seconds)
        if unknowns is None:
            raise infeasible(problem, rules, seconds)
        self._split = under.split(unknowns)
        if fault := under.fault(self._split["to"]):
            raise SolveError("delivery.split", "split", fault, "a split that keeps to its rules")
        self.cost: float = self._split["cost"]
        self.saving_asked: float = self._split["saving_asked"]

    @property
    def currency(self) -> str:
        """Three-letter code of every amount."""
        return self._labels.currency

    @cached_property
    def table(self) -> pd.DataFrame:
        """One row a structure: structure_id, state, carries, crosses, region, way.

        ``way`` is ``"in-house"`` or ``"contract 1"``, ``"contract 2"`` and so on.
        """
        ways = ["in-house" if k == 0 else f"contract {k}" for k in self._split["to"]]
        return frame({**self._labels.structures, "region": self._labels.regions, "way": ways})

    @cached_property
    def counts(self) -> dict[str, int]:
        """Structures by way, own people first."""
        counts = self.table["way"].value_counts()
        order = sorted(counts.index, key=lambda way: (way != "in-house", len(way), way))
        return {str(way): int(counts[way]) for way in order}

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
        return float(_core.from_si(self._split["times"][0], "h"))

    @cached_property
    def capacity(self) -> pd.DataFrame:
        """The hours of the crew and of every kind of equipment that the list needs.

        Returns
        -------
        pandas.DataFrame
            By resource: used (by this split), available (inf: no limit), all_in_house (what the
            whole list would take); hours of all pieces together.
        """
        whole = self._all_in_house["times"]
        free = [inf] * (len(whole) - len(self._rules.there))
        columns = {
            "used": self._split["times"],
            "available": [*self._rules.there, *free],
            "all_in_house": whole,
        }
        hours = {name: [float(_core.from_si(si, "h")) for si in values]
                 for name, values in columns.items()}  # fmt: skip
        table = frame({"resource": self._problem.resources, **hours}).set_index("resource")
        return table[(table["all_in_house"] > 0) | (table["available"] < inf)]

    def worth_of_hours(self, more: Any = "10 h") -> pd.DataFrame:
        """What more hours of each limited resource would save, the other limits held.

        The split is solved anew with the hours, and without the limit: no price from a relaxed
        programme. One hour more rarely fits another structure; some hours together may. What law
        asks to be saved is no money and not counted, though splits are chosen by it too.

        Parameters
        ----------
        more
            How many hours more, text with a unit.

        Returns
        -------
        pandas.DataFrame
            By resource: used and available [h], saving (of `more`, in the currency), per_hour,
            saving_unlimited (without the limit) and used_unlimited [h] (what it would then use),
            proven (both solved to the end).

        Raises
        ------
        InputError
            Where `more` is no time above 0.
        """
        si = single("more", more, "s", None)
        if not si > 0:
            raise InputError("delivery.more", "more", str(more), "a time above 0")
        rows = {}
        for at, there in enumerate(self._rules.there):
            if there == inf:
                continue
            resource = self._problem.resources[at]
            with_more, first = self._with_hours(at, there + si)
            unlimited, second = self._with_hours(at, inf)
            saving = self.cost - with_more["cost"]
            rows[resource] = {
                "used": self.capacity.at[resource, "used"],
                "available": self.capacity.at[resource, "available"],
                "saving": saving,
                "per_hour": float(_core.unit_cost(saving, float(_core.from_si(si, "h")))),
                "saving_unlimited": self.cost - unlimited["cost"],
                "used_unlimited": float(_core.from_si(unlimited["times"][at], "h")),
                "proven": self.proven and first and second,
            }
        import pandas as pd

        columns = ["used", "available", "saving", "per_hour", "saving_unlimited",
                   "used_unlimited", "proven"]  # fmt: skip
        table = pd.DataFrame.from_dict(rows, orient="index", columns=columns)
        return table.rename_axis("resource")

    @cached_property
    def worth(self) -> pd.DataFrame:
        """`worth_of_hours` of ten hours."""
        return self.worth_of_hours()

    def _with_hours(self, resource: int, there: float) -> tuple[dict[str, Any], bool]:
        under = self._rules.with_hours(resource, there).on(self._problem)
        unknowns, proven, _ = solved(under, self._seconds)
        if unknowns is None:
            raise SolveError("delivery.solver", "split", "no answer", "a longer time")
        return under.split(unknowns), proven

    @cached_property
    def _all_in_house(self) -> dict[str, Any]:
        return dict(self._rules.on(self._problem).priced([0] * len(self.table)))

    @property
    def all_in_house(self) -> float:
        """Cost of everything in-house, however many hours that takes; NaN where it cannot be."""
        return float(self._all_in_house["cost"])

    @cached_property
    def all_contract(self) -> float:
        """Least cost of everything by contract under the same rules; NaN where it cannot be.

        Without what a contract has to save besides.
        """
        under = replace(self._rules, nothing_in_house=True, saving="nothing").on(self._problem)
        unknowns, _, _ = solved(under, self._seconds)
        return float("nan") if unknowns is None else float(under.split(unknowns)["cost"])

    @property
    def fits_in_house(self) -> bool:
        """Whether there are hours enough to do everything in-house."""
        return not self._rules.on(self._problem).fault([0] * len(self.table))

    @cached_property
    def one_way(self) -> tuple[str, float]:
        """The cheaper way to do the whole list that the hours allow, and its cost; NaN: none."""
        ways = {"all by contract": self.all_contract}
        if self.fits_in_house:
            ways["all in-house"] = self.all_in_house
        return min(ways.items(), key=lambda way: inf if isnan(way[1]) else way[1])

    @property
    def saving(self) -> float:
        """By how much the split is cheaper than the cheaper way to do the whole list."""
        return self.one_way[1] - self.cost

    @cached_property
    def without_law(self) -> Split:
        """The split that costs least where contracts need not save anything besides."""
        if self.over == "nothing":
            return self
        rules = replace(self._rules, saving="nothing")
        return Split(self._problem, rules, self._labels, self._seconds)

    @cached_property
    def law(self) -> pd.DataFrame:
        """What the least saving by law does to the split.

        Returns
        -------
        pandas.DataFrame
            Columns ``without`` and ``with``; rows in_house and out (structures), contracts, cost,
            saving_asked (what the contracts let have to save besides) and saving (against the
            cheaper way to do the whole list).
        """
        import pandas as pd

        splits = {"without": self.without_law, "with": self}
        return pd.DataFrame({
            name: {
                "in_house": split.counts.get("in-house", 0),
                "out": len(split.table) - split.counts.get("in-house", 0),
                "contracts": split.contracts,
                "cost": split.cost,
                "saving_asked": split.saving_asked,
                "saving": split.saving,
            }
            for name, split in splits.items()
        })  # fmt: skip

    @cached_property
    def out(self) -> pd.DataFrame:
        """What goes out against the same work with own people, where the crew is kept anyway.

        Returns
        -------
        pandas.DataFrame
            By contract, or for all contracts at once where a least saving is counted over the
            programme: structures that own people could do as well, in_house and by_contract (with
            letting), saved, asked (by law), meets (saved is no less). Work that saves less goes out
            where hours or rules leave no cheaper way.
        """
        rows = dict(self._split["out"])
        names = [f"contract {int(k)}" if k else "all contracts" for k in rows["contract"]]
        columns = ["structures", "in_house", "by_contract", "saved", "asked"]
        table = frame({"contract": names, **{name: rows[name] for name in columns}})
        table["structures"] = table["structures"].astype(int)
        table["meets"] = [bool(x) for x in rows["meets"]]
        return table.set_index("contract")

    @property
    def over(self) -> str:
        """What a least saving by law is counted over: nothing, contract, programme."""
        return self._rules.saving if self._rules.law[0] > 0 else "nothing"

    @property
    def verdict(self) -> str:
        """In one or two sentences: who does what, at what cost, what it saves."""
        from scupper._split_facts import verdict

        return verdict(self)

    def __repr__(self) -> str:
        from scupper._split_facts import summary

        return _report.text(summary(self))

    def _repr_html_(self) -> str:
        from scupper._split_facts import summary

        return _report.html(summary(self))
