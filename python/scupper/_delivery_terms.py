"""Terms of the choice between own people and a contract, as a person states them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import cache
from math import isfinite
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import single
from scupper.errors import InputError, UnitError, UnknownNameError

if TYPE_CHECKING:
    from scupper.job import Job

#: Key, low, likely and high in SI.
Range = tuple[str, float, float, float]

#: What 10 U.S.C. 2461(a)(1)(F) asks of a contract, for the terms of a case under it.
STATUTORY = {
    "contract.differential_share": "10 %",
    "contract.differential_most": "10000000 USD",
}


@cache
def fields() -> dict[str, dict[str, Any]]:
    """Every input by its key: label, si_unit, least, most, without, source."""
    columns = _core.delivery_inputs()
    keys = list(columns["key"])
    return {
        key: {name: columns[name][i] for name in columns if name != "key"}
        for i, key in enumerate(keys)
    }


def follows(key: str) -> bool:
    """Whether an input follows from the priced list, so that nobody states it."""
    source = str(fields()[key]["source"])
    return any(words in source for words in ("least squares", "priced list", "take-off"))


@dataclass
class Terms:
    """Terms in SI.

    Attributes
    ----------
    values
        By place in the list of inputs, at the mean or likely value as the job prices; those that
        nobody gave are what the table says.
    ranges
        Of those that were given as low, likely and high.
    given
        Keys that somebody gave.
    """

    values: list[float]
    ranges: list[Range] = field(default_factory=list)
    given: set[str] = field(default_factory=set)


def terms_of(terms: Mapping[str, Any] | None, job: Job) -> Terms:
    """Terms as a person writes them: text with a unit, or three of them from low to high."""
    known = fields()
    found = Terms([float(row["without"]) for row in known.values()])
    places = list(known)
    for key, value in (terms or {}).items():
        if key not in known:
            near = _core.nearest_name(key, places)
            raise UnknownNameError("delivery.key", "terms", f'"{key}"', f'"{near}"?')
        if follows(key):
            raise InputError("delivery.follows", key, str(value), "nothing: the list says it")
        low, likely, high = _three(key, value, job)
        mean = job.price_at == "mean" and low < high
        value = _core.guess_mean(low, likely, high) if mean else likely
        found.values[places.index(key)] = value
        found.given.add(key)
        if low < high:
            found.ranges.append((key, low, likely, high))
    return found


def _three(key: str, value: Any, job: Job) -> tuple[float, float, float]:
    if isinstance(value, Sequence) and not isinstance(value, str):
        if len(value) != 3:
            raise InputError("delivery.range", key, f"{len(value)} values", "low, likely, high")
        low, likely, high = (_one(key, v, job) for v in value)
        if not low <= likely <= high:
            raise InputError("delivery.range", key, repr(value), "low <= likely <= high")
        return low, likely, high
    one = _one(key, value, job)
    return one, one, one


def _one(key: str, value: Any, job: Job) -> float:
    """A value in SI, of the input's dimension and the job's currency."""
    row = fields()[key]
    unit = str(row["si_unit"])
    if unit == "each" and isinstance(value, int | float):
        value = f"{value} each"
    if isinstance(value, str) and "currency" in unit:
        currency = _core.parse_quantity(value, key)[2]
        if currency and currency != job.currency:
            raise UnitError("money.currency", key, currency, job.currency)
    si = single(key, value, unit, None)
    if not (isfinite(si) and row["least"] <= si <= row["most"]):
        bounds = f"{row['least']:g} to {row['most']:g} {unit}"
        raise InputError(f"delivery.{key}", key, str(value), bounds)
    return si
