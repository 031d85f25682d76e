"""Estimates saved, loaded, pickled, laid beside each other; jobs side by side."""

from __future__ import annotations

import contextlib
import copy
import json
import math
import pickle
import warnings
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import scupper as sc
from scupper import _saved


@pytest.fixture
def saved(estimate: sc.Estimate, tmp_path: Path) -> Path:
    file = tmp_path / "estimate.json"
    estimate.save(file)
    return file


def test_saved_and_loaded_the_estimate_is_the_same(estimate: sc.Estimate, saved: Path) -> None:
    again = sc.Estimate.load(saved)
    assert again.to_pandas().equals(estimate.to_pandas())
    assert again.structure.to_dict() == estimate.structure.to_dict()
    assert again.job.to_dict() == estimate.job.to_dict()
    assert again.stamp == estimate.stamp
    assert len(again.moved) == 0
    assert list(again.moved.columns) == ["key", "label", "unit", "saved", "now"]
    assert [f.name for f in saved.parent.iterdir()] == ["estimate.json"]


def test_every_structure_of_the_county_comes_back(county: sc.Inventory, job: sc.Job) -> None:
    structures = list(county)
    again = pickle.loads(pickle.dumps(structures))
    inv = sc.estimate_all(again, job)
    assert inv.total == sc.estimate_all(structures, job).total
    assert inv.stamp == sc.estimate_all(structures, job).stamp  # hashes of all recorded bits


def test_a_figure_that_has_moved_is_named(saved: Path, estimate: sc.Estimate) -> None:
    document = json.loads(saved.read_text(encoding="utf-8"))
    document["stamp"]["version"] = "0.0"
    document["figures"]["cost.total"] = "1000.0 USD"
    document["figures"]["cost.permits"] = "5.0 USD"
    del document["figures"]["water.refills"]
    saved.write_text(json.dumps(document), encoding="utf-8")
    with pytest.warns(sc.MovedWarning, match=r"3 figures .* version 0.0 .*cost.total 1,000 -> "):
        now = sc.Estimate.load(saved)
    assert now.cost.total == estimate.cost.total
    moved = now.moved.set_index("key")
    assert moved.loc["cost.total", "saved"] == 1000.0
    assert moved.loc["cost.total", "now"] == estimate.cost.total
    assert moved["saved"].isna().to_dict()["water.refills"]
    assert moved["now"].isna().to_dict()["cost.permits"]


@pytest.mark.parametrize("text", ["", "{}", "[1]", '{"scupper_estimate": 1}'])
def test_what_is_no_saved_estimate_is_refused(tmp_path: Path, text: str) -> None:
    file = tmp_path / "estimate.json"
    file.write_text(text, encoding="utf-8")
    with pytest.raises(sc.InputError) as caught:
        sc.Estimate.load(file)
    assert "estimate.json" in caught.value.path
    with pytest.raises(sc.FileError):
        sc.Estimate.load(tmp_path / "nowhere.json")


VALUES = st.none() | st.booleans() | st.integers() | st.text() | st.just([]) | st.just({})


@settings(max_examples=100, deadline=None)
@given(st.data())
def test_a_document_with_any_part_replaced_is_priced_or_refused(data: st.DataObject) -> None:
    county = sc.read_inventory(sc.demo_records())
    document = json.loads(_saved.document(sc.estimate(county["TC-0001"], sc.Job.demo())))
    at = document
    while isinstance(at, dict | list) and at:
        parent, keys = at, list(at) if isinstance(at, dict) else list(range(len(at)))
        key = data.draw(st.sampled_from(keys))
        at = at[key]
        if data.draw(st.booleans()):
            break
    parent[key] = data.draw(VALUES)
    with warnings.catch_warnings(), contextlib.suppress(sc.InputError):
        warnings.simplefilter("ignore", sc.MovedWarning)
        total = _saved.restored(json.dumps(document)).cost.total
        assert math.isfinite(total)


def test_estimates_and_jobs_pickle_and_copy(estimate: sc.Estimate, job: sc.Job) -> None:
    job.keys()  # a job that was made ready pickles too
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        for again in (pickle.loads(pickle.dumps(estimate)), copy.deepcopy(estimate)):
            assert again.to_pandas().equals(estimate.to_pandas())
        for same in (pickle.loads(pickle.dumps(job)), copy.copy(job)):
            assert same.to_dict() == job.to_dict()


