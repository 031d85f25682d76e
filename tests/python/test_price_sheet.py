"""The price of a contract on paper and as a workbook, its guesses, ranges and short nozzles."""

from __future__ import annotations

from pathlib import Path

import openpyxl
import pytest

import scupper as sc
from scupper._price_facts import PARTS


@pytest.fixture(scope="module")
def offer(job: sc.Job) -> sc.Job:
    margins = {"overhead": 0.12, "profit": 0.08, "bond": 0.01, "contingency": 0.07}
    return job.replace({f"margin.{name}": share for name, share in margins.items()})


@pytest.fixture(scope="module")
def contract(county: sc.Inventory, offer: sc.Job) -> sc.Programme:
    return sc.estimate_all(county.select([f"TC-{n:04}" for n in range(1, 16)]), offer)


def test_the_parts_of_a_price_add_up(contract: sc.Programme) -> None:
    parts = sum(contract.total_of(key)[0] for key in PARTS)
    assert parts == pytest.approx(contract.total, rel=1e-9)


def test_the_sheet_names_every_structure_and_what_is_not_in_it(contract: sc.Programme) -> None:
    page = contract.price_sheet()
    for row in contract.to_pandas().to_dict("records"):
        assert row["structure_id"] in page
        assert f"{row['cost_total_usd']:,.0f}" in page
    for row in contract.unpriced.to_dict("records"):
        assert row["structure_id"] in page
    assert f"USD {contract.total:,.0f}" in page
    assert contract.guesses.iloc[0]["label"] in page
    assert "overhead on direct cost</b> 12.0%" in page
    assert "no safety plan" in page


def test_the_workbook_adds_up_as_the_engine_does(contract: sc.Programme, tmp_path: Path) -> None:
    contract.save_price_workbook(tmp_path / "price.xlsx")
    live = openpyxl.load_workbook(tmp_path / "price.xlsx")
    kept = openpyxl.load_workbook(tmp_path / "price.xlsx", data_only=True)
    prices = live["Prices"]
    last = 3 + contract.counts["priced"] + 1
    assert str(prices.cell(last, prices.max_column).value).startswith("=SUM(")
    assert str(prices.cell(4, prices.max_column).value).startswith("=SUM(")
    table = kept["Prices"]
    rows = [[c.value for c in row] for row in table.iter_rows(min_row=4, max_row=last - 1)]
    for row in rows:  # direct, overhead, profit, bond and contingency stand before the price
        assert sum(row[6:-1]) == pytest.approx(row[-1])
    assert sum(row[-1] for row in rows) == pytest.approx(contract.total)
    assert table.cell(last, table.max_column).value == pytest.approx(contract.total)
    costs = kept["Unit costs"]
    whole = next(row for row in costs.iter_rows(values_only=True) if row[0] == "structure")
    assert whole[6] == pytest.approx(contract.total)
    assert whole[7] == pytest.approx(whole[6] / whole[1])


def test_a_text_is_no_formula(county: sc.Inventory, offer: sc.Job, tmp_path: Path) -> None:
    named = sc.estimate_all(county.select(["TC-0001"]), offer.replace(name="=1+1"))
    named.save_price_workbook(tmp_path / "price.xlsx")
    assert "=1+1" in str(openpyxl.load_workbook(tmp_path / "price.xlsx")["Prices"]["A1"].value)


def test_guesses_are_ordered_by_what_they_move(contract: sc.Programme) -> None:
    guesses = contract.guesses
    assert list(guesses.columns) == ["key", "label", "structures", "worth", "total_at_low",
                                     "total_at_high"]  # fmt: skip
    assert guesses["worth"].is_monotonic_decreasing
    moved = (guesses["total_at_high"] - guesses["total_at_low"]).abs()
    assert list(moved) == pytest.approx(list(guesses["worth"]))
    assert guesses["structures"].max() == contract.counts["priced"]


def test_quantiles_are_ordered_and_say_their_error(contract: sc.Programme) -> None:
    ranges = contract.ranges(draws=256, quantiles=[0.2, 0.5, 0.8])
    cost = ranges.loc["cost.total"]
    assert cost["P20"] < cost["P50"] < cost["P80"]
    assert cost["P80"] == contract.quantile(0.8, draws=256)
    assert 0 < cost["P50_error"] < cost["P80"] - cost["P20"]
    more = contract.ranges(draws=4096, quantiles=[0.5]).loc["cost.total"]
    assert more["P50_error"] == pytest.approx(cost["P50_error"] / 4, rel=0.5)
    assert abs(more["P50"] - cost["P50"]) < 4 * cost["P50_error"]
    with pytest.raises(sc.InputError, match="0 to 1"):
        contract.quantile(80)
    with pytest.raises(sc.InputError, match="draws"):
        contract.ranges(draws=0)
    with pytest.raises(sc.UnknownNameError, match=r"cost\.total"):
        contract.quantile(0.8, "cost.totl")


def test_nozzles_that_fall_short_stand_with_their_remedy(
    county: sc.Inventory, offer: sc.Job
) -> None:
    long = sc.estimate_all(county.select(["TC-0001", "TC-0002"]),
                           offer.replace({"hose[supply].length": "900 ft"}))  # fmt: skip
    short = long.shortfalls
    assert set(short["structure_id"]) == {"TC-0001", "TC-0002"}
    one = sc.estimate(county["TC-0001"], long.job)
    row = short.set_index("structure_id").loc["TC-0001"]
    assert row["remedy"] == one.remedies.iloc[0]["remedy"]
    assert row["change"] == pytest.approx(one.remedies.iloc[0]["change"])
    assert "Nozzles that fall short" in long.price_sheet()


def test_a_contract_without_a_price_has_a_sheet_too(county: sc.Inventory, offer: sc.Job) -> None:
    culvert = sc.estimate_all(county.select(["TC-0037"]), offer)
    assert culvert.counts["priced"] == 0
    assert "Not in the price" in culvert.price_sheet()
    assert culvert.guesses.empty
    assert culvert.shortfalls.empty


def test_the_estimate_workbook_has_unit_costs(estimate: sc.Estimate, tmp_path: Path) -> None:
    estimate.save_workbook(tmp_path / "one.xlsx")
    sheet = openpyxl.load_workbook(tmp_path / "one.xlsx", data_only=True)["Unit costs"]
    rows = {row[0]: row for row in sheet.iter_rows(min_row=4, values_only=True)}
    for name, row in estimate.unit_costs.iterrows():
        assert rows[str(name).replace("_", " ")][6] == pytest.approx(row["total"])
    drain = estimate.unit_costs.loc["drain"]
    assert rows["drain"][7] == pytest.approx(drain["per_unit"])
