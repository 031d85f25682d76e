"""The core's documentation on the functions that wrap it."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar

F = TypeVar("F", bound=Callable[..., Any])


def described_by(core: Callable[..., Any]) -> Callable[[F], F]:
    """Puts formula, range, errors and source of the core's function before the notes here."""

    def describe(function: F) -> F:
        _, _, text = (core.__doc__ or "").partition("\n\n")
        function.__doc__ = f"{text.strip()}\n\n{function.__doc__ or ''}"
        return function

    return describe
