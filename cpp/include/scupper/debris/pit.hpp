#pragma once
// Dirt in drain boxes and pits.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::debris {

/// The volume of dirt in a drain box.
///
/// Formula: V = L w d
/// @param length [m] L, inside, >= 0
/// @param width [m] w, inside, >= 0
/// @param depth [m] d, of the dirt, >= 0
/// @return [m3] volume
/// Range: upright walls.
/// Errors: InputError `debris.length`, `debris.width`, `debris.depth` where below 0 or not a number
/// Source: geometry
/// Verified by: tests/cpp/debris/test_tank.cpp
template <class T>
Volume<T> box_volume(const Length<T>& length, const Length<T>& width, const Length<T>& depth);

/// The volume of dirt in a round pit or a length of downspout.
///
/// Formula: V = pi / 4 D^2 d
/// @param diameter [m] D, inside, >= 0
/// @param depth [m] d, of the dirt, >= 0
/// @return [m3] volume
/// Range: upright walls.
/// Errors: InputError `debris.diameter`, `debris.depth` where below 0 or not a number
/// Source: geometry
/// Verified by: tests/cpp/debris/test_tank.cpp
template <class T>
Volume<T> round_pit_volume(const Length<T>& diameter, const Length<T>& depth);

} // namespace scupper::debris
