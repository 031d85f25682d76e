"""What an hour of equipment costs, and bringing it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Units, described_by
from scupper._money import amount_of, rate_of, time_of

if TYPE_CHECKING:
    from scupper._arguments import FloatArray
    from scupper.units import Quantity


@described_by(_core.straight_line)
def straight_line(
    price: Any, salvage: Any, years: Any, *, units: Units = None
) -> float | FloatArray:
    """In the currency of the prices."""
    given = {"price": (price, "currency"), "salvage": (salvage, "currency"), "years": (years, "1")}
    return amount_of(_core.straight_line, units, **given)


@described_by(_core.declining_balance)
def declining_balance(
    price: Any, salvage: Any, share: Any, year: Any, *, units: Units = None
) -> float | FloatArray:
    """In the currency of the prices."""
    given = {
        "price": (price, "currency"),
        "salvage": (salvage, "currency"),
        "share": (share, "1"),
        "year": (year, "1"),
    }
    return amount_of(_core.declining_balance, units, **given)


@described_by(_core.sum_of_years)
def sum_of_years(
    price: Any, salvage: Any, years: Any, year: Any, *, units: Units = None
) -> float | FloatArray:
    """In the currency of the prices."""
    given = {
        "price": (price, "currency"),
        "salvage": (salvage, "currency"),
        "years": (years, "1"),
        "year": (year, "1"),
    }
    return amount_of(_core.sum_of_years, units, **given)


@described_by(_core.average_investment)
def average_investment(
    price: Any, salvage: Any, years: Any, *, units: Units = None
) -> float | FloatArray:
    """In the currency of the prices."""
    given = {"price": (price, "currency"), "salvage": (salvage, "currency"), "years": (years, "1")}
    return amount_of(_core.average_investment, units, **given)


@described_by(_core.ownership_by_investment)
def ownership_by_investment(
    price: Any, salvage: Any, years: Any, interest: Any, keeping: Any = 0.0, *, units: Units = None
) -> float | FloatArray:
    """A rate of 5 % is 0.05. In the currency of the prices."""
    given = {
        "price": (price, "currency"),
        "salvage": (salvage, "currency"),
        "years": (years, "1"),
        "interest": (interest, "1"),
        "keeping": (keeping, "1"),
    }
    return amount_of(_core.ownership_by_investment, units, **given)


@described_by(_core.ownership_by_recovery)
def ownership_by_recovery(
    price: Any, salvage: Any, years: Any, interest: Any, keeping: Any = 0.0, *, units: Units = None
) -> float | FloatArray:
    """A rate of 5 % is 0.05. In the currency of the prices."""
    given = {
        "price": (price, "currency"),
        "salvage": (salvage, "currency"),
        "years": (years, "1"),
        "interest": (interest, "1"),
        "keeping": (keeping, "1"),
    }
    return amount_of(_core.ownership_by_recovery, units, **given)


@described_by(_core.hourly)
def hourly(annual: Any, hours: Any, *, units: Units = None) -> float | FloatArray:
    """In the currency of the prices, an hour."""
    given = {"annual": (annual, "currency"), "hours": (hours, "s")}
    return rate_of(_core.hourly, units, **given)


@described_by(_core.fuel)
def fuel(
    power: Any, fuel_use: Any, load: Any, price: Any, *, units: Units = None
) -> float | FloatArray:
    """`fuel_use` as ``"0.04 gal/hp/h"``. In the currency of the prices, an hour."""
    given = {
        "power": (power, "W"),
        "fuel_use": (fuel_use, "m3/J"),
        "load": (load, "1"),
        "price": (price, "currency/m3"),
    }
    return rate_of(_core.fuel, units, **given)


@described_by(_core.updated_fuel)
def updated_fuel(fuel: Any, price: Any, base: Any, *, units: Units = None) -> float | FloatArray:
    """In the currency of the prices, an hour."""
    given = {
        "fuel": (fuel, "currency/s"),
        "price": (price, "currency/m3"),
        "base": (base, "currency/m3"),
    }
    return rate_of(_core.updated_fuel, units, **given)


@described_by(_core.tyres)
def tyres(set: Any, life: Any, repair: Any, *, units: Units = None) -> float | FloatArray:
    """A repair of 15 % is 0.15. In the currency of the prices, an hour."""
    given = {"set": (set, "currency"), "life": (life, "s"), "repair": (repair, "1")}
    return rate_of(_core.tyres, units, **given)


@described_by(_core.repair)
def repair(depreciation: Any, repair: Any, *, units: Units = None) -> float | FloatArray:
    """A repair of 60 % is 0.6. In the currency of the prices, an hour."""
    given = {"depreciation": (depreciation, "currency/s"), "repair": (repair, "1")}
    return rate_of(_core.repair, units, **given)


@described_by(_core.equipment_hour)
def equipment_hour(
    ownership: Any, operating: Any, utilisation: Any = 1.0, *, units: Units = None
) -> float | FloatArray:
    """In the currency of the prices, an hour."""
    given = {
        "ownership": (ownership, "currency/s"),
        "operating": (operating, "currency/s"),
        "utilisation": (utilisation, "1"),
    }
    return rate_of(_core.equipment_hour, units, **given)


@described_by(_core.standby)
def standby(ownership: Any, share: Any = 0.5, *, units: Units = None) -> float | FloatArray:
    """In the currency of the prices, an hour."""
    given = {"ownership": (ownership, "currency/s"), "share": (share, "1")}
    return rate_of(_core.standby, units, **given)


@described_by(_core.break_even_time)
def break_even_time(fixed: Any, own_rate: Any, hire_rate: Any, *, units: Units = None) -> Quantity:
    """In s; ``.to("hour")``."""
    given = {
        "fixed": (fixed, "currency"),
        "own_rate": (own_rate, "currency/s"),
        "hire_rate": (hire_rate, "currency/s"),
    }
    return time_of(_core.break_even_time, units, **given)


@described_by(_core.mobilization)
def mobilization(
    pieces: Any, distance: Any, price: Any, fixed: Any, *, units: Units = None
) -> float | FloatArray:
    """`price` as ``"3 USD/mi"``. In the currency of the prices."""
    given = {
        "pieces": (pieces, "1"),
        "distance": (distance, "m"),
        "price": (price, "currency/m"),
        "fixed": (fixed, "currency"),
    }
    return amount_of(_core.mobilization, units, **given)
