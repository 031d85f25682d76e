"""Rate books: read from documents and sheets, merged, compared, laid over a job."""

from __future__ import annotations

import json
from pathlib import Path

import openpyxl
import pytest

import scupper as sc
from scupper.command_line import main

AGENCY = {
    "scupper_rates": 1,
    "name": "county rates",
    "version": "3",
    "date": "2027-01",
    "currency": "USD",
    "source": "invented",
    "inputs": {
        "labour[wash_crew].wage": {"built_up": {"cash": "27 USD/h", "fringe": "12 USD/h",
                                                "medicare": "7.65 %"}},
        "equipment[water_truck].rate": {
            "built_up": {"ownership": "average_investment", "price": "180,000 USD",
                         "salvage": "30,000 USD", "life": "10 years", "year_hours": "1,200 h"},
            "note": "invented",
        },
        "price.water": ["5 USD/kgal", "9 USD/kgal", "16 USD/kgal"],
        "operation[deck_hand_line].time_per_unit": ["4,000 ft2/h", "8,000 ft2/h", "16,000 ft2/h"],
    },
}  # fmt: skip


@pytest.fixture
def agency() -> sc.rates.RateBook:
    return sc.rates.RateBook.from_dict(AGENCY)


def values(book: sc.rates.RateBook) -> dict[str, tuple[float, float, float, str]]:
    table = book.to_pandas()
    rows = zip(table["key"], table["low"], table["likely"], table["high"], table["unit"],
               strict=True)  # fmt: skip
    return {key: (low, likely, high, unit) for key, low, likely, high, unit in rows}


@pytest.mark.parametrize("ending", ["json", "csv", "xlsx"])
@pytest.mark.parametrize("units", ["us", "metric", "si"])
def test_a_book_that_is_saved_reads_back_the_same(
    tmp_path: Path, agency: sc.rates.RateBook, ending: str, units: str
) -> None:
    file = tmp_path / f"rates.{ending}"
    agency.save(file, units)
    again = sc.rates.read(file)
    assert again.title == agency.title == "county rates, version 3, 2027-01"
    assert (again.currency, again.source) == ("USD", "invented")
    before, after = values(agency), values(again)
    assert before.keys() == after.keys()
    for key, (low, likely, high, unit) in before.items():
        assert after[key][3] == unit
        assert after[key][:3] == pytest.approx((low, likely, high), rel=1e-12), key


def test_merging_keeps_origins_and_the_order_of_books(agency: sc.rates.RateBook) -> None:
    merged = sc.rates.merge(sc.rates.RateBook.shipped(), agency)
    assert merged.title == agency.title
    assert merged.beneath == [sc.rates.RateBook.shipped().title]
    table = merged.to_pandas().set_index("key")
    assert table.loc["operation[deck_hand_line].time_per_unit", "likely"] == pytest.approx(8000)
    assert table.loc["operation[deck_hand_line].time_per_unit", "source"] == "invented"
    assert table.loc["operation[drain_free].time_per_unit", "source"] == "common practice"
    euro = sc.rates.RateBook.from_dict({"scupper_rates": 1, "currency": "EUR"})
    with pytest.raises(sc.InputError, match="EUR"):
        sc.rates.merge(agency, euro)
    with pytest.raises(sc.InputError, match="EUR"):
        sc.Job.demo().with_rates(euro)


def test_a_job_names_its_book_and_is_priced_on_it(
    tmp_path: Path, agency: sc.rates.RateBook
) -> None:
    agency.save(tmp_path / "county.xlsx")
    document = {
        "scupper_job": 1, "name": "on a book", "service": {"drain": "rinse"},
        "rates": "county.xlsx", "labour": [{"name": "wash_crew"}],
    }  # fmt: skip
    (tmp_path / "job.json").write_text(json.dumps(document))
    job = sc.Job.from_file(tmp_path / "job.json")
    assert job.rate_books == [sc.rates.RateBook.shipped().title, agency.title]
    wage = job.to_dict()["inputs"]["labour[wash_crew].wage"]
    assert set(wage["built_up"]) == {"cash", "fringe", "medicare"}
    beneath = sc.rates.merge(sc.rates.RateBook.shipped(), agency)
    document.pop("rates")
    assert sc.Job.from_dict(document, rates=beneath).rate_books == job.rate_books


