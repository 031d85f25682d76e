#pragma once
// What the columns of a form are. Internal to reading it.

#include "header.hpp"

namespace scupper::bid::detail {

/// What the columns are; what is doubtful is added to the read.
std::vector<ReadColumn> columns_of(const Sheet& sheet, const FormMapping& mapping,
                                   const Header& header, SheetRead& read);

} // namespace scupper::bid::detail
