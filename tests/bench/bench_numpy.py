"""The engine against the same model vectorised in NumPy: python bench_numpy.py PATH_OF_BENCH_NUMPY.

One structure, one thread each, in turns, the least processor time of several rounds. First the
price alone over the same drawn inputs. Then a whole simulation: Latin hypercubes, PERT quantiles
read from tables, shared and own parts, price, quantiles of the figures; NumPy holds the iterative
solve and is spared its inputs, the engine is not.
"""

from __future__ import annotations

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


def load(folder):
    path = Path(folder, "numpy_price.py")
    spec = importlib.util.spec_from_file_location("numpy_price", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)

    def read(name):
        return np.fromfile(Path(folder, name)).reshape(-1, DRAWS)

    guesses = np.loadtxt(Path(folder, "guesses.csv"), delimiter=",")
    return module.price, read("inputs.f64"), read("figures.f64"), guesses


def in_chunks(price, x, size):
    """All figures, so many draws at a time: shorter vectors stay in near memory."""
    out = np.empty((5, DRAWS))
    for first in range(0, DRAWS, size):
        part = slice(first, first + size)
        for row, figure in zip(out, price(x[:, part]), strict=True):
            row[part] = figure
    return out


class Drawing:
    """Inputs drawn as the engine does, the tables made once."""

    def __init__(self, guesses):
        self.shares = guesses[:, 3]
        self.scores = np.linspace(-5.0, 5.0, 641)
        low, likely, high = guesses[:, 0], guesses[:, 1], guesses[:, 2]
        shape = (likely - low) / (high - low)
        u = special.ndtr(self.scores)
        self.tables = [
            a + (b - a) * special.betaincinv(1 + 4 * s, 5 - 4 * s, u)
            for a, b, s in zip(low, high, shape, strict=True)
        ]
        self.common = [self.hypercube(np.random.default_rng(0)) for _ in self.shares]

    @staticmethod
    def hypercube(rng):
        return special.ndtri((rng.permutation(DRAWS) + rng.random(DRAWS)) / DRAWS)

    def draw(self, rng):
        x = np.empty((len(self.shares), DRAWS))
        for row, share, table, common in zip(x, self.shares, self.tables, self.common, strict=True):
            z = common if share >= 1.0 else self.hypercube(rng)
            if 0.0 < share < 1.0:
                z = np.sqrt(share) * common + np.sqrt(1.0 - share) * z
            row[:] = np.interp(z, self.scores, table)
        return x


def whole(price, drawing, size):
    figures = in_chunks(price, drawing.draw(np.random.default_rng(1)), size)
    return figures.mean(axis=1), figures.std(axis=1), np.quantile(figures, LEVELS, axis=1)


def shortest(call, rounds=7):
    spent = []
    for _ in range(rounds):
        start = time.process_time()
        call()
        spent.append(time.process_time() - start)
    return min(spent)


def tell(what, ours, theirs):
    nanoseconds = 1e9 / DRAWS
    print(
        f"{what:18} engine {ours * nanoseconds:6.0f} ns a draw, "
        f"NumPy {theirs * nanoseconds:6.0f}: {theirs / ours:6.2f} x"
    )


def main(program):
    with tempfile.TemporaryDirectory() as folder:
        print(engine(program, "write", folder, str(DRAWS)))
        price, x, figures, guesses = load(folder)
    difference = np.abs(in_chunks(price, x, DRAWS) - figures) / np.maximum(figures, 1e-9)
    print(f"largest relative difference {difference.max():.1e}")
    drawing = Drawing(guesses)
    for _ in range(3):
        alone, all_of_it = (float(s) for s in engine(program, "time", str(DRAWS)).split())
        sizes = {n: shortest(lambda n=n: in_chunks(price, x, n)) for n in (500, 2000, DRAWS)}
        best = min(sizes, key=sizes.get)
        tell("price alone", alone, sizes[best])
        tell("whole simulation", all_of_it, shortest(lambda n=best: whole(price, drawing, n)))


if __name__ == "__main__":
    main(sys.argv[1])
