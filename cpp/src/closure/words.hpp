#pragma once
// Words that people give, whatever their case, blanks and punctuation. Internal to the closure.

#include <cstddef>
#include <span>
#include <string_view>

namespace scupper::closure::detail {

/// The place of a word among those known; throws UnknownNameError `closure.<name>` with the nearest.
std::size_t index_in(std::span<const std::string_view> words, std::string_view word,
                     const char* name);

} // namespace scupper::closure::detail
