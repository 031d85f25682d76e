#pragma once
// How much daylight a day has.

#include "scupper/job/calendar.hpp"
#include "scupper/quantity.hpp"

namespace scupper::work {

/// How long the sun's upper edge is above the horizon on a day.
///
/// Formula: N = (24 h / pi) acos((sin(-0.833 deg) - sin(lat) sin(d)) / (cos(lat) cos(d))),
/// d = 23.45 deg sin(360 deg (284 + n) / 365), n the day of the year
/// @param latitude [rad] north positive, -pi / 2 to pi / 2
/// @param day [-] the day
/// @return [s] 0 where the sun does not rise, 24 h where it does not set
/// Range: level horizon; within some 10 minutes up to 60 degrees of latitude.
/// Errors: InputError `calendar.latitude` beyond the poles
/// Source: declination of P. I. Cooper, Solar Energy 12 (1969) 333; sunrise at 50 arc minutes below
/// the horizon as almanacs count it (both from memory)
/// Verified by: tests/cpp/work/test_daylight.cpp
Time<> day_length(const Angle<>& latitude, Date day);

} // namespace scupper::work
