#pragma once
// When the work of one structure can be done: notices as earliest dates, shifts as days.

#include "scupper/estimate/estimate.hpp"
#include "scupper/work/calendar.hpp"
#include "scupper/work/shift_layout.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace scupper::estimate {

/// A notice that a structure needs, and the first day it allows.
struct NoticeGiven {
    Notice notice;               ///< [d] what is asked for, and how long before
    std::optional<Date> usual;   ///< the first day of work; none where the job has no day of asking
    std::optional<Date> longest; ///< the first day of work where it takes longest
};

/// When the work of one structure can be done.
struct Schedule {
    std::vector<NoticeGiven> notices;   ///< [-, n] those that apply, in the order of the job
    int shifts = 0;                     ///< [each] days of work
    std::optional<Date> earliest;       ///< the first day that all notices allow, as usual
    std::vector<work::PlannedDay> days; ///< [-, n] from `earliest` to the last shift
};

/// When the work of one structure can be done. Notices run side by side from the day of asking;
/// they and lost days are dates, not hours: they change no cost. Where the job's calendar asks for
/// daylight, days are lost on which the sun is up for less than the longest shift is on site.
///
/// Formula: earliest = the day of asking + the longest usual time of the notices that apply
/// @param estimate [-] an estimate
/// @param air [K] of the days on which it is known
/// @return [-] notices, shifts, days; no days where the job has no day of asking
/// Range: one shift a day, the parts of shifts that an outing shares rounded up.
/// Errors: InputError `calendar.closed` where three years do not hold the shifts.
/// Source: common practice; each notice names its own
/// Verified by: tests/cpp/estimate/test_schedule.cpp
Schedule schedule(const Estimate& estimate, const work::AirByDay& air = {});

/// The first day that the notices of a structure allow, as usual.
///
/// Formula: the day of asking + the longest usual time of the notices that apply
/// @param estimate [-] an estimate
/// @return [-] the day; none where the job has no day of asking
/// Range: any estimate.
/// Errors: none.
/// Source: common practice; each notice names its own
/// Verified by: tests/cpp/estimate/test_schedule.cpp
std::optional<Date> earliest_day(const Estimate& estimate);

/// The daylight that a layout of shifts needs at a structure.
///
/// @param structure [-] the record; one without a place needs none
/// @param layout [s] the shifts
/// @param shift [-] which of them
/// @return [rad, s] latitude, and the time from the first to the last minute at a structure
/// Range: shift < number of shifts.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/estimate/test_schedule.cpp
std::optional<work::Light> light_for(const Structure& structure, const work::ShiftLayout& layout,
                                     std::size_t shift);

} // namespace scupper::estimate
