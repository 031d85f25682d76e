#pragma once
// How much traffic gets past a closure, how much wants to, and in which hours it fits.

#include "scupper/quantity.hpp"

#include <cstddef>
#include <span>

namespace scupper::closure {

/// Vehicles by the hour.
template <class T = double>
using TrafficFlow = Quantity<dim::count / dim::time, T>;

/// How long one round lasts where both directions take turns in one lane.
///
/// Formula: cycle = 2 (green + length / speed): each direction's green, then the lane runs empty
/// @param length [m] between the two places where traffic waits, >= 0
/// @param speed [m/s] at which vehicles pass, > 0
/// @param green [s] that each direction gets, > 0
/// @return [s] from a direction's green to its next
/// Range: flaggers or signals with the same green both ways; start-up losses are not counted.
/// Errors: InputError `closure.length`, `closure.speed`, `closure.green` where out of range
/// Source: common practice
/// Verified by: tests/cpp/closure/test_capacity.cpp
template <class T>
Time<T> one_lane_cycle(const Length<T>& length, const Speed<T>& speed, const Time<T>& green);

/// How much traffic of one direction gets through where both take turns in one lane.
///
/// Formula: capacity = saturation x green / cycle
/// @param length [m] between the two places where traffic waits, >= 0
/// @param speed [m/s] at which vehicles pass, > 0
/// @param green [s] that each direction gets, > 0
/// @param saturation [each/s] vehicles that leave a waiting line while it has green, > 0
/// @return [each/s] vehicles a direction
/// Range: as `one_lane_cycle`; a demand close to it already queues.
/// Errors: those of `one_lane_cycle`; InputError `closure.saturation` where out of range
/// Source: common practice
/// Verified by: tests/cpp/closure/test_capacity.cpp
template <class T>
TrafficFlow<T> one_lane_capacity(const Length<T>& length, const Speed<T>& speed,
                                 const Time<T>& green, const TrafficFlow<T>& saturation);

/// How much traffic wants to pass in one direction in a given hour of the day.
///
/// Formula: demand = daily x hourly share x directional share, by the hour
/// @param daily [each] vehicles a day; item 29 counts all directions that the structure carries
/// @param hourly_share [-] share of the day's traffic in the hour, 0 to 1
/// @param directional_share [-] share of the direction, 0 to 1; 1 on a one-way structure
/// @return [each/s] vehicles that want to pass
/// Range: the mean of the hour; peaks within it are not seen.
/// Errors: InputError `closure.daily`, `closure.hourly_share`, `closure.directional_share` where
/// out of range
/// Source: definition
/// Verified by: tests/cpp/closure/test_capacity.cpp
template <class T>
TrafficFlow<T> hourly_demand(const Count<T>& daily, const T& hourly_share,
                             const T& directional_share);

/// A run of hours.
struct Window {
    std::size_t first = 0; ///< [-] place of its first hour among those given
    std::size_t hours = 0; ///< [-] how many; 0 where none fits
};

/// The longest run of hours in which the traffic fits through what a closure leaves open.
///
/// Formula: hours whose demand <= capacity, side by side; the earliest of equal runs. Twenty-four
/// hours are a whole day, in which the last hour is followed by the first
/// @param demand [each/s, n] vehicles that want to pass, hour by hour
/// @param capacity [each/s] what the open lanes carry together, >= 0
/// @return [-] first hour and how many
/// Range: any number of hours. Queues left by an hour before are not seen.
/// Errors: InputError `closure.demand`, `closure.capacity` where negative or no number
/// Source: common practice
/// Verified by: tests/cpp/closure/test_capacity.cpp
Window window(std::span<const TrafficFlow<>> demand, const TrafficFlow<>& capacity);

} // namespace scupper::closure
