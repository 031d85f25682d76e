#pragma once
// Units joined by "*", "/" and whole powers.

#include "context.hpp"
#include "cursor.hpp"
#include "scupper/unit/unit.hpp"

namespace scupper::detail {

/// Takes a unit expression: "ft2/h", "lb/ft3", "/h", "1/s". Stops at the first thing that cannot
/// belong to it. An empty text gives the unit of plain numbers. The name is left empty.
Unit take_unit_expression(Cursor& cursor, const Context& context);

/// Whether a unit measures points on a temperature scale, so that it stands alone.
bool is_temperature_scale(const Unit& unit);

/// The code of the currency that a text begins with, or empty.
std::string_view leading_currency(std::string_view text);

} // namespace scupper::detail
