"""Functions of money: one currency in a call, amounts in it, rates by the hour."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Units, _called, answer
from scupper._arguments import plain as _plain
from scupper.errors import UnitError

if TYPE_CHECKING:
    from scupper._arguments import FloatArray
    from scupper.units import Quantity

Given = tuple[Any, str]


def plain(core: Callable[..., FloatArray], units: Units, /, **given: Given) -> float | FloatArray:
    """The core's function where the answer is a plain number."""
    require_one_currency(units, given)
    return _plain(core, units, **given)


def amount_of(
    core: Callable[..., FloatArray], units: Units, /, **given: Given
) -> float | FloatArray:
    """The same where the answer is an amount, in the currency of the arguments."""
    return plain(core, units, **given)


def rate_of(core: Callable[..., FloatArray], units: Units, /, **given: Given) -> float | FloatArray:
    """The same where the answer is money for a time: in the currency of the arguments, an hour."""
    require_one_currency(units, given)
    hourly = _core.from_si(_called(core, units, given), "currency/h")
    return hourly if hourly.ndim else float(hourly)


def time_of(core: Callable[..., FloatArray], units: Units, /, **given: Given) -> Quantity:
    """The same where the answer is a time."""
    require_one_currency(units, given)
    return answer(core, "s", units, **given)


def require_one_currency(units: Units, given: Mapping[str, Given]) -> None:
    """Refuses dollars beside euros."""
    found: dict[str, str] = {}
    for name, (value, like) in given.items():
        if not like.startswith("currency"):
            continue
        for text in _texts(value, units, name):
            currency = _core.parse_quantity(text, name)[2]
            if currency:
                found.setdefault(currency, name)
    if len(found) > 1:
        first, *others = found
        where = ", ".join(found[other] for other in others)
        raise UnitError(
            "money.currency", where, ", ".join(others), f"{first}, as in {found[first]}"
        )


def _texts(value: Any, units: Units, name: str) -> Iterator[str]:
    """Every text that may name a currency."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, list | tuple):
        for item in value:
            yield from _texts(item, units, name)
    elif isinstance(units, Mapping) and name in units:
        yield f"1 {units[name]}"
