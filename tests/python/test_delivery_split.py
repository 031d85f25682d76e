"""The split against exhaustive search, and what stands in the way where there is none."""

from __future__ import annotations

import itertools
import random
from dataclasses import dataclass, replace
from math import inf, isnan, nan
from typing import Any

import pytest

import scupper as sc
from scupper import _core
from scupper._split_solver import Rules
from scupper.splitting import Labels, Split


@dataclass
class Row:
    """An invented structure; hours of the crew and of a bucket truck in seconds."""

    region: str
    direct: float
    price: float
    crew: float
    truck: float = 0.0
    wages: float = 0.0


def problem(rows: list[Row]) -> _core.SplitProblem:
    times = [("crew", [r.crew for r in rows]), ("bucket_truck", [r.truck for r in rows])]
    names = [f"S{i}" for i in range(len(rows))]
    prices = [r.price for r in rows]
    sizes = [0.0 if isnan(price) else price for price in prices]
    return _core.SplitProblem(
        (0.0, 0.0, 0.0), names, [r.region for r in rows], [r.direct for r in rows],
        [r.wages for r in rows], prices, times, sizes,
    )  # fmt: skip


def split_of(rows: list[Row], rules: Rules) -> Split:
    labels = Labels({"structure_id": list(range(len(rows)))}, [r.region for r in rows], "USD")
    return Split(problem(rows), rules, labels, 60.0)


def asked(rules: Rules, wages: list[float]) -> float:
    """What contracts have to save, by the wages of each: the lesser of share and most."""
    share, most, years = rules.law
    if rules.saving == "nothing":
        return 0.0
    groups = wages if rules.saving == "contract" else [sum(wages)]
    return sum(min(share * years * group, most) / years for group in groups)


def compared(rows: list[Row], rules: Rules, to: tuple[int, ...]) -> float:
    """The cost of a split and what it has to save, or infinite where a rule is broken."""
    own = [r for r, k in zip(rows, to, strict=True) if k == 0]
    let = [[r for r, k in zip(rows, to, strict=True) if k == n] for n in sorted({*to} - {0})]
    used = (sum(r.crew for r in own), sum(r.truck for r in own))
    regions = [{r.region for r in group} for group in let]
    wrong = (
        any(isnan(r.direct) for r in own)
        or any(isnan(r.price) for group in let for r in group)
        or any(hours > there for hours, there in zip(used, rules.there, strict=False))
        or any(not rules.least <= sum(r.price for r in g) <= rules.most for g in let)
        or (rules.within_regions and any(len(group) > 1 for group in regions))
        or (rules.together and len({*zip((r.region for r in rows), to, strict=True)})
            > len({r.region for r in rows}))
        or len(let) > rules.contracts * (len({r.region for r in rows})
                                         if rules.within_regions else 1)
    )  # fmt: skip
    if wrong:
        return inf
    wages = [sum(0.0 if isnan(r.direct) else r.wages for r in group) for group in let]
    cost = sum(r.direct for r in own) + sum(r.price for group in let for r in group)
    fixed = (rules.kept if own else 0.0) + rules.per_contract * len(let)
    return cost + fixed + asked(rules, wages)


def searched(rows: list[Row], rules: Rules) -> float:
    """The least of every way there is, tried one by one."""
    regions = len({r.region for r in rows}) if rules.within_regions else 1
    ways = range(rules.contracts * regions + 1)
    return min(compared(rows, rules, to) for to in itertools.product(ways, repeat=len(rows)))


def invented(dice: random.Random) -> tuple[list[Row], Rules]:
    rows = []
    for _ in range(dice.randint(3, 6)):
        direct, price = float(dice.randint(200, 900)), float(dice.randint(200, 1100))
        lost = dice.random()
        rows.append(Row(
            dice.choice("NS"), nan if lost < 0.06 else direct, nan if lost > 0.94 else price,
            float(dice.randint(5, 40)), float(dice.choice([0, 0, dice.randint(5, 30)])),
            dice.random() * direct,
        ))  # fmt: skip
    within = dice.random() < 0.4
    rules = Rules(
        there=(dice.choice([inf, float(dice.randint(20, 90))]),
               dice.choice([inf, float(dice.randint(10, 40))])),
        kept=float(dice.randint(0, 500)),
        per_contract=float(dice.randint(0, 400)),
        contracts=1 if within else dice.randint(1, 2),
        least=dice.choice([0.0, 600.0]),
        most=dice.choice([inf, 1500.0]),
        within_regions=within,
        together=dice.random() < 0.3,
        saving=dice.choice(["nothing", "contract", "programme"]),
        law=(dice.choice([0.1, 0.6]), dice.choice([300.0, 1e7]), 5.0),
    )  # fmt: skip
    return rows, rules


def test_split_is_the_best_of_all_there_are() -> None:
    dice = random.Random(20)
    none = bound = reached = 0
    for _ in range(80):
        rows, rules = invented(dice)
        best = searched(rows, rules)
        if best == inf:
            none += 1
            with pytest.raises(sc.InputError, match="delivery.no_split"):
                split_of(rows, rules)
            continue
        split = split_of(rows, rules)
        assert split.proven
        assert split.cost + split.saving_asked == pytest.approx(best, abs=1e-6), (rows, rules)
        assert split.parts.sum() == pytest.approx(split.cost)
        bound += best > searched(rows, replace(rules, there=(rules.there[0], inf))) + 1e-6
        unheld = replace(rules, law=(rules.law[0], 1e12, rules.law[2]))
        reached += best < searched(rows, unheld) - 1e-6
    assert 5 < none < 50
    assert bound > 3  # hours of the truck cost something
    assert reached > 1  # the most of a least saving is reached


