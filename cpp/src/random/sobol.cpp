#include "scupper/random/sobol.hpp"

#include "scupper/error.hpp"
#include "sobol_numbers.hpp"

#include <bit>
#include <string>

namespace scupper {

namespace {

using detail::sobol_numbers;
using detail::sobol_polynomials;

static_assert(sobol_polynomials.size() + 1 == sobol_dimensions,
              "the first dimension needs no numbers");

int degree_of(std::uint16_t polynomial) {
    return std::bit_width(polynomial) - 1;
}

/// Where the numbers of a dimension begin.
std::size_t first_number(std::size_t dimension) {
    std::size_t place = 0;
    for (std::size_t d = 1; d < dimension; ++d) {
        place += static_cast<std::size_t>(degree_of(sobol_polynomials[d - 1]));
    }
    return place;
}

/// v_{k-s} xor v_{k-s} 2^-s, and every v between that the polynomial names.
std::uint32_t next_direction(const std::array<std::uint32_t, 32>& v, int k, int s,
                             std::uint16_t polynomial) {
    const auto at = [&](int i) { return v[static_cast<std::size_t>(i)]; };
    std::uint32_t next = at(k - s) ^ (at(k - s) >> s);
    for (int i = 1; i < s; ++i) {
        next ^= (polynomial >> (s - i) & 1) != 0 ? at(k - i) : 0;
    }
    return next;
}

} // namespace

SobolCoordinate::SobolCoordinate(std::size_t dimension) {
    if (dimension >= sobol_dimensions) {
        throw InputError({"random.dimension", "dimension", std::to_string(dimension),
                          "0 to " + std::to_string(sobol_dimensions - 1)});
    }
    const std::uint16_t polynomial = dimension == 0 ? 1 : sobol_polynomials[dimension - 1];
    const int s = dimension == 0 ? 32 : degree_of(polynomial);
    std::size_t number = first_number(dimension);
    for (int k = 0; k < 32; ++k) {
        std::uint32_t m = 1;
        if (k < s && dimension > 0) {
            m = sobol_numbers[number++];
        }
        directions_[static_cast<std::size_t>(k)] =
            k < s ? m << (31 - k) : next_direction(directions_, k, s, polynomial);
    }
}

ScrambledSobol::ScrambledSobol(const DrawKey& key, std::size_t dimension, std::uint64_t draws)
    : coordinate_(dimension), root_(combine(key.seed, combine(key.stream, key.input))),
      draws_(draws), places_(static_cast<int>(std::bit_width(draws)) - 1) {
    if (!std::has_single_bit(draws) || places_ > 32) {
        throw InputError(
            {"random.count", "draws", std::to_string(draws), "a power of two, 1 to 2^32"});
    }
}

double ScrambledSobol::operator()(std::uint64_t draw) const {
    if (draw >= draws_) {
        throw InputError({"random.draw", "draw", std::to_string(draw),
                          "0 to " + std::to_string(draws_ - 1) + " of these points"});
    }
    const std::uint64_t x = coordinate_(draw);
    std::uint64_t node = 1; // a leading one, then the places so far: another one for every part
    std::uint64_t turned = 0;
    for (int k = 1; k <= places_; ++k) {
        const std::uint64_t place = x >> (32 - k) & 1;
        turned = turned << 1 | (place ^ (combine(root_, node) >> 63));
        node = node << 1 | place;
    }
    const std::uint64_t rest = combine(root_, node) & (~std::uint64_t{0} >> places_);
    const std::uint64_t bits = places_ == 0 ? rest : turned << (64 - places_) | rest;
    return detail::open_unit(bits);
}

void ScrambledSobol::fill(std::uint64_t first, std::span<double> out) const {
    for (std::size_t i = 0; i < out.size(); ++i) {
        out[i] = (*this)(first + i);
    }
}

} // namespace scupper
