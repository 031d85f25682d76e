#pragma once
// Writing quantities as text.

#include "scupper/unit/unit.hpp"

#include <string>
#include <string_view>

namespace scupper {

/// A number as text: commas before groups of three, trailing zeros left out.
///
/// @param value [-] a finite number
/// @param significant_digits [-] digits to keep, 1 to 15
/// @return [text] as "1,230" or "0.0125"; with an exponent below 1e-5 and from 1e15
/// Range: finite numbers.
/// Errors: UnitError `unit.number` for NaN and infinity, `unit.digits` outside 1 to 15.
/// Source: common practice
/// Verified by: tests/cpp/unit/test_format.cpp
std::string format_number(double value, int significant_digits);

/// An SI value as text in a unit: "1,234 gal".
///
/// @param si [SI coherent unit] a finite value
/// @param unit the unit to show it in
/// @param significant_digits [-] digits to keep, 1 to 15
/// @return [text] number and unit; the number alone for plain numbers
/// Range: finite values; `parse_quantity` reads the text back.
/// Errors: UnitError as `format_number`.
/// Source: common practice
/// Verified by: tests/cpp/unit/test_format.cpp
std::string format_quantity(double si, const Unit& unit, int significant_digits);

/// An SI value as text in a unit given by name.
///
/// @param si [SI coherent unit] a finite value
/// @param unit_text [text] as "gal"; "1" for plain numbers
/// @param significant_digits [-] digits to keep, 1 to 15
/// @return [text] number and unit
/// Range: finite values; `parse_quantity` reads the text back.
/// Errors: UnitError as `parse_unit` and `format_number`.
/// Source: common practice
/// Verified by: tests/cpp/unit/test_format.cpp
std::string format_quantity(double si, std::string_view unit_text, int significant_digits);

} // namespace scupper
