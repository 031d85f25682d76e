"""Long lists in parts. What is expected is the run over the whole list in one process."""

from __future__ import annotations

import json
import os
import signal
from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np
import pytest

import scupper as sc

DRAWS = 40
ROWS = 7


@pytest.fixture(scope="module")
def whole(county: sc.Inventory, job: sc.Job) -> sc.Simulation:
    return sc.simulate(county, job, DRAWS, 3)


def run(county: Any, job: sc.Job, **more: Any) -> sc.Simulation:
    return sc.cluster.simulate(county, job, **{"draws": DRAWS, "seed": 3, "rows": ROWS, **more})


def assert_same(found: sc.Simulation, expected: sc.Simulation) -> None:
    """The same bits in every row and in every draw of the totals."""
    assert found.to_pandas().equals(expected.to_pandas())
    for figure in ("cost", "hours", "water", "debris", "closure"):
        np.testing.assert_array_equal(found.total_draws(figure), expected.total_draws(figure))
    assert found.total.equals(expected.total)
    assert found.unpriced.equals(expected.unpriced)


def until(some: list[sc.Structure], job: sc.Job) -> dict[str, Any]:
    """A limit that the first round of four replicates does not hold, and all twenty do."""
    first = sc.simulate(some, job, 80, 3, replicates=4).relative_error()
    last = sc.simulate(some, job, 400, 3, replicates=20).relative_error()
    assert last < first
    return {"draws": 400, "replicates": 20, "relative_error": (first * last) ** 0.5}


def stop_after(parts: int) -> Callable[[int, int], bool]:
    """Says no within the part that follows on so many."""
    return lambda done, _: done <= parts * ROWS


def test_a_lost_worker_changes_no_bit(county: sc.Inventory, job: sc.Job) -> None:
    many = list(county) * 2
    killed: list[int] = []
    with sc.cluster.local(3) as client:

        def kill_one(done: int, _: int) -> None:
            """Kills a worker at its part, once some are done."""
            busy = {address for address, parts in client.processing().items() if parts}
            for nanny in client.cluster.workers.values():
                if done and not killed and nanny.worker_address in busy:
                    killed.append(nanny.pid)
                    os.kill(nanny.pid, signal.SIGKILL)

        found = run(many, job, draws=1500, rows=15, client=client, progress=kill_one)
        programme = sc.cluster.estimate_all(many, job, client=client, rows=50)
        some = list(county)[:30]
        enough = run(some, job, **until(some, job), client=client)
    assert_same(enough, sc.simulate(some, job, **until(some, job), seed=3))
    assert len(killed) == 1
    assert_same(found, sc.simulate(many, job, 1500, 3))
    alone = sc.estimate_all(many, job)
    assert programme.to_pandas().equals(alone.to_pandas())
    assert programme.totals.equals(alone.totals)
    assert programme.unpriced.equals(alone.unpriced)


def test_parts_here_are_the_whole(
    county: sc.Inventory, job: sc.Job, whole: sc.Simulation, tmp_path: Path
) -> None:
    told: list[tuple[int, int]] = []
    found = run(county, job, progress=lambda *now: told.append(now))
    assert_same(found, whole)
    assert told[-1] == (len(county), len(county))
    assert told == sorted(told)
    kept = run(county, job, folder=tmp_path / "run")
    assert_same(kept, whole)
    assert repr(kept) == repr(whole)
    kept.to_parquet(tmp_path / "ranges.parquet")
    whole.to_parquet(tmp_path / "whole.parquet")
    import pandas as pd

    assert pd.read_parquet(tmp_path / "ranges.parquet").equals(whole.to_pandas())
    assert_same(kept.joined(whole), whole.joined(whole))
    assert_same(sc.cluster.finished(tmp_path / "run"), whole)


