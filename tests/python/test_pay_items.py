"""Pay items and bid forms: items add up, a form that is sent comes back, doubts are said."""

from __future__ import annotations

import csv
import json
from decimal import ROUND_HALF_UP, Decimal
from pathlib import Path

import openpyxl
import pytest

import scupper as sc
from scupper.command_line import main

REFERENCE = Path(__file__).resolve().parents[1] / "reference/bid"
INDIRECT = ("traffic_control", "supply", "disposal", "visit", "indirect")
CENT = Decimal("0.01")
PARTS = ["deck_top", "gutter", "drain", "joint", "girder", "cap", "bearing", "column"]


@pytest.fixture(scope="module")
def programme() -> sc.Programme:
    inventory = sc.read_inventory(sc.demo_records())
    job = sc.Job.demo().replace(service=dict.fromkeys(PARTS, "full_clean"))
    job = job.replace({"margin.overhead": 0.12, "margin.profit": 0.08, "margin.bond": 0.01})
    return sc.estimate_all(inventory.select([f"TC-{n:04}" for n in range(1, 9)]), job)


def cents(items: sc.PayItems) -> Decimal:
    rows = items.to_pandas()
    products = (rows["quantity"] * rows["unit_price"]).map(
        lambda exact: exact.quantize(CENT, ROUND_HALF_UP)
    )
    assert (products == rows["extension"]).all()
    return sum(products, Decimal())


@pytest.mark.parametrize("contract", ["by_quantity", "by_structure"])
@pytest.mark.parametrize("mobilization", ["item", "spread"])
def test_extensions_add_up_to_the_price_to_the_cent(
    programme: sc.Programme, contract: str, mobilization: str
) -> None:
    items = sc.bids.pay_items(programme, contract=contract, mobilization=mobilization, draws=32)
    price = Decimal(repr(programme.total)).quantize(CENT, ROUND_HALF_UP)
    assert cents(items) == items.total
    assert items.estimated == price
    assert items.total - items.residue == price
    if mobilization == "item" or contract == "by_structure":
        assert items.residue == 0
    lines = sum(items.explain(code)["amount"].sum() for code in items.to_pandas()["code"])
    assert lines == pytest.approx(float(items.total), abs=0.01)


def test_random_jobs_reconcile() -> None:
    """Scope, ways, margins and decimals at random: nothing is left over, cents agree."""
    import numpy as np

    rng = np.random.default_rng(7)
    inventory = sc.read_inventory(sc.demo_records())
    for _ in range(6):
        chosen = rng.choice(PARTS, size=rng.integers(2, len(PARTS)), replace=False)
        job = sc.Job.demo().replace(service=dict.fromkeys(chosen.tolist(), "full_clean"))
        job = job.replace({"margin.overhead": float(rng.uniform(0, 0.3)), "margin.profit": 0.1})
        ids = [f"TC-{n:04}" for n in rng.choice(range(1, 40), size=4, replace=False)]
        priced = sc.estimate_all(inventory.select(ids), job)
        if not priced.total > 0:
            continue
        decimals = int(rng.integers(0, 5))
        items = sc.bids.pay_items(priced, price_decimals=decimals, traffic="day", draws=8)
        price = Decimal(repr(priced.total)).quantize(CENT, ROUND_HALF_UP)
        assert cents(items) - items.residue == price


def test_the_shipped_list_takes_every_cost_line_of_every_component() -> None:
    inventory = sc.read_inventory(sc.demo_records())
    known = sc.job_schema()["properties"]["service"]["properties"]
    service = [part for part in known if part not in INDIRECT]
    everything = sc.Job.demo().replace(service=dict.fromkeys(service, "full_clean"))
    for job in (everything, everything.replace(wash_water="collect", work_time="night")):
        priced = sc.estimate_all(inventory, job)
        assert priced.counts["priced"] > 100
        items = sc.bids.pay_items(priced, draws=0)
        assert float(items.estimated) == pytest.approx(priced.total, abs=0.01)
        assert items.residue == 0


def test_an_own_list_is_taken_and_its_faults_are_named(
    programme: sc.Programme, tmp_path: Path
) -> None:
    path = tmp_path / "items.json"
    whole = {"code": "ALL", "description": "All work", "unit": "EA", "driver": "visit_count",
             "covers": [{"component": PARTS + ["disposal", "traffic_control"]}]}  # fmt: skip
    rest = {"covers": [{"component": ["indirect", "supply", "visit"]}]}
    document = {"scupper_items": 1, "items": [whole], "spread": [rest]}
    path.write_text(json.dumps(document, indent=1), encoding="utf-8")
    items = sc.bids.pay_items(programme, path, draws=0)
    assert items.to_pandas().loc[0, "quantity"] == programme.counts["priced"]
    assert items.residue == items.total - items.estimated
    document["spread"] = []
    path.write_text(json.dumps(document, indent=1), encoding="utf-8")
    with pytest.raises(sc.InputError, match="left over: .*visit/") as left:
        sc.bids.pay_items(programme, path, draws=0)
    assert left.value.id == "bid.left_over"
    whole["unit"] = "ACRE"
    path.write_text(json.dumps(document, indent=1), encoding="utf-8")
    with pytest.raises(sc.UnknownNameError, match=r"items\.json:\d+ items\[0\]\.unit"):
        sc.bids.pay_items(programme, path)


