"""The split against exhaustive search, and what stands in the way where there is none."""

from __future__ import annotations

import itertools
import random
from math import inf, isnan, nan
from typing import Any

import pytest

import scupper as sc
from scupper import _core
from scupper.splitting import Labels, Rules, Split


def problem(rows: list[tuple[Any, ...]], on_top: float = 0.0) -> _core.SplitProblem:
    """Structures of region, direct, price, time [s], size."""
    regions, direct, price, time, size = map(list, zip(*rows, strict=True))
    names = [f"S{i}" for i in range(len(rows))]
    return _core.SplitProblem(on_top, 0.0, names, regions, direct, price, time, size)


def split_of(rows: list[tuple[Any, ...]], rules: Rules) -> Split:
    labels = Labels({"structure_id": list(range(len(rows)))}, [r[0] for r in rows], "USD")
    return Split(problem(rows), rules, labels, 60.0)


def searched(rows: list[tuple[Any, ...]], rules: Rules) -> float:
    """The least cost of every way there is, tried one by one."""
    under = rules.on(problem(rows))
    regions = len({r[0] for r in rows}) if rules.within_regions else 1
    ways = range(rules.contracts * regions + 1)
    costs = [
        under.priced(list(to))["cost"]
        for to in itertools.product(ways, repeat=len(rows))
        if not under.fault(list(to))
    ]
    return min(costs, default=inf)


def invented(dice: random.Random) -> tuple[list[tuple[Any, ...]], Rules]:
    rows = []
    for _ in range(dice.randint(3, 6)):
        direct, price = dice.randint(200, 900), dice.randint(200, 1100)
        lost = dice.random()
        rows.append((
            dice.choice("NS"), nan if lost < 0.08 else float(direct),
            nan if lost > 0.92 else float(price), float(dice.randint(5, 40)), float(price),
        ))  # fmt: skip
    rules = Rules(
        time_there=dice.choice([inf, float(dice.randint(20, 90))]),
        kept=float(dice.randint(0, 500)),
        per_contract=float(dice.randint(0, 400)),
        contracts=dice.randint(1, 2),
        least=dice.choice([0.0, 600.0]),
        most=dice.choice([inf, 1500.0]),
        within_regions=dice.random() < 0.4,
        together=dice.random() < 0.3,
    )
    if rules.within_regions:
        rules = Rules(**{**vars(rules), "contracts": 1})
    return rows, rules


def test_split_is_the_best_of_all_there_are() -> None:
    dice = random.Random(20)
    none = 0
    for _ in range(60):
        rows, rules = invented(dice)
        best = searched(rows, rules)
        if best == inf:
            none += 1
            with pytest.raises(sc.InputError, match="delivery.no_split"):
                split_of(rows, rules)
            continue
        split = split_of(rows, rules)
        assert split.proven
        assert split.cost == pytest.approx(best, abs=1e-6), (rows, rules)
        assert split.parts.sum() == pytest.approx(split.cost)
    assert 5 < none < 45


ROWS = [("N", 300.0, 700.0, 3600.0 * 10, 700.0), ("S", 400.0, 450.0, 3600.0 * 10, 450.0)]


def test_hours_bind_and_are_worth_something() -> None:
    split = split_of(ROWS, Rules(time_there=3600.0 * 12))
    assert list(split.table["way"]) == ["in-house", "contract 1"]
    assert split.hours_used == pytest.approx(10.0)
    assert not split.fits_in_house
    assert split.all_in_house == pytest.approx(700.0)
    assert split.all_contract == pytest.approx(1150.0)
    # eight hours more bring the other one in: 50 saved
    assert split.value_of_hours(8.0) == pytest.approx(50.0 / 8.0)
    assert split.value_of_hours(1.0) == pytest.approx(0.0)


def test_no_split_says_what_stands_in_the_way() -> None:
    rows = [("N", 300.0, nan, 3600.0, 0.0), ("N", nan, 500.0, 0.0, 500.0)]
    assert isnan(split_of(rows, Rules()).all_contract)
    with pytest.raises(sc.InputError, match="without the most of a contract one does"):
        split_of(rows, Rules(most=400.0))
    with pytest.raises(sc.InputError, match="without keeping regions together one does"):
        split_of(rows, Rules(together=True))
    with pytest.raises(sc.InputError, match="without the hours there are one does"):
        split_of(rows, Rules(time_there=60.0))
    with pytest.raises(sc.InputError, match="several rules"):
        split_of(rows, Rules(time_there=60.0, most=400.0))


def test_a_missing_solver_says_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(__import__("sys").modules, "scipy", None)
    with pytest.raises(sc.InputError, match=r"pip install 'scupper\[split\]'"):
        split_of(ROWS, Rules())
