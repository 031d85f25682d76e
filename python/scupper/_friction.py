"""Friction, fittings and height."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._arguments import Arguments, Units, answer, described_by, plain, result
from scupper._water import density_of, water_kinematic_viscosity
from scupper.errors import InputError, UnknownNameError

if TYPE_CHECKING:
    from scupper.units import Quantity

METHODS = ("darcy-weisbach", "hazen-williams", "hose-coefficient")


@described_by(_core.friction_factor)
def friction_factor(reynolds: Any, relative_roughness: Any) -> Any:
    """Plain numbers in, a plain number or array out."""
    given = {"reynolds": (reynolds, "1"), "relative_roughness": (relative_roughness, "1")}
    return plain(_core.friction_factor, None, **given)


def friction_loss(
    flow: Any,
    bore: Any,
    length: Any,
    method: str = "darcy-weisbach",
    *,
    roughness: Any = None,
    temperature: Any = "15 degC",
    density: Any = None,
    kinematic_viscosity: Any = None,
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
    density, kinematic_viscosity
        Of another liquid; only Darcy-Weisbach uses the viscosity.
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
        return result(_core.hose_coefficient_loss(*given.shaped(single=True)), "Pa")
    given.add("bore", bore, "m")
    given.add("length", length, "m")
    if method == "hazen-williams":
        given.add("c", _needed("c", c, method), "1")
        given.add("density", density_of(density, temperature), "kg/m3")
        return result(_core.hazen_williams_loss(_form(form), *given.shaped(single=True)), "Pa")
    given.add("roughness", _needed("roughness", roughness, method), "m")
    given.add("density", density_of(density, temperature), "kg/m3")
    given.add("viscosity", _viscosity(kinematic_viscosity, temperature), "m2/s")
    return result(_core.friction_loss(*given.shaped(single=True)), "Pa")


def _viscosity(given: Any, temperature: Any) -> Any:
    """The kinematic viscosity itself, or that of water of a temperature."""
    return water_kinematic_viscosity(temperature) if given is None else given


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


@described_by(_core.factor_loss)
def factor_loss(
    factor: Any,
    velocity: Any,
    bore: Any,
    length: Any,
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """Water of a temperature unless a density is given."""
    return answer(
        _core.factor_loss,
        "Pa",
        units,
        factor=(factor, "1"),
        velocity=(velocity, "m/s"),
        bore=(bore, "m"),
        length=(length, "m"),
        density=(density_of(density, temperature), "kg/m3"),
    )


@described_by(_core.minor_loss)
def minor_loss(
    flow: Any,
    bore: Any,
    loss_coefficient: Any,
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """Coefficients of fittings: `fittings`. Water of a temperature unless a density is given."""
    return answer(
        _core.minor_loss,
        "Pa",
        units,
        flow=(flow, "m3/s"),
        bore=(bore, "m"),
        loss_coefficient=(loss_coefficient, "1"),
        density=(density_of(density, temperature), "kg/m3"),
    )


@described_by(_core.pipe_velocity)
def pipe_velocity(flow: Any, bore: Any, *, units: Units = None) -> Quantity:
    """In m/s."""
    return answer(_core.pipe_velocity, "m/s", units, flow=(flow, "m3/s"), bore=(bore, "m"))


@described_by(_core.velocity_pressure)
def velocity_pressure(
    flow: Any,
    bore: Any,
    *,
    temperature: Any = "15 degC",
    density: Any = None,
    units: Units = None,
) -> Quantity:
    """Water of a temperature unless a density is given."""
    rho = (density_of(density, temperature), "kg/m3")
    given = {"flow": (flow, "m3/s"), "bore": (bore, "m"), "density": rho}
    return answer(_core.velocity_pressure, "Pa", units, **given)


@described_by(_core.reynolds)
def reynolds(
    flow: Any,
    bore: Any,
    *,
    temperature: Any = "15 degC",
    kinematic_viscosity: Any = None,
    units: Units = None,
) -> Any:
    """A plain number or array. Water of a temperature unless a viscosity is given."""
    nu = (_viscosity(kinematic_viscosity, temperature), "m2/s")
    given = {"flow": (flow, "m3/s"), "bore": (bore, "m"), "kinematic_viscosity": nu}
    return plain(_core.reynolds, units, **given)


@described_by(_core.static_pressure)
def static_pressure(
    rise: Any, *, temperature: Any = "15 degC", density: Any = None, units: Units = None
) -> Quantity:
    """Water of a temperature unless a density is given."""
    rho = (density_of(density, temperature), "kg/m3")
    return answer(_core.static_pressure, "Pa", units, rise=(rise, "m"), density=rho)


@described_by(_core.head)
def head(
    pressure: Any, *, temperature: Any = "15 degC", density: Any = None, units: Units = None
) -> Quantity:
    """Water of a temperature unless a density is given."""
    rho = (density_of(density, temperature), "kg/m3")
    return answer(_core.head, "m", units, pressure=(pressure, "Pa"), density=rho)


@described_by(_core.coil_friction_factor)
def coil_friction_factor(reynolds: Any, curvature: Any, relative_roughness: Any) -> Any:
    """Plain numbers in, a plain number or array out."""
    return plain(
        _core.coil_friction_factor,
        None,
        reynolds=(reynolds, "1"),
        curvature=(curvature, "1"),
        relative_roughness=(relative_roughness, "1"),
    )


@described_by(_core.coil_critical_reynolds)
def coil_critical_reynolds(curvature: Any) -> Any:
    """A plain number in, a plain number or array out."""
    return plain(_core.coil_critical_reynolds, None, curvature=(curvature, "1"))


@described_by(_core.coil_loss)
def coil_loss(
    flow: Any,
    bore: Any,
    length: Any,
    coil_diameter: Any,
    *,
    roughness: Any,
    temperature: Any = "15 degC",
    density: Any = None,
    kinematic_viscosity: Any = None,
    units: Units = None,
) -> Quantity:
    """Water of a temperature unless density and viscosity are given."""
    return answer(
        _core.coil_loss,
        "Pa",
        units,
        flow=(flow, "m3/s"),
        bore=(bore, "m"),
        length=(length, "m"),
        coil_diameter=(coil_diameter, "m"),
        roughness=(roughness, "m"),
        density=(density_of(density, temperature), "kg/m3"),
        kinematic_viscosity=(_viscosity(kinematic_viscosity, temperature), "m2/s"),
    )