@pytest.mark.parametrize("ending", ["xlsx", "csv"])
def test_a_blank_form_that_is_filled_in_reads_back(
    programme: sc.Programme, tmp_path: Path, ending: str
) -> None:
    items = sc.bids.pay_items(programme, draws=16)
    form = tmp_path / f"form.{ending}"
    items.blank_form(form)
    rows = items.to_pandas()
    if ending == "xlsx":
        book = openpyxl.load_workbook(form)
        sheet = book.active
        sheet["B2"] = "Ash (invented)"
        for at, price in enumerate(rows["unit_price"], 4):
            sheet.cell(at, 5).value = float(price)
            sheet.cell(at, 6).value = float(rows["extension"][at - 4])
        book.save(form)
    else:
        lines = form.read_text(encoding="utf-8").splitlines()
        lines[1] = "Bidder:,Ash (invented)"
        for at, price in enumerate(rows["unit_price"], 3):
            lines[at] = lines[at].removesuffix(",,") + f',"${price:,}",{rows["extension"][at - 3]}'
        form.write_text("\n".join(lines), encoding="utf-8")
    bids = sc.read_bids(form)
    assert bids.bidders == ["Ash (invented)"]
    assert list(bids.items["code"]) == list(rows["code"])
    assert list(bids.items["quantity"]) == list(rows["quantity"])
    read = bids.lines("Ash (invented)")
    assert list(read["unit_price"]) == list(rows["unit_price"])
    assert list(read["extension"]) == list(rows["extension"])
    unfilled = {"a total without an amount in a bidder's column",
                "a formula that was never computed"}  # fmt: skip
    assert set(bids.doubts["why"]) <= unfilled


def test_open_bid_data_is_read_whole() -> None:
    """Real tabulation, names dropped; totals of the columns are sums of the file's own rows."""
    bids = sc.read_bids(REFERENCE / "bidtab_sample.csv")
    assert bids.bidders == ["A", "B", "C"]
    assert bids.core.engineer is not None
    lines = bids.lines("B")
    assert sum(lines["extension"]) == sum(lines["quantity"] * lines["unit_price"])
    assert len(bids.items) == 33
    assert bids.other_rows.empty
    assert "34 items" not in bids.preview


def test_what_is_doubtful_is_listed_with_its_cell(tmp_path: Path) -> None:
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Bid"
    for row in (
        ["Tamarack County (invented), form of bid"],
        ["Bidder: Elm (invented)"],
        ["Item", "Description", "Unit", "Quantity", "Unit Price", "Amount"],
        [1, "Deck", "SF", 12500, 1 / 3, "$4,166.67"],
        [2, "Drains", None, 40, "85,5", 3420],
        ["", "Sub-total", None, None, None, 7170],
        [3, "Credit", "LS", 1, "(250.00)", -250],
        ["", "Total", None, None, None, "$6,920.00"],
        ["See our letter."],
    ):
        sheet.append(row)
    sheet.merge_cells("A1:F1")
    book.save(tmp_path / "elm.xlsx")
    bids = sc.read_bids(tmp_path / "elm.xlsx")
    found = [tuple(row) for row in bids.doubts[["line", "column", "taken"]].itertuples(index=False)]
    assert found == [(4, "E", "0.333333"), (5, "C", "nothing"), (5, "E", "nothing"),
                     (7, "E", "-250.00")]  # fmt: skip
    assert bids.totals["Elm (invented)"] == Decimal(6920)
    assert list(bids.other_rows["taken_for"]) == ["title", "title", "subtotal", "total", "note"]
    assert "headings in line 3" in bids.preview
    with pytest.raises(sc.InputError) as refused:
        sc.read_bids([tmp_path / "elm.xlsx", tmp_path / "elm.xlsx"])
    assert refused.value.id == "bid.bidder"
    (tmp_path / "empty.csv").write_text("nothing,here\n", encoding="utf-8")
    with pytest.raises(sc.InputError) as headless:
        sc.read_bids(tmp_path / "empty.csv")
    assert headless.value.id == "bid.header"
    (tmp_path / "map.json").write_text('{"scupper_form": 1,\n "rows": 3}', encoding="utf-8")
    with pytest.raises(sc.UnknownNameError, match=r"map\.json:2"):
        sc.read_bids(tmp_path / "empty.csv", tmp_path / "map.json")


