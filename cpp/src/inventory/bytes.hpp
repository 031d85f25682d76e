#pragma once
// Eight bytes at a time: what makes reading fast. Little-endian order throughout, so
// that the first byte of a text is the lowest of a word.

#include <bit>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <string_view>

namespace scupper::inventory::detail {

/// A byte eight times over.
constexpr std::uint64_t eight_of(char c) {
    return 0x0101010101010101ULL * static_cast<unsigned char>(c);
}

/// The high bit of every byte of the word that equals the byte.
constexpr std::uint64_t marks_of(std::uint64_t word, char c) {
    constexpr std::uint64_t low_bits = 0x7f7f7f7f7f7f7f7fULL;
    word ^= eight_of(c); // a byte is now zero where it was equal
    return ~(((word & low_bits) + low_bits) | word | low_bits);
}

/// How many bits are set; std::popcount would be a call on an x86-64 of the first kind.
constexpr std::size_t count_bits(std::uint64_t bits) {
    bits -= (bits >> 1U) & 0x5555555555555555ULL;
    bits = (bits & 0x3333333333333333ULL) + ((bits >> 2U) & 0x3333333333333333ULL);
    bits = (bits + (bits >> 4U)) & 0x0f0f0f0f0f0f0f0fULL;
    return static_cast<std::size_t>((bits * 0x0101010101010101ULL) >> 56U);
}

/// The first eight bytes of a text; zeros stand for those past its end.
inline std::uint64_t word_of(const char* bytes, std::size_t length = 8) {
    std::uint64_t word = 0;
    if (length >= 8) {
        std::memcpy(&word, bytes, 8);
    } else {
        std::memcpy(&word, bytes, length);
    }
    if constexpr (std::endian::native == std::endian::big) {
        std::uint64_t turned = 0;
        for (unsigned i = 0; i < 64; i += 8) {
            turned = (turned << 8U) | ((word >> i) & 0xffU);
        }
        word = turned;
    }
    return word;
}

/// Whether a byte of the word equals the byte.
constexpr bool any_is(std::uint64_t word, char c) {
    word ^= eight_of(c);
    return ((word - eight_of(1)) & ~word & eight_of(static_cast<char>(0x80))) != 0;
}

/// Eight digits, the first in the lowest byte, as a number: neighbours are joined three times.
inline std::uint32_t joined_digits(std::uint64_t digits) {
    constexpr std::uint64_t pairs = 0x00ff00ff00ff00ffULL;
    constexpr std::uint64_t fours = 0x0000ffff0000ffffULL;
    digits = (digits * 10 + (digits >> 8U)) & pairs;
    digits = (digits * 100 + (digits >> 16U)) & fours;
    return static_cast<std::uint32_t>(digits * 10000 + (digits >> 32U));
}

/// Whether a byte of the word is above nine.
inline bool any_above_nine(std::uint64_t word) {
    return (((word + eight_of(0x76)) | word) & eight_of(static_cast<char>(0x80))) != 0;
}

/// The value of each sign of a field of 1 to 8 bytes, as if it were a digit: the last sign in the
/// highest byte, zeros below the first. Eight bytes from `bytes` on must be readable.
inline std::uint64_t digit_word(const char* bytes, std::size_t length) {
    const std::size_t shift = 8 * (8 - length);
    return (word_of(bytes) ^ eight_of('0')) << shift;
}

/// Digits with or without a point: the numbers of an inventory.
struct PlainNumber {
    std::uint32_t digits = 0; ///< the number without its point
    unsigned decimals = 0;
    bool valid = false; ///< false: it may be a number all the same, written in another way
};

/// The number in a field of 1 to 8 bytes; `implied` decimals where it has no point. Without a branch
/// on the point, which cannot be foreseen.
inline PlainNumber plain_number(const char* bytes, std::size_t length, unsigned implied) {
    const std::uint64_t word = digit_word(bytes, length);
    const std::uint64_t points = marks_of(word, '.' ^ '0');
    const bool pointed = points != 0;
    const std::uint64_t point = points & (~points + 1);  // the first, were there several
    const std::uint64_t before = (point >> 7U) - 1;      // the bytes before it; all without one
    const std::uint64_t after = ~(before << 8U | 0xffU); // and those after it
    const std::uint64_t digits = (word & before) << (pointed ? 8U : 0U) | (word & after);
    const auto decimals = static_cast<unsigned>(std::countl_zero(point | 1U)) / 8;
    return {joined_digits(digits), pointed ? decimals : implied,
            !any_above_nine(digits) && (!pointed || length > 1)};
}

/// A number that tells texts apart, but for a chance of about 2^-64.
inline std::uint64_t text_hash(std::string_view text) {
    constexpr std::uint64_t golden = 0x9e3779b97f4a7c15ULL; // 2^64 over the golden ratio, odd
    constexpr std::uint64_t other = 0xc2b2ae3d27d4eb4fULL;  // odd and without a pattern
    std::uint64_t one = text.size(); // two chains, so that neither waits for the other
    std::uint64_t two = other;
    std::size_t at = 0;
    for (; at + 32 <= text.size(); at += 32) {
        const char* const bytes = text.data() + at;
        one = std::rotl((one ^ word_of(bytes)) * golden, 29) + word_of(bytes + 8);
        two = std::rotl((two ^ word_of(bytes + 16)) * other, 31) + word_of(bytes + 24);
    }
    for (; at < text.size(); at += 8) {
        one = std::rotl((one ^ word_of(text.data() + at, text.size() - at)) * golden, 29);
    }
    std::uint64_t hash = (one ^ (two >> 32U) ^ two * golden) * golden;
    hash = (hash ^ (hash >> 32U)) * other;
    return hash ^ (hash >> 29U);
}

} // namespace scupper::inventory::detail
