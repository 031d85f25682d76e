"""Reading records: every row accounted for, every field as recorded."""

from __future__ import annotations

import csv
import subprocess
import sys
from pathlib import Path

import numpy as np
import pandas as pd
import pytest

import scupper as sc


def counted(samples: Path) -> list[str]:
    return [f.name for f in sorted(samples.iterdir()) if f.name.endswith(("part.txt", "part.csv"))]


@pytest.mark.parametrize("name", ["dc_2019_part.txt", "ak_2019_part.txt", "al_2013_part.csv"])
def test_every_row_is_accounted_for(samples: Path, name: str) -> None:
    with open(samples / name, encoding="latin-1", newline="") as file:
        rows = len(list(csv.reader(file, quotechar="'"))) - 1
    inv = sc.read_inventory(samples / name)
    assert inv.rows == rows == len(inv) + len(inv.rejected) + inv.routes_under
    assert len(inv.to_pandas()) == len(inv) == len(list(inv))


def test_recorded_fields_are_those_of_the_file(samples: Path) -> None:
    path = samples / "dc_2019_part.txt"
    with open(path, encoding="latin-1", newline="") as file:
        first = next(csv.DictReader(file, quotechar="'"))
    inv = sc.read_inventory(path)
    row = inv.to_pandas().iloc[0]
    assert row["structure_id"] == first["STRUCTURE_NUMBER_008"].strip()
    assert row["length_m"] == float(first["STRUCTURE_LEN_MT_049"])
    assert row["deck_width_m"] == float(first["DECK_WIDTH_MT_052"])
    assert row["skew_deg"] == pytest.approx(float(first["DEGREES_SKEW_034"]))
    assert row["detour_km"] == float(first["DETOUR_KILOS_019"])
    assert row["main_spans"] == int(first["MAIN_UNIT_SPANS_045"])
    assert row["carries"] == first["FACILITY_CARRIED_007"]
    one = inv[0].to_dict()
    assert set(one) == set(row.index)
    assert one["length_m"] == row["length_m"]
    assert one["clearance_over_m"] is None  # 99.99: none


def test_what_is_not_recorded_is_missing_never_zero(county: sc.Inventory) -> None:
    table = county.to_pandas().set_index("structure_id")
    assert np.isnan(table.loc["TC-0043", "skew_deg"])
    assert pd.isna(table.loc["TC-0002", "year_reconstructed"])
    assert table["year_built"].dtype == "Int64"


def test_look_up_by_position_and_number(county: sc.Inventory) -> None:
    first = county[0]
    assert first.id == "TC-0001"
    assert county["TC-0001"].key == county["99:TC-0001"].key == first.key
    assert county[-1].id == county[len(county) - 1].id
    for position in (len(county), -len(county) - 1):
        with pytest.raises(IndexError):
            county[position]
    with pytest.raises(sc.UnknownNameError) as caught:
        county["TC-00l7"]
    assert "TC-0017" in caught.value.allowed


def test_a_structure_outlives_its_inventory() -> None:
    structure = sc.read_inventory(sc.demo_records())[3]
    assert structure.to_dict()["structure_id"] == "TC-0004"


def test_doubts_and_rejected_name_the_line(county: sc.Inventory) -> None:
    doubts = county.doubts.set_index("structure_id")
    skew = doubts.loc["TC-0043"]
    assert (skew["column"], skew["found"], bool(skew["kept"])) == ("DEGREES_SKEW_034", "99", False)
    assert skew["where"].endswith(f":{skew['line']} DEGREES_SKEW_034")
    rejected = county.rejected.set_index("structure_id").loc["TC-0001"]
    assert (rejected["line"], rejected["reason"]) == (50, "second record of the same structure")


def test_select_tells_what_is_missing(county: sc.Inventory) -> None:
    some = county.select(["TC-0044", "TC-0001", "TC-00O3", "99:TC-0001"])
    assert [s.id for s in some] == ["TC-0044", "TC-0001"]
    assert list(some.missing) == ["TC-00O3"]
    assert "99:TC-0003" in some.missing["TC-00O3"]
    assert some.repeated == ["99:TC-0001"]
    assert set(some.doubts["structure_id"]) == {"TC-0044"}
    assert len(sc.take_off(some)) == 2
    assert some["TC-0044"].id == "TC-0044"


