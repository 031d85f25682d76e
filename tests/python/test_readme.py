"""What the README shows is what the package does."""

from __future__ import annotations

import re
from pathlib import Path

import scupper as sc

README = (Path(__file__).resolve().parents[2] / "README.md").read_text(encoding="utf-8")


def block(language: str) -> str:
    found = re.search(rf"```{language}\n(.*?)```", README, re.DOTALL)
    assert found, f"no {language} block in the README"
    return found.group(1)


def test_the_example_runs_and_shows_what_is_printed() -> None:
    names: dict[str, object] = {}
    exec(block("python"), names)
    estimate = names["estimate"]
    assert isinstance(estimate, sc.Estimate)
    shown = block("text").splitlines()
    assert shown == repr(estimate).splitlines()[: len(shown)]


def test_what_the_readme_points_at_is_there() -> None:
    root = Path(__file__).resolve().parents[2]
    for target in re.findall(r"\]\(([^)#:]+)\)", README):
        assert (root / target).exists(), target
