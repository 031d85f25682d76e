#pragma once
// A beta distribution with its constant worked out: what the solver and the table share.

namespace scupper::detail {

/// First parameter of the beta distribution that a PERT of that shape is.
constexpr double alpha_of(double shape) {
    return 1.0 + 4.0 * shape;
}
/// Its second parameter.
constexpr double beta_of(double shape) {
    return 5.0 - 4.0 * shape;
}

struct DensityAndCdf {
    double density;
    double cdf;
};

/// A beta distribution of fixed shapes, evaluated inside (0, 1).
class BetaKernel {
  public:
    BetaKernel(double alpha, double beta);

    /// x^(alpha-1) (1-x)^(beta-1) / B(alpha, beta).
    double density(double x) const;
    /// Density and I_x(alpha, beta) with one evaluation of the powers.
    DensityAndCdf both(double x) const;
    /// d ln(density) / dx.
    double log_slope(double x) const { return (alpha_ - 1.0) / x - (beta_ - 1.0) / (1.0 - x); }
    /// Where the leading term x^alpha / (alpha B) of I_x reaches u.
    double leading_quantile(double u) const;

  private:
    double alpha_;
    double beta_;
    double inverse_constant_; // 1 / B(alpha, beta)
};

} // namespace scupper::detail
