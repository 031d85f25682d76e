#pragma once
// A unit known at run time, and numbers in it.

#include "scupper/quantity/dimension.hpp"

#include <string>
#include <string_view>

namespace scupper {

/// A unit as text gives it: SI value = (number + offset) x factor.
struct Unit {
    std::string name;     ///< [text] as written: "ft2/h"
    Dimension dimension;  ///< its dimension
    double factor = 1.0;  ///< [SI coherent unit] of one of it
    double offset = 0.0;  ///< [-] added to the number first; only for degC and degF
    std::string currency; ///< [text] code of the money in it; empty where there is none
};

/// The unit that a text names.
///
/// Names of `unit_table` and currency codes, joined by "*" or "/" (or "per"), with whole powers
/// as "ft2", "m^2" or with raised digits; "1" is the unit of plain numbers. "a/b/c" divides
/// twice; "a/b*c" is refused because readers differ on it.
/// @param text [text] as "ft2/h"
/// @param path [text] where the text stands, for the error
/// @return the unit
/// Range: powers -9 to 9; degC and degF only by themselves.
/// Errors: UnitError `unit.unknown` (the nearest name is given), `unit.ambiguous`, `unit.missing`,
/// `unit.currency` for two currencies, `unit.text` for anything left over.
/// Source: definition; factors as in `unit_table`
/// Verified by: tests/cpp/unit/test_unit.cpp
Unit parse_unit(std::string_view text, std::string_view path);

/// The number of units that an SI value holds.
///
/// Formula: si / factor - offset
/// @param si [SI coherent unit] a value
/// @param unit the unit to show it in
/// @return [unit] the number
/// Range: any number.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/unit/test_table.cpp
double to_unit(double si, const Unit& unit);

/// The SI value of a number of units.
///
/// Formula: (number + offset) factor
/// @param number [unit] a number
/// @param unit the unit it is given in
/// @return [SI coherent unit] the value
/// Range: any number.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/unit/test_table.cpp
double from_unit(double number, const Unit& unit);

} // namespace scupper
