"""In-house or contract on the invented county."""

from __future__ import annotations

import csv
import json
from io import BytesIO
from pathlib import Path
from typing import Any

import numpy as np
import numpy_financial as npf
import openpyxl
import pytest

import scupper as sc
from scupper import _decide_command
from scupper.command_line import main

REFERENCE = Path(__file__).parents[1] / "reference"
#: Invented terms of an invented agency.
TERMS: dict[str, Any] = {
    "in_house.kept": "6000 USD",
    "in_house.ownership": "38000 USD",
    "in_house.rated_time": "900 h",
    "in_house.other_time": ["250 h", "400 h", "500 h"],
    "in_house.supervision": "8 %",
    "in_house.overhead": "12 %",
    "in_house.facilities": "5000 USD",
    "contract.preparation": "4500 USD",
    "contract.administration": "4 %",
    "contract.inspection": ["3 %", "6 %", "10 %"],
}


@pytest.fixture(scope="module")
def listed() -> sc.Inventory:
    return sc.read_inventory(sc.demo_records()).select(f"TC-{n:04}" for n in range(1, 25))


@pytest.fixture(scope="module")
def jobs() -> tuple[sc.Job, sc.Job]:
    own = sc.Job.demo().replace({f"margin.{m}": 0.0 for m in ("overhead", "profit", "bond")})
    let = sc.Job.demo().replace({"margin.overhead": 0.12, "margin.profit": 0.1})
    return own, let


@pytest.fixture(scope="module")
def decision(listed: sc.Inventory, jobs: tuple[sc.Job, sc.Job]) -> sc.delivery.Decision:
    return sc.delivery.decide(listed, *jobs, TERMS, draws=400, threads=1)


def test_terms_of_law_are_the_published_ones() -> None:
    with (REFERENCE / "cost" / "economy.csv").open(encoding="utf-8", newline="") as file:
        rows = {row["id"]: row for row in csv.DictReader(file)}
    share = sc.delivery.STATUTORY["contract.differential_share"]
    assert float(share.removesuffix(" %")) == float(rows["makebuy-001"]["expected"])
    most = sc.delivery.STATUTORY["contract.differential_most"]
    assert float(most.removesuffix(" USD")) == float(rows["makebuy-005"]["expected"])
    overhead = sc.delivery.terms().at["in_house.overhead", "source"]
    assert f"{rows['makebuy-006']['expected']} % in OMB Circular A-76" in overhead


def test_both_ways_are_the_prices_of_the_list(
    decision: sc.delivery.Decision, listed: sc.Inventory, jobs: tuple[sc.Job, sc.Job]
) -> None:
    lines = decision.to_pandas().set_index("line")["amount"]
    own, out = (sc.estimate_all(listed, job) for job in jobs)
    assert lines["direct"] == pytest.approx(own.total)
    assert lines["price"] == pytest.approx(out.total)
    # a PERT of 3, 6 and 10 % has its mean at (3 + 4 x 6 + 10) / 6
    assert lines["inspection"] == pytest.approx(0.37 / 6 * out.total)
    wages = own.total_of("cost.labour")[0]
    assert lines["overhead"] == pytest.approx(0.12 * wages)
    assert decision.avoidable == pytest.approx(own.total + 6000)
    assert decision.advantage == pytest.approx(decision.contract - decision.avoidable)
    assert decision.crew_hours == pytest.approx(own.total_of("hours.paid")[0])
    text = decision.explain().text()
    assert "advantage of own people" in text
    sources = decision.to_pandas().set_index("line")["source"]
    assert sources["inspection"].startswith("stated")
    assert sources["conversion"].startswith("not given")


def test_the_choice_turns_where_it_says(
    decision: sc.delivery.Decision, listed: sc.Inventory, jobs: tuple[sc.Job, sc.Job]
) -> None:
    key = "in_house.kept"
    (at,) = decision.flips_at(key)
    there = sc.delivery.decide(listed, *jobs, {**TERMS, key: f"{at!r} USD"}, threads=1)
    assert there.advantage == pytest.approx(0.0, abs=1e-6)
    assert decision.sensitivity.loc["contract.inspection", "given"]
    assert list(decision.flips["away"]) == sorted(decision.flips["away"])
    travel = decision.job_break_even("shift.travel_time", "0 h", "4 h", jobs="in_house", parts=4)
    for hours in travel:
        moved = jobs[0].replace({"shift.travel_time": f"{hours!r} h"})
        turned = sc.delivery.decide(listed, moved, jobs[1], TERMS, threads=1)
        assert abs(turned.advantage) < 0.002 * turned.contract
    assert travel


