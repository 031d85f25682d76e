// Any bytes are an inventory, or refused with an error of the family; every row is accounted for.
// Lines are counted from 1; what begins as JSON is read as records, counted from 1 too.
#include "scupper/error.hpp"
#include "scupper/inventory.hpp"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

namespace {

void require(bool holds) {
    if (!holds) {
        std::abort();
    }
}

void check(const scupper::inventory::Inventory& inventory) {
    require(inventory.rows ==
            inventory.structures.size() + inventory.rejected.size() + inventory.routes_under);
    for (const auto& doubt : inventory.doubts) {
        require(doubt.line > 0 && !doubt.column.empty() && !doubt.reason.empty());
        require(!where(inventory, doubt).empty());
    }
    for (const auto& rejected : inventory.rejected) {
        require(rejected.line > 0 && !rejected.reason.empty());
    }
    for (const auto& structure : inventory.structures) {
        require(inventory.find(structure_key(structure)) != nullptr);
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    try {
        check(scupper::inventory::read_inventory_text(text, "input"));
    } catch (const scupper::Error& error) {
        require(!error.id().empty());
    }
    return 0;
}
