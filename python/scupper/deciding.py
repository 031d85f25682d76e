"""The choice between own people and a contract: by how much, how sure, what would turn it."""

from __future__ import annotations

import os
from collections.abc import Iterable, Mapping
from functools import cached_property
from math import inf
from typing import TYPE_CHECKING, Any

from scupper import _core, _report
from scupper._decision_draws import Case, DrawnChoice, Draws
from scupper._decision_turns import Turning
from scupper._delivery_terms import Terms, fields, follows, terms_of
from scupper._files import write_whole
from scupper._frames import frame
from scupper._priced_ways import PricedWays
from scupper._progress import Progress
from scupper._split_problem import hours_there, problem_of, size_of
from scupper._split_solver import Rules
from scupper._stamp import stamp
from scupper.errors import InputError, UnknownNameError
from scupper.inventory import Inventory, gathered
from scupper.splitting import Labels, Split

if TYPE_CHECKING:
    import pandas as pd
    from matplotlib.axes import Axes

    from scupper._core import Derivation, Structure
    from scupper.job import Job


class Decision(Turning):
    """A year's work with own people and by contract.

    Attributes
    ----------
    basis : str
        ``"avoidable"`` or ``"full"``: the in-house cost that a contract is held against.
    jobs : tuple of Job
        In-house and contract.
    """

    def __init__(
        self, ways: PricedWays, jobs: tuple[Job, Job], terms: Terms, basis: str, draws: Draws
    ) -> None:
        self._ways = ways
        self._terms = terms
        self._draws = draws
        self._values = ways.case(terms.values)
        self.basis = basis
        self.jobs = jobs
        lines, self._sums = _core.compare_ways(self._values)
        self._lines = lines
        if f"advantage_{basis}" not in self._sums:
            raise UnknownNameError("delivery.basis", "basis", f'"{basis}"', '"avoidable", "full"')

    @property
    def currency(self) -> str:
        """Three-letter code of every amount."""
        return self.jobs[0].currency

    @property
    def avoidable(self) -> float:
        """In-house cost of a year that goes away when the work goes out."""
        return float(self._sums["avoidable"])

    @property
    def full(self) -> float:
        """In-house cost of a year with idle equipment, supervision, overhead and facilities."""
        return float(self._sums["full"])

    @property
    def contract(self) -> float:
        """Cost of a year by contract: price, letting, administration, inspection, conversion."""
        return float(self._sums["contract"])

    @property
    def differential(self) -> float:
        """What a contract has to save besides; nothing unless the terms ask for it."""
        return float(self._sums["differential"])

    @property
    def advantage(self) -> float:
        """By how much own people are cheaper on the basis; below 0 where a contract is."""
        return float(self._sums[f"advantage_{self.basis}"])

    @property
    def own_people(self) -> bool:
        """Whether own people are recommended."""
        return self.advantage > 0

    @property
    def structures(self) -> int:
        """How many have a price either way."""
        return len(self._ways.both)

    @property
    def crew_hours(self) -> float:
        """Paid crew hours of a year's work."""
        return float(_core.from_si(self._sums["crew_time"], "h"))

    @cached_property
    def unpriced(self) -> pd.DataFrame:
        """Structures that one job or both cannot price: they are in no figure but the split."""
        return self._ways.unpriced

    def to_pandas(self) -> pd.DataFrame:
        """The lines of either way.

        Returns
        -------
        pandas.DataFrame
            line, label, side (avoidable, overhead, contract, differential), amount, why, source.
        """
        sources = self._sources
        columns = {**self._lines, "source": [sources[i] for i in self._lines["input"]]}
        return frame(columns, ["line", "label", "side", "amount", "why", "source"])

    @cached_property
    def _sources(self) -> list[str]:
        """Where each input comes from."""
        texts = []
        for key, row in fields().items():
            stated = key in self._terms.given
            said = "stated" if stated else "" if follows(key) else "not given"
            texts.append("; ".join(filter(None, (said, str(row["source"])))))
        return texts

    def explain(self, depth: int | None = 2) -> Derivation:
        """How the advantage comes about, down to the inputs and their sources."""
        levels = 10**6 if depth is None else depth
        return _core.explain_ways(
            self._values, self.basis, self._sources, self.jobs[0].plan, levels
        )

    @cached_property
    def _drawn(self) -> DrawnChoice:
        case = Case(self._values, self.basis, self._terms.ranges)
        return DrawnChoice(self._ways, self.jobs, case, self._draws)

    @property
    def advantages(self) -> Any:
        """The advantage of own people in every draw."""
        return self._drawn.advantages

    @property
    def chance(self) -> pd.DataFrame:
        """How sure the choice is, from the same draws of both ways.

        Inputs that both jobs have under the same key, as the pace of an operation, are drawn alike;
        so are terms given as low, likely and high.

        Returns
        -------
        pandas.DataFrame
            By cheaper (chance that own people are), advantage, regret_in_house, regret_contract,
            information (what knowing before choosing would be worth): value, standard_error.
        """
        return self._drawn.chance

    @property
    def range(self) -> tuple[float, float, float]:
        """P5, P50 and P95 of the advantage of own people."""
        return self._drawn.range

    @property
    def job_swings(self) -> pd.DataFrame:
        """What every uncertain input of the jobs alone does to the advantage, the widest first.

        Returns
        -------
        pandas.DataFrame
            By key: label, at_low and at_high (advantage with the input at its P10 and P90 in every
            job that has it), turns. Crew hours are held.
        """
        return self._drawn.job_swings

    def split(
        self,
        hours: Any = None,
        *,
        equipment: Mapping[str, Any] | None = None,
        contracts: int = 1,
        least: Any = None,
        most: Any = None,
        size: str = "price",
        by: str | None = None,
        within: bool = False,
        together: bool = False,
        saving_over: str = "contract",
        seconds: float = 60.0,
    ) -> Split:
        """Which structures own people clean and which go out, so that the whole costs least.

        In-house counts at avoidable cost: direct cost, and keeping the crew where it has any work.
        A contract counts price, administration, inspection, and preparation for each that is let.

        Parameters
        ----------
        hours
            Paid crew hours there are, as ``"600 h"``; None for no limit.
        equipment
            Hours there are of kinds of equipment of the in-house job, all pieces together, as
            ``{"bucket_truck": "200 h"}``; those that are left out have no limit.
        contracts
            How many may be let; in each region with `within`.
        least, most
            Size of a contract that is let.
        size
            What sizes are of: ``"price"`` (the default), ``"area"``, ``"structures"``.
        by
            Regions: ``"county"`` or ``"district"``, as the record has them.
        within
            Whether a contract has structures of one region only.
        together
            Whether the structures of a region go one way, in one contract.
        saving_over
            What the least saving of the terms (``contract.differential_share``, as in `STATUTORY`)
            is counted over: ``"contract"``, each by itself, as the rule compares the work of one
            solicitation; ``"programme"``, all that goes out; ``"nothing"``. It is in what the split
            is chosen by and in no cost; `Split.law` shows the split with and without it.
        seconds
            The longest a solve may take; `Split.proven` says whether it was enough.

        Raises
        ------
        InputError
            Where no split keeps to all rules, with the rule that stands in the way; where scipy is
            missing.
        """
        on_top = ("contract.administration", "contract.inspection", "in_house.supervision")
        shares = (self._value(on_top[0]), self._value(on_top[1]), self._value(on_top[2]))
        problem, regions = problem_of(self._ways, shares, size, by)
        law = (
            self._value("contract.differential_share"),
            self._value("contract.differential_most"),
            float(_core.from_si(self._value("contract.years"), "year")),
        )
        rules = Rules(
            there=hours_there(problem, hours, equipment),
            kept=self._value("in_house.kept"),
            per_contract=self._value("contract.preparation"),
            contracts=contracts,
            least=0.0 if least is None else size_of("least", least, size),
            most=inf if most is None else size_of("most", most, size),
            within_regions=within,
            together=together,
            saving=saving_over,
            law=law,
        )
        names = self._ways.names(self._ways.either)
        return Split(problem, rules, Labels(names, regions, self.currency), seconds)

    def _value(self, key: str) -> float:
        return self._values[list(fields()).index(key)]

    @cached_property
    def cautions(self) -> list[str]:
        """What to mind before anybody decides."""
        from scupper._decision_facts import cautions

        return cautions(self)

    @property
    def recommendation(self) -> str:
        """In one sentence: which way, by how much a year, how sure."""
        from scupper._decision_facts import recommendation

        return recommendation(self)

    @cached_property
    def stamp(self) -> dict[str, str]:
        """What this rests on: version, date, hashes of the records and of both jobs."""
        listed = gathered(self._ways.inventory)._core
        other = stamp(self.jobs[1], listed)["job"]
        return {**stamp(self.jobs[0], listed), "contract_job": other}

    def plot(self, axes: Axes | None = None) -> Axes:
        """How the advantage of own people is distributed over the draws."""
        from scupper._charts import advantage_chart

        return advantage_chart(self.advantages, self.currency, axes)

    def page(self, path: str | os.PathLike[str], split: Split | None = None) -> None:
        """Writes the decision on paper (HTML), whole or not at all.

        Parameters
        ----------
        path
            The file.
        split
            A split to show beside the choice.
        """
        from scupper._decision_page import page

        write_whole(path, page(self, split))

    def save_workbook(self, path: str | os.PathLike[str], split: Split | None = None) -> None:
        """Writes the same as a workbook whose sums are live."""
        from scupper._decision_workbook import workbook

        write_whole(path, workbook(self, split))

    def __repr__(self) -> str:
        from scupper._decision_facts import summary

        return _report.text(summary(self))

    def _repr_html_(self) -> str:
        from scupper._decision_facts import summary

        return _report.html(summary(self))


