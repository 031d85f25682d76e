#pragma once
// How long the line of devices is that moves traffic out of its path.
//
// The speed of every rule here is the posted limit, or the off-peak 85th-percentile speed before
// the work starts, or the operating speed that is expected.

#include "scupper/quantity.hpp"

namespace scupper::closure {

/// What a taper asks of a driver; the words are those of `taper_kind_by_name`, in this order.
enum class TaperKind {
    merging,          ///< leave the lane and merge into the next
    shifting,         ///< keep the lane, which moves sideways
    shoulder,         ///< stay off the shoulder
    one_lane_two_way, ///< stop for a flagger, then share one lane with the other direction
    downstream        ///< return to the lane after the work space
};

/// The range of a one-lane two-way and of a downstream taper.
/// Source: Manual on Uniform Traffic Control Devices, 2009 edition, table 6C-3; 11th, table 6B-3.
inline constexpr Length<> shortest_short_taper{50.0 * factor::foot};
inline constexpr Length<> longest_short_taper{100.0 * factor::foot};

/// Whether the manual gives a taper formula for a speed: between 40 and 45 mph it gives none.
///
/// Formula: speed <= 40 mph or speed >= 45 mph, with a relative slack of 1e-9
/// @param speed [m/s] of the traffic
/// @return [-] false where `taper_length` has to choose
/// Range: any speed.
/// Errors: none.
/// Source: Manual on Uniform Traffic Control Devices, 2009 edition, table 6C-4; 11th, table 6B-4
/// Verified by: tests/cpp/closure/test_taper.cpp
bool taper_formula_exists(const Speed<>& speed);

/// The least length of a taper that moves traffic sideways by an offset.
///
/// Formula: L = W S^2 / 60 up to 40 mph, L = W S above (S in mph; L and W in the same unit);
/// merging L, shifting L / 2, shoulder L / 3; one-lane two-way and downstream 100 ft, the longest
/// of the 50 to 100 ft allowed, whatever speed and offset
/// @param speed [m/s] of the traffic, > 0
/// @param offset [m] W, width taken from the traffic: a lane, or the shoulder, >= 0
/// @param kind [-] what the taper asks of a driver
/// @return [m] length along the road, not rounded
/// Range: tabulated from 20 to 75 mph. Between 40 and 45 mph no formula is published; the longer
///        of the two, W S, is used as the safe reading. At 40 mph the length jumps by a half.
/// Errors: InputError `closure.speed`, `closure.offset` where out of range
/// Source: Manual on Uniform Traffic Control Devices, 2009 edition, tables 6C-3 and 6C-4; 11th,
///         6B-3 and 6B-4. The shoulder taper is L / 3 in the text and 0.33 L in the table.
/// Verified by: tests/cpp/closure/test_taper.cpp
template <class T>
Length<T> taper_length(const Speed<T>& speed, const Length<T>& offset,
                       TaperKind kind = TaperKind::merging);

} // namespace scupper::closure
