"""Closures in Python: the manual's tables, arrays, words, wrong units."""

from __future__ import annotations

import csv
import json
from pathlib import Path
from typing import Any

import numpy as np
import pytest

import scupper as sc

REFERENCE = Path(__file__).resolve().parents[1] / "reference/closure"


def rows(name: str) -> list[dict[str, Any]]:
    with (REFERENCE / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        found = [{**row, **json.loads(row["inputs_json"])} for row in csv.DictReader(file)]
    assert found
    return found


def feet(length: Any) -> float:
    return float(length.to("ft").magnitude)


def test_buffers_are_those_of_the_manual() -> None:
    level = [row for row in rows("buffer") if "level" in row["quantity"]]
    assert len(level) > 8
    for row in level:
        buffer = sc.closure.buffer_length(f"{row['speed_mph']} mph")
        assert feet(buffer) == pytest.approx(float(row["expected"])), row["id"]


def test_merging_tapers_by_hand() -> None:
    # W S at 45 mph and above, W S^2 / 60 at 40 mph and below (MUTCD 2009, table 6C-4).
    assert feet(sc.closure.taper_length("55 mph", "12 ft")) == pytest.approx(660)
    assert feet(sc.closure.taper_length("40 mph", "12 ft")) == pytest.approx(320)
    assert feet(sc.closure.taper_length("45 mph", "12 ft", "shoulder")) == pytest.approx(180)


def test_sign_spacing_by_class_and_edition() -> None:
    # MUTCD 2009, table 6C-1: rural 500 ft each; expressway or freeway 1,000, 1,500, 2,640 ft.
    assert [feet(s) for s in sc.closure.sign_spacing("rural")] == pytest.approx([500] * 3)
    freeway = sc.closure.sign_spacing("freeway", edition="2009")
    assert [feet(s) for s in freeway] == pytest.approx([1000, 1500, 2640])


def test_arrays_at_once() -> None:
    speeds = np.array([45.0, 55.0, 65.0])
    lengths = sc.closure.taper_length(speeds, "12 ft", units={"speed": "mph"})
    assert lengths.to("ft").magnitude == pytest.approx(12 * speeds)


def test_a_plan_adds_up_and_carries_its_caution() -> None:
    plan = sc.closure.plan(
        speed="55 mph", kind="one_lane_two_way", road="rural", work_length="200 ft"
    )
    table = plan.elements
    ends = [start + length for start, length in zip(table["start"], table["length"], strict=True)]
    assert feet(max(ends)) == pytest.approx(feet(plan.length))
    assert int(table["devices"].sum()) == plan.devices
    assert list(plan.removal_order["name"]) == list(table["name"])[::-1]
    assert plan.flaggers == 2
    assert "govern" in plan.cautions[0]
    assert "flaggers" in repr(plan)


def test_unknown_words_and_wrong_units_are_refused() -> None:
    with pytest.raises(sc.UnknownNameError) as word:
        sc.closure.taper_length("55 mph", "12 ft", "mergin")
    assert "merging" in word.value.allowed
    with pytest.raises(sc.UnitError):
        sc.closure.taper_length("55 ft", "12 ft")
    with pytest.raises(sc.InputError):
        sc.closure.plan(speed=[45, 55], kind="shoulder", road="rural", work_length="9 ft",
                        units={"speed": "mph"})  # fmt: skip
