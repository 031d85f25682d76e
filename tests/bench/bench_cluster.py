"""From one worker to two: python tests/bench/bench_cluster.py [STRUCTURES [DRAWS]].

Prints seconds of the same run on one and on two local workers and their ratio; checks nothing but
that both give the same totals. Wants two idle cores. The list is the demo's over and over.
"""

from __future__ import annotations

import sys
import time

import scupper as sc


def seconds(workers: int, structures: list[sc.Structure], draws: int) -> tuple[float, float]:
    """How long a run takes on some workers that are ready, and its mean total."""
    job = sc.Job.demo()
    with sc.cluster.local(workers) as client:
        client.wait_for_workers(workers)
        sc.cluster.simulate(structures[: 2 * workers], job, 100, client=client, rows=1)  # warm
        start = time.perf_counter()
        found = sc.cluster.simulate(structures, job, draws, client=client, rows=100, threads=1)
        return time.perf_counter() - start, float(found.total_draws().mean())


def main(structures: int = 8_000, draws: int = 10_000) -> None:
    county = list(sc.read_inventory(sc.demo_records()))
    many = (county * (structures // len(county) + 1))[:structures]
    one, total = seconds(1, many, draws)
    two, same = seconds(2, many, draws)
    if total != same:
        raise SystemExit(f"the totals differ: {total!r}, {same!r}")
    print(f"{structures:,} structures x {draws:,} draws")
    print(f"one worker   {one:8.1f} s")
    print(f"two workers  {two:8.1f} s")
    print(f"ratio        {one / two:8.2f}")


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
