#pragma once
// Words of a job against the words that are known. Internal to the job.

#include <span>
#include <string>
#include <string_view>

namespace scupper::detail {

using Words = std::span<const std::string_view>;

/// Refuses a word that is not known, naming the nearest known one.
void require_word(Words words, const std::string& word, const std::string& path,
                  std::string_view also = {});

} // namespace scupper::detail
