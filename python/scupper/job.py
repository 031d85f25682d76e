"""A job: scope, service level, closure, crews, equipment, values, exceptions."""

from __future__ import annotations

import json
import os
import re
from collections.abc import Mapping
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._files import read_text, write_whole
from scupper._frames import frame
from scupper.errors import InputError
from scupper.units import core_unit, is_quantity

if TYPE_CHECKING:
    import pandas as pd

    from scupper.inventory import Inventory
    from scupper.rates import RateBook


class Job:
    """What a person asks for. A job never changes: `replace` and `override` give a new one.

    Every value with a dimension is text with its unit or a pint quantity; three of them are low,
    likely and high.
    """

    def __init__(self, core: _core.Job) -> None:
        self._core = core

    @classmethod
    def demo(cls) -> Job:
        """The job of the demo; the county, its prices and its yard are invented."""
        return cls(_core.Job.demo())

    @classmethod
    def from_file(cls, path: str | os.PathLike[str], rates: RateBook | None = None) -> Job:
        """Reads a job document (JSON) on top of a rate book.

        Parameters
        ----------
        path
            The document. Its ``rates`` may name a rate book (.json, .csv, .xlsx) beside it, or be
            one: it is laid over `rates`.
        rates
            The book beneath; without it the shipped one. A book of some values only is laid over
            the shipped one by `scupper.rates.merge`.

        Raises
        ------
        FileError
            Where it cannot be read or is no JSON.
        InputError
            Where a key, word, unit or value cannot be used; the path names it.
        """
        name = os.fspath(path)
        text = read_text(path)
        if '"rates"' in text:
            text = _with_book(text, Path(path).parent)
        return cls(_read(text, name, rates))

    @classmethod
    def from_dict(cls, document: Mapping[str, Any], rates: RateBook | None = None) -> Job:
        """A job from a document as `to_dict` gives it; pint quantities may stand for text."""
        text = json.dumps(_plain(document, "job"))
        return cls(_read(_with_book(text, Path()), "job", rates))

    def with_rates(self, book: RateBook) -> Job:
        """A job with the values of a rate book in place of its own.

        What the book says of people and equipment that the job does not have is left out.

        Raises
        ------
        InputError
            Where book and job have two currencies.
        """
        return Job(self._core.with_rates(book._core))

    @property
    def rate_books(self) -> list[str]:
        """Titles of the rate books it rests on, the first beneath."""
        return list(self._core.rate_books)

    def to_dict(self) -> dict[str, Any]:
        """The whole job as a document: every operation and value, in SI with all digits."""
        document: dict[str, Any] = json.loads(self._core.write())
        return document

    def save(self, path: str | os.PathLike[str]) -> None:
        """Writes the job whole, or not at all."""
        write_whole(path, self._core.write())

    def replace(self, changes: Mapping[str, Any] | None = None, /, **more: Any) -> Job:
        """A job with words or values replaced for every structure.

        Parameters
        ----------
        changes
            Keys of the job document (``units``, ``sharing``, ``closure``, ``service``, ...), each
            replaced whole, or keys of the input schema: ``{"nozzle.bore": "7/8 in"}``. ``ways`` and
            ``closure`` bring the machines, people and charges that the job's alternative of the
            same choice brings (see `alternatives`).
        **more
            The same by keyword: ``units="metric"``, ``drains=6``.

        Returns
        -------
        Job
            The changed job.

        Raises
        ------
        InputError
            Where a key, word, unit or value cannot be used; a bare number where a unit is due is
            refused with a valid example.
        """
        everything = {**(changes or {}), **more}
        words = {k: v for k, v in everything.items() if k in _core.job_keys()}
        core = self._core
        if words:
            before = core.without_hose_values() if "hoses" in words else core
            before = before.without_build_up_values() if "build_up" in words else before
            core = Job.from_dict(Job(before).to_dict() | words)._core
            core = core.with_means() if {"ways", "closure"} & set(words) else core
        for key, value in everything.items():
            if key not in words:
                core = core.with_input(key, json.dumps(_plain(value, key)))
        return Job(core)

    def override(
        self, structure: str, changes: Mapping[str, Any] | None = None, /, **more: Any
    ) -> Job:
        """A job with values measured or counted at one structure.

        Parameters
        ----------
        structure
            Structure number, or "state:number".
        changes
            Keys of the input schema: ``{"deck.length": "60 ft"}``.
        **more
            Short names of quantities: ``drains=0``.

        Returns
        -------
        Job
            The changed job.
        """
        core = self._core
        for key, value in {**(changes or {}), **more}.items():
            core = core.with_override(structure, key, json.dumps(_plain(value, key)))
        return Job(core)

    def with_survey(self, path: str | os.PathLike[str], inventory: Inventory | None = None) -> Job:
        """A job with what a survey sheet says, structure by structure.

        Parameters
        ----------
        path
            A CSV file as `write_survey_sheet` gives it, filled in: a number in the unit of its
            header, or text with a unit of its own. Empty cells change nothing.
        inventory
            The structures that may be named. Without it a misspelt number goes unnoticed.

        Returns
        -------
        Job
            The changed job: its overrides have the basis measured, their source is file and line.

        Raises
        ------
        InputError
            Naming file, line and column, where a cell or header cannot be used, where a structure
            stands twice or is not in the inventory (with near misses).
        """
        from scupper.forms import surveyed

        return surveyed(self, path, inventory)

    def __reduce__(self) -> tuple[Any, ...]:
        return Job, (self._core,)

    def keys(self) -> pd.DataFrame:
        """Every input of this job: key, label, unit, low, likely, high, basis, source.

        Returns
        -------
        pandas.DataFrame
            Numbers in the job's units; NaN where the value follows from a structure's record.
        """
        return frame(self.plan.inputs())

    @cached_property
    def plan(self) -> _core.Plan:
        """The job made ready; checks that every value is there and within bounds."""
        return self._core.plan()

    @property
    def name(self) -> str:
        """What people call the job."""
        return self._core.name

    @property
    def currency(self) -> str:
        """Three-letter code of every amount."""
        return self._core.currency

    @property
    def units(self) -> str:
        """How results are shown: "us", "metric" or "si"."""
        return self._core.units

    @property
    def price_at(self) -> str:
        """At which value of every input an estimate prices: "mean" or "likely"."""
        return self._core.price_at

    def __repr__(self) -> str:
        return f"<Job {self.name!r}: {self.currency}, units {self.units}>"


