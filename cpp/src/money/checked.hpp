#pragma once
// Whole-number arithmetic that says when it leaves the range.

#include "scupper/error.hpp"

#include <array>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <string_view>

namespace scupper::detail {

inline constexpr std::int64_t largest = std::numeric_limits<std::int64_t>::max();

inline constexpr auto powers_of_ten = [] {
    std::array<std::int64_t, 19> powers{1};
    for (std::size_t i = 1; i < powers.size(); ++i) {
        powers[i] = powers[i - 1] * 10;
    }
    return powers;
}();

/// 10^n for 0 <= n <= 18.
constexpr std::int64_t ten_to(int n) {
    return powers_of_ten[static_cast<std::size_t>(n)];
}

/// The magnitude; the most negative whole number never gets here.
constexpr std::int64_t magnitude(std::int64_t a) {
    return a < 0 ? -a : a;
}

/// a + b, or nothing outside +-largest.
constexpr std::optional<std::int64_t> checked_sum(std::int64_t a, std::int64_t b) {
    const bool over = b > 0 ? a > largest - b : a < -largest - b;
    return over ? std::nullopt : std::optional(a + b);
}

/// a x b, or nothing outside +-largest.
constexpr std::optional<std::int64_t> checked_product(std::int64_t a, std::int64_t b) {
    const bool over = b != 0 && magnitude(a) > largest / magnitude(b);
    return over ? std::nullopt : std::optional(a * b);
}

/// a / divisor rounded to the nearest whole number, halves away from zero; divisor even or 1.
constexpr std::int64_t divide_half_away(std::int64_t a, std::int64_t divisor) {
    const std::int64_t rest = magnitude(a % divisor);
    const std::int64_t step = divisor > 1 && rest >= divisor / 2 ? 1 : 0;
    return a / divisor + (a < 0 ? -step : step);
}

[[noreturn]] inline void throw_overflow(std::string_view path, std::string found) {
    throw MoneyError({"money.overflow", std::string(path), std::move(found),
                      "amounts of at most 18 significant digits, decimals included"});
}

} // namespace scupper::detail
