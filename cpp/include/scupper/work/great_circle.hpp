#pragma once
// How far two places lie apart.

#include "scupper/quantity.hpp"

namespace scupper::work {

/// A place on the ground.
struct Place {
    Angle<> latitude;  ///< [rad] north positive
    Angle<> longitude; ///< [rad] east positive
};

/// The distance of two places as the crow flies.
///
/// Formula: D = 2 R asin sqrt(sin^2(dlat / 2) + cos(lat1) cos(lat2) sin^2(dlon / 2)), R = 6,371,009 m
/// @param a [rad] one place
/// @param b [rad] the other
/// @return [m] along the surface of a sphere; NaN where a coordinate is not known
/// Range: within 0.6 % of the ellipsoid.
/// Errors: none.
/// Source: haversine formula; mean radius of the IUGG, 6,371.009 km (from memory)
/// Verified by: tests/cpp/work/test_great_circle.cpp
Length<> great_circle(const Place& a, const Place& b);

} // namespace scupper::work
