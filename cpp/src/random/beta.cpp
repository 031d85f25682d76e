#include "beta_kernel.hpp"
#include "scupper/error.hpp"
#include "scupper/random/special.hpp"
#include "scupper/random/three_point.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace scupper {

namespace {

constexpr double kLargestShapes = 170.0; // beyond it the gamma function leaves the doubles

void check_shapes(double alpha, double beta) {
    if (!(alpha > 0.0 && beta > 0.0 && alpha + beta <= kLargestShapes)) {
        throw InputError({"random.shape", "alpha, beta",
                          std::to_string(alpha) + ", " + std::to_string(beta),
                          "both > 0, together at most 170"});
    }
}

/// The fraction 1 / (1 + d1 / (1 + d2 / (1 + ...))) of DLMF 8.17.22, by the modified Lentz method.
double continued_fraction(double x, double a, double b) {
    constexpr double tiny = 1e-300;
    constexpr int most_terms = 500;
    const auto away_from_zero = [](double v) { return std::fabs(v) < tiny ? tiny : v; };
    double c = 1.0;
    double d = 1.0 / away_from_zero(1.0 - (a + b) / (a + 1.0) * x);
    double value = d;
    const auto append = [&](double term) {
        d = 1.0 / away_from_zero(1.0 + term * d);
        c = away_from_zero(1.0 + term / c);
        value *= c * d;
        return std::fabs(c * d - 1.0);
    };
    for (int m = 1; m <= most_terms; ++m) {
        const double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
        const double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
        append(even);
        if (append(odd) < 1e-16) {
            break;
        }
    }
    return value;
}

/// The quantile of u <= 1/2.
double lower_quantile(double u, double alpha, double beta) {
    const detail::BetaKernel kernel(alpha, beta);
    constexpr double closest = 1.0 - 0x1p-53;
    double low = 0.0;
    double high = 1.0;
    double x = std::min(kernel.leading_quantile(u), 0.5);
    for (int i = 0; i < 100 && x > 0.0; ++i) {
        const auto [density, cdf] = kernel.both(std::min(x, closest));
        (cdf < u ? low : high) = x;
        const double newton = x - (cdf - u) / density;
        const double next = newton > low && newton < high ? newton : 0.5 * (low + high);
        const bool done = std::fabs(next - x) <= 4e-16 * x;
        x = next;
        if (done) {
            break;
        }
    }
    return x;
}

} // namespace

namespace detail {

BetaKernel::BetaKernel(double alpha, double beta)
    : alpha_(alpha), beta_(beta),
      inverse_constant_(std::tgamma(alpha + beta) / (std::tgamma(alpha) * std::tgamma(beta))) {}

double BetaKernel::density(double x) const {
    return std::pow(x, alpha_ - 1.0) * std::pow(1.0 - x, beta_ - 1.0) * inverse_constant_;
}

DensityAndCdf BetaKernel::both(double x) const {
    const double f = density(x);
    const double factor = f * x * (1.0 - x); // x^alpha (1-x)^beta / B
    if (x <= (alpha_ + 1.0) / (alpha_ + beta_ + 2.0)) {
        return {f, factor / alpha_ * continued_fraction(x, alpha_, beta_)};
    }
    return {f, 1.0 - factor / beta_ * continued_fraction(1.0 - x, beta_, alpha_)}; // DLMF 8.17.4
}

double BetaKernel::leading_quantile(double u) const {
    return std::pow(u * alpha_ / inverse_constant_, 1.0 / alpha_);
}

} // namespace detail

double normal_cdf(double z) {
    constexpr double sqrt_half = 0.70710678118654752440; // 1 / sqrt(2)
    return 0.5 * std::erfc(-z * sqrt_half);
}

double beta_cdf(double x, double alpha, double beta) {
    check_shapes(alpha, beta);
    if (x <= 0.0) {
        return 0.0;
    }
    return x >= 1.0 ? 1.0 : detail::BetaKernel(alpha, beta).both(x).cdf;
}

double beta_quantile(double u, double alpha, double beta) {
    check_shapes(alpha, beta);
    detail::check_probability(u);
    return u <= 0.5 ? lower_quantile(u, alpha, beta) : 1.0 - lower_quantile(1.0 - u, beta, alpha);
}

} // namespace scupper