def test_what_changed_and_what_it_does_to_a_price(agency: sc.rates.RateBook) -> None:
    dearer = json.loads(json.dumps(AGENCY))
    dearer["version"] = "4"
    dearer["inputs"]["labour[wash_crew].wage"]["built_up"]["cash"] = "30 USD/h"
    dearer["inputs"]["price.water"] = ["5 USD/kgal", "10 USD/kgal", "16 USD/kgal"]
    dearer["inputs"]["labour[diver].wage"] = "90 USD/h"
    new = sc.rates.RateBook.from_dict(dearer)
    assert sc.rates.compare(agency, agency).empty
    inventory = sc.read_inventory(sc.demo_records())
    table = sc.rates.compare(agency, new, inventory[0])
    assert set(table.index) == {
        "labour[wash_crew].wage", "labour[wash_crew].wage.cash", "price.water",
        "labour[diver].wage", "total",
    }  # fmt: skip
    wage = table.loc["labour[wash_crew].wage"]
    assert wage["change"] == pytest.approx(3 * 1.0765)
    assert wage["effect"] > table.loc["price.water", "effect"] > 0
    total = table.loc["total"]
    assert total["effect"] == pytest.approx(total["b"] - total["a"])
    assert total["effect"] == pytest.approx(wage["effect"] + table.loc["price.water", "effect"])
    job = sc.Job.demo().with_rates(new)
    assert total["b"] == pytest.approx(sc.estimate(inventory[0], job).cost.total)
    county = sc.rates.compare(agency, new, inventory.select(["TC-0001", "TC-0002", "TC-0003"]))
    assert county.loc["total", "a"] > total["a"]


def test_a_built_up_rate_is_explained_down_to_its_parts(agency: sc.rates.RateBook) -> None:
    est = sc.estimate(sc.read_inventory(sc.demo_records())[0], sc.Job.demo().with_rates(agency))
    text = str(est.explain("cost.total", depth=None))
    for words in ("pay in cash", "27 USD/h", "price when bought", "10 year"):
        assert words in text
    assert "labour[wash_crew].wage.cash" in {
        step["key"] for step in est.explain("cost.labour").to_dict()["steps"]
    }


@pytest.mark.parametrize("ending", ["json", "csv", "xlsx"])
@pytest.mark.parametrize("units", ["us", "si"])
def test_lists_of_values_and_samples_stand_in_one_cell(
    tmp_path: Path, ending: str, units: str
) -> None:
    lists = {
        "shift.travel_time": {"values": ["1 h", "2 h", "1.5 h"], "weights": [3, 1, 0.5]},
        "operation[deck_hand_line].time_per_unit": {"sample": ["8,000 ft2/h", "12,000 ft2/h"]},
        "margin.overhead": {"sample": [0.1, 0.15, 0.12]},
    }
    book = sc.rates.RateBook.from_dict({**AGENCY, "inputs": {**AGENCY["inputs"], **lists}})
    file = tmp_path / f"rates.{ending}"
    book.save(file, units)
    again = sc.rates.read(file).to_dict()["inputs"]
    for key, entry in book.to_dict()["inputs"].items():
        if key in lists:
            found = again[key]
            assert found.get("weights") == entry.get("weights")
            word = "sample" if "sample" in entry else "values"
            for one, other in zip(found[word], entry[word], strict=True):
                assert number_of(one) == pytest.approx(number_of(other), rel=1e-12)
    assert sc.rates.faults(file).empty if ending != "json" else True
    job = sc.Job.demo()
    structure = sc.read_inventory(sc.demo_records())[0]
    costs = [
        sc.estimate(structure, job.with_rates(b)).cost.total for b in (book, sc.rates.read(file))
    ]
    assert costs[0] == pytest.approx(costs[1], rel=1e-12)


def number_of(value: str | float) -> float:
    return float(str(value).partition(" ")[0].replace(",", ""))


@pytest.mark.parametrize(
    ("line", "column", "allowed"),
    [
        ("price.disposal,,70,80; 90,,USD/t,,", "low", "nothing beside"),
        ("price.disposal,,,80; 90,,USD/t,,1", "likely|weights", "weight"),
        ("price.disposal,,,80; x,,USD/t,,", "likely", "number|unit"),
        ("price.disposal,,,80; 90,,USD/t,,1; x", "weights", "number"),
    ],
)
def test_a_list_that_makes_no_sense_is_refused(
    tmp_path: Path, line: str, column: str, allowed: str
) -> None:
    file = tmp_path / "rates.csv"
    file.write_text(SHEET.replace("unit,source", "unit,source,weights", 1) + line + "\n")
    with pytest.raises(sc.InputError, match=allowed) as caught:
        sc.rates.read(file)
    assert caught.value.path.rpartition(" ")[2] in column.split("|")


