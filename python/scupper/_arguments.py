"""Arguments with a unit become SI arrays of one shape, or an error that says what to write."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from scupper import _core
from scupper.errors import InputError, UnknownNameError
from scupper.units import core_unit, in_pint, is_quantity

if TYPE_CHECKING:
    import numpy as np

    from scupper.units import Quantity

    FloatArray = np.ndarray[Any, np.dtype[np.float64]]

#: Unit texts by argument, or "si" for the coherent SI unit of each.
Units = Mapping[str, str] | str | None

F = TypeVar("F", bound=Callable[..., Any])


class Arguments:
    """The arguments of one call, gathered by name; results take their common shape.

    Parameters
    ----------
    units
        The units of bare numbers and arrays, by argument; ``"si"`` for SI units throughout.
    """

    def __init__(self, units: Units = None) -> None:
        if isinstance(units, str) and units != "si":
            raise UnknownNameError(
                "units.word", "units", f'"{units}"', 'a unit for each argument, or "si"'
            )
        self._units = units or {}
        self._arrays: dict[str, FloatArray] = {}

    def add(self, name: str, value: Any, like: str) -> None:
        """Takes an argument of the dimension that ``like`` is a unit of."""
        import numpy as np

        self._arrays[name] = np.asarray(self._si(name, value, like), dtype=float)

    def _si(self, name: str, value: Any, like: str) -> Any:
        if isinstance(value, str):
            return _core.parse_as(value, like, name)
        if is_quantity(value):
            numbers, unit = core_unit(value)
            return _core.to_si(numbers, unit, like, name)
        if isinstance(value, list | tuple) and not all(map(_is_number, value)):
            return [self._si(f"{name}[{i}]", item, like) for i, item in enumerate(value)]
        return self._from_bare(name, value, like)

    def _unit_of(self, name: str, like: str) -> str | None:
        if like == "1" or isinstance(self._units, str):
            return like
        return self._units.get(name.partition("[")[0])

    def _from_bare(self, name: str, value: Any, like: str) -> Any:
        unit = self._unit_of(name, like)
        try:
            if unit is not None:
                return _core.to_si(value, unit, like, name)
        except (TypeError, ValueError) as e:
            if isinstance(e, InputError):
                raise
            raise _no_number(name, value, like) from None
        if _is_number(value) or hasattr(value, "dtype"):
            _core.parse_as(_example(value), like, name)  # refuses, naming a valid example
        raise _no_number(name, value, like)

    def shaped(self, single: bool = False) -> list[FloatArray]:
        """The arguments in their order, broadcast against each other as numpy does.

        Parameters
        ----------
        single
            Whether single numbers stay single, for a function that runs over arrays itself.
        """
        import numpy as np

        try:
            whole = np.broadcast_arrays(*self._arrays.values())
            return [
                given if single and given.ndim == 0 else np.asarray(shaped, order="C")
                for given, shaped in zip(self._arrays.values(), whole, strict=True)
            ]
        except ValueError:
            shapes = ", ".join(f"{name} {a.shape}" for name, a in self._arrays.items())
            raise InputError(
                "arguments.shape", "arguments", shapes, "shapes that broadcast"
            ) from None


def _is_number(value: Any) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


def _example(value: Any) -> str:
    """A bare number as the error quotes it."""
    return str(value) if _is_number(value) else str(value.flat[0] if value.size else 0)


def _no_number(name: str, value: Any, like: str) -> InputError:
    allowed = f"text with a unit such as {like}, a pint quantity, or an array with units="
    return InputError("arguments.type", name, repr(value), allowed)


def result(si: FloatArray, unit: str) -> Quantity:
    """SI numbers as a pint quantity; a single one as a float."""
    return in_pint(si if si.ndim else float(si), unit)


def single(name: str, value: Any, like: str, units: Units) -> float:
    """A single SI value; an array is refused."""
    given = Arguments(units)
    given.add(name, value, like)
    (si,) = given.shaped()
    if si.ndim:
        raise InputError("arguments.shape", name, f"an array {si.shape}", "one value")
    return float(si)


def answer(
    core: Callable[..., FloatArray], unit: str, units: Units, /, **given: tuple[Any, str]
) -> Quantity:
    """The core's function of arguments, each with a unit of its dimension, as a pint quantity."""
    return result(_called(core, units, given), unit)


def plain(
    core: Callable[..., FloatArray], units: Units, /, **given: tuple[Any, str]
) -> float | FloatArray:
    """The same where the answer is a plain number."""
    numbers = _called(core, units, given)
    return numbers if numbers.ndim else float(numbers)


def _called(
    core: Callable[..., FloatArray], units: Units, given: Mapping[str, tuple[Any, str]]
) -> FloatArray:
    arguments = Arguments(units)
    for name, (value, like) in given.items():
        arguments.add(name, value, like)
    return core(*arguments.shaped(single=True))


def described_by(core: Callable[..., Any]) -> Callable[[F], F]:
    """Puts formula, range, errors and source of the core's function before the notes here."""

    def describe(function: F) -> F:
        _, _, text = (core.__doc__ or "").partition("\n\n")
        function.__doc__ = f"{text.strip()}\n\n{function.__doc__ or ''}"
        return function

    return describe
