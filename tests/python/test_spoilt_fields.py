"""Every record of the real files with each field in turn spoilt: told, never silently priced."""

from __future__ import annotations

import csv
from pathlib import Path

import numpy as np
import pytest

import scupper as sc
from scupper import _core

FILES = ["dc_2019_part.txt", "ak_2019_part.txt", "al_2013_part.csv", "AZ_one_2019.txt"]
VALUES = {"blank": "", "negative": "-5", "huge": "1e12", "no ASCII": "\u00e9?"}
KEYS = {"STATE_CODE_001", "STRUCTURE_NUMBER_008", "RECORD_TYPE_005A"}
TEXTS = {
    "ROUTE_NUMBER_005D",
    "HIGHWAY_DISTRICT_002",
    "FEATURES_DESC_006A",
    "FACILITY_CARRIED_007",
    "LOCATION_009",
    "OTHR_STATE_STRUC_NO_099",
}
# What the guide lets be blank, or a blank of which says that there is none.
MAY_BE_BLANK = {
    "LAT_016",
    "LONG_017",
    "RAILINGS_036A",
    "HORR_CLR_MT_047",
    "LAT_UND_REF_055A",
    "LAT_UND_MT_055B",
    "LEFT_LAT_UND_MT_056",
    "OPERATING_RATING_064",
    "INVENTORY_RATING_066",
    "OTHER_STATE_CODE_098A",
    "OTHER_STATE_PCNT_098B",
    "TEMP_STRUCTURE_103",
    "YEAR_RECONSTRUCTED_106",
    "PERCENT_ADT_TRUCK_109",
    "PIER_PROTECTION_111",
    "BRIDGE_LEN_IND_112",
    "SCOUR_CRITICAL_113",
    "FUTURE_ADT_114",
    "YEAR_OF_FUTURE_ADT_115",
    "MIN_NAV_CLR_MT_116",
    "DECK_AREA",
}


def spoilt(path: Path, value: str, file: Path) -> dict[str, str]:
    """Writes each record once for each field that is read, and tells which number has which."""
    with open(path, encoding="latin-1", newline="") as text:
        header, *rows = csv.reader(text, quotechar="'")
    number = header.index("STRUCTURE_NUMBER_008")
    known = set(_core.known_columns())
    fields: dict[str, str] = {}
    with open(file, "w", encoding="latin-1", newline="") as text:
        writer = csv.writer(text, quotechar="'")
        writer.writerow(header)
        for row in rows:
            for at in (i for i, name in enumerate(header) if name in known):
                changed = list(row)
                changed[number] = f"S{len(fields):06d}"
                fields[changed[number]] = header[at]
                changed[at] = value
                writer.writerow(changed)
    return fields


@pytest.mark.parametrize("kind", VALUES)
@pytest.mark.parametrize("name", FILES)
def test_no_spoilt_field_is_lost_on_the_way_to_a_price(
    samples: Path, tmp_path: Path, job: sc.Job, name: str, kind: str
) -> None:
    file = tmp_path / "spoilt.txt"
    fields = spoilt(samples / name, VALUES[kind], file)
    inv = sc.read_inventory(file)
    assert len(inv) + len(inv.rejected) + inv.routes_under == len(fields)

    programme = sc.estimate_all(inv, job)
    priced = programme.to_pandas()
    assert len(priced) + len(programme.unpriced) == len(inv)
    assert np.isfinite(programme.total)
    assert (priced["total"] > 0.0).all() if "total" in priced else True

    doubts = inv.doubts
    told = set(zip(doubts["structure_id"], doubts["column"], strict=True))
    blank = kind == "blank"
    silent = {
        fields[number]
        for number in priced["structure_id"]
        if number in fields and (number, fields[number]) not in told
    }
    assert silent - TEXTS - KEYS - (MAY_BE_BLANK if blank else set()) == set()
