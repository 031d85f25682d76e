#pragma once
// Rows into fields, without copying.

#include "commas.hpp"

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace scupper::inventory::detail {

/// No record is longer [byte]: the published ones stay below 1,000. Bounds the work on a line that
/// is none.
inline constexpr std::size_t longest_row = 16384;

inline bool is_quote(char c) {
    return c == '\'' || c == '"';
}

/// A field of the delimited form without the signs it is quoted by.
inline std::string_view unquoted(std::string_view field) {
    if (field.empty() || !is_quote(field.front())) {
        return field;
    }
    const char quote = field.front();
    field.remove_prefix(1);
    if (!field.empty() && field.back() == quote) {
        field.remove_suffix(1);
    }
    return field;
}

/// The fields of a row by their place in it. They stand until the row or what cut it changes.
struct Fields {
    const char* row = nullptr;
    const std::uint32_t* begins = nullptr; ///< first byte of each field
    const std::uint32_t* ends = nullptr;   ///< the byte after each field, and `gap` more
    std::uint32_t gap = 0;
    bool quoted = false; ///< whether texts stand in quotes
    bool plain = false;  ///< whether no text has anything to decode

    const char* begin(std::size_t i) const { return row + begins[i]; }
    /// How long a field is, quotes and all [byte].
    std::size_t length(std::size_t i) const { return ends[i] - gap - begins[i]; }
    /// A field as it stands in the file, quotes and all.
    std::string_view at(std::size_t i) const { return {begin(i), length(i)}; }
};

/// Cuts rows of the delimited form into fields; keeps the room for their places from row to row.
class Splitter {
  public:
    /// Splits a row at its commas and gives the number of fields. A field that begins with ' or "
    /// ends at the next such sign before a comma or the end of the row, so that an apostrophe
    /// inside the text does no harm. `wanted` fields are the common case. There must be `padding`
    /// after the row.
    std::size_t split(std::string_view row, std::size_t wanted);

    /// Splits a row that `split` cut into another number of fields than wanted, where quotes
    /// explain it: a sign before a comma that is part of a text, or a text without its closing
    /// sign. False where they do not: then merging texts to mend the number would shift every
    /// value, and what stands in the fields is of no use.
    bool resplit(std::string_view row, std::size_t wanted);

    /// The fields of the row that was split last.
    Fields fields(std::string_view row) const {
        return {row.data(), starts_.fields.data(), starts_.fields.data() + 1, 1,
                true,       starts_.plain};
    }

  private:
    void close(std::string_view row, std::size_t count);
    bool texts_are_whole(std::string_view row) const;
    std::size_t split_at_quotes(std::string_view row, std::size_t commas);
    template <class End>
    std::size_t split_by(std::string_view row, End end_of_field);

    Starts starts_; ///< of the fields; then where two more would start
};

} // namespace scupper::inventory::detail
