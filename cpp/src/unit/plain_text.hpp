#pragma once
// One spelling for what people type in several.

#include <string>
#include <string_view>

namespace scupper::detail {

/// The text with raised digits, degree signs, fractions, minus signs and odd spaces written in
/// plain letters, and single spaces between words, none outside.
std::string plain_text(std::string_view text);

} // namespace scupper::detail
