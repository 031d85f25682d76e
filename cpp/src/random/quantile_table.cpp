#include "scupper/random/quantile_table.hpp"

#include "beta_kernel.hpp"
#include "scupper/random/special.hpp"

#include <cmath>

namespace scupper {

namespace {

/// Tail probability of a node: the bits of its index are the top bits of the number.
double tail_at(std::uint64_t index, int dropped_bits) {
    return std::bit_cast<double>(index << dropped_bits);
}

/// The quantile one step above a known one: a Taylor step, then one step of Halley's method.
double stepped(const detail::BetaKernel& kernel, double x, double step, double target) {
    const double move = step / kernel.density(x);
    const double guess = x + move * (1.0 - 0.5 * move * kernel.log_slope(x));
    const auto [density, cdf] = kernel.both(guess);
    const double newton = (cdf - target) / density;
    return guess - newton / (1.0 - 0.5 * newton * kernel.log_slope(guess));
}

} // namespace

const PertTable& PertTable::instance() {
    static const PertTable table;
    return table;
}

PertTable::PertTable() : nodes_(2 * shapes * stride) {
    for (std::size_t i = 0; i < shapes; ++i) {
        const double shape = 0.5 * static_cast<double>(i) / (shapes - 1);
        Node* lower = nodes_.data() + offset(i, false);
        Node* upper = nodes_.data() + offset(i, true);
        fill_side(lower, detail::alpha_of(shape), detail::beta_of(shape));
        fill_side(upper, detail::beta_of(shape), detail::alpha_of(shape));
        // The two sides must meet without a step: a multiple of 2^-24 and its complement are
        // floats.
        lower[cells].x = std::round(lower[cells].x * 0x1p24f) * 0x1p-24f;
        upper[cells].x = 1.0f - lower[cells].x;
    }
}

void PertTable::fill_side(Node* side, double alpha, double beta) {
    const detail::BetaKernel kernel(alpha, beta);
    double v = tail;
    double x = beta_quantile(v, alpha, beta);
    for (std::size_t i = 0; i <= cells; ++i) {
        const double target = tail_at(first_cell + i, dropped_bits);
        x = stepped(kernel, x, target - v, target);
        v = target;
        side[i] = {static_cast<float>(x), static_cast<float>(1.0 / kernel.density(x))};
    }
}

double PertTable::beyond(double shape, double u) const {
    const double exact = beta_quantile(u, detail::alpha_of(shape), detail::beta_of(shape));
    // Where the table begins it may be off by its error: the exact tail must not pass it.
    return u < 0.5 ? std::min(exact, quantile(shape, tail))
                   : std::max(exact, quantile(shape, 1.0 - tail));
}

} // namespace scupper