def _read(text: str, name: str, rates: RateBook | None) -> _core.Job:
    return (
        _core.Job.read(text, name) if rates is None else _core.Job.read_on(text, name, rates._core)
    )


def _with_book(text: str, folder: Path) -> str:
    """A job document with the rate book that it names by its file in place of the name."""
    try:
        document = json.loads(text)
    except ValueError:
        return text  # the core says what is wrong with it
    if not isinstance(document, dict) or not isinstance(document.get("rates"), str):
        return text
    from scupper.rates import RateBook

    book = json.dumps(RateBook.from_file(folder / document["rates"]).to_dict("si"))
    named = re.compile(r'("rates"\s*:\s*)"(?:[^"\\]|\\.)*"')
    return named.sub(lambda found: found[1] + book, text, count=1)  # every line stays where it is


def _plain(value: Any, path: str) -> Any:
    """A value as JSON knows it; a pint quantity becomes text with its unit."""
    if is_quantity(value):
        number, unit = core_unit(value)
        return f"{float(number)!r} {unit}"
    if isinstance(value, Mapping):
        return {str(k): _plain(v, f"{path}.{k}") for k, v in value.items()}
    if isinstance(value, list | tuple):
        return [_plain(v, f"{path}[{i}]") for i, v in enumerate(value)]
    if hasattr(value, "item"):
        return value.item()
    if value is None or isinstance(value, str | int | float | bool):
        return value
    raise InputError("job.type", path, repr(value), "text with a unit, a number, or a list of them")
