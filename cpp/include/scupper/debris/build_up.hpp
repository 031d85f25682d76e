#pragma once
// How much dirt lies there.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::debris {

/// The volume of dirt along a gutter or another strip.
///
/// Formula: V = L w d
/// @param length [m] length of the strip, >= 0
/// @param width [m] mean width of the build-up, >= 0
/// @param depth [m] mean depth of the build-up, >= 0
/// @return [m3] volume as it lies
/// Range: any.
/// Errors: InputError `debris.length`, `debris.width`, `debris.depth` where below 0 or not a number
/// Source: definition; worked against 1.5 ft x 0.25 in x 120 ft = 3.750 ft3 (common practice)
/// Verified by: tests/cpp/debris/test_build_up.cpp
template <class T>
Volume<T> strip_volume(const Length<T>& length, const Length<T>& width, const Length<T>& depth);

/// The volume of dirt in drains of one condition.
///
/// Formula: V = n v
/// @param drains [each] number of drains, >= 0
/// @param volume_each [m3/each] dirt in one of them, >= 0
/// @return [m3] volume
/// Range: any.
/// Errors: InputError `debris.drains`, `debris.volume_each` where below 0 or not a number
/// Source: definition
/// Verified by: tests/cpp/debris/test_build_up.cpp
template <class T>
Volume<T> drain_volume(const Count<T>& drains, const VolumeEach<T>& volume_each);

/// Mass for each unit of length, as street dirt is published: pounds to a mile of curb.
template <class T = double>
using LineMass = Quantity<dim::mass / dim::length, T>;

/// The mass of dirt along a gutter or another strip, from its mass for each unit of length.
///
/// Formula: m = L m'
/// @param length [m] length of the strip, >= 0
/// @param line_mass [kg/m] dirt for each unit of length, >= 0
/// @return [kg] mass
/// Range: any.
/// Errors: InputError `debris.length`, `debris.line_mass` where below 0 or not a number
/// Source: definition
/// Verified by: tests/cpp/debris/test_published.cpp
template <class T>
Mass<T> strip_mass(const Length<T>& length, const LineMass<T>& line_mass);

/// How deep dirt lies whose mass for each unit of length is known.
///
/// Formula: d = m' / (w rho)
/// @param line_mass [kg/m] dirt for each unit of length, >= 0
/// @param width [m] mean width of the build-up, > 0
/// @param density [kg/m3] bulk density, > 0
/// @return [m] mean depth
/// Range: any.
/// Errors: InputError `debris.line_mass`, `debris.width`, `debris.density` where out of range
/// Source: definition
/// Verified by: tests/cpp/debris/test_published.cpp
template <class T>
Length<T> build_up_depth(const LineMass<T>& line_mass, const Length<T>& width,
                         const Density<T>& density);

} // namespace scupper::debris
