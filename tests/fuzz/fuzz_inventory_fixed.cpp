// Any bytes after a record of the fixed form are an inventory; in pieces it says the same as whole.
#include "scupper/error.hpp"
#include "scupper/inventory.hpp"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

namespace {

using scupper::inventory::BlockReader;
using scupper::inventory::Inventory;

void require(bool holds) {
    if (!holds) {
        std::abort();
    }
}

/// What is counted of an inventory.
struct Counts {
    std::uint64_t rows = 0, structures = 0, rejected = 0, routes = 0, doubts = 0, blank = 0;

    void add(const Inventory& piece) {
        require(piece.rows == piece.structures.size() + piece.rejected.size() + piece.routes_under);
        rows += piece.rows;
        structures += piece.structures.size();
        rejected += piece.rejected.size();
        routes += piece.routes_under;
        doubts += piece.doubts.size();
        blank += piece.blank_lines;
    }
    bool operator==(const Counts&) const = default;
};

Counts read(std::string_view text, std::size_t block, std::size_t most) {
    BlockReader reader("input", most);
    Counts counts;
    for (std::size_t at = 0; at < text.size();) {
        at += reader.feed(text.substr(at, block));
        if (reader.full()) {
            counts.add(reader.take());
        }
    }
    reader.finish();
    counts.add(reader.take());
    return counts;
}

/// The first byte of the input tells how it is cut, the rest follows a record that makes it fixed.
void check(std::string_view input) {
    std::string text = "113" + std::string(15, '7') + "1" + std::string(413, '0') + "\n";
    const std::size_t cut = input.empty() ? 1 : static_cast<unsigned char>(input.front()) + 1U;
    text += input.substr(input.empty() ? 0 : 1);
    require(read(text, text.size(), SIZE_MAX) == read(text, cut, cut % 5 + 1));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    try {
        check({reinterpret_cast<const char*>(data), size});
    } catch (const scupper::Error& error) {
        require(!error.id().empty());
    }
    return 0;
}
