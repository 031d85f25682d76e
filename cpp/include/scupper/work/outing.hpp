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

/// The time a shift leaves for work on site.
///
/// Formula: t = length - travel - briefing - meal
/// @param shift [s] the shift and what it loses
/// @return [s] time for work on the clock; not positive where the shift is all lost
/// Range: any.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/work/test_outing.cpp
template <class T>
Time<T> available_time(const Shift<T>& shift);

/// Turns hours on site into shifts and paid hours.
///
/// Formula: shifts = count_up(on site / (available + overtime)) for whole shifts, on site /
/// available pro rata, or the greater of 1 / structures and on site / available where counted
/// or hourly; overtime = what whole shifts leave over, not below 0; paid = shifts x length +
/// overtime, hourly on site + what the shifts lose;
/// idle = paid - on site - shifts x (travel + briefing + meal)
/// @param on_site [s] time on the clock at the structure
/// @param shift [s] the shift and what it loses; length > travel + briefing + meal
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
