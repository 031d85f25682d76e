#pragma once
// 64-bit hashes that are the same on every machine and in every release: they key the draws.

#include <cstdint>
#include <string_view>

namespace scupper {

namespace detail {
inline constexpr std::uint64_t kGolden64 = 0x9E3779B97F4A7C15; // 2^64 / golden ratio, made odd
}

/// A number whose every bit depends on every bit of the argument (a bijection).
///
/// Formula: the finaliser of SplitMix64: two rounds of xor-shift and odd multiplication, one shift
/// @param x [-] any 64 bits
/// @return [-] 64 bits
/// Range: all; mix64(0) = 0.
/// Errors: none.
/// Source: Steele, Lea, Flood, "Fast splittable pseudorandom number generators", OOPSLA (2014),
///         DOI 10.1145/2660193.2660195, mix64 with the constants of variant 13
/// Verified by: tests/cpp/random/test_hash.cpp
constexpr std::uint64_t mix64(std::uint64_t x) {
    x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9;
    x = (x ^ (x >> 27)) * 0x94D049BB133111EB;
    return x ^ (x >> 31);
}

/// The 64-bit FNV-1a hash of a text's bytes.
///
/// Formula: h = 0xcbf29ce484222325; for every byte h = (h xor byte) 0x100000001b3 mod 2^64
/// @param text [text] any bytes
/// @return [-] 64 bits
/// Range: all; not for secrets.
/// Errors: none.
/// Source: RFC 9923, "The FNV Non-Cryptographic Hash Algorithm"
/// Verified by: tests/cpp/random/test_hash.cpp
constexpr std::uint64_t fnv1a_64(std::string_view text) {
    std::uint64_t hash = 0xCBF29CE484222325;
    for (const char c : text) {
        hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001B3;
    }
    return hash;
}

/// The stable hash of a text that keys draws: state and structure number, name of an input.
///
/// Formula: mix64(fnv1a_64(text)). The mixer repairs the weak high bits of short texts.
/// @param text [text] any bytes
/// @return [-] 64 bits
/// Range: all.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/random/test_hash.cpp
constexpr std::uint64_t hash_text(std::string_view text) {
    return mix64(fnv1a_64(text));
}

/// One hash of two, in their order: combine(a, b) and combine(b, a) differ.
///
/// Formula: mix64(first 0x9e3779b97f4a7c15 + second mod 2^64)
/// @param first [-] 64 bits: a hash or a small number
/// @param second [-] 64 bits: a hash or a small number
/// @return [-] 64 bits
/// Range: among m pairs two are expected to meet with chance m^2 / 2^65 (1e8 pairs: 0.03 %).
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/random/test_hash.cpp
constexpr std::uint64_t combine(std::uint64_t first, std::uint64_t second) {
    return mix64(first * detail::kGolden64 + second);
}

} // namespace scupper