def test_the_same_draws_serve_both_ways(
    decision: sc.delivery.Decision, listed: sc.Inventory, jobs: tuple[sc.Job, sc.Job]
) -> None:
    chance = decision.chance["value"]
    assert 0 <= chance["cheaper"] <= 1
    regrets = chance["regret_contract"] - chance["regret_in_house"]
    assert chance["advantage"] == pytest.approx(regrets)
    assert chance["information"] == pytest.approx(
        min(chance["regret_contract"], chance["regret_in_house"])
    )
    # a job against itself at the same prices differs in nothing but the terms: no spread at all
    same = sc.delivery.decide(listed, jobs[0], jobs[0], {"contract.preparation": "100 USD"},
                              draws=20, threads=1)  # fmt: skip
    assert same.advantages == pytest.approx(np.full(20, 100.0), abs=1e-4)
    swings = decision.job_swings
    assert (swings["at_high"] - swings["at_low"]).abs().is_monotonic_decreasing


def test_split_of_the_list(decision: sc.delivery.Decision) -> None:
    free = decision.split()
    assert free.over == "nothing"
    half = decision.split(f"{decision.crew_hours / 2!r} h")
    assert half.hours_used <= decision.crew_hours / 2 + 1e-6
    assert half.cost >= free.cost - 1e-6
    assert half.cost <= half.all_contract + 1e-6
    yard = {"bucket_truck": "20 h", "water_truck": "45 h"}
    short = decision.split("60 h", equipment=yard)
    assert (short.capacity["used"] <= short.capacity["available"] + 1e-6).all()
    assert list(short.worth.index) == ["crew", "water_truck", "bucket_truck"]
    assert (short.worth["saving_unlimited"] >= short.worth["saving"] - 1e-6).all()
    assert short.worth["saving"].max() > 0
    with pytest.raises(sc.UnknownNameError, match="bucket_truck"):
        decision.split(equipment={"bucket_trck": "20 h"})
    with pytest.raises(sc.UnknownNameError, match="programme"):
        decision.split(saving_over="list")
    counties = decision.split(by="district", within=True, together=True)
    assert counties.table.groupby("region")["way"].nunique().max() == 1
    with pytest.raises(sc.UnknownNameError):
        decision.split(size="weight")
    with pytest.raises(sc.UnknownNameError):
        decision.split(by="parish")


def test_a_least_saving_by_law_in_the_split(
    decision: sc.delivery.Decision,
    listed: sc.Inventory,
    jobs: tuple[sc.Job, sc.Job],
    tmp_path: Path,
) -> None:
    terms = {**TERMS, **sc.delivery.STATUTORY, "contract.differential_share": "25 %"}
    law = sc.delivery.decide(listed, *jobs, terms, draws=20, threads=1)
    held, free = law.split("60 h"), decision.split("60 h")
    assert held.without_law.cost == pytest.approx(free.cost)
    out = held.table["way"] != "in-house"
    columns = law._ways.columns["wages"][law._ways.either]
    asked = 0.25 * 1.08 * columns[out.to_numpy()].sum()
    assert held.saving_asked == pytest.approx(asked)
    assert held.cost >= free.cost - 1e-6
    assert held.cost + held.saving_asked <= free.cost + 0.25 * 1.08 * (
        columns[(free.table["way"] != "in-house").to_numpy()].sum()
    ) + 1e-6  # fmt: skip
    row = held.out.loc["contract 1"]
    assert row["asked"] == pytest.approx(held.saving_asked)
    assert row["saved"] == pytest.approx(row["in_house"] - row["by_contract"])
    assert row["in_house"] + held.parts["in_house"] + held.parts["kept"] == pytest.approx(
        held.all_in_house
    )
    law.page(tmp_path / "law.html", held)
    page = (tmp_path / "law.html").read_text(encoding="utf-8")
    assert "least saving by law, each contract by itself" in page
    assert law.split("60 h", saving_over="nothing").cost == pytest.approx(free.cost)


