#pragma once
// Which structures bear a structure number. Internal to the inventory.

#include "scupper/structure.hpp"

#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace scupper::inventory::detail {

/// Open-addressed table from structure number to positions in a list of structures; the same
/// number may stand in several states. A stale entry can never answer wrongly: every hit is
/// compared with the structure itself.
class IdIndex {
  public:
    /// How many structures have been added [-].
    std::size_t size() const noexcept { return size_; }
    /// Makes room beforehand for so many structures.
    void reserve(std::size_t structures);
    /// Has the memory fetched in which that number is looked up next.
    void prefetch(std::string_view id) const;
    /// Adds the structure at `position` under its number.
    void add(std::string_view id, std::uint32_t position);
    /// The positions of all structures with that number, ascending [-, n].
    std::vector<std::uint32_t> find(std::string_view id,
                                    std::span<const Structure> structures) const;
    /// Where a structure of that state and number stands, or `none` [-].
    std::uint32_t find(std::string_view state, std::string_view id,
                       std::span<const Structure> structures) const;

    static constexpr std::uint32_t none = UINT32_MAX;

  private:
    struct Slot {
        std::uint32_t hash = 0;
        std::uint32_t position = none;
    };
    template <class Visit>
    void each(std::string_view id, Visit&& visit) const;
    void place(Slot slot);
    void grow(std::size_t slots);

    std::vector<Slot> slots_;
    std::size_t size_ = 0;
};

} // namespace scupper::inventory::detail
