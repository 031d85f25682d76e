#pragma once
// Overtime by the day and by the week, and what a shift that is called off still pays.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

#include <limits>
#include <span>
#include <vector>

namespace scupper::work {

/// Beyond which paid hours are overtime.
struct OvertimeLimits {
    Time<> day{std::numeric_limits<double>::infinity()};  ///< [s] plain hours of a day
    Time<> week{std::numeric_limits<double>::infinity()}; ///< [s] plain hours of a week
};

/// The overtime in every shift of one week: beyond the day's limit, and what of the rest is beyond
/// the week's. No hour counts twice.
///
/// Formula: day[k] = max(paid[k] - limit_day, 0); plain[k] = paid[k] - day[k];
/// overtime[k] = day[k] + what of plain[k] lies beyond limit_week of plain[1] + ... + plain[k]
/// @param paid [s, n] paid hours of a person by shift, in turn
/// @param limits [s] of a day and of a week
/// @return [s, n] overtime by shift, part of the paid hours
/// Range: paid >= 0.
/// Errors: InputError `work.overtime_limit` where a limit is not above 0
/// Source: 29 U.S.C. 207(a)(1): more than 40 hours a week (from memory); limits by the day are
/// those of a state or an agreement
/// Verified by: tests/cpp/work/test_overtime.cpp
std::vector<Time<>> overtime_of_week(std::span<const Time<>> paid, const OvertimeLimits& limits);

/// The hours that shifts pay which are called off on the day, as expected.
///
/// Formula: t = n p t0
/// @param shifts [-] n, shifts that are worked
/// @param cancelled [-] p, shifts called off for each one worked, >= 0
/// @param show_up [s] t0, hours that a shift called off still pays
/// @return [s] of each person
/// Range: called off after people have come; a shift called off in time pays nothing.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/work/test_overtime.cpp
template <class T>
Time<T> expected_show_up(const T& shifts, const T& cancelled, const Time<T>& show_up);

} // namespace scupper::work
