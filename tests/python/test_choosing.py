"""Which method: alternatives at a structure, and what lies around it."""

from __future__ import annotations

import math
from pathlib import Path

import pytest

import scupper as sc
from scupper.command_line import main

FULL = {"girder": "full_clean", "bearing": "full_clean", "cap": "full_clean"}


@pytest.fixture(scope="module")
def full(job: sc.Job) -> sc.Job:
    return job.replace(service={**job.to_dict()["service"], **FULL})


def test_every_alternative_has_a_row_at_every_structure(county: sc.Inventory, job: sc.Job) -> None:
    some = list(county)[:12]
    found = sc.alternatives(some, job)
    names = [a["name"] for a in job.to_dict()["alternatives"]]
    for structure in some:
        rows = found.table[found.table["structure_id"] == structure.id]
        assert list(rows["alternative"]) == names
    for row in found.table.to_dict("records"):
        assert row["feasible"] == (len(row["reasons"]) == 0)
        assert math.isnan(row["cost_USD"]) == (row["no_price"] != "")
    assert not found.recommended.duplicated(["structure_id", "question"]).any()


def test_a_row_is_the_price_of_the_job_with_it(county: sc.Inventory, job: sc.Job) -> None:
    found = sc.alternatives(county["TC-0001"], job)
    table = found.table.set_index("alternative")
    flusher = job.replace(ways={"deck_top": "flusher", "gutter": "flusher"})
    again = sc.estimate(county["TC-0001"], flusher)
    assert table.loc["flush_and_vacuum", "cost_USD"] == pytest.approx(again.cost.total, rel=1e-12)
    assert table.loc["hand_spray_and_vacuum", "current"]
    now = sc.estimate(county["TC-0001"], job)
    assert table.loc["hand_spray_and_vacuum", "cost_USD"] == pytest.approx(now.cost.total)
    labour, unit = found.columns["labour"]
    assert unit == "labour-h"
    assert table.loc["hand_spray_and_vacuum", labour] == now.figure("hours.labour").m


def test_weights_decide_and_are_told(county: sc.Inventory, job: sc.Job) -> None:
    dry = sc.alternatives(county["TC-0001"], job, {"water": 1})
    deck = dry.recommended.set_index("question").loc["deck"]
    assert deck["alternative"] == "broom_and_pick_up"
    assert "against broom lanes vacuum gutters the same in all that counts" in deck["why"]
    usual = sc.alternatives(county["TC-0001"], job).recommended.set_index("question").loc["deck"]
    assert " less cost" in usual["why"]
    assert "weights: water 100 %" in repr(dry)
    with pytest.raises(sc.UnknownNameError, match="dirt_left"):
        sc.alternatives(county["TC-0001"], job, {"dirt_lef": 1})
    with pytest.raises(sc.InputError, match="weights"):
        sc.alternatives(county["TC-0001"], job, {"cost": -1}).table  # noqa: B018
    with pytest.raises(sc.InputError, match="weights"):
        sc.alternatives(county["TC-0001"], job, {}).table  # noqa: B018
    with pytest.raises(sc.InputError, match="structures"):
        sc.alternatives([], job)


def test_text_and_page_say_what_speaks_against(
    county: sc.Inventory, full: sc.Job, tmp_path: Path
) -> None:
    found = sc.alternatives(county["TC-0001"], full)
    text = repr(found)
    for part in ("By which way is the deck cleaned?", "recommended:", "cannot be done:", "as now"):
        assert part in text
    found.save_page(tmp_path / "methods.html")
    page = (tmp_path / "methods.html").read_text(encoding="utf-8")
    assert "From where is the underside reached?" in page
    assert "no water below" in page
    assert "<html" in page
    assert "<html" not in found._repr_html_()


def test_what_is_out_of_scope_is_shown_and_not_recommended(
    county: sc.Inventory, job: sc.Job
) -> None:
    found = sc.alternatives(county["TC-0001"], job)
    assert "not in the job's scope" in repr(found)
    assert "underside" not in set(found.recommended["question"])
    assert len(found.table[found.table["question"] == "underside"]) == 4


def test_an_alternative_of_ones_own(county: sc.Inventory, job: sc.Job) -> None:
    own = {
        "name": "two_people_two_hoses",
        "question": "deck",
        "ways": {"deck_top": "hand_line", "gutter": "hand_line"},
        "equipment": [{"name": "second_pump"}],
        "paces": [{"name": "two_hoses", "work": ["deck_top"], "factor": [0.5, 0.6, 0.7]}],
        "removes": {"share": [0.8, 0.88, 0.95], "dirt": ["gutter"]},
        "inputs": {"equipment[second_pump].number": 1, "equipment[second_pump].rate": "15 USD/h"},
        "source": "the crew's log",
    }
    table = sc.alternatives(county["TC-0001"], job.replace(alternatives=[own])).table
    rows = table.set_index("alternative")
    assert rows.loc["two_people_two_hoses", "elapsed_h"] < rows.loc["hand_spray_and_vacuum",
                                                                    "elapsed_h"]  # fmt: skip
    assert rows.loc["two_people_two_hoses", "source"] == "the crew's log"
    assert "broom_and_pick_up" in rows.index


