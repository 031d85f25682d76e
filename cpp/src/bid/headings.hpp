#pragma once
// Where the headings of a form stand and what its columns are. Internal to reading it.

#include "form_words.hpp"

namespace scupper::bid::detail {

/// The cell of a row; empty past its end.
const std::string& cell_at(const Sheet& sheet, std::size_t row, std::size_t column);
/// The place of a row.
Place place_of(const Sheet& sheet, std::size_t row);

/// The row of headings, from 0.
std::size_t header_row_of(const Sheet& sheet, const FormMapping& mapping);
/// What the columns are; what is doubtful is added to the read.
std::vector<ReadColumn> columns_of(const Sheet& sheet, const FormMapping& mapping,
                                   std::size_t header, SheetRead& read);

} // namespace scupper::bid::detail
