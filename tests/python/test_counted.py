"""From the record line alone: what was counted lies within the shown range, or is a miss."""

from __future__ import annotations

from pathlib import Path

import pandas as pd
import pytest

import scupper as sc

TESTS = Path(__file__).parents[1]
COUNTED = pd.read_csv(TESTS / "reference" / "takeoff" / "counted.csv", dtype={"notes": str})
TO_SI = {"ft": 0.3048, "ft2": 0.3048**2, "each": 1.0}
SI = {"ft": "_m", "ft2": "_m2", "each": ""}
ROUNDED = 1.006  # records round to a tenth of a metre: 31 ft are told as 9.4 m
BEAMS = "stringer, multi-beam or girder"
FIELDS = [
    "structure_id",
    "length_m",
    "deck_width_m",
    "roadway_width_m",
    "longest_span_m",
    "main_spans",
    "material",
    "year_built",
    "skew_deg",
]
# The record lines of worked examples; invented structures.
LINES = [
    ("yardstick", 61.0, 11.0, 9.75, 20.3, 3, "steel", 1968, 0.0),
    ("A", 18.3, 9.4, 8.5, 18.3, 1, "steel", 1975, 0.0),
    ("B", 61.0, 18.0, 17.1, 20.3, 3, "steel", 1972, 20.0),
    ("C", 548.6, 10.4, 9.1, 61.0, 9, "steel continuous", 1958, 0.0),
]
# What lies outside, and why.
MISSES = {
    "A-drain_count": "none, the limit of the range; P5 of the draws lies just above a limit",
}


@pytest.fixture(scope="module")
def taken() -> pd.DataFrame:
    lines = pd.DataFrame(LINES, columns=FIELDS).assign(
        state="99", design=BEAMS, approach_spans=0, left_walk_width_m=0.0, right_walk_width_m=0.0
    )
    pair = sc.read_inventory(TESTS / "data" / "inventory" / "AZ_one_2019.txt")
    tables = [sc.take_off(sc.read_inventory(lines)), sc.take_off(pair).assign(structure_id="AZ")]
    return pd.concat(tables, ignore_index=True).set_index("structure_id")


def test_what_was_counted_lies_within_the_range_that_is_shown(taken: pd.DataFrame) -> None:
    outside = {}
    checked = 0
    for row in COUNTED.itertuples():
        name = row.quantity + SI[row.unit]
        if f"{name}_low" not in taken:
            continue  # no column of the table; the test in C++ has it
        checked += 1
        low, high = taken.loc[row.locator, [f"{name}_low", f"{name}_high"]]
        counted = row.expected * TO_SI[row.unit]
        if not low / ROUNDED <= counted <= high * ROUNDED:
            outside[row.id] = f"{counted:.1f} is not within {low:.1f} to {high:.1f}"
    assert checked == 26
    assert set(outside) == set(MISSES), outside
