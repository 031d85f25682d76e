#pragma once
// Reading quantities: text with a unit becomes a number in SI, or an error that says what to write.

#include "scupper/quantity/dimension.hpp"
#include "scupper/quantity/kinds.hpp"

#include <string>
#include <string_view>

namespace scupper {

/// What a text says.
struct ParsedQuantity {
    double si = 0.0;                   ///< [SI coherent unit] the value
    Dimension dimension;               ///< its dimension
    std::string currency;              ///< [text] code of the money in it, or empty
    bool absolute_temperature = false; ///< [-] a point on a temperature scale, not a difference
};

/// The quantity that a text says, whatever its dimension.
///
/// Numbers: "1,234.5", "1.5e-6", "7/8", "1 1/2", "1-1/2". Sums from greater to smaller units:
/// "12 ft 6 in", "1 h 30 min". Money with its currency code: "USD 85/h" or "85 USD/h". A number
/// alone is a plain number; "2 %" is 0.02.
/// @param text [text] a quantity
/// @param path [text] the input it stands in, for the error
/// @return the quantity
/// Range: finite numbers; temperatures from absolute zero up.
/// Errors: UnitError `unit.number` (no number, commas that do not group thousands, not finite),
/// `unit.currency` (money without its code), and those of `parse_unit`.
/// Source: definition; factors as in `unit_table`
/// Verified by: tests/cpp/unit/test_parse.cpp
ParsedQuantity parse_quantity(std::string_view text, std::string_view path);

/// The SI value of a text of a known dimension. For temperatures: the absolute one.
///
/// @param text [text] a quantity without money
/// @param expected the dimension that is due
/// @param path [text] the input it stands in, for the error
/// @return [SI coherent unit] the value
/// Range: plain numbers only where the dimension is none.
/// Errors: UnitError as `parse_quantity`, `unit.missing` for a bare number where a unit is due,
/// `unit.dimension` for another dimension, `unit.currency` for a price: it needs the other form,
/// so that its currency is not lost.
/// Source: definition
/// Verified by: tests/cpp/unit/test_parse.cpp
double parse_as(std::string_view text, Dimension expected, std::string_view path);

/// The SI value of a text of a known dimension that may hold money.
///
/// @param text [text] a quantity
/// @param expected the dimension that is due
/// @param path [text] the input it stands in, for the error
/// @param currency [text] the currency due; where it is empty, it becomes that of the text
/// @return [SI coherent unit, or currency per SI unit] the value
/// Range: plain numbers only where the dimension is none.
/// Errors: UnitError as the other form, `unit.currency` where the text has another currency.
/// Source: definition
/// Verified by: tests/cpp/unit/test_parse.cpp
double parse_as(std::string_view text, Dimension expected, std::string_view path,
                std::string& currency);

/// The absolute temperature that a text says.
///
/// @param text [text] as "15 degC", "59 degF", "288.15 K"
/// @param path [text] the input it stands in, for the error
/// @return [K] the temperature
/// Range: from absolute zero up.
/// Errors: UnitError as `parse_as`; a temperature difference is refused (`unit.dimension`).
/// Source: definition
/// Verified by: tests/cpp/unit/test_parse.cpp
Temperature<double> parse_temperature(std::string_view text, std::string_view path);

} // namespace scupper
