"""Jobs: written and read back, replaced, overridden, refused."""

from __future__ import annotations

import json
import math
from pathlib import Path

import numpy as np
import pytest

import scupper as sc


def total(county: sc.Inventory, job: sc.Job) -> float:
    return sc.estimate(county["TC-0001"], job).cost.total


def test_written_and_read_back_the_job_is_the_same(
    county: sc.Inventory, job: sc.Job, tmp_path: Path
) -> None:
    changed = job.override("TC-0001", drains=4).replace(units="metric")
    file = tmp_path / "job.json"
    changed.save(file)
    again = sc.Job.from_file(file)
    assert again.to_dict() == changed.to_dict() == sc.Job.from_dict(changed.to_dict()).to_dict()
    assert total(county, again) == total(county, changed)
    assert [f.name for f in tmp_path.iterdir()] == ["job.json"]


def test_a_file_that_cannot_be_written_is_refused(job: sc.Job, tmp_path: Path) -> None:
    with pytest.raises(sc.FileError) as caught:
        job.save(tmp_path / "nowhere" / "job.json")
    assert caught.value.id == "file.write"


def test_a_change_gives_a_new_job(county: sc.Inventory, job: sc.Job) -> None:
    before = total(county, job)
    assert total(county, job.override("TC-0001", drains=0)) < before
    assert total(county, job.override("TC-0001", drains=8)) > before
    assert total(county, job.override("TC-0002", drains=0)) == before
    assert total(county, job) == before


def test_text_pint_and_lists_mean_the_same(county: sc.Inventory, job: sc.Job) -> None:
    inch = sc.units.registry().Quantity(0.75, "inch")
    texts = [{"nozzle.bore": "3/4 in"}, {"nozzle.bore": inch}, {"nozzle.bore": ["3/4 in"] * 3}]
    totals = {total(county, job.replace(change)) for change in texts}
    assert max(totals) == pytest.approx(min(totals), rel=1e-12)
    assert total(county, job) not in totals


def test_short_names_and_numpy_numbers(county: sc.Inventory, job: sc.Job) -> None:
    short = job.override("TC-0001", drains=np.int64(4))
    whole = job.override("99:TC-0001", {"quantity[drain_count].given": 4.0})
    assert total(county, short) == total(county, whole) != total(county, job)


def test_words_are_replaced_whole(job: sc.Job) -> None:
    only_deck = job.replace(service={"deck_top": "rinse"}, name="deck only", price_at="likely")
    document = only_deck.to_dict()
    assert document["service"] == {"deck_top": "rinse"}
    assert (only_deck.name, document["price_at"]) == ("deck only", "likely")


def test_a_scope_that_nothing_serves_is_refused(job: sc.Job) -> None:
    with pytest.raises(sc.InputError) as caught:
        job.replace(service={"deck_top": "full_length"})
    assert caught.value.id == "job.scope"


@pytest.mark.parametrize("value", [object(), {"nozzle": {1, 2}}])
def test_what_is_no_value_is_refused(job: sc.Job, value: object) -> None:
    with pytest.raises(sc.InputError):
        job.replace({"nozzle.bore": value})


def test_keys_show_every_input_in_the_units_of_the_job(job: sc.Job) -> None:
    keys = job.keys().set_index("key")
    bore = keys.loc["nozzle[hand_line].bore"]
    assert (bore["unit"], bore["likely"], bore["basis"]) == ("in", pytest.approx(0.5), "given")
    assert math.isnan(keys.loc["deck.length", "likely"])
    rate = keys.loc["operation[deck_hand_line].time_per_unit"]
    assert rate["unit"] == "ft2/h"
    assert rate["low"] < rate["likely"] < rate["high"]
    metric = job.replace(units="metric").keys().set_index("key")
    assert metric.loc["nozzle[hand_line].bore", "likely"] == pytest.approx(12.7)


def test_repr_says_what_it_is(job: sc.Job) -> None:
    assert "USD" in repr(job)
    assert job.units in repr(job)


def test_a_fault_in_a_job_file_says_its_line(job: sc.Job, tmp_path: Path) -> None:
    file = tmp_path / "job.json"
    sc.write_job_form(file, job)
    document = json.loads(file.read_text(encoding="utf-8"))
    document["inputs"]["hose[supply].length"] = "190 ft"
    good = json.dumps(document, indent=2)
    at = next(i for i, line in enumerate(good.splitlines()) if '"hose[supply].length"' in line)
    file.write_text(good.replace("190 ft", "190 gal"), encoding="utf-8")
    with pytest.raises(sc.UnitError) as caught:
        sc.Job.from_file(file)
    assert f"job.json:{at + 1} inputs.hose[supply].length" in caught.value.path
    misspelt = good.replace('"hose[supply].length"', '"hose[supply].lenght"')
    file.write_text(misspelt, encoding="utf-8")
    with pytest.raises(sc.UnknownNameError, match=f"job.json:{at + 1} "):
        sc.Job.from_file(file)


def test_a_rate_book_named_in_a_job_moves_no_line(job: sc.Job, tmp_path: Path) -> None:
    sc.rates.RateBook.of_job(job).save(tmp_path / "book.json")
    text = '{\n"scupper_job": 1,\n"rates": "book.json",\n"service": {\n"deck_topp": "rinse"}}'
    (tmp_path / "job.json").write_text(text, encoding="utf-8")
    with pytest.raises(sc.UnknownNameError, match=r"job\.json:5 service"):
        sc.Job.from_file(tmp_path / "job.json")
