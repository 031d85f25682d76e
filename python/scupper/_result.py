"""What every result of a job has: the engine's answer, the job, the currency, how it is shown."""

from __future__ import annotations

from abc import ABC, abstractmethod
from typing import TYPE_CHECKING, Generic, TypeVar

from scupper import _report

if TYPE_CHECKING:
    from scupper.inventory import Inventory
    from scupper.job import Job

Core = TypeVar("Core")


class Result(ABC, Generic[Core]):
    """A result under a job, shown as a few lines."""

    def __init__(self, core: Core, job: Job) -> None:
        self._core = core
        self.job = job

    @property
    def currency(self) -> str:
        """Three-letter code of every amount."""
        return self.job.currency

    @abstractmethod
    def _lines(self) -> _report.Lines:
        """What is shown: a label and its text, line by line."""

    def __repr__(self) -> str:
        return _report.text(self._lines())

    def _repr_html_(self) -> str:
        return _report.html(self._lines())


class ListResult(Result[Core]):
    """A result over an inventory."""

    def __init__(self, core: Core, inventory: Inventory, job: Job) -> None:
        super().__init__(core, job)
        self.inventory = inventory