SHEET = """key,label,low,likely,high,unit,source
name,,,county rates,,,
currency,,,USD,,,
labour[wash_crew].wage.cash,,,27,,USD/h,payroll
labour[wash_crew].wage.fringe,,,12,,USD/h,payroll
price.water,,5,9,16,USD/kgal,invoice
margin.overhead,,,12,,%,
"""


def test_a_sheet_is_read_as_people_fill_it_in(tmp_path: Path) -> None:
    file = tmp_path / "rates.csv"
    file.write_text("\ufeff" + SHEET)
    book = sc.rates.read(file)
    table = book.to_pandas().set_index("key")
    assert table.loc["labour[wash_crew].wage", "likely"] == pytest.approx(39)
    assert table.loc["price.water", "high"] == pytest.approx(16)
    assert table.loc["margin.overhead", "likely"] == pytest.approx(0.12)
    assert table.loc["price.water", "source"] == "invoice"
    assert sc.rates.faults(file).empty


@pytest.mark.parametrize(
    ("line", "place", "allowed"),
    [
        ("price.watr,,,9,,USD/kgal,", "key", "price.water"),
        ("price.disposal,,,80,,USD/kgal,", "likely", "short_ton|short ton|per mass"),
        ("price.disposal,,,,,USD/t,", "likely", "number"),
        ("price.disposal,,90,80,70,USD/t,", "low|likely", "order"),
        ("labour[x].wage.csh,,,80,,USD/h,", "key", "cash"),
        ("labour[x].wage.fringe,,,80,,USD/h,", "likely", "cash"),
        ("price.water,,,9,,USD/kgal,", "key", "line 6"),
        ("price.disposal,,,80,,EUR/t,", "likely", "USD"),
        (",,,80,,USD/t,", "key", "a key"),
    ],
)
def test_a_fault_names_line_column_and_what_is_right(
    tmp_path: Path, line: str, place: str, allowed: str
) -> None:
    file = tmp_path / "rates.csv"
    file.write_text(SHEET + line + "\n")
    with pytest.raises(sc.InputError, match=allowed) as caught:
        sc.rates.read(file)
    assert caught.value.path.startswith(f"{file}:8 ")
    assert caught.value.path.rpartition(" ")[2] in place.split("|")
    faults = sc.rates.faults(file)
    assert len(faults) == 1
    assert faults["place"][0] == caught.value.path


def test_every_fault_of_a_sheet_is_listed(tmp_path: Path) -> None:
    file = tmp_path / "rates.csv"
    file.write_text(SHEET + "price.watr,,,9,,USD/kgal,\nprice.disposal,,,x,,USD/t,\n")
    assert len(sc.rates.faults(file)) == 2
    for text in ("", "key,what\n", "likely\n"):
        file.write_text(text)
        with pytest.raises(sc.FileError):
            sc.rates.read(file)
    (tmp_path / "broken.xlsx").write_bytes(b"no workbook")
    with pytest.raises(sc.FileError):
        sc.rates.read(tmp_path / "broken.xlsx")
    with pytest.raises(sc.FileError):
        sc.rates.read(tmp_path / "absent.xlsx")


@pytest.mark.parametrize("ending", ["csv", "xlsx", "json"])
def test_the_form_can_be_filled_in_and_priced(
    tmp_path: Path, ending: str, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / f"form.{ending}"
    assert main(["template", "rates", "--out", str(file)]) == 0
    assert main(["template", "rates", "--out", str(file)]) == 2  # it is not overwritten
    capsys.readouterr()
    book = sc.rates.read(file)
    structure = sc.read_inventory(sc.demo_records())[0]
    demo = sc.Job.demo()
    filled = demo.with_rates(book)
    assert sc.estimate(structure, filled).cost.total == pytest.approx(
        sc.estimate(structure, demo).cost.total, rel=1e-9
    )
    assert {"labour[wash_crew].wage", "price.disposal"} <= set(book.to_pandas()["key"])
    out = tmp_path / "out"
    arguments = ["estimate", str(sc.demo_records()), "--rates", str(file), "--out", str(out)]
    assert main(arguments) == 0
    assert (out / "estimate.csv").exists()


def test_a_workbook_form_holds_text_and_numbers_as_such(
    tmp_path: Path, agency: sc.rates.RateBook
) -> None:
    agency.save(tmp_path / "rates.xlsx")
    sheet = openpyxl.load_workbook(tmp_path / "rates.xlsx").worksheets[0]
    rows = {row[0]: row for row in sheet.iter_rows(min_row=2, values_only=True)}
    assert rows["price.water"][2:6] == (5, 9, 16, "USD/kgal")
    assert rows["equipment[water_truck].rate.ownership"][3] == "average_investment"
    assert rows["equipment[water_truck].rate.life"][3:6] == (10, None, "year")
