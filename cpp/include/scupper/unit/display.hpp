#pragma once
// In which unit a dimension is shown: SI, US customary, metric as the trade writes it.

#include "scupper/quantity/dimension.hpp"
#include "scupper/unit/unit.hpp"

#include <string>
#include <string_view>

namespace scupper {

/// The three ways to show quantities.
enum class UnitSystem {
    si,     ///< coherent: m, m2, m3, kg, s, Pa
    us,     ///< customary: ft, ft2, gal, short ton, h, psi
    metric, ///< as the trade writes it: m, m2, m3, t, h, kPa
};

/// The unit in which a quantity of a dimension is shown.
///
/// @param dimension any dimension; those without a customary unit get one composed
/// @param system SI, US customary or metric
/// @param currency [text] the currency for prices; without one the word "currency" stands there
/// @return the unit
/// Range: exponents up to 9. One dimension can serve two uses (a speed, and feet of parapet an hour):
/// the more common one decides.
/// Errors: UnitError `unit.unknown` where the currency is not a code.
/// Source: common practice
/// Verified by: tests/cpp/unit/test_display.cpp
Unit display_unit(Dimension dimension, UnitSystem system, std::string_view currency = "currency");

/// The name of the coherent SI unit of a dimension: "m3/s", "kg/m3", "currency/s".
///
/// @param dimension any dimension
/// @return [text] a name that `parse_unit` reads; "1" for plain numbers
/// Range: exponents up to 9.
/// Errors: none.
/// Source: SI brochure, 9th edition (2019), tables 4 to 6
/// Verified by: tests/cpp/unit/test_display.cpp
std::string si_unit_name(Dimension dimension);

/// The name of the US customary unit of a dimension: "gpm", "lb/ft3", "currency/h".
///
/// @param dimension any dimension
/// @return [text] a name that `parse_unit` reads; "1" for plain numbers
/// Range: exponents up to 9.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/unit/test_display.cpp
std::string us_unit_name(Dimension dimension);

/// The name of the metric unit of a dimension as the trade writes it: "L/min", "t", "km/h".
///
/// @param dimension any dimension
/// @return [text] a name that `parse_unit` reads; "1" for plain numbers
/// Range: exponents up to 9.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/unit/test_display.cpp
std::string metric_unit_name(Dimension dimension);

/// What a quantity of a dimension is called, with a valid example: for error messages.
///
/// @param dimension any dimension
/// @return [text] as: a pressure, e.g. "100 psi"
/// Range: exponents up to 9.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/unit/test_display.cpp
std::string dimension_phrase(Dimension dimension);

} // namespace scupper