HOUR = 3600.0
ROWS = [Row("N", 300.0, 700.0, 10 * HOUR, 4 * HOUR, 200.0),
        Row("S", 400.0, 450.0, 10 * HOUR, 9 * HOUR, 260.0)]  # fmt: skip


def test_hours_bind_and_are_worth_something() -> None:
    split = split_of(ROWS, Rules(there=(12 * HOUR, inf)))
    assert list(split.table["way"]) == ["in-house", "contract 1"]
    assert split.hours_used == pytest.approx(10.0)
    assert not split.fits_in_house
    assert split.all_in_house == pytest.approx(700.0)
    assert split.all_contract == pytest.approx(1150.0)
    assert split.capacity.loc["crew"].tolist() == pytest.approx([10.0, 12.0, 20.0])
    assert split.capacity.loc["bucket_truck"].tolist() == [4.0, inf, 13.0]
    # eight hours more bring the other one in: 50 saved
    worth = split.worth_of_hours("8 h")
    assert list(worth.index) == ["crew"]
    assert worth.at["crew", "saving"] == pytest.approx(50.0)
    assert worth.at["crew", "per_hour"] == pytest.approx(50.0 / 8.0)
    assert worth.at["crew", "saving_unlimited"] == pytest.approx(50.0)
    assert worth.at["crew", "used_unlimited"] == pytest.approx(20.0)
    assert split.worth_of_hours("1 h").at["crew", "saving"] == pytest.approx(0.0)
    with pytest.raises(sc.InputError, match=r"delivery\.more"):
        split.worth_of_hours("0 h")
    # with the truck short as well, hours of the crew alone are worth nothing
    both = split_of(ROWS, Rules(there=(12 * HOUR, 5 * HOUR)))
    assert both.worth_of_hours("8 h")["saving"].tolist() == pytest.approx([0.0, 0.0])


def test_a_least_saving_keeps_work_that_saves_less() -> None:
    # the south is 40 dearer with own people, and a fifth of its wages is 52
    rows = [ROWS[0], replace(ROWS[1], direct=490.0)]
    law = Rules(saving="contract", law=(0.2, 1e7, 1.0))
    split = split_of(rows, law)
    assert list(split.table["way"]) == ["in-house", "in-house"]
    assert list(split.without_law.table["way"]) == ["in-house", "contract 1"]
    table = split.law
    assert table.loc["cost"].tolist() == pytest.approx([750.0, 790.0])
    assert table.loc["saving"].tolist() == pytest.approx([40.0, 0.0])
    assert table.loc["saving_asked"].tolist() == pytest.approx([0.0, 0.0])
    # a lower share lets it go, and the saving is more than what is asked
    lower = split_of(rows, replace(law, law=(0.1, 1e7, 1.0)))
    assert lower.contracts == 1
    assert lower.saving == pytest.approx(40.0)
    assert lower.saving_asked == pytest.approx(26.0)
    assert "USD 26, each contract by itself" in repr(lower)


def test_no_split_says_what_stands_in_the_way() -> None:
    rows = [Row("N", 300.0, nan, HOUR, HOUR), Row("N", nan, 500.0, 0.0)]
    assert isnan(split_of(rows, Rules()).all_contract)
    with pytest.raises(sc.InputError, match="without the most of a contract one does"):
        split_of(rows, Rules(most=400.0))
    with pytest.raises(sc.InputError, match="without keeping regions together one does"):
        split_of(rows, Rules(together=True))
    with pytest.raises(sc.InputError, match="without the hours of the crew one does"):
        split_of(rows, Rules(there=(60.0, inf)))
    with pytest.raises(sc.InputError, match="without the hours of the bucket truck one does"):
        split_of(rows, Rules(there=(inf, 60.0)))
    with pytest.raises(sc.InputError, match="several rules"):
        split_of(rows, Rules(there=(60.0,), most=400.0))


def test_a_missing_solver_says_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(__import__("sys").modules, "scipy", None)
    with pytest.raises(sc.InputError, match=r"pip install 'scupper\[split\]'"):
        split_of(ROWS, Rules())


def test_equipment_hours_are_those_that_hire_is_paid_for() -> None:
    listed = sc.read_inventory(sc.demo_records()).select([f"TC-{n:04}" for n in range(1, 9)])
    job = sc.Job.demo().replace({"equipment[water_truck].number": "2 each"})
    times: Any = dict(_core.equipment_times(listed._core, job.plan, 1))
    needed = set()
    for name in ("combination_truck", "water_truck", "bucket_truck", "arrow_board"):
        free, paid = (
            sc.estimate_all(listed, job.replace({f"equipment[{name}].rate": f"{rate} USD/h"}))
            for rate in (0, 1)
        )
        hours = paid.to_pandas()["cost_equipment_usd"] - free.to_pandas()["cost_equipment_usd"]
        there = [t / HOUR for t in times[name] if not isnan(t)]
        assert there == pytest.approx(hours.tolist(), abs=1e-6)
        needed |= {bool(h) for h in there}
    assert needed == {True, False}
