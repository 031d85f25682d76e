"""What the README shows is what the package does."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

import scupper as sc
from scupper.command_line import main

ROOT = Path(__file__).resolve().parents[2]
README = (ROOT / "README.md").read_text(encoding="utf-8")


def blocks(language: str) -> list[str]:
    found = re.findall(rf"```{language}\n(.*?)```", README, re.DOTALL)
    assert found, f"no {language} block in the README"
    return found


@pytest.fixture(autouse=True)
def _own_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)


def test_the_examples_run_and_show_what_is_printed() -> None:
    names: dict[str, object] = {}
    for block in blocks("python"):
        exec(block, names)
    estimate = names["estimate"]
    assert isinstance(estimate, sc.Estimate)
    shown = blocks("text")[0].splitlines()
    assert shown == repr(estimate).splitlines()[: len(shown)]


def test_the_commands_run() -> None:
    words = {"RECORDS": str(sc.demo_records()), "LOG": str(sc.demo_log()), "ID": "TC-0001"}
    words |= {
        f"{name.upper()}.csv": str(sc.demo_bids() / f"{name}.csv") for name in ("alder", "elm")
    }
    lines = [line.partition("#")[0] for block in blocks("sh") for line in block.splitlines()]
    commands = [line.split()[1:] for line in lines if line.startswith("scupper ")]
    assert len(commands) > 10
    for command in commands:
        assert main([words.get(word, word) for word in command]) == 0, command


def test_what_the_readme_points_at_is_there() -> None:
    for target in re.findall(r"\]\(([^)#:]+)\)", README):
        assert (ROOT / target).exists(), target