def _tabulation() -> openpyxl.Workbook:
    """Three bidders side by side under merged names, headings over two rows; invented."""
    book = openpyxl.Workbook()
    sheet = book.active
    assert sheet is not None
    for row in (
        ["Tamarack County (invented): tabulation of bids"],
        [None, None, None, None, "Alder (invented)", None, None, "Birch (invented)", None, None,
         "Engineer's estimate"],
        ["Item", "Description", "Unit", "Estimated", "Unit", "Extended", None, "Unit", "Extended",
         None, "Unit", "Extended"],
        ["No.", None, None, "Quantity", "Price", "Amount", "Note", "Price", "Amount", "Note",
         "Price", "Amount"],
        [1, "Deck", "SF", 12500, 0.25, 3125, "firm", 0.2, 2500, None, 0.22, 2750],
        [2, "Drains", "EA", 40, 80, 3200, None, "95.00/EA", 3800, None, 90, 3600],
        [None, "Total bid", None, None, None, 6325, None, None, 6300, None, None, 6350],
    ):  # fmt: skip
        sheet.append(row)
    for cells in ("A1:L1", "E2:G2", "H2:J2", "K2:L2", "B3:B4", "C3:C4"):
        sheet.merge_cells(cells)
    return book


def test_headings_over_two_rows_under_merged_names(tmp_path: Path) -> None:
    book = _tabulation()
    book.save(tmp_path / "tab.xlsx")
    assert book.active is not None
    rows = book.active.iter_rows(values_only=True)
    texts = [["" if cell is None else str(cell) for cell in row] for row in rows]
    with (tmp_path / "tab.csv").open("w", encoding="utf-8", newline="") as file:
        csv.writer(file).writerows(texts)
    for name in ("tab.xlsx", "tab.csv"):
        bids = sc.read_bids(tmp_path / name)
        assert bids.bidders == ["Alder (invented)", "Birch (invented)"]
        assert list(bids.items["unit"]) == ["SF", "EA"]
        birch = bids.lines("Birch (invented)")
        assert list(birch["unit_price"]) == [Decimal("0.2"), Decimal("95.00")]
        assert list(bids.lines("Engineer's estimate")["extension"]) == [2750, 3600]
        assert dict(bids.totals) == {
            "Alder (invented)": 6325, "Birch (invented)": 6300, "Engineer's estimate": 6350,
        }  # fmt: skip
        assert ": headings in lines 3 to 4" in bids.preview
        assert 'E   "Unit Price": unit price of Alder (invented)' in bids.preview
        assert 'D   "Estimated Quantity": quantity' in bids.preview
        found = bids.doubts[["line", "column", "text", "taken"]].itertuples(index=False)
        assert [tuple(row) for row in found] == [
            (4, "G", "Note", "nothing of its column"),
            (4, "J", "Note", "nothing of its column"),
            (6, "H", "95.00/EA", "95.00"),
        ]


def test_items_are_drawn_with_the_price(programme: sc.Programme) -> None:
    """The quantities of the items and the price come from one set of draws."""
    import numpy as np

    items = sc.bids.pay_items(programme, draws=0)
    simulation = sc.simulate(programme.inventory, programme.job, 500, seed=3)
    drawn = items.draws(simulation, threads=1)
    assert drawn.equals(items.draws(simulation, threads=3))
    assert list(drawn.columns) == list(items.to_pandas()["code"])
    assert (drawn["MOB"] == 1).all()
    cost = simulation.total_draws()
    assert np.corrcoef(drawn["DEBRIS-HAUL"], cost)[0, 1] > 0.1
    with pytest.raises(sc.InputError) as refused:
        items.draws(sc.simulate(programme.inventory, sc.Job.demo(), 500, seed=3))
    assert refused.value.id == "bid.simulation"


def test_a_proposal_says_what_is_not_in_its_price(tmp_path: Path) -> None:
    inventory = sc.read_inventory(sc.demo_records())
    offer = sc.proposal(inventory, ["TC-0001", "TC-0002", "TC-OO27", "TC-0138"], sc.Job.demo())
    assert offer.by_structure.estimated == offer.by_quantity.estimated == offer.total
    text = "\n".join(offer.exclusions)
    for part in ("TC-OO27: not found; near: 99:TC-0027", "TC-0138", "not cleaned: ", "girder"):
        assert part in text
    many = sc.proposal(inventory, [f"TC-{n:04}" for n in range(1, 12)], sc.Job.demo())
    (drains,) = [line for line in many.open_points if "not counted" in line]
    assert drains.endswith("(TC-0001, TC-0002, TC-0003, TC-0004 and 7 more)")
    offer.save(tmp_path / "offer.html")
    assert f"{offer.total:,}" in (tmp_path / "offer.html").read_text(encoding="utf-8")


def test_commands(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    records, out, form = sc.demo_records(), tmp_path / "items.xlsx", tmp_path / "form.csv"
    options = ["--select", "TC-0001,TC-0002", "--traffic", "day", "--form", str(form)]
    assert main(["items", str(records), *options, "--out", str(out)]) == 0
    assert "DRAIN-OPEN" in capsys.readouterr().out
    sheet = openpyxl.load_workbook(out)["Pay items"]
    assert sheet["F4"].value.startswith("=IF(ISNUMBER(E4),ROUND(D4*E4,2)")
    prices = tmp_path / "prices.csv"
    sample = str(REFERENCE / "bidtab_sample.csv")
    assert main(["read-bids", sample, "--out", str(prices)]) == 0
    assert "3 bids, 33 items" in capsys.readouterr().out
    assert prices.read_text(encoding="utf-8").count("\n") == 34
