#pragma once
// The empty stretch between the taper and the crew, in which a driver who saw nothing can stop.

#include "scupper/quantity.hpp"

#include <type_traits>

namespace scupper::closure {

/// The distance in which a driver perceives, brakes and stops.
///
/// Formula: d = v t + v^2 / (2 (a - g G)), t = 2.5 s, a = 11.2 ft/s2
/// @param speed [m/s] v, > 0
/// @param downgrade [-] G, fall over run in the direction of travel; negative uphill
/// @return [m] stopping sight distance, not rounded
/// Range: -0.3 < G < 0.3; wet pavement, cars. Tabulated from 20 to 75 mph.
/// Errors: InputError `closure.speed`, `closure.downgrade` where out of range
/// Source: AASHTO, A Policy on Geometric Design of Highways and Streets, 2001, exhibits 3-1 and
///         3-2. The customary form, 1.47 V t + 1.075 V^2 / a, rounds what is exact here.
/// Verified by: tests/cpp/closure/test_buffer.cpp
template <class T>
Length<T> stopping_distance(const Speed<T>& speed,
                            const std::type_identity_t<T>& downgrade = T(0.0));

/// The length of the longitudinal buffer space that the manual suggests.
///
/// Formula: the level stopping distance rounded up to 5 ft; downhill, where that is longer, the
/// distance on the grade rounded up to 1 ft
/// @param speed [m/s] of the traffic, > 0
/// @param downgrade [-] fall over run in the direction of travel; uphill counts as level
/// @return [m] length along the road
/// Range: -0.3 < downgrade < 0.3. Level figures are those of the table; on downgrades the printed
///        figures are not rounded uniformly and this one is within 1 ft of them.
/// Errors: InputError `closure.speed`, `closure.downgrade` where out of range
/// Source: Manual on Uniform Traffic Control Devices, 2009 edition, table 6C-2; 11th, 6B-2;
///         downgrades: California edition 2026, table 6B-2(CA)
/// Verified by: tests/cpp/closure/test_buffer.cpp
template <class T>
Length<T> buffer_length(const Speed<T>& speed, const std::type_identity_t<T>& downgrade = T(0.0));

} // namespace scupper::closure
