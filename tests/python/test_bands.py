"""Real structures against the trade's bands, scaled by what differs (common practice): how many
fall outside, and that nearly all of them say why."""

from __future__ import annotations

from typing import Any

import bands
import pytest

import scupper as sc

#: Of a service's structures at most so many may fall outside without a named reason.
UNEXPLAINED = 0.01
#: The bands of money hold the likely prices of one bridge and are narrow; those of work are wide.
OUTSIDE = {"hours.labour": 0.03, "water.volume": 0.01, "debris.mass": 0.01, "cost.total": 0.55}


@pytest.fixture(scope="module")
def structures() -> sc.Inventory:
    return bands.samples()


@pytest.mark.parametrize("service", list(bands.jobs()))
def test_the_yardstick_itself_is_inside(service: str) -> None:
    job = bands.jobs()[service].override("TC-0001", bands.MEASURED)
    found = bands.compare(bands.yardstick(), service, job)
    assert {row["figure"] for row in found} == set(bands.COLUMNS)
    assert all(row["where"] == "inside" for row in found)


@pytest.mark.parametrize("service", list(bands.jobs()))
def test_real_structures_are_inside_or_say_why(structures: sc.Inventory, service: str) -> None:
    found = bands.compare(structures, service, bands.jobs()[service])
    for figure, allowed in OUTSIDE.items():
        rows = [row for row in found if row["figure"] == figure]
        outside = [row for row in rows if row["where"] != "inside"]
        nameless = [row for row in outside if row["why"] == "no reason found"]
        assert len(rows) >= 200
        assert len(outside) <= allowed * len(rows)
        assert len(nameless) <= UNEXPLAINED * len(rows)


def test_the_scale_of_the_yardstick_is_one_and_grows_with_the_work() -> None:
    job = bands.jobs()["full clean"].override("TC-0001", bands.MEASURED)
    yard: Any = bands.priced(bands.yardstick(), job).to_dict("records")[0]
    shares: dict[tuple[str, str], dict[str, float]] = {}
    for row in bands.rows("band_shares"):
        parts = shares.setdefault((row["service"], row["figure"]), {})
        parts[row["part"]] = float(row["share"])
    for parts in shares.values():
        assert sum(parts.values()) == pytest.approx(1.0)
        assert bands.scale_of(parts, yard, yard) == pytest.approx(1.0)
        assert bands.scale_of(parts, yard | {"drain_count": 8}, yard) > 1.0
