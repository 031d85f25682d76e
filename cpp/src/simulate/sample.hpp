#pragma once
// Moments and quantiles of a sample of draws. Internal to the part.

#include "scupper/estimate/draws.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <span>

namespace scupper::simulate::detail {

/// The mean, taken about the first draw: of draws that are all the same it is their value.
inline double mean_of_draws(std::span<const double> draws) {
    double sum = 0.0;
    for (const double x : draws) {
        sum += x - draws.front();
    }
    return draws.front() + sum / static_cast<double>(draws.size());
}

/// The standard deviation; NaN of a single draw.
inline double sd_of_draws(std::span<const double> draws) {
    const double mean = mean_of_draws(draws);
    double sum = 0.0;
    for (const double x : draws) {
        sum += (x - mean) * (x - mean);
    }
    return std::sqrt(sum / (static_cast<double>(draws.size()) - 1.0));
}

/// As `estimate::sorted_quantile` of the sorted draws, for rising levels; puts the draws in another
/// order, which takes less time than sorting them.
inline void quantiles_of_draws(std::span<double> draws, std::span<const double> levels,
                               std::span<double> out) {
    auto rest = draws.begin();
    for (std::size_t k = 0; k < levels.size(); ++k) {
        const double position = estimate::quantile_position(levels[k], draws.size());
        const auto below = static_cast<std::size_t>(position);
        const auto at = draws.begin() + static_cast<std::ptrdiff_t>(below);
        std::nth_element(rest, at, draws.end());
        const double above = at + 1 == draws.end() ? *at : *std::min_element(at + 1, draws.end());
        out[k] = *at + (position - static_cast<double>(below)) * (above - *at);
        rest = at;
    }
}

} // namespace scupper::simulate::detail
