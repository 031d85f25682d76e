"""Records of the national specification of 2022; all structures are invented."""

from __future__ import annotations

import copy
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import numpy as np
import pandas as pd
import pytest

import scupper as sc

FOOT = 0.3048
ROAD = {"BF01": "H01", "BF02": "C", "BF03": "ROUTE 7", "BH01": "5", "BH02": "99999"}
BOTH = {
    "BID01": "0042",
    "BL01": 99,
    "BL02": 7,
    "BL04": "03",
    "BG02": 200.0,
    "BG03": 70.0,
    "BG05": 36.0,
    "BG06": 27.0,
    "BG07": 1.0,
    "BG08": 5.0,
    "BG09": 32.0,
    "BG10": "0",
    "BG11": 20,
    "BC01": "6",
    "BC02": "7",
    "BC03": "6",
    "BC04": "N",
    "BW01": 1968,
    "SpanSets": [
        {"BSP01": "M01", "BSP02": 3, "BSP04": "S02", "BSP05": "1", "BSP06": "G02", "BSP09": "C01"}
    ],
    "Features": [
        ROAD | {"BH08": 2, "BH09": 4000, "BH10": 320},
        {"BF01": "H02", "BF02": "B", "BF03": "ROUTE 12", "BH08": 4, "BH13": 16.5},
    ],
}
# The same structure as the older record has it; lengths in metres.
OLD = {
    "STATE_CODE_001": "99",
    "STRUCTURE_NUMBER_008": "0042",
    "RECORD_TYPE_005A": "1",
    "HIGHWAY_DISTRICT_002": "03",
    "COUNTY_CODE_003": "007",
    "FEATURES_DESC_006A": "ROUTE 12",
    "FACILITY_CARRIED_007": "ROUTE 7",
    "FUNCTIONAL_CLASS_026": "07",
    "YEAR_BUILT_027": "1968",
    "TRAFFIC_LANES_ON_028A": "2",
    "TRAFFIC_LANES_UND_028B": "4",
    "ADT_029": "4000",
    "APPR_WIDTH_MT_032": repr(32 * FOOT),
    "MEDIAN_CODE_033": "0",
    "DEGREES_SKEW_034": "20",
    "SERVICE_ON_042A": "1",
    "SERVICE_UND_042B": "1",
    "STRUCTURE_KIND_043A": "3",
    "STRUCTURE_TYPE_043B": "02",
    "MAIN_UNIT_SPANS_045": "3",
    "APPR_SPANS_046": "0",
    "MAX_SPAN_LEN_MT_048": repr(70 * FOOT),
    "STRUCTURE_LEN_MT_049": repr(200 * FOOT),
    "LEFT_CURB_MT_050A": repr(1 * FOOT),
    "RIGHT_CURB_MT_050B": repr(5 * FOOT),
    "ROADWAY_WIDTH_MT_051": repr(27 * FOOT),
    "DECK_WIDTH_MT_052": repr(36 * FOOT),
    "VERT_CLR_UND_REF_054A": "H",
    "VERT_CLR_UND_054B": repr(16.5 * FOOT),
    "DECK_COND_058": "6",
    "SUPERSTRUCTURE_COND_059": "7",
    "SUBSTRUCTURE_COND_060": "6",
    "CULVERT_COND_062": "N",
    "DECK_STRUCTURE_TYPE_107": "1",
    "PERCENT_ADT_TRUCK_109": "8",
}


def read(folder: Path, records: Any) -> sc.Inventory:
    file = folder / "records.json"
    file.write_text(json.dumps(records), encoding="utf-8")
    return sc.read_inventory(file)


def test_one_structure_in_both_forms_gives_the_same(tmp_path: Path) -> None:
    old = tmp_path / "old.txt"
    old.write_text(f"{','.join(OLD)}\n{','.join(OLD.values())}\n", encoding="utf-8")
    before, after = sc.read_inventory(old), read(tmp_path, [BOTH])
    assert len(after.rejected) == 0
    assert len(after.doubts) == 0
    for one, other in (
        (before.to_pandas(), after.to_pandas().drop(columns=["beam_layout"])),
        (sc.take_off(before), sc.take_off(after)),
    ):
        pd.testing.assert_frame_equal(one[other.columns], other, rtol=1e-12)