def test_progress_is_told_and_can_stop(samples: Path) -> None:
    calls: list[tuple[int, int]] = []
    path = samples / "dc_2019_part.txt"
    sc.read_inventory(path, progress=lambda done, total: calls.append((done, total)))
    size = path.stat().st_size
    assert calls
    assert calls[-1] == (size, size)


def test_text_that_is_no_utf8_is_shown(tmp_path: Path) -> None:
    text = sc.demo_records().read_bytes().replace(b"OTTER FORK", b"OTTER F\xd6RK")
    file = tmp_path / "latin.txt"
    file.write_bytes(text)
    crossed = set(sc.read_inventory(file).to_pandas()["crosses"])
    assert any("F\u00d6RK" in name or "F\ufffdRK" in name for name in crossed)


def test_pieces_are_the_whole(samples: Path) -> None:
    for name in ("dc_2019_part.txt", "dc_2019_part_fixed.txt"):
        whole = sc.read_inventory(samples / name)
        pieces = list(sc.iter_inventory(samples / name, chunk=15))
        assert [len(piece) for piece in pieces] == [15, 15, 10]
        together = pd.concat([piece.to_pandas() for piece in pieces], ignore_index=True)
        pd.testing.assert_frame_equal(together, whole.to_pandas())
        doubts = pd.concat([piece.doubts for piece in pieces], ignore_index=True)
        pd.testing.assert_frame_equal(doubts, whole.doubts)


def test_pieces_tell_progress_and_can_stop(samples: Path) -> None:
    path = samples / "ak_2019_part.txt"
    done: list[int] = []
    list(sc.iter_inventory(path, 10, progress=lambda now, _: done.append(now)))
    assert done == sorted(done)
    assert done[-1] == path.stat().st_size
    with pytest.raises(sc.Interrupted):
        next(sc.iter_inventory(path, 10, progress=lambda *_: False))
    with pytest.raises(sc.InputError, match="chunk"):
        sc.iter_inventory(path, 0)
    with pytest.raises(sc.FileError):
        sc.iter_inventory(path.parent / "none")


@pytest.mark.skipif(not Path("/proc/self/status").exists(), reason="tells no peak memory")
def test_memory_stays_flat_in_pieces(samples: Path, tmp_path: Path) -> None:
    header, *rows = (samples / "dc_2019_part.txt").read_bytes().splitlines(keepends=True)
    parts = [row.split(b",", 2) for row in rows]
    file = tmp_path / "many.txt"
    with open(file, "wb") as out:
        out.write(header)
        for n in range(40_000):
            state, _, rest = parts[n % len(parts)]
            out.write(b"%s,%015d,%s" % (state, n, rest))
    code = (
        "import re, sys, scupper as sc\n"
        "n = sum(len(piece) for piece in sc.iter_inventory(sys.argv[1], int(sys.argv[2])))\n"
        "peak = re.search(r'VmHWM:\\s+(\\d+)', open('/proc/self/status').read())\n"
        "print(n, peak[1])\n"
    )
    run = [sys.executable, "-c", code, str(file)]
    count, pieces = map(int, subprocess.check_output([*run, "1000"]).split())
    _, whole = map(int, subprocess.check_output([*run, "100000"]).split())
    assert count == 40_000
    assert whole - pieces > 20_000  # KiB; the whole takes more than 25 MB of structures


def test_both_forms_of_the_same_records_are_alike(samples: Path) -> None:
    delimited = sc.read_inventory(samples / "dc_2019_part.txt").to_pandas()
    fixed = sc.read_inventory(samples / "dc_2019_part_fixed.txt").to_pandas()
    only_delimited = ["recorded_deck_area_m2"]
    pd.testing.assert_frame_equal(
        fixed.drop(columns=only_delimited), delimited.drop(columns=only_delimited), check_exact=True
    )
