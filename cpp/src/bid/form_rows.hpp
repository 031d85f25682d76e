#pragma once
// The rows beneath the headings of a form. Internal to reading it.

#include "header.hpp"
#include "scupper/bid/amounts.hpp"
#include "scupper/bid/read_form.hpp"

namespace scupper::bid::detail {

/// Reads every row: items, totals, groups, notes. The columns and bids of the read are known.
void read_rows(const Sheet& sheet, const FormMapping& mapping, const Currency& currency,
               const Header& header, SheetRead& read);

} // namespace scupper::bid::detail
