#pragma once
// Hose that lies in coils on a reel: the flow swirls, loses more, and turns turbulent later.

#include "scupper/hydraulics/water.hpp"
#include "scupper/quantity.hpp"

namespace scupper::hydraulics {

/// From a coil's critical Reynolds number up to this multiple of it [-] a straight line bridges
/// laminar and turbulent flow; own convention.
inline constexpr double coil_bridge = 1.2;

/// Up to which Reynolds number the flow in a coil stays laminar.
///
/// Formula: Re = 2300 (1 + 8.6 (d / D)^0.45)
/// @param curvature [-] d / D, bore over diameter of the coil, 0 to 0.2
/// @return [-] critical Reynolds number
/// Range: d / D below 0.14; 0 is a straight hose.
/// Errors: InputError `hydraulics.curvature` where out of range
/// Source: E. F. Schmidt, Chem. Ing. Tech. 39 (1967) 781, as printed in the documentation of the
///         fluids library
/// Verified by: tests/cpp/hydraulics/test_coil.cpp
double coil_critical_reynolds(double curvature);

/// The Darcy friction factor of a coil.
///
/// Formula: laminar, to the critical Re: f = (64 / Re) (1 + 0.14 x^0.97 Re^(1 - 0.644 x^0.312)),
///          x = d / D;
///          turbulent, from 1.2 times that: f = fs max(1 + 28800 x^0.62 / Re,
///          1 + 0.0823 (1 + x) x^0.53 Re^0.25), fs of friction_factor;
///          between them a straight line in Re
/// @param reynolds_number [-] Re, > 0
/// @param curvature [-] x, bore over diameter of the coil from centre to centre, 0 to 0.2
/// @param relative_roughness [-] roughness over bore, 0 to 0.05
/// @return [-] Darcy friction factor
/// Range: Re 100 to 150,000; beyond it the formula goes on. Schmidt changes formula at Re 22,000
///        with a step of about 1 %; the greater of the two has none. Rough coils were hardly
///        measured.
/// Errors: InputError `hydraulics.reynolds_number`, `hydraulics.curvature`,
///         `hydraulics.relative_roughness` where out of range
/// Source: as coil_critical_reynolds; the bridge is own convention
/// Verified by: tests/cpp/hydraulics/test_coil.cpp
double coil_friction_factor(double reynolds_number, double curvature, double relative_roughness);

/// What hose on a reel costs in pressure.
///
/// Formula: p = f (L / d) rho V^2 / 2, f of coil_friction_factor
/// @param flow [m3/s] volume flow, >= 0
/// @param bore [m] inside diameter, > 0
/// @param length [m] of the hose that lies in coils, >= 0
/// @param coil_diameter [m] mean diameter of the coils from centre to centre, >= 5 bores
/// @param roughness [m] equivalent sand roughness of the wall, >= 0
/// @param fluid [-] density [kg/m3] and kinematic viscosity [m2/s]
/// @return [Pa] pressure loss
/// Range: round hose; one that is flattened by its reel loses more.
/// Errors: as coil_friction_factor; InputError `hydraulics.flow`, `hydraulics.bore`,
///         `hydraulics.length`, `hydraulics.density` where out of range
/// Source: Darcy-Weisbach equation
/// Verified by: tests/cpp/hydraulics/test_coil.cpp
Pressure<> coil_loss(const Flow<>& flow, const Length<>& bore, const Length<>& length,
                     const Length<>& coil_diameter, const Length<>& roughness,
                     const Fluid<>& fluid);

} // namespace scupper::hydraulics