def test_the_command_prints_and_writes(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    page = tmp_path / "methods.html"
    records = str(sc.demo_records())
    assert main(["methods", records, "TC-0001", "--weights", "cost=1, water=2",
                 "--out", str(page)]) == 0  # fmt: skip
    printed = capsys.readouterr().out
    assert "weights: water 67 %, cost 33 %" in printed
    assert page.exists()
    assert main(["methods", records, "TC-0001", "--weights", "cost"]) == 2
    assert "cost=2,closure=1" in capsys.readouterr().err


def test_surroundings_are_priced_or_named(county: sc.Inventory, job: sc.Job) -> None:
    railway = county.to_pandas().query("service_under == 2 and lanes_on > 0")["structure_id"]
    over_rail = county[railway.iloc[0]]
    estimate = sc.estimate(over_rail, job)
    table = estimate.surroundings
    assert set(table["name"]) == {"railway_flagger", "railway_permit", "railway_insurance"}
    assert table["priced"].all()
    assert table["amount"].sum() == pytest.approx(estimate.cost.by("operation")["charge"])
    assert not any("not priced" in warning for warning in estimate.warnings)
    document = job.to_dict()
    document["charges"] = []
    document["inputs"] = {k: v for k, v in document["inputs"].items() if "charge[" not in k}
    bare = sc.estimate(over_rail, sc.Job.from_dict(document))
    assert bare.surroundings["amount"].isna().all()
    assert sum("not priced: railway" in warning for warning in bare.warnings) == 3
    assert bare.cost.total == pytest.approx(estimate.cost.total - table["amount"].sum())


def test_words_about_a_site_are_for_that_site(county: sc.Inventory, job: sc.Job) -> None:
    said = job.replace(site={"TC-0001": ["nesting", "obstructed"]})
    there = sc.estimate(county["TC-0001"], said)
    assert list(there.surroundings["name"]) == ["nest_survey"]
    assert there.figure("operation[deck_hand_line].time") > sc.estimate(
        county["TC-0001"], job
    ).figure("operation[deck_hand_line].time")
    assert sc.estimate(county["TC-0002"], said).cost.total == pytest.approx(
        sc.estimate(county["TC-0002"], job).cost.total
    )
    with pytest.raises(sc.UnknownNameError, match="nesting"):
        job.replace(site={"TC-0001": ["nestling"]})


def test_ways_bring_their_machines_as_the_alternative_does(
    county: sc.Inventory, job: sc.Job
) -> None:
    broom = job.replace(ways={"deck_top": "broom", "gutter": "broom"})
    assert {"power_broom", "street_sweeper"} <= {e["name"] for e in broom.to_dict()["equipment"]}
    table = sc.alternatives(county["TC-0001"], job).table.set_index("alternative")
    compared = sc.scenarios(county["TC-0001"], {"now": job, "broom": broom})
    assert compared.loc["cost_total_usd", "broom"] == pytest.approx(
        table.loc["broom_and_pick_up", "cost_USD"], rel=1e-12
    )
    closed = job.replace(closure="full_closure")
    assert "detour_signs" in {c["name"] for c in closed.to_dict()["charges"]}
    assert sc.estimate(county["TC-0001"], closed).cost.total == pytest.approx(
        table.loc["full_closure_with_detour", "cost_USD"], rel=1e-12
    )


def test_a_detour_costs_road_users_in_the_choice(county: sc.Inventory, job: sc.Job) -> None:
    table = sc.alternatives(county["TC-0001"], job).table.set_index("alternative")
    closed = sc.estimate(county["TC-0001"], job.replace(closure="full_closure")).road_users
    now = sc.estimate(county["TC-0001"], job).road_users
    assert table.loc["full_closure_with_detour", "road_users_USD"] == pytest.approx(closed.total)
    assert table.loc["closure_of_the_job", "road_users_USD"] == pytest.approx(now.total)
    unpriced = job.to_dict()
    unpriced["inputs"] = {key: value for key, value in unpriced["inputs"].items()
                          if not key.endswith("_time_value")}  # fmt: skip
    without = sc.alternatives(county["TC-0001"], sc.Job.from_dict(unpriced))
    row = without.table.set_index("alternative").loc["full_closure_with_detour"]
    assert math.isnan(row["road_users_USD"])
    assert any("No value of time" in text for text in row["not_figured"])
    assert "road users: No value of time" in repr(without)
