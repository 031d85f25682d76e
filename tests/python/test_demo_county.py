"""The invented county: what its file holds, and that the package tells all of it."""

from __future__ import annotations

import csv
import re
from collections import Counter, defaultdict
from collections.abc import Iterator

import numpy as np
import pytest

import scupper as sc

Row = dict[str, str]

KIND, DESIGN = "STRUCTURE_KIND_043A", "STRUCTURE_TYPE_043B"
ON, OFF = True, False  # whether the value in doubt is recorded all the same

PLACES = {
    *("TAMARACK", "EAST BURNTWOOD", "LARCH FALLS", "PINE LANDING", "QUARRY HILL", "HERON MILLS"),
    *("GRANITE PRAIRIE", "WILLOW BEND", "SNOWSHOE", "STILL POND", "FIDDLEHEAD"),
}

# What was put into the file on purpose, by structure.
DOUBTS = {
    "TC-0042": {("DECK_WIDTH_MT_052", ON)},
    "TC-0043": {("DEGREES_SKEW_034", OFF)},
    "TC-0044": {("ADT_029", ON), ("YEAR_RECONSTRUCTED_106", ON)},
    "TC-0045": {("VERT_CLR_UND_054B", OFF)},
    "TC-0046": {("MAX_SPAN_LEN_MT_048", ON)},
    "TC-0047": {("POSTING_EVAL_070", OFF)},
    "TC-0048": {("STRUCTURE_LEN_MT_049", OFF), ("MAX_SPAN_LEN_MT_048", OFF)},
    "TC-0090": {("ADT_029", ON)},  # closed
    "TC-0129": {("ADT_029", ON)},  # for walkers, as the next
    "TC-0130": {("ADT_029", ON)},
    "TC-0138": {("DECK_WIDTH_MT_052", ON), ("ROADWAY_WIDTH_MT_051", ON)},  # an arch under fill
    "TC-0139": {("DECK_WIDTH_MT_052", OFF)},
    "TC-0140": {("ROADWAY_WIDTH_MT_051", ON)},
    "TC-0141": {("DEGREES_SKEW_034", OFF)},
    "TC-0142": {("PERCENT_ADT_TRUCK_109", OFF)},
    "TC-0143": {("YEAR_BUILT_027", OFF)},
    "TC-0144": {("APPR_KIND_044A", ON)},
    "TC-0145": {
        ("DECK_WIDTH_MT_052", OFF),
        ("ROADWAY_WIDTH_MT_051", OFF),
        ("APPR_WIDTH_MT_032", OFF),
    },
    "TC-0146": {("MAX_SPAN_LEN_MT_048", ON)},
    "TC-0147": {("MAINTENANCE_021", ON), ("OWNER_022", ON), ("NAV_VERT_CLR_MT_039", OFF)},
    "TC-0148": {("ADT_029", OFF), ("LONG_017", ON)},
    "TC-0150": {("DECK_WIDTH_MT_052", ON)},
}

REJECTED = [
    ("TC-0001", "second record of the same structure"),
    ("TC-0060", "the same record again"),
    ("TC-0151", "fewer fields than the header"),
    ("", "the structure number is blank"),
]

# Material and design (items 43A, 43B) by kind, and how many of it the county has at least.
KINDS = {
    "steel girders": ({"3", "4"}, {"02"}, 30),
    "prestressed girders": ({"5", "6"}, {"02"}, 20),
    "boxes": ({"5", "6"}, {"05", "06", "21"}, 12),
    "slabs": ({"1", "2", "5"}, {"01"}, 8),
    "tee beams": ({"1", "2", "5"}, {"04"}, 9),
    "channel beams": ({"1", "5"}, {"22"}, 3),
    "timber": ({"7"}, {"01", "02"}, 7),
    "trusses": ({"3"}, {"09", "10"}, 8),
    "frames": ({"1", "2", "4"}, {"07"}, 4),
    "arches": ({"1", "2", "3", "8"}, {"11", "12"}, 7),
    "culverts": ({"1", "3", "5", "9"}, {"19"}, 11),
}


def rows() -> Iterator[Row]:
    text = sc.demo_records().read_text(encoding="utf-8")
    plain = text.replace("OTTER'S", "OTTERS")  # an apostrophe within quotes is beyond `csv`
    yield from csv.DictReader(plain.splitlines(), quotechar="'")


@pytest.fixture(scope="module")
def records() -> dict[str, Row]:
    """The first record of every structure, read without this package."""
    found: dict[str, Row] = {}
    for row in rows():
        number = row["STRUCTURE_NUMBER_008"].strip()
        if row["RECORD_TYPE_005A"] == "1" and number and row["DECK_AREA"] is not None:
            found.setdefault(number, row)
    return found


@pytest.fixture(scope="module")
def programme(county: sc.Inventory, job: sc.Job) -> sc.Programme:
    return sc.estimate_all(county, job)


def test_every_record_is_marked_invented(county: sc.Inventory) -> None:
    assert {structure.state for structure in county} == {"99"}
    assert {structure.id for structure in county} == {f"TC-{n:04d}" for n in range(1, 151)}
    note = (sc.demo_records().parent / "README.txt").read_text(encoding="utf-8")
    assert "Tamarack County is invented" in note
    assert f"{len(county)} structures" in note
    for structure in county:
        place = re.sub(r"^(IN |[\d.]+ KM [NESW] OF )", "", structure.location)
        assert place in PLACES, structure.id


