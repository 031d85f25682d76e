#include "catch.hpp"
#include "rows.hpp"
#include "scupper/random/hash.hpp"

#include <bit>
#include <set>

using namespace scupper;

namespace {

std::uint64_t hexadecimal(const std::string& text) {
    return std::stoull(text, nullptr, 16);
}

} // namespace

TEST_CASE("FNV-1a gives the published values", "[random]") {
    for (const auto& row : rows_of("generator.csv", "fnv1a_64")) {
        INFO(row.id);
        CHECK(fnv1a_64(row.inputs.at("text").get<std::string>()) == hexadecimal(row.value));
    }
}

TEST_CASE("The mixer is the finaliser of SplitMix64", "[random]") {
    for (const auto& row : rows_of("generator.csv", "mix64")) {
        INFO(row.id);
        const auto seed = row.inputs.at("seed").get<std::uint64_t>();
        const auto step = row.inputs.at("step").get<std::uint64_t>();
        CHECK(mix64(seed + step * 0x9E3779B97F4A7C15) == hexadecimal(row.value));
    }
}

TEST_CASE("One changed letter changes about half the bits of a hash", "[random]") {
    int changed = 0;
    constexpr int pairs = 500;
    for (int i = 0; i < pairs; ++i) {
        const std::string name = "structure " + std::to_string(i);
        std::string other = name;
        other.back() ^= 1;
        changed += std::popcount(hash_text(name) ^ hash_text(other));
    }
    // 32 of 64 bits, standard error 4 / sqrt(pairs) = 0.18
    CHECK(changed / static_cast<double>(pairs) == Approx(32.0).margin(1.0));
}

TEST_CASE("Combining keeps the order and does not collide for small numbers", "[random]") {
    CHECK(combine(1, 2) != combine(2, 1));
    std::set<std::uint64_t> seen;
    for (std::uint64_t a = 0; a < 300; ++a) {
        for (std::uint64_t b = 0; b < 300; ++b) {
            seen.insert(combine(a, b));
        }
    }
    CHECK(seen.size() == 300 * 300);
}
