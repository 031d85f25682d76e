"""The engine against the same model vectorised in NumPy: python bench_numpy.py PATH_OF_BENCH_NUMPY.

Some structures, one thread each, in turns, the least processor time of several rounds; iterative
solves run in every draw on either side. First the prices alone over the same drawn inputs. Then a
whole simulation: Latin hypercubes, shared and own parts, PERT quantiles, price, quantiles of the
figures. Once NumPy takes exact quantiles for every draw, once it is lent the engine's ways: tables
of quantiles, shared scores drawn once for all structures. It is always lent the engine's recording,
so that it prices only what a drawn input moves, and never pays for making it.
"""

from __future__ import annotations

import functools
import importlib.util
import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path

os.environ["OMP_NUM_THREADS"] = "1"

import numpy as np
from scipy import special

DRAWS = 10_000
LEVELS = [0.05, 0.1, 0.25, 0.5, 0.75, 0.8, 0.85, 0.9, 0.95]


def engine(program, *arguments):
    run = subprocess.run([program, *arguments], capture_output=True, text=True, check=True)
    return run.stdout.strip()


class Structure:
    """The price of a structure as a program, its guesses and what the engine drew and found."""

    def __init__(self, folder, number):
        path = Path(folder, f"{number}_price.py")
        spec = importlib.util.spec_from_file_location("numpy_price", path)
        module = importlib.util.module_from_spec(spec)
        spec.loader.exec_module(module)
        self.price = module.price

        def read(name):
            return np.fromfile(Path(folder, f"{number}_{name}.f64")).reshape(-1, DRAWS)

        self.inputs, self.figures = read("inputs"), read("figures")
        guesses = np.loadtxt(Path(folder, f"{number}_guesses.csv"), delimiter=",")
        self.places, self.shares = guesses[:, 0].astype(int), guesses[:, 4]
        self.low, likely, self.high = guesses[:, 1], guesses[:, 2], guesses[:, 3]
        self.shapes = (likely - self.low) / (self.high - self.low)


def in_chunks(price, x, size):
    """All figures, so many draws at a time: shorter vectors stay in near memory."""
    out = np.empty((5, DRAWS))
    for first in range(0, DRAWS, size):
        part = slice(first, first + size)
        for row, figure in zip(out, price(x[:, part]), strict=True):
            row[part] = figure
    return out


def hypercube(rng):
    return special.ndtri((rng.permutation(DRAWS) + rng.random(DRAWS)) / DRAWS)


def scores(shares, places, common, rng):
    """Normal scores of each input: the part that structures share, and one's own."""
    for share, place in zip(shares, places, strict=True):
        if share >= 1.0:
            yield common[place]
        elif share > 0.0:
            yield np.sqrt(share) * common[place] + np.sqrt(1.0 - share) * hypercube(rng)
        else:
            yield hypercube(rng)


def draw_exactly(s, common, rng):
    """Every draw by the inverse of the beta distribution."""
    x = np.empty((len(s.shares), DRAWS))
    for i, z in enumerate(scores(s.shares, s.places, common, rng)):
        u = special.betaincinv(1 + 4 * s.shapes[i], 5 - 4 * s.shapes[i], special.ndtr(z))
        x[i] = s.low[i] + (s.high[i] - s.low[i]) * u
    return x


NODES = np.linspace(-8.25, 8.25, 1057)


@functools.cache
def table(low, high, shape):
    u = special.betaincinv(1 + 4 * shape, 5 - 4 * shape, special.ndtr(NODES))
    return low + (high - low) * u


def draw_by_tables(s, common, rng):
    x = np.empty((len(s.shares), DRAWS))
    for i, z in enumerate(scores(s.shares, s.places, common, rng)):
        x[i] = np.interp(z, NODES, table(s.low[i], s.high[i], s.shapes[i]))
    return x


def simulate(structures, draw, size):
    """Moments and quantiles of every structure, and totals by draw."""
    rng = np.random.default_rng(0)
    common = {place: hypercube(rng) for place in {p for s in structures for p in s.places}}
    totals = np.zeros((5, DRAWS))
    found = []
    for s in structures:
        figures = in_chunks(s.price, draw(s, common, rng), size)
        totals += figures
        levels = np.quantile(figures, LEVELS, axis=1)
        found.append((figures.mean(axis=1), figures.std(axis=1), levels))
    return totals, found


def price_all(structures, size):
    return [in_chunks(s.price, s.inputs, size) for s in structures]


def shortest(call, rounds=3):
    spent = []
    for _ in range(rounds):
        start = time.process_time()
        call()
        spent.append(time.process_time() - start)
    return min(spent)


def tell(what, structures, ours, theirs):
    each = 1e9 / DRAWS / structures
    print(
        f"{what:32} engine {ours * each:6.0f} ns an estimate, "
        f"NumPy {theirs * each:6.0f}: {theirs / ours:6.2f} x",
        flush=True,
    )


def main(program):
    with tempfile.TemporaryDirectory() as folder:
        said = engine(program, "write", folder, str(DRAWS)).splitlines()
        print(said[0])
        structures = [Structure(folder, i) for i in range(len(said))]
    worst = 0.0
    for s in structures:
        off = np.abs(in_chunks(s.price, s.inputs, DRAWS) - s.figures)
        worst = max(worst, np.max(off / np.maximum(s.figures, 1e-9)))
    print(f"largest relative difference {worst:.1e}")
    sizes = {n: shortest(lambda n=n: price_all(structures, n)) for n in (500, 2000, DRAWS)}
    best = min(sizes, key=sizes.get)
    many = len(structures)
    for _ in range(3):
        alone, whole = (float(s) for s in engine(program, "time", str(DRAWS)).split())
        tell("price alone", many, alone, shortest(lambda: price_all(structures, best)))
        for what, draw in {"exact": draw_exactly, "tables lent": draw_by_tables}.items():
            spent = shortest(lambda draw=draw: simulate(structures, draw, best), rounds=2)
            tell(f"whole simulation, {what}", many, whole, spent)


if __name__ == "__main__":
    main(sys.argv[1])
