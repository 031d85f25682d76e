#pragma once
// Numbers as the trade writes them.

#include "context.hpp"
#include "cursor.hpp"

namespace scupper::detail {

/// Takes an unsigned number: "1,234.5", "1.5e-6", "7/8", "1 1/2", "1-1/2".
double take_number(Cursor& cursor, const Context& context);

} // namespace scupper::detail