def test_paper_workbook_and_command(
    decision: sc.delivery.Decision, jobs: tuple[sc.Job, sc.Job], tmp_path: Path
) -> None:
    split = decision.split("60 h", equipment={"water_truck": "45 h"})
    decision.page(tmp_path / "page.html", split)
    page = (tmp_path / "page.html").read_text(encoding="utf-8")
    assert decision.recommendation in page
    assert split.verdict in page
    assert page.index("Invented data") < page.index(decision.recommendation)
    assert "hours of the crew where there are 60" in page
    for structure in split.table["structure_id"]:
        assert structure in page
    assert "What would turn it" in page
    decision.save_workbook(tmp_path / "book.xlsx", split)
    sheet = openpyxl.load_workbook(BytesIO((tmp_path / "book.xlsx").read_bytes()))["Both ways"]
    formulas = [c.value for row in sheet.iter_rows() for c in row if str(c.value).startswith("=")]
    assert len(formulas) == 5
    hours = openpyxl.load_workbook(BytesIO((tmp_path / "book.xlsx").read_bytes()))["Hours"]
    assert [hours.cell(row, 1).value for row in (4, 5)] == ["crew", "combination_truck"]
    assert hours.cell(4, 3).value == 60
    own, let = tmp_path / "own.json", tmp_path / "let.json"
    for path, job in zip((own, let), jobs, strict=True):
        job.save(path)
    (tmp_path / "terms.json").write_text(json.dumps(TERMS), encoding="utf-8")
    code = main([
        "decide", str(sc.demo_records()), "--job", str(own), "--contract", str(let), "--terms",
        str(tmp_path / "terms.json"), "--select", "TC-0001,TC-0002,TC-0003", "--draws", "40",
        "--hours", "9 h", "--equipment", "water_truck=8 h", "--out", str(tmp_path / "command.html"),
    ])  # fmt: skip
    assert code == 0
    page = (tmp_path / "command.html").read_text(encoding="utf-8")
    assert "In-house or contract" in page
    assert "hours of the water truck where there are 8" in page
    with pytest.raises(sc.InputError, match="bucket_truck"):
        _decide_command._hours_of("8 h")


def test_refusals(listed: sc.Inventory, jobs: tuple[sc.Job, sc.Job]) -> None:
    for terms, error in [
        ({"contract.inspektion": "6 %"}, sc.UnknownNameError),
        ({"work.area": "100 ft2"}, sc.InputError),
        ({"contract.inspection": "6 USD"}, sc.UnitError),
        ({"contract.inspection": "-6 %"}, sc.InputError),
        ({"in_house.kept": "6000 EUR"}, sc.UnitError),
        ({"in_house.kept": ["3 USD", "2 USD", "1 USD"]}, sc.InputError),
        ({"in_house.ownership": "100 USD"}, sc.InputError),
    ]:
        with pytest.raises(error):
            sc.delivery.decide(listed, *jobs, terms)
    with pytest.raises(sc.UnknownNameError):
        sc.delivery.decide(listed, *jobs, basis="half")
    with pytest.raises(sc.InputError):
        sc.delivery.decide([], *jobs)


def test_money_at_different_times_against_numpy_financial() -> None:
    for interest in (-0.016, 0.03, 0.12):
        for years in (1, 5, 12):
            pmt = -npf.pmt(interest, years, 1000.0)
            recovery = sc.cost.capital_recovery_factor(interest, years)
            assert recovery * 1000 == pytest.approx(pmt)
            assert sc.cost.series_amount_factor(interest, years) == pytest.approx(
                -npf.fv(interest, years, 1.0, 0.0)
            )
            flows = [-1000.0, *np.linspace(90.0, 300.0, years)]
            assert sc.delivery.net_present_value(
                flows, interest, prices="real", rate_of="real"
            ) == pytest.approx(npf.npv(interest, flows))
            cost = sc.delivery.annual_cost("1000 USD", years, loses=0.2, interest=interest)
            sold = 1000.0 * 0.8**years
            assert cost == pytest.approx(-npf.pmt(interest, years, 1000.0, -sold))
    with pytest.raises(sc.InputError, match="inflation"):
        sc.delivery.net_present_value([1.0], 0.03, prices="nominal", rate_of="real")


def test_equipment_and_season() -> None:
    life = sc.delivery.economic_life("120000 USD", operating="9000 USD", growth="4000 USD")
    assert life["annual_cost"].idxmin() == life.index[life["least"]][0]
    rates = sc.delivery.discount_rates()
    assert set(rates["edition"]) == {2003, 2021}
    assert sc.delivery.discount_rate(4, edition=2003) == pytest.approx(0.0175)
    season = sc.delivery.available_time(2, 90, "10 h", leave="10 %", lost=0.2)
    assert season.to("h").magnitude == pytest.approx(2 * 90 * 10 * 0.72)
    assert sc.delivery.one_way_distance("1 h", "40 mph").to("mile").magnitude == pytest.approx(20)
    assert "in_house.overhead" in sc.delivery.terms().index


def test_hours_by_crew_add_up(listed: sc.Inventory, jobs: tuple[sc.Job, sc.Job]) -> None:
    few = [listed[i] for i in range(4)]
    table = sc.delivery.hours_by_crew(few, jobs[0])
    whole = sc.estimate_all(few, jobs[0])
    assert table["paid"].sum() == pytest.approx(whole.total_of("hours.paid")[0])


def test_two_ways_that_cost_the_same_are_called_so(listed: sc.Inventory) -> None:
    job = sc.Job.demo()
    even = sc.delivery.decide(listed.select(["TC-0001"]), job, job, draws=20, threads=1)
    assert even.advantage == 0.0
    assert "both cost the same" in repr(even)
