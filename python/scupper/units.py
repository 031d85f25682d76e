"""Units: text, pint quantities, and the trade's units in pint's application registry."""

from __future__ import annotations

import re
from functools import cache
from typing import TYPE_CHECKING, Any, TypeAlias

from scupper import _core

if TYPE_CHECKING:
    import pandas as pd
    import pint

    Quantity: TypeAlias = "pint.Quantity[Any]"

#: What pint does not name itself; the factors are pint's own. It knows short_ton but prints "ton",
#: which readers take for others.
ADDITIONS = (
    "us_short_ton = 2000 * pound",
    "gpm = gallon / minute",
    "cfm = foot ** 3 / minute",
    "cfs = foot ** 3 / second",
    "pcf = pound / foot ** 3",
    "labour_hour = count * hour = labour_h = labor_hour",
)
_OWN = {"gpm": "gpm", "cfm": "cfm", "cfs": "cfs", "pcf": "pcf", "labour-h": "labour_hour",
        "short ton": "us_short_ton",
        "each": "count", "1": "dimensionless"}  # fmt: skip
_POWER = re.compile(r"(.*?)(\d*)")


def registry() -> pint.UnitRegistry[Any]:
    """The application registry of pint, with the trade's units added.

    Returns
    -------
    pint.UnitRegistry
        The registry of all results: ``registry().Quantity(250, "gpm")``.
    """
    import pint

    found: Any = pint.get_application_registry()  # type: ignore[no-untyped-call]
    for line in ADDITIONS:
        if line.split(" = ")[0] not in found:
            found.define(line)
    return found  # type: ignore[no-any-return]


def quantity(text: str) -> Quantity:
    """The quantity that a text says, as the whole package reads it.

    Parameters
    ----------
    text
        As ``"12 ft 6 in"``, ``"7/8 in"``, ``"1,200 gal"``, ``"59 degF"``; no money.

    Returns
    -------
    pint.Quantity
        In SI units.

    Raises
    ------
    UnitError
        Where the text is no quantity, or is money.
    """
    si, unit, currency = _core.parse_quantity(text, "quantity")
    if currency:
        from scupper.errors import UnitError

        raise UnitError("unit.currency", "quantity", f'"{text}"', "a quantity without money")
    return in_pint(si, unit)


def table() -> pd.DataFrame:
    """Every unit that is read: name, other names, SI unit, factor, offset, name in pint.

    Returns
    -------
    pandas.DataFrame
        SI value = (number + offset) x factor.
    """
    import pandas as pd

    names = ["name", "aliases", "si_unit", "factor", "offset", "pint_name"]
    return pd.DataFrame(_core.unit_table(), columns=names)


def in_pint(number: Any, unit: str) -> Quantity:
    """A number, or an array, of a unit of the core as a quantity of the application registry."""
    found: Quantity = registry().Quantity(number, pint_unit(unit))
    return found


@cache
def pint_unit(unit: str) -> str:
    """The text by which pint knows a unit of the core, e.g. ``ft2/h``."""
    above, *below = unit.split("/")
    parts = [_pint_power(part) for part in above.split("*")]
    return "/".join([" * ".join(parts), *map(_pint_power, below)])


def _pint_power(factor: str) -> str:
    """One factor, e.g. ``ft2``; the name itself may end in a digit."""
    if factor in _pint_names():
        return f"({_pint_names()[factor]})"
    match = _POWER.fullmatch(factor)
    name, power = match.groups() if match else (factor, "")
    return f"({_pint_names()[name]}) ** {power or 1}"


@cache
def _pint_names() -> dict[str, str]:
    return {name: pint for name, _, _, _, _, pint in _core.unit_table() if pint} | _OWN


@cache
def _core_names() -> dict[str, str]:
    """Names by which pint calls its units, and the units of the core they are."""
    ureg = registry()
    pairs = [(dict(ureg.Quantity(1, pint).unit_items()), name)
             for name, pint in _pint_names().items()]  # fmt: skip
    return {next(iter(items)): name for items, name in pairs if list(items.values()) == [1]}


def core_unit(value: Any) -> tuple[Any, str]:
    """A pint quantity as numbers and a unit that the core reads."""
    known = _core_names()
    items: list[tuple[str, Any]] = list(value.unit_items())
    if any(name not in known or int(power) != power for name, power in items):
        value = value.to_base_units()
        items = list(value.unit_items())
    above = [_power(known[name], power) for name, power in items if power > 0]
    below = [_power(known[name], -power) for name, power in items if power < 0]
    return value.magnitude, "/".join(["*".join(above) or "1", *below])


def _power(name: str, power: Any) -> str:
    if power == 1:
        return name
    return f"{name}^{int(power)}"


def is_quantity(value: Any) -> bool:
    """Whether a value is a pint quantity of any registry; pint need not be there."""
    return hasattr(value, "magnitude") and hasattr(value, "unit_items")
