// Any bytes are element records, or refused with an error of the family; a join accounts for each.
#include "scupper/error.hpp"
#include "scupper/inventory.hpp"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

namespace {

void require(bool holds) {
    if (!holds) {
        std::abort();
    }
}

void check(const scupper::inventory::ElementRecords& elements) {
    scupper::inventory::Inventory inventory;
    scupper::Structure s;
    s.state = "04";
    s.id = "00036";
    s.dimensions.length = scupper::Length<>(30.0);
    s.dimensions.deck_width = scupper::Length<>(10.0);
    inventory.structures.push_back(s);
    inventory.reindex();
    const auto join = scupper::inventory::join_elements(inventory, elements);
    require(join.matched + join.unmatched.size() == elements.records.size());
    for (const auto& rejected : elements.rejected) {
        require(rejected.line > 0 && !rejected.reason.empty());
    }
    for (const auto& given : inventory.structures.front().given) {
        require(given.value.guess.likely > 0.0);
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    try {
        check(scupper::inventory::read_elements_text(text, "input"));
    } catch (const scupper::Error& error) {
        require(!error.id().empty());
    }
    return 0;
}