def test_what_only_the_new_record_tells_is_recorded_not_inferred(tmp_path: Path) -> None:
    more = copy.deepcopy(BOTH) | {"BG13": 24, "BC08": "5"}
    more["SpanSets"][0]["BSP03"] = 6
    more["SubstructureSets"] = [{"BSB01": "A01", "BSB02": 2}, {"BSB01": "P01", "BSB02": 2}]
    plain = sc.take_off(read(tmp_path, [BOTH])).iloc[0]
    told = sc.take_off(read(tmp_path, [more])).iloc[0]
    assert plain["girder_count_basis"] == "inferred"
    assert plain["girder_count_low"] < plain["girder_count_high"]
    for count, number in (("girder_count", 6), ("cap_count", 2)):
        assert told[f"{count}_basis"] == "recorded"
        assert told[count] == told[f"{count}_low"] == told[f"{count}_high"] == number


def test_the_sample_is_read_taken_off_and_priced(samples: Path, job: sc.Job) -> None:
    inv = sc.read_inventory(samples / "national_2022_invented.json")
    assert inv.rows == len(inv) == 6
    table = inv.to_pandas().set_index("structure_id")
    assert table.loc["INV-0001", "height_m"] == pytest.approx(24 * FOOT)
    assert table.loc["INV-0005", "pier_units"] == 6
    taken = sc.take_off(inv).set_index("structure_id")
    assert taken.loc["INV-0001", "girder_count_basis"] == "element"
    assert taken.loc["INV-0005", "deck_total_area_m2"] == pytest.approx(44000 * FOOT**2)
    programme = sc.estimate_all(inv, job)
    unpriced = programme.unpriced["structure_id"].tolist()
    assert "INV-0004" in unpriced  # a culvert
    assert "INV-0006" in unpriced  # closed to traffic
    assert len(programme.to_pandas()) == 6 - len(unpriced)


def test_pieces_are_the_whole(samples: Path) -> None:
    path = samples / "national_2022_invented.json"
    pieces = list(sc.iter_inventory(path, chunk=4))
    assert [len(piece) for piece in pieces] == [4, 2]
    together = pd.concat([piece.to_pandas() for piece in pieces], ignore_index=True)
    whole = sc.read_inventory(path).to_pandas()
    pd.testing.assert_frame_equal(together, whole[together.columns], check_dtype=False)


def places(value: Any, path: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    """The place of every value within a record, whole sets too."""
    if path:
        yield path
    if isinstance(value, (dict, list)):
        keys = value if isinstance(value, dict) else range(len(value))
        for key in keys:
            yield from places(value[key], (*path, key))


def put(record: Any, path: tuple[Any, ...], value: Any) -> Any:
    changed = copy.deepcopy(record)
    inner = changed
    for key in path[:-1]:
        inner = inner[key]
    inner[path[-1]] = value
    return changed


@pytest.mark.parametrize("value", [None, -5, 1e12, "\u00e9?", True, [], {}, [[1]]])
def test_no_spoilt_item_is_lost_on_the_way_to_a_price(
    samples: Path, tmp_path: Path, job: sc.Job, value: Any
) -> None:
    text = (samples / "national_2022_invented.json").read_text(encoding="utf-8")
    spoilt = []
    for record in json.loads(text):
        for path in places(record):
            changed = put(record, path, value)
            if path != ("BID01",):
                changed["BID01"] = f"S{len(spoilt)}"
            spoilt.append(changed)
    inv = read(tmp_path, spoilt)
    assert inv.rows == len(spoilt) == len(inv) + len(inv.rejected)
    programme = sc.estimate_all(inv, job)
    assert len(programme.to_pandas()) + len(programme.unpriced) == len(inv)
    assert np.isfinite(programme.total)
    taken = sc.take_off(inv)
    numbers = taken.select_dtypes("number").to_numpy(float)
    assert not np.isinf(numbers).any()
    assert not (numbers < 0.0).any()
