"""Bids of the invented county: checked, compared, out of balance, on paper and in a workbook."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import openpyxl
import pandas as pd
import pytest
from workbooks import needs_spreadsheet, recalculated

import scupper as sc
from scupper.command_line import main

FORMS = [sc.demo_bids() / f"{name}.csv" for name in ("alder", "birch", "cedar", "elm", "engineer")]
FORMS.insert(3, sc.demo_bids() / "dogwood.xlsx")
RANGES = sc.demo_bids() / "quantity_ranges.csv"


@pytest.fixture(scope="module")
def review() -> sc.bids.BidReview:
    return sc.bids.review(sc.read_bids(FORMS), ranges=sc.bids.read_ranges(RANGES))


def test_the_slip_is_found_and_the_low_bidder_changes(review: sc.bids.BidReview) -> None:
    summary = review.summary
    elm, cedar = "Elm (invented)", "Cedar (invented)"
    assert summary.loc[elm, "as_read"] == Decimal("267588.06")
    assert summary.loc[elm, "corrected"] == Decimal("284156.70")
    assert summary["rank_as_read"].idxmin() == elm
    assert review.low == cedar
    slip = review.findings.query("kind == 'extension_differs'").iloc[0]
    assert (slip["bidder"], slip["item"], slip["file"]) == (elm, "GIRDER-END", "elm.csv")
    assert "factor of 10" in slip["text"]
    assert slip["line"] > 0
    by_extension = sc.bids.review(sc.read_bids(FORMS), governs="extension")
    assert by_extension.low == elm
    assert review.spread["left_on_the_table"] == Decimal("1716.11")


def test_every_sum_is_the_sum_of_its_items(review: sc.bids.BidReview) -> None:
    base = review.items["kind"] == "base"
    for bidder in review.bidders:
        prices = review.prices(bidder)
        assert prices.loc[base, "extension"].sum() == review.summary.loc[bidder, "corrected"]
        product = prices["price"] * review.items["quantity"]
        assert list(prices["extension"]) == [p.quantize(Decimal("0.01")) for p in product]
    medians = review.table("price").astype(float).median(axis=1)
    assert medians.to_list() == pytest.approx(review.items["median"].astype(float).to_list())


def test_the_bid_out_of_balance_is_the_one_that_was_made_so(review: sc.bids.BidReview) -> None:
    flags = review.unbalanced()
    cedar = flags[flags["bidder"] == "Cedar (invented)"]
    assert dict(zip(cedar["item"], cedar["kind"], strict=True)) == {
        "MOB": "above",
        "DRAIN-OPEN": "above",
        "DEBRIS-HAUL": "token",
    }
    assert len(flags) == 3
    assert flags["ask"].str.contains("owner may").all()
    months = {code: [0.0, 0.5, 0.5] for code in review.items.index}
    months["MOB"] = [1.0, 0.0, 0.0]
    early = {b: review.early_payment(b, months, 0.005) for b in review.bidders}
    assert max(early, key=lambda b: early[b]["gain"]) == "Cedar (invented)"
    assert early["Cedar (invented)"]["paid"][-1] == pytest.approx(1.0)


def test_crossovers_and_their_chance(review: sc.bids.BidReview) -> None:
    ties = review.crossovers.query(
        "in_range and item == 'DRAIN-OPEN' and other == 'Elm (invented)'"
    )
    tie = Decimal(f"{ties['quantity'].iloc[0]:.4f}")
    before, beyond = (review.totals_at({"DRAIN-OPEN": tie + step}) for step in (-1, 1))
    assert before["Cedar (invented)"] < before["Elm (invented)"]
    assert beyond["Cedar (invented)"] > beyond["Elm (invented)"]
    drains = review.draw_quantities(20_000, seed=3)[["DRAIN-OPEN"]]
    found = review.reversal(drains)
    nearest = review.crossovers.query("in_range and upward and item == 'DRAIN-OPEN'")["quantity"]
    share = (drains["DRAIN-OPEN"] > nearest.min()).mean()
    assert found["chance"] == pytest.approx(share)
    assert found["lowest"].sum() == pytest.approx(1.0)
    assert review.reversal()["chance"] == review.reversal()["chance"] > 0


def test_alternates_and_days_change_who_is_low(review: sc.bids.BidReview) -> None:
    low = review.stages.query("rank == 1").set_index("stage")["bidder"]
    assert low["base"] == "Cedar (invented)"
    assert low["base + RAIL-WASH"] == "Elm (invented)"
    timed = review.with_time("900")
    assert timed["rank"].idxmin() == "Elm (invented)"
    assert timed.loc["Elm (invented)", "sum"] == Decimal("284156.70") + 66 * 900


def test_a_day_costs_what_its_closures_cost_the_road_users(
    review: sc.bids.BidReview,
) -> None:
    inventory = sc.read_inventory(sc.demo_records())
    chosen = inventory.select(["TC-0003", "TC-0014", "TC-0021"])
    programme = sc.estimate_all(chosen, sc.Job.demo())
    cost = sc.bids.daily_cost(programme)
    users = [one.road_users for one in programme.estimates()]
    total, shifts = sum(u.total for u in users), programme.to_pandas()["shifts"].sum()
    assert cost.amount == round(Decimal(total / shifts), 2) > 0
    said = repr(cost)
    for part in (
        f"{cost.closures:.0f} closures",
        "value of a car's time: 23.67 USD/h",
        "FHWA-SA-98-079",
        ":00",
    ):
        assert part in said
    timed = review.with_time(programme)
    assert timed.attrs["daily_cost"] == cost
    for _, row in timed.iterrows():  # by hand, exactly
        assert row["sum"] == row["corrected"] + row["days"] * cost.amount
    assert review.with_time(cost.amount).equals(timed)
    # The second part is in proportion to the cost of a day.
    double = review.with_time(2 * cost.amount)
    time_of = {cost: table["sum"] - table["corrected"] for cost, table in ((1, timed), (2, double))}
    assert (time_of[2] == 2 * time_of[1]).all()
    one = next(programme.estimates())
    assert sc.bids.daily_cost(one).amount == round(Decimal(one.road_users.per_closure), 2)
    assert sc.bids.daily_cost(one) == sc.bids.daily_cost(one.road_users)
    for wrong, found in (("dear", "bid.daily_cost"), (sc.bids.DailyCost(cost.amount, "EUR"),
                                                      "bid.currency")):  # fmt: skip
        with pytest.raises(sc.InputError) as refused:
            review.with_time(wrong)
        assert refused.value.id == found
    nobody = one.job.replace(closure="none")
    with pytest.raises(sc.InputError, match="no closure"):
        sc.bids.daily_cost(sc.estimate(one.structure, nobody))


def test_tables_and_bad_words() -> None:
    items = pd.DataFrame({"code": ["A", "B"], "unit": ["EA", "LS"], "quantity": ["10", "1"]})
    prices = {"x": ["1.00", "5"], "y": ["2.00", None]}
    bids = {b: pd.DataFrame({"code": ["A", "B"], "unit_price": p}) for b, p in prices.items()}
    review = sc.bids.review(sc.bids.from_frames(items, bids))
    assert review.low == "x"
    assert review.summary.loc["y", "corrected"] is None
    assert review.findings.query("bidder == 'y'")["kind"].to_list() == ["missing_price", "no_total"]
    assert "none" in repr(review)
    with pytest.raises(sc.UnknownNameError):
        sc.bids.review(sc.bids.from_frames(items, bids), governs="whim")
    with pytest.raises(sc.UnknownNameError, match="bid.bidder"):
        review.prices("z")
    with pytest.raises(sc.InputError, match="bid.reference"):
        review.unbalanced("estimate")
    ranges = pd.DataFrame({"code": ["A"], "low": ["11"], "high": ["12"]})
    beside = sc.bids.review(sc.bids.from_frames(items, bids | {"z": bids["x"]}), ranges=ranges)
    with pytest.raises(sc.InputError, match="bid.range"):
        _ = beside.crossovers


def test_the_sheet_says_who_and_why_without_colour(
    review: sc.bids.BidReview, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    page = tmp_path / "award.html"
    forms = [str(form) for form in FORMS]
    assert (
        main(["bids", *forms, "--ranges", str(RANGES), "--daily-cost", "900", "--out", str(page)])
        == 0
    )
    said = capsys.readouterr().out
    assert "is not the low bid at the end" in said
    text = page.read_text(encoding="utf-8")
    assert "Low as read: Elm (invented). Low as corrected: Cedar (invented)" in text
    assert text.count("<svg") == 3
    assert "Cost plus time" in text
    assert "USD 900 a day, as given." in text
    assert "▲" in text
    assert "the agency decides" in text
    assert main(["bids", str(tmp_path / "none.csv")]) == 2


@needs_spreadsheet
def test_the_workbook_figures_the_same(review: sc.bids.BidReview, tmp_path: Path) -> None:
    path = tmp_path / "award.xlsx"
    review.save(path, time=review.with_time("744.12"))
    cached = openpyxl.load_workbook(path, data_only=True)
    live = recalculated(path)
    for sheet in ("Award", "Items", "Crossovers", "Cost plus time"):
        for row in cached[sheet].iter_rows():
            for cell in row:
                value = live[sheet][cell.coordinate].value or None
                expected = cell.value or None
                if isinstance(expected, int | float):
                    expected = pytest.approx(expected)
                assert value == expected, f"{sheet} {cell.coordinate}"
