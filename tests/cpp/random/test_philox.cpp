#include "catch.hpp"
#include "rows.hpp"
#include "scupper/random/philox.hpp"

#include <set>
#include <sstream>

namespace {

template <std::size_t N>
std::array<std::uint32_t, N> words_of(const std::string& text) {
    std::istringstream in(text);
    std::array<std::uint32_t, N> words{};
    for (auto& word : words) {
        in >> std::hex >> word;
    }
    return words;
}

} // namespace

TEST_CASE("Philox4x32-10 gives the published known answers", "[random]") {
    for (const auto& row : rows_of("generator.csv", "philox4x32_10")) {
        INFO(row.id);
        const auto counter = words_of<4>(row.inputs.at("counter"));
        const auto key = words_of<2>(row.inputs.at("key"));
        CHECK(scupper::philox4x32_10(counter, key) == words_of<4>(row.value));
    }
}

TEST_CASE("Philox sends different counters to different words", "[random]") {
    std::set<scupper::PhiloxCounter> seen;
    for (std::uint32_t i = 0; i < 1000; ++i) {
        seen.insert(scupper::philox4x32_10({i, 0, 0, 0}, {7, 8}));
        seen.insert(scupper::philox4x32_10({0, 0, 0, i + 1}, {7, 8}));
    }
    CHECK(seen.size() == 2000);
}
