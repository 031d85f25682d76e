"""Inventories and results as Parquet. What is expected of a file is what was written into it."""

from __future__ import annotations

import gzip
import json
import pickle
from pathlib import Path
from typing import Any

import pandas as pd
import pyarrow as pa
import pyarrow.parquet as pq
import pytest

import scupper as sc
from scupper import _core


def records_of(inv: sc.Inventory) -> dict[str, Any]:
    """Everything an inventory says, in one comparable form."""
    return {
        "structures": _core.write_structures(inv._core),
        "notes": _core.inventory_notes(inv._core),
        "hash": inv._core.hash(),
    }


@pytest.mark.parametrize(
    "name",
    ["dc_2019_part.txt", "dc_2019_part_fixed.txt", "al_2013_part.csv", "ak_2019_part.txt",
     "national_2022_invented.json"],
)  # fmt: skip
def test_real_records_come_back_to_the_bit(name: str, samples: Path, tmp_path: Path) -> None:
    before = sc.read_inventory(samples / name)
    before.to_parquet(tmp_path / "records.parquet")
    after = sc.read_inventory(tmp_path / "records.parquet")
    assert records_of(after) == records_of(before)
    assert after.rejected.equals(before.rejected)
    assert after.doubts.equals(before.doubts)
    assert after.to_pandas().equals(before.to_pandas())
    assert records_of(pickle.loads(pickle.dumps(before))) == records_of(before)


def test_a_state_in_pieces_is_the_state(samples: Path, tmp_path: Path) -> None:
    state = tmp_path / "DC19.txt"
    state.write_bytes(gzip.decompress((samples / "DC19.txt.gz").read_bytes()))
    whole = sc.read_inventory(state)
    whole.to_parquet(tmp_path / "DC19.parquet")
    pieces = list(sc.iter_inventory(tmp_path / "DC19.parquet", 100))
    assert [len(piece) for piece in pieces[:-1]] == [100] * (len(pieces) - 1)
    assert [s.key for piece in pieces for s in piece] == [s.key for s in whole]
    assert sum(piece.rows for piece in pieces) == whole.rows
    assert sum(len(piece.doubts) for piece in pieces) == len(whole.doubts)
    for piece in pieces:
        assert piece.rows == len(piece) + len(piece.rejected) + piece.routes_under


def test_what_was_measured_and_joined_comes_back(samples: Path, tmp_path: Path) -> None:
    inv = sc.read_inventory(samples / "AZ_one_2019.txt", elements=samples / "nbe_2023_AZ_one.xml")
    inv.to_parquet(tmp_path / "az.parquet")
    again = sc.read_inventory(tmp_path / "az.parquet")
    assert records_of(again) == records_of(inv)
    assert "basis" in json.dumps(pq.read_table(tmp_path / "az.parquet")["given"].to_pylist())


def test_files_of_other_programs_are_read(samples: Path, tmp_path: Path) -> None:
    county = sc.read_inventory(sc.demo_records())
    county.to_pandas().to_parquet(tmp_path / "table.parquet")
    table = sc.read_inventory(tmp_path / "table.parquet")
    assert table.to_pandas()["length_m"].equals(county.to_pandas()["length_m"])

    source = samples / "dc_2019_part.txt"
    text = pd.read_csv(source, dtype=str, keep_default_na=False, quotechar="'")
    text.to_parquet(tmp_path / "national.parquet")
    national = sc.read_inventory(tmp_path / "national.parquet")
    assert _core.write_structures(national._core) == _core.write_structures(
        sc.read_inventory(source)._core
    )
    assert national.files == [str(tmp_path / "national.parquet")]


def test_what_is_no_inventory_is_refused_by_name(county: sc.Inventory, tmp_path: Path) -> None:
    path = tmp_path / "records.parquet"
    county.to_parquet(path)
    whole = path.read_bytes()
    path.write_bytes(whole[: len(whole) // 2])
    with pytest.raises(sc.FileError, match=r"records\.parquet"):
        sc.read_inventory(path)
    table = pq.read_table(pa.BufferReader(whole))
    at = table.schema.get_field_index("length_m")
    spoilt = table.set_column(at, "length_m", pa.array([-3.0] * len(table)))
    pq.write_table(spoilt, path)
    with pytest.raises(sc.InputError, match="cannot be"):
        sc.read_inventory(path)
    pq.write_table(pa.table({"bridge": ["A"]}), path)
    with pytest.raises(sc.Error, match="bridge"):
        sc.read_inventory(path)
    with pytest.raises(sc.FileError, match="nowhere"):
        county.to_parquet(tmp_path / "nowhere" / "records.parquet")


def test_results_have_their_stamp(county: sc.Inventory, job: sc.Job, tmp_path: Path) -> None:
    programme = sc.estimate_all(county, job)
    programme.to_parquet(tmp_path / "prices.parquet")
    found = sc.simulate(county, job, draws=20, seed=7)
    found.to_parquet(tmp_path / "ranges.parquet")
    for name, table in (("prices", programme.to_pandas()), ("ranges", found.to_pandas())):
        assert pd.read_parquet(tmp_path / f"{name}.parquet").equals(table)
    stamps = [
        json.loads(pq.read_schema(tmp_path / f"{name}.parquet").metadata[b"scupper"])
        for name in ("prices", "ranges")
    ]
    assert stamps[0]["records"] == programme.stamp["records"]
    assert stamps[1]["job"] == stamps[0]["job"] == programme.stamp["job"]
    assert (stamps[1]["seed"], stamps[1]["draws"]) == (7, 20)
    with pytest.raises(sc.FileError, match="simulation"):
        sc.read_inventory(tmp_path / "ranges.parquet")


def test_a_missing_package_says_what_to_install(
    county: sc.Inventory, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(__import__("sys").modules, "pyarrow", None)
    with pytest.raises(sc.Error, match=r"scupper\[cluster\]"):
        county.to_parquet(tmp_path / "records.parquet")
