"""Reading a national inventory against pandas' and pyarrow's CSV readers, on the same columns.

python tests/bench/bench_reading.py [FILE.txt]          (see repeat_records.py for a large file)

Prints figures of one run, checks nothing. Every reader runs on one core and gets the same columns,
those that scupper knows; pandas and pyarrow check nothing of what they read.
"""

from __future__ import annotations

import importlib.util
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import Any

from repeat_records import repeat

import scupper as sc
from scupper import _core

SAMPLE = Path(__file__).resolve().parents[1] / "data" / "inventory" / "ak_2019_part.txt"
RECORDS = 100_000

#: Peak memory of a process in MiB; what getrusage tells holds for the parent too.
PEAK = "int(open('/proc/self/status').read().split('VmHWM:')[1].split()[0]) / 1024"


def best(work: Callable[[], Any], repeats: int = 5) -> float:
    """The shortest of some runs, in seconds of processor time."""
    times = []
    for _ in range(repeats):
        start = time.process_time()
        result = work()
        times.append(time.process_time() - start)
        del result  # to give it back is no part of the reading
    return min(times)


def known_columns(path: Path) -> list[str]:
    """The columns of a file that scupper reads."""
    header = path.open("rb").readline().decode("latin-1").strip().split(",")
    known = set(_core.known_columns())
    return [name for name in header if name in known]


def with_pandas(path: Path, columns: list[str]) -> Any:
    import pandas as pd

    return pd.read_csv(path, usecols=columns, quotechar="'", encoding="latin-1", low_memory=False)


def with_pyarrow(path: Path, columns: list[str]) -> Any:
    from pyarrow import csv

    return csv.read_csv(
        path,
        read_options=csv.ReadOptions(use_threads=False, encoding="latin-1"),
        parse_options=csv.ParseOptions(quote_char="'"),
        convert_options=csv.ConvertOptions(include_columns=columns),
    )


def report(path: Path) -> None:
    columns = known_columns(path)
    megabytes = path.stat().st_size / 1e6
    print(f"{path.name}: {megabytes:.0f} MB, {len(columns)} columns")
    ours = best(lambda: sc.read_inventory(path))
    print(f"scupper   {megabytes / ours:8.0f} MB/s")
    readers: dict[str, Callable[[Path, list[str]], Any]] = {
        "pandas": with_pandas,
        "pyarrow": with_pyarrow,
    }
    for name, read in readers.items():
        if importlib.util.find_spec(name) is None:
            print(f"{name:9} not installed")
            continue
        theirs = best(partial(read, path, columns), 3)
        ratio = theirs / ours
        print(f"{name:9} {megabytes / theirs:8.0f} MB/s, scupper is {ratio:.1f} times as fast")


def taken_off(path: Path, ranges: str) -> None:
    """Time and memory of a fresh process that reads a file and takes it off, as a table."""
    code = (
        "import sys, time, scupper as sc, pandas\n"
        "start = time.perf_counter(); inv = sc.read_inventory(sys.argv[1])\n"
        "read = time.perf_counter()\n"
        "table = sc.take_off(inv, threads=2, ranges=sys.argv[2] == 'ranges')\n"
        "done = time.perf_counter()\n"
        f"print(len(inv), read - start, done - read, done - start, {PEAK})\n"
    )
    out = subprocess.check_output([sys.executable, "-c", code, str(path), ranges]).split()
    count, read, take_off, both, peak = map(float, out)
    print(
        f"{count:,.0f} structures: read in {read:.2f} s, taken off ({ranges}) on two threads in "
        f"{take_off:.2f} s, together {both:.2f} s; peak memory {peak:.0f} MiB"
    )


def in_pieces(path: Path) -> None:
    """Peak memory of a fresh process that reads a file in pieces."""
    code = (
        "import sys, scupper as sc\n"
        "count = sum(len(piece) for piece in sc.iter_inventory(sys.argv[1], 20_000))\n"
        f"print(count, {PEAK})\n"
    )
    out = subprocess.check_output([sys.executable, "-c", code, str(path)]).split()
    count, peak = map(float, out)
    print(f"{count:,.0f} structures in pieces of 20,000: peak memory {peak:.0f} MiB")


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(sys.argv[1]) if len(sys.argv) > 1 else Path(folder) / "repeated.txt"
        if len(sys.argv) < 2:
            repeat(SAMPLE, path, RECORDS)
        report(path)
        taken_off(path, "values")
        taken_off(path, "ranges")
        in_pieces(path)


if __name__ == "__main__":
    main()