def test_counts_are_those_of_the_file(county: sc.Inventory, records: dict[str, Row]) -> None:
    assert [s.id for s in county] == list(records)
    assert county.routes_under == sum(r["RECORD_TYPE_005A"] in ("2", "A", "B") for r in rows())
    assert county.rows == sum(1 for _ in rows())


@pytest.mark.parametrize("kind", KINDS)
def test_several_of_every_kind(records: dict[str, Row], kind: str) -> None:
    materials, designs, least = KINDS[kind]
    found = [r for r in records.values() if r[KIND] in materials and r[DESIGN] in designs]
    assert len(found) >= least


def test_what_a_superintendent_would_look_for(records: dict[str, Row]) -> None:
    def having(column: str, *values: str) -> int:
        return sum(r[column] in values for r in records.values())

    assert having("SERVICE_UND_042B", "2") >= 5  # over a railway
    assert having("SERVICE_UND_042B", "1") >= 20
    assert having("NAVIGATION_038", "1") >= 3
    assert having("MEDIAN_CODE_033", "1", "2", "3") >= 4
    assert having("OPEN_CLOSED_POSTED_041", "P") >= 12
    assert having("OPEN_CLOSED_POSTED_041", "K") == 1
    assert having("STRUCTURE_FLARED_035", "1") >= 2
    assert having("DECK_STRUCTURE_TYPE_107", "3") >= 2  # open grating
    assert sum(float(r["STRUCTURE_LEN_MT_049"]) > 200.0 for r in records.values()) >= 8
    assert sum(0 < int(r["DEGREES_SKEW_034"]) < 90 for r in records.values()) >= 20
    walks = [(r["LEFT_CURB_MT_050A"], r["RIGHT_CURB_MT_050B"]) for r in records.values()]
    assert sum(max(map(float, both)) >= 1.2 for both in walks) >= 12
    owners = Counter(r["OWNER_022"] for r in records.values())
    assert min(owners[code] for code in ("01", "02", "04")) >= 10  # state, county, city


def test_a_posted_bridge_says_how_far_below_the_legal_load(records: dict[str, Row]) -> None:
    for number, row in records.items():
        if row["OPEN_CLOSED_POSTED_041"] != "A":
            assert row["POSTING_EVAL_070"] in "01234", number


def test_pairs_are_two_of_a_kind(records: dict[str, Row]) -> None:
    pairs = defaultdict(list)
    for row in records.values():
        if row["FACILITY_CARRIED_007"].endswith(("EB", "WB")):
            pairs[row["FEATURES_DESC_006A"]].append(row)
    assert len(pairs) >= 5
    for both in pairs.values():
        assert sorted(r["PARALLEL_STRUCTURE_101"] for r in both) == ["L", "R"]
        for column in (KIND, DESIGN, "STRUCTURE_LEN_MT_049", "DECK_WIDTH_MT_052"):
            assert len({r[column] for r in both}) == 1


def test_every_fault_put_in_is_told_and_no_other(county: sc.Inventory) -> None:
    told = defaultdict(set)
    for row in county.doubts.to_dict("records"):
        told[row["structure_id"]].add((row["column"], bool(row["kept"])))
    assert told == DOUBTS
    rejected = county.rejected
    assert list(zip(rejected["structure_id"], rejected["reason"], strict=True)) == REJECTED


def test_texts_with_marks_and_places_without_position(county: sc.Inventory) -> None:
    assert county["TC-0102"].crosses == "TAMARACK RIVER, ROAD & RAILWAY"
    assert county["TC-0149"].carries == "OTTER'S BEND, OLD ROAD"
    table = county.to_pandas().set_index("structure_id")
    assert list(table.index[table["latitude"].isna()]) == ["TC-0150"]


def test_what_is_not_priced_says_why(records: dict[str, Row], programme: sc.Programme) -> None:
    reasons = dict(
        zip(programme.unpriced["structure_id"], programme.unpriced["reason"], strict=True)
    )
    for number, row in records.items():
        if row[DESIGN] == "19":
            assert reasons.pop(number).startswith("a culvert")
    assert reasons.pop("TC-0041").startswith("a tunnel")
    assert reasons.pop("TC-0138").startswith("buried")
    assert reasons.pop("TC-0048").startswith("no dimensions")
    assert reasons.pop("TC-0145").startswith("no dimensions")
    assert not reasons


def test_every_price_is_one(programme: sc.Programme) -> None:
    table = programme.to_pandas()
    for name in ("cost_total_usd", "water_gal", "debris_short_ton", "labour_h", "shifts"):
        assert np.isfinite(table[name]).all(), name
        assert (table[name] > 0.0).all(), name


def test_twins_and_bridges_put_right_by_a_rule(programme: sc.Programme) -> None:
    cost = programme.to_pandas().set_index("structure_id")["cost_total_usd"]
    assert cost["TC-0095"] == cost["TC-0096"]
    assert {"TC-0139", "TC-0140", "TC-0141", "TC-0144", "TC-0146"} <= set(cost.index)
