#pragma once
// What stands on the road besides signs: channelizing devices, arrow boards, shadow vehicles, and
// the people who flag.

#include "scupper/closure/kind.hpp"
#include "scupper/closure/taper.hpp"
#include "scupper/quantity.hpp"

namespace scupper::closure {

/// How far apart channelizing devices stand at most in a taper.
///
/// Formula: 1 ft for each mph; 20 ft in one-lane two-way and downstream tapers
/// @param speed [m/s] of the traffic, > 0
/// @param kind [-] what the taper asks of a driver
/// @return [m] spacing
/// Range: tabulated from 20 to 75 mph; curves, ramps and pedestrians ask for less.
/// Errors: InputError `closure.speed` where out of range
/// Source: Manual on Uniform Traffic Control Devices, 2009 edition, 6F.63 and 6C.08; 11th, 6K.01
///         and 6B.08
/// Verified by: tests/cpp/closure/test_devices.cpp
template <class T>
Length<T> taper_device_spacing(const Speed<T>& speed, TaperKind kind = TaperKind::merging);

/// How far apart channelizing devices stand at most along the buffer and the work space.
///
/// Formula: 2 ft for each mph
/// @param speed [m/s] of the traffic, > 0
/// @return [m] spacing
/// Range: tabulated from 20 to 75 mph.
/// Errors: InputError `closure.speed` where out of range
/// Source: Manual on Uniform Traffic Control Devices, 2009 edition, 6F.63; 11th, 6K.01
/// Verified by: tests/cpp/closure/test_devices.cpp
template <class T>
Length<T> tangent_device_spacing(const Speed<T>& speed);

/// How many devices a line of a given length takes, one at either end.
///
/// Formula: N = count_up(length / spacing) + 1
/// @param length [m] of the line, >= 0
/// @param spacing [m] greatest distance between two devices, > 0
/// @return [each] devices; a line that continues another shares one with it
/// Range: any length.
/// Errors: InputError `closure.length`, `closure.spacing` where out of range
/// Source: common practice; a field handbook of 2002 prints L / spacing + 1
/// Verified by: tests/cpp/closure/test_devices.cpp
template <class T>
Count<T> device_count(const Length<T>& length, const Length<T>& spacing);

/// How many lanes a kind of closure takes from the traffic at least.
///
/// Formula: two on two_freeway_lanes; one on one_lane_two_way, rural_lane, freeway_lane; else none
/// @param kind [-] how the road is narrowed or closed
/// @return [-] lanes closed while others stay open
/// Range: every kind; a full closure leaves none open and counts as none.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/closure/test_devices.cpp
int lanes_closed(Kind kind);

/// How many arrow boards a closure needs: one for each lane that traffic has to leave by merging.
///
/// @param kind [-] how the road is narrowed or closed
/// @param lanes [-] lanes closed, >= 0
/// @return [-] arrow boards; none where flaggers stop the traffic, or nothing merges
/// Range: stationary closures.
/// Errors: InputError `closure.lanes_closed` where negative
/// Source: Manual on Uniform Traffic Control Devices, 2009 edition, notes for figures 6H-33 and
///         6H-37 (a standard on freeways); on other multi-lane roads common practice
/// Verified by: tests/cpp/closure/test_devices.cpp
int arrow_board_count(Kind kind, int lanes);

/// How many shadow vehicles with a truck-mounted attenuator a closure usually has.
///
/// Formula: one for each closed lane on freeways; at 45 mph and above also one for each closed lane
/// of other roads of several lanes and one for a closed shoulder; none where flaggers stop the
/// traffic, nor elsewhere
/// @param kind [-] how the road is narrowed or closed
/// @param speed [m/s] of the traffic, > 0
/// @param lanes [-] lanes closed, >= 0
/// @return [-] vehicles, each with its driver and an empty roll-ahead distance before it
/// Range: stationary closures; the agency's rule takes precedence.
/// Errors: InputError `closure.speed`, `closure.lanes_closed` where out of range
/// Source: common practice
/// Verified by: tests/cpp/closure/test_devices.cpp
int shadow_vehicle_count(Kind kind, const Speed<>& speed, int lanes);

/// How many flaggers a closure needs.
///
/// Formula: one at each end of a one-lane two-way section and of a full closure, else none
/// @param kind [-] how the road is narrowed or closed
/// @return [-] flaggers on duty at a time, without relief
/// Range: ends that cannot see each other, or that one person cannot control; no signals.
/// Errors: none.
/// Source: Manual on Uniform Traffic Control Devices, 2009 edition, 6C.11 (from memory); the people
/// at the barricades of a full closure: common practice
/// Verified by: tests/cpp/closure/test_devices.cpp
int flagger_count(Kind kind);

} // namespace scupper::closure