def test_a_stopped_run_goes_on(
    county: sc.Inventory, job: sc.Job, whole: sc.Simulation, tmp_path: Path
) -> None:
    folder = tmp_path / "run"
    with pytest.raises(sc.Interrupted):
        run(county, job, folder=folder, progress=stop_after(3))
    done = {f: f.stat().st_mtime_ns for f in folder.glob("part-*.npz")}
    assert len(done) == 3
    assert not list(folder.glob(".*"))  # nothing half-written
    assert len(sc.cluster.finished(folder).to_pandas()) <= len(done) * ROWS

    cut = folder / "part-000001.npz"
    cut.write_bytes(cut.read_bytes()[:-100])
    (folder / ".part-000002.npz.1.partial").write_bytes(b"half")
    assert_same(run(county, job, folder=folder), whole)
    assert not list(folder.glob(".*"))
    assert {f: f.stat().st_mtime_ns for f in done if f != cut} == {
        f: t for f, t in done.items() if f != cut
    }
    assert_same(run(county, job, folder=folder, progress=lambda *_: None), whole)
    assert json.loads((folder / "manifest.json").read_text())["parts"] == -(-len(county) // ROWS)


def test_a_stop_rule_in_parts_is_that_of_one_process(
    county: sc.Inventory, job: sc.Job, tmp_path: Path
) -> None:
    some = list(county)[:30]
    rule = until(some, job)
    whole = sc.simulate(some, job, **rule, seed=3)
    assert 80 < whole.draws <= 400
    assert whole.relative_error() <= rule["relative_error"]
    assert_same(run(some, job, **rule), whole)

    told: list[int] = []

    def stop_in_second_round(done: int, _: int) -> bool:
        told.append(done)
        second = any(later < done for done, later in zip(told, told[1:], strict=False))
        return not (second and done > ROWS)

    folder = tmp_path / "run"
    with pytest.raises(sc.Interrupted):
        run(some, job, **rule, folder=folder, progress=stop_in_second_round)
    rounds = sorted(f.name for f in folder.glob("replicates-*"))
    assert rounds[0] == "replicates-000004"
    assert len(rounds) == 2
    assert len(sc.cluster.finished(folder).to_pandas()) <= ROWS  # of the second round
    kept = run(some, job, **rule, folder=folder)
    assert_same(kept, whole)
    assert_same(sc.cluster.finished(folder), whole)
    with pytest.raises(sc.InputError, match="relative_error 0.5"):
        run(some, job, **{**rule, "relative_error": 0.5}, folder=folder)
    with pytest.raises(sc.InputError, match="above 0"):
        run(some, job, relative_error=0.0)


def test_ctrl_c_leaves_whole_parts(county: sc.Inventory, job: sc.Job, tmp_path: Path) -> None:
    def interrupt(done: int, _: int) -> None:
        if done > ROWS:
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        run(county, job, folder=tmp_path / "run", progress=interrupt)
    names = {f.name for f in (tmp_path / "run").iterdir()}
    assert names == {"job.json", "manifest.json", "part-000000.npz"}
    kept = sc.cluster.finished(tmp_path / "run")
    ids = list(kept.to_pandas()["structure_id"])
    assert ids == [i for i in (s.id for s in county) if i in ids]


def test_the_folder_of_another_run_is_refused(
    county: sc.Inventory, job: sc.Job, tmp_path: Path
) -> None:
    folder = tmp_path / "run"
    run(county, job, folder=folder)
    for more, differs in (({"seed": 4}, "seed"), ({"draws": 50}, "draws"), ({"rows": 5}, "rows")):
        with pytest.raises(sc.InputError, match=differs):
            run(county, job, folder=folder, **more)
    with pytest.raises(sc.InputError, match=r"nozzle\[hand_line\]\.bore"):
        run(county, job.replace({"nozzle.bore": "1 in"}), folder=folder)
    with pytest.raises(sc.InputError, match="other records"):
        run(list(county)[1:], job, folder=folder)
    with pytest.raises(sc.InputError, match="what"):
        sc.cluster.estimate_all(county, job, rows=ROWS, folder=folder)
    (tmp_path / "notes").mkdir()
    (tmp_path / "notes" / "shopping.txt").write_text("milk")
    with pytest.raises(sc.InputError, match="other files"):
        run(county, job, folder=tmp_path / "notes")
    with pytest.raises(sc.FileError, match="manifest"):
        sc.cluster.finished(tmp_path / "notes")
    with pytest.raises(sc.InputError, match="1 or more"):
        run(county, job, rows=0)


def test_files_are_read_in_parts(job: sc.Job, samples: Path, tmp_path: Path) -> None:
    first, second = samples / "dc_2019_part.txt", samples / "ak_2019_part.txt"
    stored = tmp_path / "ak.parquet"
    sc.read_inventory(second).to_parquet(stored)
    files = [first, stored, first]  # the last holds nothing new
    together = sc.read_inventory(files)
    found = run(files, job)
    assert_same(found, sc.simulate(together, job, DRAWS, 3))
    records = found.records
    assert records is not None
    assert (records.rows, records.structures) == (together.rows, len(together))
    assert records.rows == records.structures + len(records.rejected) + records.routes_under
    assert records.doubts == len(together.doubts)
    again = together.rejected["reason"] == "second record of the same structure"
    assert again.sum() >= len(sc.read_inventory(first))
    assert sorted(records.rejected["reason"]) == sorted(together.rejected["reason"])
    programme = sc.cluster.estimate_all(files, job, rows=ROWS, folder=tmp_path / "run")
    assert programme.totals.equals(sc.estimate_all(together, job).totals)


def test_a_list_without_structures_has_no_rows(job: sc.Job) -> None:
    found = run([], job)
    assert len(found.to_pandas()) == 0
    assert (found.total_draws() == 0).all()
    assert len(sc.cluster.estimate_all([], job).to_pandas()) == 0
