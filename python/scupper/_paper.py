"""Paper: HTML from the package's templates that prints on US Letter, every text escaped."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    import jinja2

    from scupper.job import Job

_POWER = re.compile(r"(?<=[a-z])([23])\b")  # of ft2, yd3/h


def render(template: str, **values: Any) -> str:
    """A template filled in."""
    return _environment().get_template(template).render(values)


@cache
def _environment() -> jinja2.Environment:
    import jinja2

    environment = jinja2.Environment(
        loader=jinja2.FileSystemLoader(Path(__file__).parent / "templates"),
        autoescape=True,
        undefined=jinja2.StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    environment.filters |= {"short": short, "nice": nice, "words": words, "money": money,
                            "invented": invented}  # fmt: skip
    return environment


def short(number: float) -> str:
    """A figure as people say it, as 1,658 or 51.6 or 0.13: an estimate has no more digits."""
    size = abs(number)
    if size == 0:
        return "0"
    return f"{number:,.{0 if size >= 99.95 else 1 if size >= 0.995 else 2}f}"


def counted(number: float) -> str:
    """A number of things: whole where it is whole."""
    return f"{number:,.0f}" if float(number).is_integer() else short(number)


def money(amount: float) -> str:
    """An amount without cents."""
    return f"{amount:,.0f}"


def nice(unit: str) -> str:
    """A unit in print, as ft² for ft2; nothing for counts and plain numbers."""
    return "" if unit in ("each", "1") else _POWER.sub(lambda m: "²³"[int(m[1]) - 2], unit)


def invented(job: Job) -> int:
    """How many values of a job somebody made up, by their source."""
    return int(job.keys()["source"].str.contains("invented").sum())


def words(name: str) -> str:
    """A name of the schema as words, as "deck hand line"."""
    return name.replace("_", " ")


def measured(number: float, unit: str) -> str:
    """A figure with its unit in print."""
    text = counted(number) if unit == "each" else short(number)
    return f"{text} {nice(unit)}".rstrip()