def decide(
    inventory: Inventory | Iterable[Structure],
    in_house: Job,
    contract: Job,
    terms: Mapping[str, Any] | None = None,
    *,
    basis: str = "avoidable",
    draws: int = 2000,
    seed: int = 1,
    threads: int | None = None,
    progress: Progress = False,
) -> Decision:
    """Holds own people against a contract for a year's list.

    Parameters
    ----------
    inventory
        The structures of a year.
    in_house
        The job as own people do it: wages and equipment of the agency, no margins.
    contract
        The job as it is let: market wages and hire, margins.
    terms
        What else either way costs, by key (`scupper.delivery.terms` lists them): text with a unit
        as ``"12 %"``, or low, likely and high. One that is left out counts nothing.
    basis
        ``"avoidable"``: only what goes away with the work, the choice for a year; ``"full"``: with
        idle equipment, supervision, overhead and facilities, the choice for good.
    draws, seed
        Of both ways alike; nothing is drawn before `Decision.chance` is asked for.
    threads
        How many; None for as many as the machine has.
    progress
        As for `scupper.estimate_all`.

    Raises
    ------
    InputError
        Where no structure has a price under both jobs, or a term cannot be used.
    MoneyError
        Where the jobs have two currencies.
    """
    if draws < 1:
        raise InputError("delivery.draws", "draws", str(draws), "at least 1")
    ways = PricedWays.of(gathered(inventory), in_house, contract, threads, progress)
    found = terms_of(terms, in_house)
    return Decision(ways, (in_house, contract), found, basis, Draws(draws, seed, threads))
