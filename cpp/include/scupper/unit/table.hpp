#pragma once
// The one table of units: every text that names a unit is a row of it or built from its rows.

#include "scupper/quantity/dimension.hpp"

#include <span>
#include <string_view>

namespace scupper {

/// One unit: SI value = (number + offset) x factor.
struct UnitRow {
    std::string_view name;      ///< [text] the name shown
    std::string_view aliases;   ///< [text] other names that are read, separated by "|"
    Dimension dimension;        ///< its dimension
    double factor;              ///< [SI coherent unit] of one of it, exact
    double offset;              ///< [-] added to the number first
    std::string_view pint_name; ///< [text] the same in the library pint; empty where it has none
};

/// All units, those of a dimension together.
///
/// @return [n] rows; names and aliases are all different
/// Range: not applicable.
/// Errors: none.
/// Source: NIST SP 811 (2008), appendix B; NIST Handbook 44, appendix C
/// Verified by: tests/cpp/unit/test_table.cpp
std::span<const UnitRow> unit_table();

} // namespace scupper
