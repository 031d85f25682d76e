#pragma once
// Rounding a table of money so that its parts still add up.

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace scupper {

/// The parts of a table rounded to minor units (cents) so that they sum to the rounded total.
///
/// Each part is read to a millionth of a cent, so that the result does not depend on the order in
/// which a computer adds, then rounded to the nearest cent; what the sum lacks or exceeds is
/// settled by one cent each on the parts that were rounded the farthest the other way. Among
/// equals the part of greater magnitude, then the earlier one, keeps the greater magnitude; so
/// the table of opposite signs gives the opposite cents.
/// Formula: largest remainder; total = round(sum of parts), halves away from zero
/// @param parts [currency, n] unrounded parts of any sign
/// @param decimals [-] decimals of the minor unit, 0 to 3
/// @param path [text] what is apportioned, for the error
/// @return [minor unit, n] whole numbers, each less than one minor unit from its part
/// Range: sums below 9.2e18 millionths of a minor unit (92 thousand million dollars).
/// Errors: MoneyError `money.number` where a part is NaN or infinite, `money.overflow`,
/// `money.scale`.
/// Source: M. L. Balinski, H. P. Young, Fair Representation (1982), Hamilton's method (from
/// memory), extended to parts of both signs
/// Verified by: tests/cpp/money/test_apportion.cpp
std::vector<std::int64_t> apportion(std::span<const double> parts, int decimals,
                                    std::string_view path);

/// The same for a total that was settled elsewhere.
///
/// @param parts [currency, n] unrounded parts of any sign
/// @param total [minor unit] what the rounded parts have to sum to
/// @param decimals [-] decimals of the minor unit, 0 to 3
/// @param path [text] what is apportioned, for the error
/// @return [minor unit, n] whole numbers, each less than one minor unit from its part
/// Range: totals that some such rounding of the parts can reach.
/// Errors: MoneyError `money.total` where none can, and those of the other form.
/// Source: as the other form
/// Verified by: tests/cpp/money/test_apportion.cpp
std::vector<std::int64_t> apportion(std::span<const double> parts, std::int64_t total, int decimals,
                                    std::string_view path);

} // namespace scupper
