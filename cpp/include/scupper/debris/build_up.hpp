#pragma once
// How much dirt lies there.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::debris {

/// The volume of dirt along a gutter or another strip.
///
/// Formula: V = L w d
/// @param length [m] length of the strip
/// @param width [m] mean width of the build-up
/// @param depth [m] mean depth of the build-up
/// @return [m3] volume as it lies
/// Range: any; not negative where the arguments are not.
/// Errors: none.
/// Source: definition; worked against 1.5 ft x 0.25 in x 120 ft = 3.750 ft3 (common practice)
/// Verified by: tests/cpp/debris/test_build_up.cpp
template <class T>
Volume<T> strip_volume(const Length<T>& length, const Length<T>& width, const Length<T>& depth);

/// The volume of dirt in drains of one condition.
///
/// Formula: V = n v
/// @param drains [each] number of drains
/// @param volume_each [m3/each] dirt in one of them
/// @return [m3] volume
/// Range: any; not negative where the arguments are not.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/debris/test_build_up.cpp
template <class T>
Volume<T> drain_volume(const Count<T>& drains, const VolumeEach<T>& volume_each);

} // namespace scupper::debris
