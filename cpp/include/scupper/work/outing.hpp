#pragma once
// From hours on site to paid hours: shifts with travel, briefing and meal, shared by a setting.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::work {

/// What a shift loses before any work is done.
template <class T>
struct Shift {
    Time<T> length;   ///< [s] paid shift
    Time<T> travel;   ///< [s] there and back
    Time<T> briefing; ///< [s] briefing and pack-up
    Time<T> meal;     ///< [s] meal
    Time<T> overtime; ///< [s] how much longer a shift may run before another one is needed
    Time<T> window;   ///< [s] how long the road may be closed in a shift, the meal within it
    Time<T> closure;  ///< [s] set-up and removal of the closure, once a shift; 0 without one
};

/// How shifts are shared between structures.
enum class ShiftSharing {
    whole,    ///< every structure pays whole shifts
    pro_rata, ///< by hours on site
    counted,  ///< so many structures in a shift
    hourly,   ///< the hours worked; so many structures share what a shift loses
};

/// Where the paid hours of an outing go; they add up to `paid`.
template <class T>
struct OutingHours {
    T shifts;         ///< [-] crew-shifts
    Time<T> paid;     ///< [s] of each person
    Time<T> travel;   ///< [s]
    Time<T> briefing; ///< [s]
    Time<T> meal;     ///< [s]
    Time<T> idle;     ///< [s] paid, on site, without work
    Time<T> overtime; ///< [s] paid beyond the shifts; part of `paid`
};

/// The time a shift leaves on site, the closure's set-up and removal in it.
///
/// Formula: t = min(length - travel - briefing - meal, window - meal)
/// @param shift [s] the shift and what it loses
/// @return [s] time on the clock; not positive where the shift is all lost
/// Range: any.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/work/test_outing.cpp
template <class T>
Time<T> available_time(const Shift<T>& shift);

/// The time a shift leaves for work once its closure stands.
///
/// Formula: t = available time - closure
/// @param shift [s] the shift and what it loses
/// @return [s] time on the clock; not positive where the closure takes all of it
/// Range: any.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/work/test_outing.cpp
template <class T>
Time<T> work_time(const Shift<T>& shift);

/// How often the closure is set up: once a shift, for all structures that stand under it.
///
/// Formula: n = count_up(k x work / (work time + overtime)) / k, overtime only in whole shifts
/// @param work [s] time on the clock at the structure, without set-up and removal
/// @param shift [s] the shift and what it loses
/// @param sharing [-] how shifts are shared
/// @param structures_a_closure [each] k, structures under one closure, >= 1
/// @return [each] closures of this structure; none where there is no work
/// Range: work >= 0; work time > 0.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/work/test_outing.cpp
template <class T>
Count<T> closures(const Time<T>& work, const Shift<T>& shift, ShiftSharing sharing,
                  const Count<T>& structures_a_closure);

/// Turns hours on site into shifts and paid hours.
///
/// Formula: shifts = count_up(on site / (available + overtime)) for whole shifts, on site /
/// available pro rata, or the greater of 1 / structures and on site / available where counted
/// or hourly; overtime = what whole shifts leave over, not below 0; paid = shifts x length +
/// overtime, hourly on site + what the shifts lose;
/// idle = paid - on site - shifts x (travel + briefing + meal), the wait for the window in it
/// @param on_site [s] time on the clock at the structure, set-up and removal of closures in it
/// @param shift [s] the shift and what it loses; its available time > 0
/// @param sharing [-] how shifts are shared
/// @param structures_a_shift [each] for ShiftSharing::counted, >= 1
/// @return [-] shifts and where the paid hours go
/// Range: on_site >= 0.
/// Errors: none; a shift that is all lost gives infinity or a negative number, which the estimate
/// refuses.
/// Source: common practice
/// Verified by: tests/cpp/work/test_outing.cpp
template <class T>
OutingHours<T> price_outing(const Time<T>& on_site, const Shift<T>& shift, ShiftSharing sharing,
                            const Count<T>& structures_a_shift);

} // namespace scupper::work
