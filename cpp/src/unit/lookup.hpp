#pragma once
// Names at the head of a text.

#include "cursor.hpp"
#include "scupper/unit/table.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace scupper::detail {

/// Takes the longest name of the unit table that the text begins with; none: nothing is taken.
const UnitRow* take_unit(Cursor& cursor);

/// What to write in place of a name that means several things, if the text begins with one.
std::optional<std::string_view> ambiguity_advice(std::string_view text);

/// The words at the head of a text up to an operator or a digit, for a message.
std::string_view leading_words(std::string_view text);

/// The name of the unit table nearest to a wrong one, or empty.
std::string nearest_unit(std::string_view wrong);

} // namespace scupper::detail
