// Any bytes as JSON records of the specification of 2022: read with every record accounted for, or
// refused with an error of the family; blocks cut anywhere give the same.
#include "scupper/error.hpp"
#include "scupper/inventory.hpp"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

namespace {

using scupper::inventory::Inventory;

void require(bool holds) {
    if (!holds) {
        std::abort();
    }
}

void check(const Inventory& inventory) {
    require(inventory.rows ==
            inventory.structures.size() + inventory.rejected.size() + inventory.routes_under);
    for (const auto& structure : inventory.structures) {
        require(!structure.id.empty() && structure.line > 0);
        for (const auto& fault : scupper::inventory::faults_of(structure)) {
            require(fault.contradiction);
        }
    }
    for (const auto& rejected : inventory.rejected) {
        require(rejected.line > 0 && !rejected.reason.empty());
    }
}

Inventory in_pieces(std::string_view text, std::size_t step) {
    scupper::inventory::BlockReader reader("input");
    for (std::size_t at = 0; at < text.size();) {
        at += reader.feed(text.substr(at, step));
    }
    reader.finish();
    return reader.take();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    // What begins otherwise is another form's.
    const std::string text = "[" + std::string(reinterpret_cast<const char*>(data), size);
    try {
        const Inventory whole = scupper::inventory::read_inventory_text(text, "input");
        check(whole);
        const Inventory pieces = in_pieces(text, 3);
        require(pieces.rows == whole.rows && pieces.doubts.size() == whole.doubts.size());
        const Inventory objects =
            scupper::inventory::read_inventory_text(std::string_view(text).substr(1), "input");
        check(objects);
    } catch (const scupper::Error& error) {
        require(!error.id().empty());
    }
    return 0;
}
