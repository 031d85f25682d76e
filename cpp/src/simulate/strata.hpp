#pragma once
// Equally probable values of an input, and variances over them. Internal to the part.

#include "scupper/estimate/draws.hpp"
#include "scupper/uncertain.hpp"

#include <cstddef>
#include <span>

namespace scupper::simulate::detail {

/// Strata of an input, of what is a structure's own of it, and of what structures share.
inline constexpr std::size_t strata = 16;

/// The probability in the middle of a stratum.
constexpr double middle_of(std::size_t stratum) {
    return (static_cast<double>(stratum) + 0.5) / static_cast<double>(strata);
}

/// The value expected of an input once its shared part is known, whatever its own part is.
inline double expected_of(const Uncertain& input, double shared) {
    const FastQuantile quantile(input.guess);
    if (input.shared_share >= 1.0) {
        return quantile(shared);
    }
    double sum = 0.0;
    for (std::size_t j = 0; j < strata; ++j) {
        sum += quantile(estimate::blend(shared, middle_of(j), input.shared_share));
    }
    return sum / static_cast<double>(strata);
}

inline double mean_of(std::span<const double> values) {
    double sum = 0.0;
    for (const double x : values) {
        sum += x;
    }
    return sum / static_cast<double>(values.size());
}

/// The covariance of pairs that all weigh the same; 0 of none.
inline double covariance_of(std::span<const double> a, std::span<const double> b) {
    const double mean_a = mean_of(a);
    const double mean_b = mean_of(b);
    double sum = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        sum += (a[i] - mean_a) * (b[i] - mean_b);
    }
    return a.empty() ? 0.0 : sum / static_cast<double>(a.size());
}

inline double variance_of(std::span<const double> values) {
    return covariance_of(values, values);
}

} // namespace scupper::simulate::detail
