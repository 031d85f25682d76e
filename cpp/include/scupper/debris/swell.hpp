#pragma once
// Dirt loosened, and dirt soaked.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::debris {

/// The volume of dirt once it is loosened.
///
/// Formula: V_loose = V (1 + s)
/// @param volume [m3] as it lay, >= 0
/// @param swell [-] s, growth over the volume as it lay, >= 0
/// @return [m3] loose
/// Range: any.
/// Errors: InputError `debris.volume`, `debris.swell` where below 0 or not a number
/// Source: definition; published examples: 10 yd3 and 30 % make 13 yd3
/// Verified by: tests/cpp/debris/test_published.cpp
template <class T>
Volume<T> loose_volume(const Volume<T>& volume, const T& swell);

/// The volume loosened dirt had as it lay, over its loose volume; so too the density of loose dirt
/// over that of dirt in place.
///
/// Formula: 1 / (1 + s)
/// @param swell [-] s, growth over the volume as it lay, >= 0
/// @return [-] load factor
/// Range: any.
/// Errors: InputError `debris.swell` where below 0 or not a number
/// Source: equipment handbook table of swell, voids and load factor
/// Verified by: tests/cpp/debris/test_published.cpp
template <class T>
T load_factor(const T& swell);

/// The share of loosened dirt that is new voids.
///
/// Formula: s / (1 + s)
/// @param swell [-] s, growth over the volume as it lay, >= 0
/// @return [-] voids over loose volume
/// Range: any.
/// Errors: InputError `debris.swell` where below 0 or not a number
/// Source: equipment handbook table of swell, voids and load factor
/// Verified by: tests/cpp/debris/test_published.cpp
template <class T>
T swell_voids(const T& swell);

/// The density of dirt that has taken up water without taking more room.
///
/// Formula: rho (1 + g)
/// @param dry [kg/m3] rho, bulk density dry, > 0
/// @param gain [-] g, mass of the water over that of the dry dirt, >= 0
/// @return [kg/m3] bulk density wet
/// Range: gains of 0.2 (gravel) to 0.3 (sand) are published for a soaked load.
/// Errors: InputError `debris.density`, `debris.gain` where out of range
/// Source: definition
/// Verified by: tests/cpp/debris/test_published.cpp
template <class T>
Density<T> wet_density(const Density<T>& dry, const T& gain);

} // namespace scupper::debris
