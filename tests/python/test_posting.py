"""Weight posting in Python: what an override, a word of the job and the record alone do."""

from __future__ import annotations

import pytest

import scupper as sc

LIMIT = {"posting.limit": "15 short_ton"}


def test_a_posted_bridge_costs_more_and_says_so(county: sc.Inventory, job: sc.Job) -> None:
    plain = sc.estimate(county["TC-0002"], job)
    posted = sc.estimate(county["TC-0002"], job.override("TC-0002", LIMIT))
    assert posted.cost.total > plain.cost.total
    assert "posted 15 short ton; loaded water truck 23.01 short ton" in posted.warnings[0]
    assert posted.warnings[0] in repr(posted)
    assert any(c["id"] == "posted" for c in posted.cautions)
    assert not any("posted" in warning for warning in plain.warnings)
    assert "posting.limit" not in str(posted.explain("cost.total"))  # it only decides
    assert "longer hose" in str(posted.explain("deck_hand_line"))


def test_half_a_tank(county: sc.Inventory, job: sc.Job) -> None:
    half = job.replace(posting="half_fill").override("TC-0002", LIMIT)
    estimate = sc.estimate(county["TC-0002"], half)
    # 30,000 lb less 21,000 lb empty, at 8.345 lb/gal: by hand.
    assert estimate.figure("truck.fill").to("gal").magnitude == pytest.approx(1078.5, rel=1e-3)
    assert "posted weight limit" in str(estimate.explain("water.refills"))


def test_refused_with_the_weights(county: sc.Inventory, job: sc.Job) -> None:
    strict = job.replace(posting="refuse").override("TC-0002", LIMIT)
    with pytest.raises(sc.InputError, match="loaded haul truck 31 short ton: refused"):
        sc.estimate(county["TC-0002"], strict)
    unpriced = sc.estimate_all(county, strict).unpriced.set_index("structure_id")
    assert "posted 15 short ton" in unpriced.loc["TC-0002", "reason"]


def test_words_and_documents(job: sc.Job) -> None:
    with pytest.raises(sc.UnknownNameError, match="half_fill"):
        job.replace(posting="half_full")
    assert (
        sc.Job.from_dict(job.replace(posting="refuse").to_dict()).to_dict()["posting"] == "refuse"
    )


def test_the_rules_of_the_assumed_limit_are_listed() -> None:
    rules = sc.rules()
    assumed = rules[rules["field"] == "posting.limit"]
    assert len(assumed) > 5
    assert assumed["source"].str.len().min() > 0