def test_diff_names_figures_and_the_inputs_behind_them(
    county: sc.Inventory, job: sc.Job, estimate: sc.Estimate
) -> None:
    other = sc.estimate(county["TC-0001"], job.replace({"nozzle.bore": "3/8 in"}))
    table = estimate.diff(other)
    inputs = table[table["kind"] == "input"]
    assert list(inputs["key"]) == ["nozzle[hand_line].bore"]
    (bore,) = inputs.to_dict("records")
    assert (bore["this"], bore["other"]) == (pytest.approx(0.5), pytest.approx(0.375))
    assert (bore["unit"], bore["this_source"]) == ("in", "invented for the demo")
    figures = table[table["kind"] == "figure"].set_index("key")
    water = figures.loc["water.volume"]
    assert water["unit"] == "gal"
    assert water["this"] == estimate.water.magnitude
    assert water["change"] == other.water.magnitude - estimate.water.magnitude < 0
    assert "debris.mass" not in figures.index


def test_diff_is_empty_with_itself_and_turns_around(
    county: sc.Inventory, job: sc.Job, estimate: sc.Estimate
) -> None:
    assert len(estimate.diff(estimate)) == 0
    other = sc.estimate(county["TC-0002"], job)
    there, back = (
        table.set_index(["kind", "key"]).sort_index()
        for table in (estimate.diff(other), other.diff(estimate))
    )
    assert there["this"].equals(back["other"].rename("this"))
    assert there["change"].equals(-back["change"])


def test_diff_across_jobs_of_other_rows_and_currencies(
    county: sc.Inventory, job: sc.Job, estimate: sc.Estimate
) -> None:
    document = job.to_dict()
    document["labour"].append({"name": "foreman", "when": [], "note": ""})
    document["inputs"] |= {
        "labour[foreman].people": {"value": 1},
        "labour[foreman].wage": {"value": "60 USD/h"},
    }
    other = sc.estimate(county["TC-0001"], sc.Job.from_dict(document))
    table = estimate.diff(other).set_index("key")
    assert table["this"].isna()["labour[foreman].wage"]
    assert table.loc["labour[foreman].wage", "other"] == pytest.approx(60.0)
    euros = sc.Job.from_dict(json.loads(json.dumps(job.to_dict()).replace("USD", "EUR")))
    with pytest.raises(sc.InputError, match="this in USD, other in EUR"):
        estimate.diff(sc.estimate(county["TC-0001"], euros))


def test_scenarios_are_the_programmes_side_by_side(county: sc.Inventory, job: sc.Job) -> None:
    own = job.replace(sharing="own_shifts", units="metric")
    table = sc.scenarios(county, {"shared": job, "own shifts": own})
    assert list(table.columns) == ["shared", "own shifts"]
    assert table.loc["cost_total_usd", "shared"] == sc.estimate_all(county, job).total
    assert table.loc["cost_total_usd", "own shifts"] == sc.estimate_all(county, own).total
    assert table.loc["water_gal"].nunique() == 1
    counts = sc.estimate_all(county, job).counts
    assert table.loc["unpriced", "shared"] == counts["unpriced"]
    assert table.loc["priced", "shared"] == counts["priced"]
    assert not table.isna().any().any()
    one = sc.scenarios((s for s in [county["TC-0001"]]), {"a": job, "b": own})
    assert one.loc["priced"].tolist() == [1.0, 1.0]  # a generator serves every job


def test_scenarios_of_one_structure_are_its_estimates(county: sc.Inventory, job: sc.Job) -> None:
    metric = job.replace({"units": "metric", "nozzle.bore": "3/8 in"})
    table = sc.scenarios(county["TC-0001"], {"half": job, "three eighths": metric})
    assert table.loc["water_gal", "half"] == sc.estimate(county["TC-0001"], job).water.magnitude
    assert table.loc["water_gal", "three eighths"] < table.loc["water_gal", "half"]


def test_one_structure_without_a_price_is_not_zero(county: sc.Inventory, job: sc.Job) -> None:
    unpriced = sc.estimate_all(county, job).unpriced["structure_id"][0]
    table = sc.scenarios(county[unpriced], {"a": job})
    assert table["a"].isna()["cost_total_usd"]
    assert table.loc["unpriced", "a"] == 1


def test_scenarios_need_jobs_of_one_currency(county: sc.Inventory, job: sc.Job) -> None:
    euros = sc.Job.from_dict(json.loads(json.dumps(job.to_dict()).replace("USD", "EUR")))
    with pytest.raises(sc.InputError, match="b in EUR"):
        sc.scenarios(county, {"a": job, "b": euros})
    with pytest.raises(sc.InputError, match="no job"):
        sc.scenarios(county, {})
