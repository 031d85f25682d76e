#pragma once
// How bid forms are to be read, as a document.

#include "scupper/bid/read_form.hpp"

#include <array>
#include <string_view>

namespace scupper::json {

inline constexpr std::array<std::string_view, 8> form_mapping_keys{
    "scupper_form", "header_row", "columns",     "bidders",
    "bidder",       "engineer",   "total_words", "currency"}; ///< [text] of a mapping

/// Reads how bid forms are to be read.
///
/// @param text [text] a JSON document with `scupper_form`; `columns` names headings or letters by
/// role, `bidders` those of each bidder of a tabulation
/// @param name [text] what to call the document in errors
/// @return [-] the mapping
/// Range: UTF-8; what is left out is guessed.
/// Errors: FileError `json.text` where it is no JSON; UnknownNameError `json.key` with the nearest;
/// InputError `json.type`, `json.version`. Where the document has lines, the path says the line.
/// Source: own convention
/// Verified by: tests/cpp/bid/test_read_form.cpp
bid::FormMapping read_form_mapping(std::string_view text, std::string_view name);

} // namespace scupper::json
