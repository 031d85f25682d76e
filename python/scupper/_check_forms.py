"""What a check of a published figure is made of: calls of the engine and reasons for a difference.

A check is data. It says which engine function answers a published quantity and how the inputs of a
row become its arguments: as text with a unit, ``"{d_in} in"``, the way a user writes them.
"""

from __future__ import annotations

import string
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any, TypeAlias

from scupper import _core, hydraulics
from scupper.units import in_pint, is_quantity, pint_unit

#: A template filled with the inputs of a row, the first of several whose inputs are there, a plain
#: number, another call, or a sum.
Argument: TypeAlias = (
    "str | float | tuple[str, ...] | Call | Sum | Ratio | Choice | Entry | PressureFor | Solved"
)
Inputs: TypeAlias = Mapping[str, Any]


class LackingError(Exception):
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
class Ratio:
    """One quantity over another, where an argument is defined as such: roughness over bore."""

    above: Argument
    below: Argument

    def value(self, inputs: Inputs) -> Any:
        above, below = (_quantity(_filled(part, inputs)) for part in (self.above, self.below))
        ratio = above / below
        return ratio.m_as("") if getattr(ratio, "dimensionless", False) else ratio


@dataclass(frozen=True)
class Choice:
    """What stands for a word or number among the inputs."""

    name: str
    options: Mapping[str | float, str | float]

    def value(self, inputs: Inputs) -> Any:
        found = inputs.get(self.name)
        for key, chosen in self.options.items():
            if found == key or (isinstance(key, str) and str(found).startswith(key)):
                return chosen
        raise LackingError(self.name)


@dataclass(frozen=True)
class Entry:
    """A value of a shipped table: of fittings, hoses or least air speeds."""

    table: str
    row: Choice
    column: str

    def value(self, inputs: Inputs) -> Any:
        table = getattr(hydraulics, self.table)()
        number = table.set_index(table.columns[0]).loc[self.row.value(inputs), self.column]
        unit = self.column.rpartition("_m_per_s")[1].replace("_m_per_s", "m/s")
        return f"{number} {unit}" if unit else float(number)


@dataclass(frozen=True)
class PressureFor:
    """The pump pressure that a lay needs for a pressure at one of its nozzles."""

    document: Mapping[str, Any]
    nozzle: str
    pressure: str

    def value(self, inputs: Inputs) -> Any:
        lay = hydraulics.HoseLay.from_dict(_document(self.document, inputs))
        return lay.pump_pressure_for(self.nozzle, _filled(self.pressure, inputs))


@dataclass(frozen=True)
class Solved:
    """A figure of a solved lay: ``flow_m3_per_s`` or ``pressure_Pa`` of its pump or a nozzle."""

    document: Mapping[str, Any]
    table: str
    column: str
    name: str = ""

    def value(self, inputs: Inputs) -> Any:
        lay = hydraulics.HoseLay.from_dict(_document(self.document, inputs))
        table = getattr(lay.solve(), self.table)
        row = table.set_index("name").loc[self.name] if self.name else table.iloc[0]
        unit = self.column.partition("_")[2].replace("_per_", "/")
        return in_pint(float(row[self.column]), unit)


def _document(part: Any, inputs: Inputs) -> Any:
    """A document with its templates filled in."""
    if isinstance(part, Mapping):
        return {key: _document(value, inputs) for key, value in part.items()}
    if isinstance(part, list):
        return [_document(value, inputs) for value in part]
    return _filled(part, inputs)


@dataclass(frozen=True)
class Reason:
    """Why a figure differs, and how that is told.

    Attributes
    ----------
    name
        The code in the table.
    share
        Within this share of the printed figure.
    over
        The printed figure over ours lies between these two.
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
    over: tuple[float, float] | None = None
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
    only
        Only where this text stands in the row's source, notes, basis or inputs.
    """

    quantity: str
    value: Argument
    unit: str = ""
    reasons: tuple[Reason, ...] = ()
    given: tuple[str, ...] = ()
    only: str = ""


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
    if isinstance(argument, Call | Sum | Ratio | Choice | Entry | PressureFor | Solved):
        return argument.value(inputs)
    if isinstance(argument, tuple):
        for template in argument:
            if all(name in inputs for name in _names(template)):
                return template.format_map(inputs)
        raise LackingError(argument[0])
    if isinstance(argument, str):
        missing = [name for name in _names(argument) if name not in inputs]
        if missing:
            raise LackingError(missing[0])
        return argument.format_map(inputs)
    return argument


def _names(template: str) -> Iterator[str]:
    return (name for _, name, _, _ in string.Formatter().parse(template) if name)


def _quantity(value: Any) -> Any:
    """Text as a pint quantity; what is none stays as it is."""
    if not isinstance(value, str):
        return value
    si, unit, _ = _core.parse_quantity(value, "check")
    return in_pint(si, unit) if unit != "1" else si


def in_unit(value: Any, unit: str) -> float:
    """The number that is to be compared with a printed one."""
    scale, _, name = unit.rpartition(" x ")
    number = float(value.m_as(pint_unit(name)) if is_quantity(value) else value)
    return number / float(scale) if scale else number
