#pragma once
// Where the fields of a delimited row start: the part of reading that sees every byte.

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

namespace scupper::inventory::detail {

/// This many bytes after a row must be readable, whatever they are: rows are read by blocks.
inline constexpr std::size_t padding = 64;

/// What was found in a row.
struct Starts {
    std::vector<std::uint32_t> fields; ///< byte where each field starts; the rest is of no use
    std::vector<std::uint32_t> texts;  ///< the fields that begin with a quotation sign
    bool plain = false; ///< whether all is ASCII, with no &, and quotation signs only around texts
};

/// Finds the commas of a row and gives their number; a comma within a text counts like any other.
std::size_t find_commas(std::string_view row, Starts& starts);

} // namespace scupper::inventory::detail
