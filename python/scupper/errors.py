"""The family of errors. Facts stand in attributes, so that no message has to be parsed."""

from __future__ import annotations


class Error(Exception):
    """The root of the family.

    Attributes
    ----------
    id : str
        Stable word for the kind of error, e.g. ``unit.missing``.
    path : str
        Where the offending input stands, e.g. ``job.inputs.nozzle.bore``.
    found : str
        What stands there.
    allowed : str
        What would be right.
    """

    def __init__(self, id: str, path: str = "", found: str = "", allowed: str = "") -> None:
        super().__init__(id, path, found, allowed)
        self.id = id
        self.path = path
        self.found = found
        self.allowed = allowed

    def __str__(self) -> str:
        from scupper._core import error_message

        return error_message(self.id, self.path, self.found, self.allowed)


class InputError(Error, ValueError):
    """A person gave something that cannot be used: a value, a unit, a name, a job."""


class UnitError(InputError):
    """A unit is unknown, ambiguous, missing or of the wrong dimension."""


class UnknownNameError(InputError):
    """A name is not one of those known; ``allowed`` holds the nearest."""


class FileError(InputError):
    """A file cannot be read or written: absent, of another format, cut off."""


class MoneyError(InputError):
    """Money of two currencies met, or a sum left the range of exact decimals."""


class SolveError(Error, RuntimeError):
    """A solve did not converge, or was asked something without an answer."""


class Interrupted(Error):  # noqa: N818 - the same name as in C++
    """The caller stopped a long run."""


class MovedWarning(UserWarning):
    """Figures of a loaded estimate are not what was saved; its ``moved`` lists them."""
