#pragma once
// Rows into fields, without copying.

#include <cstddef>
#include <span>
#include <string_view>
#include <vector>

namespace scupper::inventory::detail {

/// No record is longer [byte]: the published ones stay below 1,000. Bounds the work on a line that
/// is none.
inline constexpr std::size_t longest_row = 16384;

/// Cuts rows into fields; keeps the room for the positions of the commas from row to row.
class Splitter {
  public:
    /// Splits a row at its commas. A field that begins with ' or " ends at the next such sign
    /// before a comma or the end of the row, so that an apostrophe inside the text does no harm.
    /// Gives the number of fields; those beyond the room in `fields` are counted only.
    std::size_t split(std::string_view row, std::span<std::string_view> fields);

  private:
    std::size_t find_commas(std::string_view row);
    /// The common case, in which no comma stands within a text; false where one does.
    bool every_comma_divides(std::string_view row, std::span<std::string_view> fields) const;

    std::vector<std::size_t> commas_;
};

/// Splits a row that a Splitter cut into another number of fields than there is room for, where
/// quotes explain it: a sign before a comma that is part of a text, or a text without its closing
/// sign. False where they do not: then merging texts to mend the number would shift every value,
/// and what stands in the fields is of no use.
bool resplit_row(std::string_view row, std::span<std::string_view> fields);

} // namespace scupper::inventory::detail
