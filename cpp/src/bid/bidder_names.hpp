#pragma once
// Names of bidders over the columns of a tabulation. Internal to reading it.

#include "header.hpp"

namespace scupper::bid::detail {

/// Names the columns of prices that have no name of their own, where there are several bidders: from
/// cells above the headings, merged ones too; without either they are numbered.
void name_bidders(const Sheet& sheet, const Header& header, std::vector<ReadColumn>& columns,
                  SheetRead& read);

} // namespace scupper::bid::detail
