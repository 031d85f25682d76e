#pragma once
// The quantile of a three-point guess, prepared once and asked for every draw.

#include "scupper/random/listed.hpp"
#include "scupper/random/quantile_table.hpp"
#include "scupper/random/special.hpp"
#include "scupper/random/three_point.hpp"

#include <cmath>

namespace scupper {

namespace detail {

/// Quantile of a triangular distribution on [0, 1].
inline double triangular_quantile(double shape, double u) {
    return u <= shape ? std::sqrt(u * shape) : 1.0 - std::sqrt((1.0 - u) * (1.0 - shape));
}

/// Every family but PERT, whose unit quantile is exact or from the table.
template <typename PertQuantile>
double quantile(const Parameters& p, double u, PertQuantile&& pert) {
    switch (p.family) {
    case Family::uniform:
        return std::lerp(p.a, p.b, u);
    case Family::triangular:
        return std::lerp(p.a, p.b, triangular_quantile(p.shape, u));
    case Family::pert:
        return std::lerp(p.a, p.b, pert(p.shape, u));
    case Family::normal:
        return p.a + p.b * normal_quantile(u);
    case Family::lognormal:
        return std::exp(p.a + p.b * normal_quantile(u));
    case Family::discrete:
    case Family::empirical:
        return p.listed->quantile(u);
    default:
        return p.a;
    }
}

} // namespace detail

/// A three-point guess made ready for many draws: limits solved, table at hand.
class FastQuantile {
  public:
    /// The quantile function of a guess.
    ///
    /// @param point [unit of the input] a guess that passes check()
    /// Errors: none.
    explicit FastQuantile(const ThreePoint& point)
        : parameters_(detail::parameters_of(point)),
          table_(parameters_.family == Family::pert ? &PertTable::instance() : nullptr) {}

    /// The value below which a share u lies. In the header because it is called for every draw.
    ///
    /// Formula: as ThreePoint::quantile, to the bit, except PERT: within 1e-5 of its range
    /// @param u [-] probability in (0, 1)
    /// @return [unit of the input] rising with u
    /// Errors: of a PERT InputError `random.probability` where u is outside [0, 1] or NaN; the
    /// other
    ///         families do not look.
    /// Source: definition
    /// Verified by: tests/cpp/random/test_quantile_table.cpp
    double operator()(double u) const {
        return detail::quantile(
            parameters_, u, [this](double shape, double v) { return table_->quantile(shape, v); });
    }

  private:
    detail::Parameters parameters_;
    const PertTable* table_;
};

/// The quantile of a three-point guess, fast; in a loop over draws prepare a FastQuantile instead.
///
/// Formula: FastQuantile(point)(u)
/// @param point [unit of the input] a guess that passes check()
/// @param u [-] probability in (0, 1)
/// @return [unit of the input] PERT within 1e-5 of its range, other families exact
/// Range: Meaning::p10_p90 of a triangular or PERT is solved anew at every call: slow.
/// Errors: as FastQuantile.
/// Source: definition
/// Verified by: tests/cpp/random/test_quantile_table.cpp
inline double fast_quantile(const ThreePoint& point, double u) {
    return FastQuantile(point)(u);
}

} // namespace scupper
