"""What a check of a published figure is made of: calls of the engine and reasons for a difference.

A check is data. It says which engine function answers a published quantity and how the inputs of a
row become its arguments: as text with a unit, ``"{d_in} in"``, the way a user writes them.
"""

from __future__ import annotations

import string
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any, TypeAlias

from scupper import hydraulics
from scupper.units import registry

#: A template filled with the inputs of a row, the first of several whose inputs are there, a plain
#: number, another call, or a sum.
Argument: TypeAlias = "str | float | tuple[str, ...] | Call | Sum"
Inputs: TypeAlias = Mapping[str, Any]


class Lacking(Exception):
    """A row has not the inputs that a check needs."""


@dataclass(frozen=True)
class Call:
    """One engine function with its arguments."""

    function: str
    arguments: Mapping[str, Argument] = field(default_factory=dict)

    def value(self, inputs: Inputs) -> Any:
        given = {name: _filled(argument, inputs) for name, argument in self.arguments.items()}
        return getattr(hydraulics, self.function)(**given)


@dataclass(frozen=True)
class Sum:
    """Pressures or heads along a line added up, each with its sign."""

    terms: tuple[tuple[int, Argument], ...]

    def value(self, inputs: Inputs) -> Any:
        parts = [(sign, _quantity(_filled(term, inputs))) for sign, term in self.terms]
        (first_sign, total), *rest = parts
        total = first_sign * total
        for sign, part in rest:
            total = total + sign * part
        return total


@dataclass(frozen=True)
class Known:
    """A row of the hose library or of a published table, found by a word of the inputs.

    The value is the likely one; low and high are the range of all publishers.
    """

    low: float
    likely: float
    high: float


@dataclass(frozen=True)
class Reason:
    """Why a figure differs, and how that is told.

    Attributes
    ----------
    name
        The code in the table.
    share
        Within this share of the printed figure.
    steps
        Within so many printed steps: digits were cut off.
    other
        Another value prints as the figure: a publisher's constant, another form.
    between
        The figure lies between these two: a coefficient the publisher keeps for himself.
    only
        Only where this text stands in the row's source, notes or inputs.
    """

    name: str
    share: float | None = None
    steps: float | None = None
    other: tuple[Argument, ...] = ()
    between: tuple[Argument, Argument] | None = None
    only: str = ""


@dataclass(frozen=True)
class Check:
    """Which engine call answers a published quantity.

    Attributes
    ----------
    quantity
        What the quantity of a row begins with.
    value
        The engine's answer.
    unit
        Unit of the answer where the row's own does not say it: "ft/100 ft" of a hundred feet.
    reasons
        In the order in which they are tried; the first that holds is the verdict.
    given
        Inputs that a row must have.
    """

    quantity: str
    value: Argument
    unit: str = ""
    reasons: tuple[Reason, ...] = ()
    given: tuple[str, ...] = ()


def call(function: str, **arguments: Argument) -> Call:
    """A call, written short."""
    return Call(function, arguments)


def total(*terms: Argument) -> Sum:
    """A sum of terms that all count."""
    return Sum(tuple((1, term) for term in terms))


def difference(first: Argument, *rest: Argument) -> Sum:
    """The first term less the others."""
    return Sum(((1, first), *((-1, term) for term in rest)))


def evaluate(argument: Argument, inputs: Inputs) -> Any:
    """The value of a template, call or sum: a pint quantity or a plain number."""
    return _quantity(_filled(argument, inputs))


def _filled(argument: Argument, inputs: Inputs) -> Any:
    if isinstance(argument, Call | Sum):
        return argument.value(inputs)
    if isinstance(argument, tuple):
        for template in argument:
            if all(name in inputs for name in _names(template)):
                return template.format_map(inputs)
        raise Lacking(argument[0])
    if isinstance(argument, str):
        missing = [name for name in _names(argument) if name not in inputs]
        if missing:
            raise Lacking(missing[0])
        return argument.format_map(inputs)
    return argument


def _names(template: str) -> Iterator[str]:
    return (name for _, name, _, _ in string.Formatter().parse(template) if name)


def _quantity(value: Any) -> Any:
    """Text as a pint quantity; what is none stays as it is."""
    from scupper import _core
    from scupper.units import in_pint

    if not isinstance(value, str):
        return value
    si, unit, _ = _core.parse_quantity(value, "check")
    return in_pint(si, unit) if unit != "1" else si


def in_unit(value: Any, unit: str) -> float:
    """The number that is to be compared with a printed one."""
    scale, _, name = unit.rpartition(" x ")
    number = float(value.m_as(name)) if isinstance(value, registry().Quantity) else float(value)
    return number / float(scale) if scale else number
