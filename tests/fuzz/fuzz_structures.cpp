// A list or a table of measured structures of any bytes is read, or refused with an error of the
// family; what is read is within bounds and is written and read back alike.
#include "scupper/error.hpp"
#include "scupper/inventory.hpp"
#include "scupper/json.hpp"

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
    require(inventory.rows == inventory.structures.size() + inventory.rejected.size());
    for (const auto& structure : inventory.structures) {
        for (const auto& fault : scupper::inventory::faults_of(structure)) {
            require(fault.contradiction);
        }
    }
    const std::string once = scupper::json::write_structures(inventory.structures);
    const auto again = scupper::json::read_structures(once, "again");
    require(scupper::json::write_structures(again.structures) == once);
}

template <class Read>
void attempt(Read read, std::string_view text) {
    try {
        check(read(text, "input"));
    } catch (const scupper::Error& error) {
        require(!error.id().empty());
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    attempt(scupper::json::read_structures, text);
    attempt(scupper::json::read_structure_csv, text);
    return 0;
}
