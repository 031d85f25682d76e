#include "scupper/random/sampling.hpp"

#include "scupper/error.hpp"
#include "scupper/random/wide.hpp"

#include <array>
#include <bit>
#include <string>

namespace scupper {

void Sampler::refuse(std::uint64_t draw) const {
    throw InputError(
        {"random.draw", "draw", std::to_string(draw),
         "0 to " + std::to_string(permutation_.size() - 1) + " of this Latin hypercube"});
}

namespace {

constexpr std::size_t draws_at_once = 128;

/// The draws of consecutive counters, two of each, as `detail::half_of` gives them: the upper 52
/// bits beside an exponent are a number from 1 on without a conversion.
SCUPPER_WIDE void fill_pairs(std::uint64_t seed, std::uint64_t place, std::uint64_t first,
                             std::span<double> out) {
    constexpr std::uint64_t exponent_of_one = std::bit_cast<std::uint64_t>(1.0);
    const auto number = [](std::uint32_t high, std::uint32_t low) {
        const std::uint64_t bits = (std::uint64_t{high} << 32 | low) >> 12;
        return std::bit_cast<double>(bits | exponent_of_one) - 1.0 + 0x1p-53;
    };
    for (std::size_t i = 0; i < out.size() / 2; ++i) {
        const PhiloxCounter words = detail::draw_words(seed, place, first + i);
        out[2 * i] = number(words[0], words[1]);
        out[2 * i + 1] = number(words[2], words[3]);
    }
}

void fill_uniform(std::uint64_t seed, std::uint64_t place, std::uint64_t first,
                  std::span<double> out) {
    if (first % 2 == 1 && !out.empty()) {
        out.front() = detail::uniform(seed, place, first++);
        out = out.subspan(1);
    }
    fill_pairs(seed, place, first / 2, out);
    if (out.size() % 2 == 1) {
        out.back() = detail::uniform(seed, place, first + out.size() - 1);
    }
}

/// Places numbers in their strata. A stratum is below 2^52, so that it is a number beside an
/// exponent.
SCUPPER_WIDE void place_each(const std::uint64_t* stratum, double size, std::span<double> out) {
    constexpr double bias = 0x1p52;
    for (std::size_t i = 0; i < out.size(); ++i) {
        const double from =
            std::bit_cast<double>(stratum[i] | std::bit_cast<std::uint64_t>(bias)) - bias;
        out[i] = detail::in_stratum(from, out[i], size);
    }
}

} // namespace

void Sampler::fill(std::uint64_t first, std::span<double> out) const {
    fill_uniform(seed_, place_, first, out);
    if (sampling_ == Sampling::plain || out.empty()) {
        return;
    }
    if (first + out.size() > permutation_.size()) {
        refuse(first + out.size() - 1);
    }
    std::array<std::uint64_t, draws_at_once> strata;
    for (std::size_t i = 0; i < out.size(); i += draws_at_once) {
        const std::size_t count = std::min(draws_at_once, out.size() - i);
        permutation_.fill(first + i, {strata.data(), count});
        place_each(strata.data(), static_cast<double>(permutation_.size()), out.subspan(i, count));
    }
}

double latin_hypercube(const DrawKey& key, std::uint64_t draw, std::uint64_t draws) {
    return Sampler(Sampling::latin_hypercube, key, draws)(draw);
}

} // namespace scupper
