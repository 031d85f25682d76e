#pragma once
// What is being read, and how it fails.

#include "scupper/quantity/dimension.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace scupper::detail {

/// The text being read, the input it stands in and, where known, the dimension that is due.
struct Context {
    std::string_view text;
    std::string_view path;
    std::optional<Dimension> expected;

    /// Throws UnitError; `advice` (may be empty) stands before the example of the dimension due.
    [[noreturn]] void fail(std::string_view word, std::string_view found,
                           std::string_view advice) const;
};

/// A text between double quotes.
std::string quoted(std::string_view text);

} // namespace scupper::detail
