"""Hose lays against EPANET's solver on the same lays, in one run. Prints figures, checks nothing.

python tests/bench/bench_hose_lay.py
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import Any

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "python"))
from epanet_lays import Network, random_lay  # noqa: E402

import scupper as sc  # noqa: E402

WATER_AT_15_DEGC = 1.138e-6  # m2/s; the same for both within a digit is enough for a time


def best(work: Callable[[], Any], calls: int, repeats: int = 7) -> float:
    """The shortest time of one call, in microseconds."""
    times = []
    for _ in range(repeats):
        start = time.perf_counter()
        for _ in range(calls):
            work()
        times.append((time.perf_counter() - start) / calls)
    return min(times) * 1e6


def main() -> None:
    rng = np.random.default_rng(1)
    print(
        f"{'law':5}{'branches':>9}{'EPANET':>12}{'flows':>12}{'ratio':>8}{'whole':>12}{'ratio':>8}"
    )
    for law in ("H-W", "D-W"):
        for branches in (1, 4, 10, 30, 60, 200, 1000):
            document = random_lay(rng, branches, law)
            lay = sc.hydraulics.HoseLay.from_dict(document)
            core = lay._core
            network = Network(document, law, WATER_AT_15_DEGC)
            steady = lay.solve().nozzles["pressure_Pa"].min() > 0
            pressure = float(document["pump"]["pressure"].split()[0])
            sweep = [pressure] * 100
            calls = 2000 // branches + 2
            theirs = best(network.solve, calls)
            flows = best(partial(core.solve_many, sweep), calls // 20 + 1) / 100
            whole = best(core.solve, calls)
            print(f"{law:5}{branches:9}{theirs:10.1f}us{flows:10.1f}us{theirs / flows:8.1f}"
                  f"{whole:10.1f}us{theirs / whole:8.1f}"
                  f"{'' if steady else '  not all flow'}")  # fmt: skip
            network.close()


if __name__ == "__main__":
    main()
