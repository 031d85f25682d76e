#pragma once
// Philox4x32-10, a counter-based generator: a keyed bijection of 128-bit counters.

#include <array>
#include <cstdint>

namespace scupper {

using PhiloxCounter = std::array<std::uint32_t, 4>; ///< [-] four words, the least significant first
using PhiloxKey = std::array<std::uint32_t, 2>;     ///< [-] two words, the least significant first

namespace detail {

inline constexpr std::uint32_t kPhiloxMultiplier0 = 0xD2511F53; // Salmon et al. 2011, table 2
inline constexpr std::uint32_t kPhiloxMultiplier1 = 0xCD9E8D57; // Salmon et al. 2011, table 2
inline constexpr std::uint32_t kWeyl0 = 0x9E3779B9; // golden ratio, Salmon et al. 2011, sec. 4
inline constexpr std::uint32_t kWeyl1 = 0xBB67AE85; // sqrt(3) - 1, Salmon et al. 2011, sec. 4

constexpr std::uint32_t high_word(std::uint64_t x) {
    return static_cast<std::uint32_t>(x >> 32);
}
constexpr std::uint32_t low_word(std::uint64_t x) {
    return static_cast<std::uint32_t>(x);
}

constexpr PhiloxCounter philox_round(const PhiloxCounter& c, const PhiloxKey& k) {
    const std::uint64_t p0 = std::uint64_t{kPhiloxMultiplier0} * c[0];
    const std::uint64_t p1 = std::uint64_t{kPhiloxMultiplier1} * c[2];
    return {high_word(p1) ^ c[1] ^ k[0], low_word(p1), high_word(p0) ^ c[3] ^ k[1], low_word(p0)};
}

} // namespace detail

/// The four random words that belong to a counter under a key.
///
/// Formula: ten rounds of Philox4x32. In the header because it is called for every draw.
/// @param counter [-] any 128 bits, four words, the least significant first
/// @param key [-] any 64 bits, two words, the least significant first
/// @return [-] 128 bits, four words
/// Range: all counters and keys.
/// Errors: none.
/// Source: Salmon, Moraes, Dror, Shaw, "Parallel random numbers: as easy as 1, 2, 3", SC'11 (2011),
///         DOI 10.1145/2063384.2063405
/// Verified by: tests/cpp/random/test_philox.cpp
constexpr PhiloxCounter philox4x32_10(PhiloxCounter counter, PhiloxKey key) {
    constexpr int rounds = 10;
    for (int i = 0; i < rounds; ++i) {
        counter = detail::philox_round(counter, key);
        key = {key[0] + detail::kWeyl0, key[1] + detail::kWeyl1};
    }
    return counter;
}

} // namespace scupper
