#pragma once
// Keyed draws: a uniform number that follows from (seed, stream, input, draw) and nothing else.

#include "scupper/random/hash.hpp"
#include "scupper/random/philox.hpp"

#include <cstddef>
#include <cstdint>

namespace scupper {

/// What a draw belongs to.
struct DrawKey {
    std::uint64_t seed = 0;   ///< [-] of the whole run
    std::uint64_t stream = 0; ///< [-] hash of the structure, or of what all structures share
    std::uint64_t input = 0;  ///< [-] hash of the uncertain input
};

namespace detail {

/// Odd multiples of 2^-53 are exact, symmetrical about 1/2, and never 0 or 1.
constexpr double open_unit(std::uint64_t bits) {
    return static_cast<double>((bits >> 11) | 1) * 0x1p-53;
}

/// The draws 2 i and 2 i + 1 of a place share the four words of counter i. The seed is the key; the
/// counter holds i and, above it, the place the draws belong to.
constexpr PhiloxCounter draw_words(std::uint64_t seed, std::uint64_t place, std::uint64_t i) {
    return philox4x32_10({low_word(i), high_word(i), low_word(place), high_word(place)},
                         {low_word(seed), high_word(seed)});
}

/// The first (half 0) or second (half 1) number of four words.
constexpr double half_of(const PhiloxCounter& words, std::size_t half) {
    return open_unit(std::uint64_t{words[2 * half]} << 32 | words[2 * half + 1]);
}

constexpr double uniform(std::uint64_t seed, std::uint64_t place, std::uint64_t draw) {
    return half_of(draw_words(seed, place, draw / 2), draw % 2);
}

} // namespace detail

/// The uniform number of a draw.
///
/// Formula: u = (2 k + 1) 2^-53 with k the upper 52 bits of the first (draw even) or second (odd)
///          half of Philox4x32-10 under the key `seed`, at the counter (floor(draw / 2),
///          combine(stream, input))
/// In the header because it is called for every draw of every input.
/// @param key [-] seed, stream and input the draw belongs to
/// @param draw [-] number of the draw
/// @return [-] in the open interval (0, 1), at least 2^-53 away from both ends
/// Range: all keys and draws.
/// Errors: none.
/// Source: definition over Salmon et al. 2011, DOI 10.1145/2063384.2063405
/// Verified by: tests/cpp/random/test_key.cpp
constexpr double uniform(const DrawKey& key, std::uint64_t draw) {
    return detail::uniform(key.seed, combine(key.stream, key.input), draw);
}

} // namespace scupper
