#pragma once
// Digits as people write them: "1,234,567". Shared by money and by the text of quantities.

#include <optional>
#include <string>
#include <string_view>

namespace scupper::detail {

/// The digits of a whole number without its commas; nothing where the commas do not stand in
/// front of groups of three, or where the text is not digits and commas.
std::optional<std::string> ungrouped(std::string_view whole);

/// Digits with a comma in front of every group of three.
std::string grouped(std::string_view digits);

/// What to write in place of a number whose commas cannot be read.
std::string comma_advice(std::string_view number);

/// The double nearest to plain digits ("-1234.5e-3"); nothing where the text is not a number as a
/// whole, or lies outside the range of double.
std::optional<double> nearest_double(std::string_view plain);

} // namespace scupper::detail
