#pragma once
// Structures on their way into an inventory of the project's own forms.

#include "scupper/inventory.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_map>

namespace scupper::json::detail {

/// Gathers structures, tells what cannot be in them, and keeps second ones out.
class StructureList {
  public:
    explicit StructureList(std::string_view name);

    /// Counts a row; adds its structure unless one of the same state and number is there.
    void add(Structure structure);
    /// Counts a row that is no structure.
    void reject(const Structure& structure, std::string_view found, std::string_view reason);
    /// A field in doubt.
    void doubt(const Structure& structure, std::string_view column, std::string_view found,
               std::string_view reason, bool kept = false);
    /// The inventory; the list is empty afterwards.
    inventory::Inventory take();

  private:
    void take_out_faults(Structure& structure);

    inventory::Inventory inventory_;
    std::unordered_map<std::string, std::uint64_t> first_; ///< key to line
};

} // namespace scupper::json::detail
