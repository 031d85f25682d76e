#pragma once
// What a jet brings to a surface: pressure, force, and water by area. Its power is the
// hydraulic_power of pump.hpp at the tip.
//
// All of it holds where the jet leaves the tip. Farther away a jet breaks up and entrains air; no
// law of that decay with the stand-off could be read that would hold for washing nozzles, so there
// is none here: the figures are upper bounds on what reaches the surface. Published for hand
// branches near the end of their range: 79 to 84 % of the flow lost as spray (C. R. Theobald,
// Fire Safety Journal 7 (1984) 177, abstract).

#include "scupper/quantity.hpp"

namespace scupper::hydraulics {

/// How hard a jet presses where it is stopped.
///
/// Formula: p = rho v^2 / 2
/// @param velocity [m/s] of the jet, >= 0
/// @param density [kg/m3] of the liquid, > 0
/// @return [Pa] stagnation pressure at the middle of the jet, that of the tip at no stand-off
/// Range: a whole jet that meets the surface squarely; drops of spray hit harder for microseconds.
/// Errors: InputError `hydraulics.velocity`, `hydraulics.density` where out of range
/// Source: Bernoulli's equation
/// Verified by: tests/cpp/hydraulics/test_jet.cpp
template <class T>
Pressure<T> stagnation_pressure(const Speed<T>& velocity, const Density<T>& density);

/// How hard a whole jet pushes on a flat surface.
///
/// Formula: F = rho (pi / 4) D^2 (v - u)^2 cos a
/// @param bore [m] diameter of the jet, > 0
/// @param velocity [m/s] of the jet, >= 0
/// @param surface_speed [m/s] u, of the surface away from the nozzle, not above v
/// @param angle [rad] between the jet and the normal of the surface, 0 to pi / 2
/// @param density [kg/m3] of the liquid, > 0
/// @return [N] force normal to the surface
/// Range: jets that do not splash back.
/// Errors: InputError `hydraulics.bore`, `hydraulics.velocity`, `hydraulics.surface_speed`,
///         `hydraulics.angle`, `hydraulics.density` where out of range
/// Source: momentum balance
/// Verified by: tests/cpp/hydraulics/test_jet.cpp
template <class T>
Force<T> jet_force(const Length<T>& bore, const Speed<T>& velocity, const Speed<T>& surface_speed,
                   const Angle<T>& angle, const Density<T>& density);

/// How wide a strip a fan tip covers.
///
/// Formula: w = 2 s tan(a / 2)
/// @param stand_off [m] s, from the tip to the surface, >= 0
/// @param spray_angle [rad] a, between the edges of the fan, 0 to pi
/// @return [m] width of the strip
/// Range: near the tip; farther away gravity and air narrow the fan. The angle is that of the tip
///        at its pressure, which grows a little with the pressure.
/// Errors: InputError `hydraulics.stand_off`, `hydraulics.spray_angle` where out of range
/// Source: geometry
/// Verified by: tests/cpp/hydraulics/test_jet.cpp
template <class T>
Length<T> fan_width(const Length<T>& stand_off, const Angle<T>& spray_angle);

/// How much water falls on an area when a nozzle passes over it once.
///
/// Formula: h = Q / (w u)
/// @param flow [m3/s] volume flow, >= 0
/// @param width [m] w, of the strip, > 0
/// @param travel_speed [m/s] u, of the nozzle along the surface, > 0
/// @return [m] volume by area, m3/m2: 1 mm is 1 L/m2
/// Range: one pass without overlap.
/// Errors: InputError `hydraulics.flow`, `hydraulics.width`, `hydraulics.travel_speed`
///         where out of range
/// Source: definition
/// Verified by: tests/cpp/hydraulics/test_jet.cpp
template <class T>
Length<T> water_by_area(const Flow<T>& flow, const Length<T>& width, const Speed<T>& travel_speed);

} // namespace scupper::hydraulics
