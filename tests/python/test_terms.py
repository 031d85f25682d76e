"""Contract terms, hours by crew, show-up pay, frequency and calendar of a job, to every output."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path

import pytest

import scupper as sc
from scupper.workbook import workbook_bytes

TERMS = {
    "retainage": "10 %",
    "retainage_limit": "10 %",
    "retainage_release": "45 day",
    "payment_interval": "30 day",
    "interest": "6 %",
    "variation_limit": "25 %",
    "price_over": 0.9,
    "price_under": 1.2,
    "rates_of": "2026-01-15",
    "midpoint": "2027-01-15",
}
INPUTS = {
    "shift.cancelled": 0.1,
    "shift.show_up_time": "4 h",
    "escalation.rate": [0.02, 0.03, 0.06],
    "mobilization.pieces": 2,
    "mobilization.distance": "30 mi",
    "mobilization.price": "4 USD/mi",
    "mobilization.fixed": "60 USD",
    "mobilization.structures": 10,
}
PARTS = ["productive", "breaks", "waiting", "travel", "briefing", "closure", "meal", "standby"]


@pytest.fixture(scope="module")
def under_contract(job: sc.Job) -> sc.Job:
    document = job.to_dict()
    document["terms"] = TERMS
    document["frequency"] = {"drain": 2, "deck_top": "every 2 years"}
    document["inputs"] = document["inputs"] | INPUTS
    return sc.Job.from_dict(document)


@pytest.fixture(scope="module")
def priced(county: sc.Inventory, under_contract: sc.Job) -> sc.Estimate:
    return sc.estimate(county["TC-0001"], under_contract)


def test_every_term_has_a_line_that_is_explained_and_drawn(priced: sc.Estimate) -> None:
    by_operation = priced.cost.by("operation")
    for operation in ("mobilization", "escalation", "show_up"):
        assert by_operation[operation] > 0
    assert by_operation.sum() == pytest.approx(priced.cost.total)
    for key in ("cost.moving", "cost.escalation", "cost.show_up"):
        assert "shift" in str(priced.explain(key)) or "mobilization" in str(priced.explain(key))
    rates = priced.assumptions.set_index("key")["worth"]
    assert rates["escalation.rate"] > 0


def test_hours_by_crew_add_up(priced: sc.Estimate) -> None:
    table = priced.hours_table
    assert table[PARTS].sum(axis=1).to_numpy() == pytest.approx(table["paid"].to_numpy())
    assert (table["paid"] + table["unpaid_meal"]).to_numpy() == pytest.approx(
        table["elapsed"].to_numpy()
    )
    assert (table["show_up"] > 0).all()


def test_money_held_back_is_beside_the_price(
    priced: sc.Estimate, county: sc.Inventory, under_contract: sc.Job
) -> None:
    flow = priced.cash_flow
    assert flow.table["paid"].sum() == pytest.approx(priced.cost.total)
    assert flow.table["kept"].sum() == pytest.approx(0.1 * priced.cost.total)
    assert flow.held_cost > 0
    document = under_contract.to_dict()
    document["terms"] = {key: TERMS[key] for key in ("rates_of", "midpoint")}
    without = sc.estimate(county["TC-0001"], sc.Job.from_dict(document))
    assert without.cost.total == priced.cost.total


def test_varied_quantities_are_paid_by_the_clause(priced: sc.Estimate) -> None:
    table = priced.quantity_variation([0.5, 1.0, 1.25, 1.5])
    ratio = table["paid"] / table["planned"]
    expected = table["share"].map({0.5: 0.6, 1.0: 1.0, 1.25: 1.25, 1.5: 1.475})
    assert ratio.to_numpy() == pytest.approx(expected.to_numpy())


def test_a_year_goes_by_the_frequency_of_the_job(
    priced: sc.Estimate, county: sc.Inventory, under_contract: sc.Job
) -> None:
    one = [county["TC-0001"]]
    own = sc.year(one, under_contract)
    given = sc.year(one, under_contract, {"drain": 2, "deck_top": 0.5})
    assert own.total == given.total
    assert float(priced.annual["cost_total_usd"]) == own.total


def test_page_and_workbook_show_them(priced: sc.Estimate) -> None:
    openpyxl = pytest.importorskip("openpyxl")
    page = priced.page()
    for word in ("Hours of one person", "Retainage, beside the price", "A year"):
        assert word in page
    book = openpyxl.load_workbook(BytesIO(workbook_bytes(priced)))
    assert {"Hours", "Payments"} <= set(book.sheetnames)
    hours = book["Hours"]
    headings = [cell.value for cell in hours[3]]
    paid = hours.cell(4, headings.index("paid") + 1).value
    assert paid.startswith("=SUM(")


def test_outings_wait_for_notices_and_cold_days(county: sc.Inventory, job: sc.Job) -> None:
    document = job.to_dict()
    document["calendar"] = {"asked": "2027-03-01"}
    document["notices"] = [{"name": "permit", "days": 10, "when": ["always"]}]
    dated = sc.Job.from_dict(document)
    priced = sc.estimate(county["TC-0001"], dated)
    earliest = priced.schedule().earliest
    assert earliest is not None
    plan = sc.outings([county["TC-0001"]], dated, air={earliest: "30 degF"})
    assert plan.shifts["date"].min().date() > earliest
    lost = plan.lost_days
    assert {"before_notice", "too_cold"} <= set(lost["use"])
    assert plan.cash_flow.table["earned"].sum() == pytest.approx(plan.price)


def test_outings_take_show_up_pay_from_the_job(
    county: sc.Inventory, under_contract: sc.Job
) -> None:
    own = sc.outings([county["TC-0001"]], under_contract)
    given = sc.outings([county["TC-0001"]], under_contract, cancelled=0.1, show_up="4 h")
    none = sc.outings([county["TC-0001"]], under_contract, cancelled=0.0)
    assert own.cost["show_up"] == given.cost["show_up"] > 0
    assert none.cost["show_up"] == 0


def test_days_too_dark_are_lost(county: sc.Inventory, job: sc.Job) -> None:
    document = job.to_dict()
    document["inputs"] = document["inputs"] | {"shift.length": "16 h", "shift.window_time": "16 h"}
    document["sharing"] = "own_shifts"
    document["calendar"] = {"asked": "2026-11-02", "daylight": True}
    document["inputs"]["operation[deck_hand_line].time_per_unit"] = "100 ft2/h"
    priced = sc.estimate(county["TC-0001"], sc.Job.from_dict(document))
    days = priced.schedule().days.set_index("date")["use"]
    assert days.iloc[-1] == "work"
    assert "too_dark" in set(days)
    document["calendar"]["daylight"] = False
    by_lamp = sc.estimate(county["TC-0001"], sc.Job.from_dict(document))
    assert "too_dark" not in set(by_lamp.schedule().days["use"])
    assert by_lamp.cost.total == priced.cost.total


def test_a_part_of_a_built_up_rate_has_a_range_in_sheets_too(
    job: sc.Job, county: sc.Inventory, tmp_path: Path
) -> None:
    wage = {"built_up": {"cash": ["24 USD/h", "27 USD/h", "33 USD/h"], "fringe": "12 USD/h"}}
    ranged = job.replace({"labour[wash_crew].wage": wage})
    priced = sc.estimate(county["TC-0001"], ranged)
    worth = priced.assumptions.set_index("key")["worth"]
    assert worth["labour[wash_crew].wage"] > 0
    sheet = tmp_path / "rates.csv"
    sc.rates.RateBook.of_job(ranged).save(sheet)
    again = sc.estimate(county["TC-0001"], job.with_rates(sc.rates.read(sheet)))
    assert again.cost.total == pytest.approx(priced.cost.total)
