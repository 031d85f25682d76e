#pragma once
// In which order a closure goes up and comes down, and where everything stands.
//
// Positions are for a picture and a list: stations along the road from the first advance sign in
// the direction of the traffic that loses its lane, offsets to its left from the right edge of the
// travelled way. They are no survey.

#include "scupper/closure/plan.hpp"
#include "scupper/quantity.hpp"

#include <string_view>
#include <vector>

namespace scupper::closure {

/// One thing to place, or several of the same.
struct Placing {
    std::string_view what;     ///< "advance_sign_c", "merging_taper", "shadow_vehicle"
    std::string_view approach; ///< [text] "closed_lane" or "opposite"
    Length<> station;          ///< [m] where it begins
    Length<> length;           ///< [m] along the road; 0 of a sign or vehicle
    Count<> pieces;            ///< [each] signs, devices, vehicles, people
};

/// A thing that stands at one place.
struct Placed {
    std::string_view what; ///< "device", "sign", "arrow_board", "shadow_vehicle", "flagger"
    Length<> station;      ///< [m] along the road
    Length<> offset;       ///< [m] to the left of the right edge of the travelled way
};

/// The room that a shadow vehicle which is hit rolls ahead, kept empty before it.
///
/// Formula: 75 ft up to 45 mph, 100 ft up to 55 mph, 150 ft above
/// @param speed [m/s] of the traffic, > 0
/// @return [m] length along the road
/// Range: stationary vehicles of about 22,000 lb; the agency's table takes precedence.
/// Errors: InputError `closure.speed` where out of range
/// Source: AASHTO, Roadside Design Guide (from memory)
/// Verified by: tests/cpp/closure/test_placing.cpp
Length<> roll_ahead(const Speed<>& speed);

/// How many lanes a picture of the road shows.
///
/// Formula: those of the record, but at least the closed ones and one more
/// @param plan [-] a lay-out
/// @return [-] lanes
/// Range: any plan.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/closure/test_placing.cpp
int lanes_shown(const Plan& plan);

/// The order in which a closure goes up: the first sign that a driver meets first, of both
/// directions; flaggers or the shadow vehicle; the arrow board, lit; then devices with the traffic.
///
/// @param plan [-] a lay-out
/// @return [m, each] one entry a step
/// Range: any plan.
/// Errors: none.
/// Source: common practice; Manual on Uniform Traffic Control Devices, 2009 edition, 6G (from
/// memory)
/// Verified by: tests/cpp/closure/test_placing.cpp
std::vector<Placing> placing_order(const Plan& plan);

/// The order in which a closure comes down: that of going up, reversed.
///
/// @param plan [-] a lay-out
/// @return [m, each] one entry a step
/// Range: any plan.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/closure/test_placing.cpp
std::vector<Placing> taking_order(const Plan& plan);

/// Where every sign, device, board, vehicle and flagger stands.
///
/// @param plan [-] a lay-out
/// @return [m] places, devices as many as the plan counts
/// Range: any plan.
/// Errors: none.
/// Source: as `plan`
/// Verified by: tests/cpp/closure/test_placing.cpp
std::vector<Placed> places(const Plan& plan);

} // namespace scupper::closure
