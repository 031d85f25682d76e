"""Times of the Python side: python tests/bench/bench_python.py. Prints figures, checks nothing."""

from __future__ import annotations

import subprocess
import sys
import time
from collections.abc import Callable
from typing import Any

import scupper as sc


def best(work: Callable[[], Any], repeats: int = 5) -> float:
    """The shortest of some runs, in seconds."""
    times = []
    for _ in range(repeats):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return min(times)


def import_time() -> float:
    code = "import time; t = time.perf_counter(); import scupper; print(time.perf_counter() - t)"
    runs = [subprocess.run([sys.executable, "-c", code], capture_output=True, check=True)
            for _ in range(5)]  # fmt: skip
    return min(float(run.stdout) for run in runs)


def main() -> None:
    job = sc.Job.demo()
    county = sc.read_inventory(sc.demo_records())
    many = list(county) * 400
    structure = county[0]
    estimate = sc.estimate(structure, job)
    print(f"import scupper            {import_time() * 1e3:8.1f} ms")
    print(f"estimate                  {best(lambda: sc.estimate(structure, job)) * 1e6:8.1f} us")
    print(
        f"repr(estimate)            {best(lambda: repr(sc.estimate(structure, job))) * 1e3:8.1f} ms"
    )
    print(f"explain                   {best(lambda: estimate.explain('cost.total')) * 1e3:8.1f} ms")
    for name, work in (
        ("take_off", lambda: sc.take_off(many)),
        ("estimate_all", lambda: sc.estimate_all(many, job)),
        ("estimate_all, table", lambda: sc.estimate_all(many, job).to_pandas()),
    ):
        each = best(work, 3) / len(many)
        print(f"{name:25} {each * 1e6:8.1f} us a structure ({len(many):,})")


if __name__ == "__main__":
    main()
