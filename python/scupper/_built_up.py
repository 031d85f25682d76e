"""Rates that are built up from their parts: a wage, an hour of equipment."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Units, single
from scupper._frames import frame
from scupper._money import require_one_currency
from scupper.errors import UnknownNameError

if TYPE_CHECKING:
    import pandas as pd

_KINDS = {"wage": "labour.wage", "equipment": "equipment.rate"}


@dataclass(frozen=True)
class BuiltUp:
    """A rate with the parts that it was built up from.

    Attributes
    ----------
    rate : float
        Cost of an hour, in the currency of its parts.
    overtime_share : float
        Of a wage: the share of the rate that an overtime premium raises; fringe is not in it.
    parts : dict
        As given; a job or rate book takes them as ``{"built_up": parts}``.
    """

    rate: float
    overtime_share: float
    parts: dict[str, Any]


def parts(kind: str) -> pd.DataFrame:
    """What a rate can be built up from.

    Parameters
    ----------
    kind
        ``"wage"`` or ``"equipment"``.

    Returns
    -------
    pandas.DataFrame
        By part: label, unit (SI), whether it is required, which other part it needs.
    """
    if kind not in _KINDS:
        raise UnknownNameError("cost.kind", "kind", f'"{kind}"', ", ".join(_KINDS))
    columns = list(zip(*_core.rate_parts(_KINDS[kind]), strict=True))
    names = ["part", "label", "unit", "required", "needs"]
    return frame(dict(zip(names, columns, strict=True))).set_index("part")


def wage(*, units: Units = None, **parts: Any) -> BuiltUp:
    """The cost of an hour of a person: pay, fringe, payroll taxes up to their caps, insurance.

    Parameters
    ----------
    units
        Units of bare numbers, by part.
    **parts
        See ``parts("wage")``: ``cash="28 USD/h", fringe="11 USD/h", social_security="6.2 %"``.
        A tax without a cap is due on all pay.

    Returns
    -------
    BuiltUp
        Rate an hour worked, and the share of it that overtime raises.
    """
    return _built_up("labour.wage", parts, units)


def equipment_rate(*, units: Units = None, **parts: Any) -> BuiltUp:
    """The cost of an hour of equipment: ownership, fuel, lubricants, repair, tyres, wear parts.

    Parameters
    ----------
    units
        Units of bare numbers, by part.
    **parts
        See ``parts("equipment")``: ``price="300,000 USD", life="8 years", year_hours="1,330 h"``;
        `ownership` is ``"capital_recovery"`` or ``"average_investment"``.

    Returns
    -------
    BuiltUp
        Rate of a charged hour.
    """
    return _built_up("equipment.rate", parts, units)


def _built_up(key: str, given: dict[str, Any], units: Units) -> BuiltUp:
    likes = {name: like for name, _, like, _, _ in _core.rate_parts(key)}
    require_one_currency(units, {n: (v, likes.get(n, "1")) for n, v in given.items()})
    si = {name: _si(name, value, likes.get(name), units) for name, value in given.items()}
    rate = float(_core.from_si(_core.built_up_rate(key, si), "currency/h"))
    of_overtime = "labour.overtime_share"
    share = _core.built_up_rate(of_overtime, si) if key == "labour.wage" else 0.0
    return BuiltUp(rate, share, given)


def _si(name: str, value: Any, like: str | None, units: Units) -> float:
    """A part in SI; one that is not known is left for the core to refuse by name."""
    if name == "ownership":
        if value not in _core.ownership_names():
            allowed = " or ".join(_core.ownership_names())
            raise UnknownNameError("cost.ownership", name, f'"{value}"', allowed)
        return float(_core.ownership_names().index(value))
    return 0.0 if like is None else single(name, value, like, units)
