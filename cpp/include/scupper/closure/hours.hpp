#pragma once
// How a day's traffic spreads over its hours.

#include <array>
#include <cstddef>
#include <span>
#include <string_view>

namespace scupper::closure {

inline constexpr std::size_t hours_a_day = 24;

/// Where a road lies, as far as its hours differ; the words are `hour_pattern_names`, in this order.
enum class HourPattern { rural, urban };

/// Shares of the day's traffic by the hour that starts then, from midnight.
using HourlyShares = std::array<double, hours_a_day>;

/// The pattern that a word names.
///
/// @param word [text] one of `hour_pattern_names`
/// @return [-] the pattern
/// Range: any text.
/// Errors: UnknownNameError `closure.hours` with the nearest word
/// Source: own convention
/// Verified by: tests/cpp/closure/test_hours.cpp
HourPattern hour_pattern_by_name(std::string_view word);

/// The pattern of a road by its functional class.
///
/// @param functional_class [-] code of item 26
/// @return [-] urban from 11 on; rural below, and where it is not recorded
/// Range: any code.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995), item 26
/// Verified by: tests/cpp/closure/test_hours.cpp
HourPattern hour_pattern_by_record(int functional_class);

/// A usual distribution of a day's traffic; a count of the road takes its place.
///
/// @param pattern [-] rural or urban
/// @return [-, 24] shares that add up to 1
/// Range: working days, both directions together.
/// Errors: none.
/// Source: FHWA-SA-98-079 (1998), default hourly distributions (from memory)
/// Verified by: tests/cpp/closure/test_hours.cpp
const HourlyShares& hourly_shares(HourPattern pattern);

/// Takes shares of a count, refusing what is no distribution.
///
/// @param shares [-, n] of the hours from midnight
/// @return [-, 24] the same, scaled to add up to exactly 1
/// Range: 24 shares not below 0 that add up to 1 within 2 %, as rounded counts do.
/// Errors: InputError `closure.hours` where they do not
/// Source: definition
/// Verified by: tests/cpp/closure/test_hours.cpp
HourlyShares checked_shares(std::span<const double> shares);

} // namespace scupper::closure
