"""The split of a list as a programme that a solver takes, and why there may be none."""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import inf
from typing import Any

from scupper import _core
from scupper.errors import InputError, SolveError


@dataclass(frozen=True)
class Rules:
    """What a split keeps to, in SI.

    Attributes
    ----------
    there
        Hours there are of the first of the problem's resources.
    saving
        What a least saving by law is counted over.
    law
        Its share of personnel cost, its most, and the years that contracts last.
    """

    there: tuple[float, ...] = ()
    kept: float = 0.0
    per_contract: float = 0.0
    contracts: int = 1
    least: float = 0.0
    most: float = inf
    within_regions: bool = False
    together: bool = False
    nothing_in_house: bool = False
    saving: str = "nothing"
    law: tuple[float, float, float] = (0.0, 0.0, 1.0)

    def on(self, problem: _core.SplitProblem) -> _core.SplitProblem:
        """The structures under these rules."""
        return problem.under(**vars(self))

    def with_hours(self, resource: int, there: float) -> Rules:
        """The same with other hours of one resource."""
        hours = list(self.there)
        hours[resource] = there
        return replace(self, there=tuple(hours))


def solved(problem: _core.SplitProblem, seconds: float) -> tuple[list[float] | None, bool, float]:
    """Unknowns of least cost, or None where there are none; whether proven; the bound."""
    optimize, sparse = _solver()
    model = problem.model()
    shape = (len(model["low"]), len(model["cost"]))
    rows = sparse.csr_matrix((model["entries"], model["columns"], model["starts"]), shape=shape)
    found = optimize.milp(
        model["cost"],
        integrality=model["whole"],
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


def infeasible(problem: _core.SplitProblem, rules: Rules, seconds: float) -> InputError:
    """Which rule stands in the way: the one without which there is a split."""
    found = [
        words
        for words, lifted in _lifted(problem.resources, rules)
        if lifted != rules and solved(lifted.on(problem), seconds)[0] is not None
    ]
    allowed = (
        f"without {', or without '.join(found)} one does"
        if found
        else "fewer rules: several rules at once stand in the way"
    )
    return InputError("delivery.no_split", "split", "no split keeps to all rules", allowed)


def _lifted(resources: list[str], rules: Rules) -> list[tuple[str, Rules]]:
    """The rules without one of them, each with the name of what was lifted."""
    lifted = [
        (f"the hours of the {resources[at].replace('_', ' ')}", rules.with_hours(at, inf))
        for at in range(len(rules.there))
    ]
    return [
        *lifted,
        ("the least size of a contract", replace(rules, least=0.0)),
        ("the most of a contract", replace(rules, most=inf)),
        ("keeping regions together", replace(rules, together=False)),
    ]
