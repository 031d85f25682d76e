"""Nozzles, friction and water.

Every argument is text with its unit (``"1/2 in"``), a pint quantity, or a bare number or array
whose unit stands in ``units={"bore": "in"}``; ``units="si"`` means SI units throughout. Arrays
broadcast as in numpy. Results are pint quantities in SI units; ``.to("gpm")`` shows them otherwise.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Arguments, Units, described_by, result
from scupper._hoses import fittings, hoses, published_coefficients
from scupper.errors import InputError, UnknownNameError
from scupper.hose_lay import HoseLay, LaySolution, LaySweep
from scupper.pumps import npsh_available, standard_atmosphere

if TYPE_CHECKING:
    from scupper.units import Quantity

__all__ = [
    "HoseLay",
    "LaySolution",
    "LaySweep",
    "fittings",
    "friction_factor",
    "friction_loss",
    "hoses",
    "nozzle_flow",
    "nozzle_pressure",
    "nozzle_reaction",
    "npsh_available",
    "published_coefficients",
    "rated_nozzle_flow",
    "standard_atmosphere",
    "water_density",
    "water_viscosity",
]

METHODS = ("darcy-weisbach", "hazen-williams", "hose-coefficient")


def _add_density(given: Arguments, density: Any, temperature: Any) -> None:
    """The density itself, or that of water of a temperature."""
    if density is None:
        density = water_density(temperature)
    given.add("density", density, "kg/m3")


@described_by(_core.nozzle_flow)
def nozzle_flow(
    bore: Any,
    pressure: Any,
    discharge_coefficient: Any,
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """Water of a temperature unless a density is given."""
    given = Arguments(units)
    given.add("bore", bore, "m")
    given.add("pressure", pressure, "Pa")
    given.add("discharge_coefficient", discharge_coefficient, "1")
    _add_density(given, density, temperature)
    return result(_core.nozzle_flow(*given.shaped()), "m3/s")


@described_by(_core.nozzle_pressure)
def nozzle_pressure(
    bore: Any,
    flow: Any,
    discharge_coefficient: Any,
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """Water of a temperature unless a density is given."""
    given = Arguments(units)
    given.add("bore", bore, "m")
    given.add("flow", flow, "m3/s")
    given.add("discharge_coefficient", discharge_coefficient, "1")
    _add_density(given, density, temperature)
    return result(_core.nozzle_pressure(*given.shaped()), "Pa")


@described_by(_core.rated_nozzle_flow)
def rated_nozzle_flow(
    rated_flow: Any, rated_pressure: Any, pressure: Any, *, units: Units = None
) -> Quantity:
    """The liquid is that of the rating."""
    given = Arguments(units)
    given.add("rated_flow", rated_flow, "m3/s")
    given.add("rated_pressure", rated_pressure, "Pa")
    given.add("pressure", pressure, "Pa")
    return result(_core.rated_nozzle_flow(*given.shaped()), "m3/s")


@described_by(_core.nozzle_reaction)
def nozzle_reaction(
    flow: Any,
    pressure: Any,
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """Water of a temperature unless a density is given."""
    given = Arguments(units)
    given.add("flow", flow, "m3/s")
    given.add("pressure", pressure, "Pa")
    _add_density(given, density, temperature)
    return result(_core.nozzle_reaction(*given.shaped()), "N")


@described_by(_core.friction_factor)
def friction_factor(reynolds: Any, relative_roughness: Any) -> Any:
    """Plain numbers in, a plain number or array out."""
    given = Arguments()
    given.add("reynolds", reynolds, "1")
    given.add("relative_roughness", relative_roughness, "1")
    factor = _core.friction_factor(*given.shaped())
    return factor if factor.ndim else float(factor)


def friction_loss(
    flow: Any,
    bore: Any,
    length: Any,
    method: str = "darcy-weisbach",
    *,
    roughness: Any = None,
    temperature: Any = "15 degC",
    c: Any = None,
    form: str = "si",
    coefficient: Any = None,
    units: Units = None,
) -> Quantity:
    """What a length of hose or pipe costs in pressure.

    Parameters
    ----------
    flow, bore, length
        Volume flow, inside diameter and length. The hose coefficient does not use the bore.
    method
        ``"darcy-weisbach"`` needs `roughness`; ``"hazen-williams"`` needs `c` and a published
        `form`; ``"hose-coefficient"`` needs `coefficient`.
    roughness
        Equivalent sand roughness of the wall.
    temperature
        Of the water; not used by the hose coefficient.
    c
        Hazen-Williams coefficient, a plain number by convention.
    form
        Which published form, named by its constants: one of
        `scupper._core.hazen_williams_forms()`; ``"si"`` is short for the one in SI units.
    coefficient
        Hose coefficient, a plain number by convention: psi per 100 ft at (100 gpm)².
    units
        Units of bare numbers, by argument, or ``"si"``.

    Returns
    -------
    pint.Quantity
        Pressure loss in pascal. Formulas, ranges and sources stand with
        `scupper._core.friction_loss`, `hazen_williams_loss` and `hose_coefficient_loss`.

    Raises
    ------
    InputError
        Where a value is out of range or the method lacks one that it needs.
    UnitError
        Where a unit is missing or of another dimension.
    """
    if method not in METHODS:
        near = _core.nearest_name(method, METHODS)
        allowed = f'"{near}"?' if near else ", ".join(METHODS)
        raise UnknownNameError("hydraulics.method", "method", f'"{method}"', allowed)
    given = Arguments(units)
    given.add("flow", flow, "m3/s")
    if method == "hose-coefficient":
        given.add("length", length, "m")
        given.add("coefficient", _needed("coefficient", coefficient, method), "1")
        return result(_core.hose_coefficient_loss(*given.shaped()), "Pa")
    given.add("bore", bore, "m")
    given.add("length", length, "m")
    if method == "hazen-williams":
        given.add("c", _needed("c", c, method), "1")
        _add_density(given, None, temperature)
        return result(_core.hazen_williams_loss(_form(form), *given.shaped()), "Pa")
    given.add("roughness", _needed("roughness", roughness, method), "m")
    given.add("temperature", temperature, "K")
    return result(_core.friction_loss(*given.shaped()), "Pa")


def _needed(name: str, value: Any, method: str) -> Any:
    if value is None:
        raise InputError(f"hydraulics.{name}", name, "nothing", f"a value: {method} needs it")
    return value


def _form(name: str) -> str:
    """The form of that name, or the only one that begins with it."""
    known = _core.hazen_williams_forms()
    begin = [form for form in known if form == name or form.startswith(f"{name}_")]
    if len(begin) != 1:
        raise UnknownNameError("hydraulics.form", "form", f'"{name}"', ", ".join(begin or known))
    return begin[0]


@described_by(_core.water_density)
def water_density(temperature: Any, *, units: Units = None) -> Quantity:
    """In kg/m³."""
    given = Arguments(units)
    given.add("temperature", temperature, "K")
    return result(_core.water_density(*given.shaped()), "kg/m3")


@described_by(_core.water_viscosity)
def water_viscosity(temperature: Any, *, units: Units = None) -> Quantity:
    """The dynamic viscosity, in Pa s."""
    given = Arguments(units)
    given.add("temperature", temperature, "K")
    return result(_core.water_viscosity(*given.shaped()), "Pa*s")
