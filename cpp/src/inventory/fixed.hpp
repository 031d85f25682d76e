#pragma once
// Records of the fixed form: no header, every column at a place of its own.
//
// Source: FHWA-PD-96-001 (1995), record format: 432 characters; a later page has 445.

#include "columns.hpp"
#include "split.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace scupper::inventory::detail {

inline constexpr std::size_t fixed_record = 432;
inline constexpr std::size_t longest_fixed_record = 445;
/// Item 116 ends here; what follows is for headquarters and may be left off [character].
inline constexpr std::size_t shortest_fixed_record = 389;

/// Whether a line is a record of the fixed form: its length, digits of a state, a record type.
bool looks_fixed(std::string_view line);

/// Cuts records of the fixed form into fields.
class FixedCutter {
  public:
    FixedCutter();
    /// How many characters a row has: of UTF-8 where that is what makes it a record, else bytes.
    static std::size_t length(std::string_view row);
    /// The fields of a row; those past its end are empty.
    Fields cut(std::string_view row);

  private:
    using Places = std::array<std::uint32_t, column_count + 1>; // and one for those it lacks

    void place_in_bytes(std::string_view row);

    Places begins_{}; ///< by the guide
    Places ends_{};
    Places moved_begins_{}; ///< in a row where characters and bytes differ
    Places moved_ends_{};
};

} // namespace scupper::inventory::detail
