"""What every check shares: its command line, its report, and the proof that it finds violations."""

from __future__ import annotations

import argparse
import tempfile
from collections.abc import Callable, Sequence
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
Find = Callable[[Path], list[str]]


def write_tree(root: Path, files: dict[str, str]) -> None:
    for name, text in files.items():
        file = root / name
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, encoding="utf-8")


def self_test(find: Find, files: dict[str, str], expected: Sequence[str]) -> int:
    """Runs the check on a made-up tree: it must find what is expected, and nothing else."""
    with tempfile.TemporaryDirectory() as folder:
        write_tree(Path(folder), files)
        found = find(Path(folder))
    missed = [text for text in expected if not any(text in line for line in found)]
    surplus = [line for line in found if not any(text in line for text in expected)]
    for line in missed:
        print("not found:", line)
    for line in surplus:
        print("found without cause:", line)
    print(f"self-test: {len(expected)} violations made up, {len(found)} found")
    return 1 if missed or surplus else 0


def run(purpose: str, find: Find, files: dict[str, str], expected: Sequence[str]) -> int:
    """The main function of a check: `find` gives one line a violation under a checkout."""
    parser = argparse.ArgumentParser(description=purpose)
    parser.add_argument("--root", type=Path, default=ROOT, help="the checkout")
    parser.add_argument("--self-test", action="store_true", help="prove that violations are found")
    arguments = parser.parse_args()
    if arguments.self_test:
        return self_test(find, files, expected)
    found = find(arguments.root)
    for line in found:
        print(line)
    print(f"{purpose}: {len(found)} violations")
    return 1 if found else 0
