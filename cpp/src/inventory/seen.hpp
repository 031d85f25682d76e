#pragma once
// Which structures stood in pieces that were handed over already.

#include "scupper/inventory/inventory.hpp"

#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace scupper::inventory::detail {

/// Remembers structures by 64 bits of their state and number: 24 bytes each, whatever they hold.
class Seen {
  public:
    /// What is known of a structure.
    struct Entry {
        std::uint64_t key = 0;  ///< 0: none
        std::uint64_t row = 0;  ///< what tells its row from others
        std::uint64_t line = 0; ///< where it stood
    };

    /// Remembers the structures of a piece; `rows` tells theirs apart.
    void add(std::span<const Structure> structures, std::span<const std::uint64_t> rows);
    /// What is known of a structure; null where nothing is.
    const Entry* find(std::string_view state, std::string_view id) const;

  private:
    std::size_t slot_of(std::uint64_t key) const;
    void grow();

    std::vector<Entry> slots_;
    std::size_t size_ = 0;
};

} // namespace scupper::inventory::detail
