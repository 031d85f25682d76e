#pragma once
// In which hours of the day a road may be closed, by what its traffic would suffer.

#include "scupper/closure/hours.hpp"
#include "scupper/closure/queue.hpp"

#include <array>
#include <vector>

namespace scupper::closure {

/// A day of traffic at a closure.
struct TrafficDay {
    std::array<TrafficFlow<>, hours_a_day> demand; ///< [each/s] by the hour from midnight
    TrafficFlow<> open;                            ///< [each/s] what passes while nothing is closed
    TrafficFlow<> closed;                          ///< [each/s] what passes the closure
};

/// What traffic may suffer; infinite where nothing is said.
struct QueueLimits {
    Count<> waiting; ///< [each] longest queue
    Time<> delay;    ///< [s] longest delay of one vehicle
};

/// Hours of the day, those of the night past midnight in one run with those before it.
struct HourSpan {
    std::size_t first; ///< [-] hour at which it begins, 0 to 23
    std::size_t hours; ///< [-] how many, 0 to 24
};

/// The whole day; day work from 6 to 18 o'clock, night work from 18 to 6.
inline constexpr HourSpan any_hour{0, 24};
inline constexpr HourSpan hours_by_day{6, 12};
inline constexpr HourSpan hours_by_night{18, 12};

/// No limit of queue or delay [each, s].
QueueLimits no_limits();

/// The stretches of a day that is closed for a time, from then until the same hour of the next day.
///
/// @param day [each/s] demand and capacities
/// @param first [-] hour at which the closure begins, 0 to 23
/// @param closed [s] how long, 0 to 24 h
/// @return [s, each/s] periods that last 24 h together
/// Range: any part of an hour.
/// Errors: InputError `closure.first`, `closure.closed` where out of range
/// Source: definition
/// Verified by: tests/cpp/closure/test_windows.cpp
std::vector<Period> closure_periods(const TrafficDay& day, std::size_t first, const Time<>& closed);

/// The queue that a closure leaves, until the same hour of the next day.
///
/// @param day [each/s] demand and capacities
/// @param first [-] hour at which the closure begins, 0 to 23
/// @param closed [s] how long, 0 to 24 h
/// @return [each, s] the queue, its time counted from the beginning
/// Range: nobody waits before the first hour.
/// Errors: those of `closure_periods` and `queue`
/// Source: as `queue`
/// Verified by: tests/cpp/closure/test_windows.cpp
Queue closure_queue(const TrafficDay& day, std::size_t first, const Time<>& closed);

/// How many hours the road may be closed from each hour of the day on.
///
/// Formula: the most hours whose queue and delay stay within the limits; both only grow with the
/// hours closed, so that halving finds it
/// @param day [each/s] demand and capacities
/// @param limits [each, s] what traffic may suffer
/// @return [-, 24] hours by the hour from which on, 0 to 24
/// Range: whole hours.
/// Errors: those of `queue`; InputError `closure.queue_limit`, `closure.delay_limit` where negative
/// Source: common practice
/// Verified by: tests/cpp/closure/test_windows.cpp
std::array<std::size_t, hours_a_day> permitted_hours(const TrafficDay& day,
                                                     const QueueLimits& limits);

/// The longest run of permitted hours within a part of the day, the earliest of equal ones.
///
/// @param permitted [-, 24] as `permitted_hours` gives them
/// @param within [-] the part of the day
/// @return [-] first hour and how many; no hours where none is permitted
/// Range: a part that is permitted throughout is returned whole.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/closure/test_windows.cpp
HourSpan longest_window(const std::array<std::size_t, hours_a_day>& permitted,
                        const HourSpan& within);

} // namespace scupper::closure
