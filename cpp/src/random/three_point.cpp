#include "scupper/random/three_point.hpp"

#include "beta_kernel.hpp"
#include "scupper/random/fast_quantile.hpp"

#include <algorithm>
#include <cmath>

namespace scupper {

namespace {

using detail::Parameters;

constexpr double kZ999 = 3.0902323061678135; // normal quantile of 0.999: the central 99.8 %
constexpr double kZ90 = 1.2815515655446004;  // normal quantile of 0.9

double exact_pert(double shape, double u) {
    return beta_quantile(u, detail::alpha_of(shape), detail::beta_of(shape));
}

/// Quantile on [0, 1] of the families that have limits.
double unit_quantile(Family family, double shape, double u) {
    return detail::quantile(Parameters{family, 0.0, 1.0, shape}, u, exact_pert);
}

/// Root of a rising function on [low, high] by regula falsi with the Illinois correction; an end
/// where the function does not change sign.
template <typename Function>
double rising_root(Function&& f, double low, double high) {
    double f_low = f(low);
    double f_high = f(high);
    if (f_low >= 0.0 || f_high <= 0.0) {
        return f_low >= 0.0 ? low : high;
    }
    for (int i = 0, side = 0; i < 100 && high - low > 1e-15; ++i) {
        const double x = (low * f_high - high * f_low) / (f_high - f_low);
        const double f_x = f(x);
        if (std::fabs(f_x) < 1e-15) {
            return x;
        }
        const int now = f_x < 0.0 ? -1 : 1;
        (now < 0 ? low : high) = x;
        (now < 0 ? f_low : f_high) = f_x;
        if (now == side) {
            (now < 0 ? f_high : f_low) *= 0.5;
        }
        side = now;
    }
    return 0.5 * (low + high);
}

/// The shape at which the mode stands where `likely` stands between P10 and P90.
double shape_between_p10_p90(const ThreePoint& p) {
    const double target = (p.likely - p.low) / (p.high - p.low);
    const auto excess = [&](double shape) {
        const double q10 = unit_quantile(p.family, shape, 0.1);
        const double q90 = unit_quantile(p.family, shape, 0.9);
        return (shape - q10) / (q90 - q10) - target;
    };
    if (p.family == Family::uniform) {
        return 0.5;
    }
    // A triangle's mode lies between its P10 and P90 only for these shapes.
    return p.family == Family::triangular ? rising_root(excess, 0.1, 0.9)
                                          : rising_root(excess, 0.0, 1.0);
}

Parameters limited(const ThreePoint& p) {
    if (p.meaning == Meaning::limits) {
        return {p.family, p.low, p.high, (p.likely - p.low) / (p.high - p.low)};
    }
    const double shape = shape_between_p10_p90(p);
    const double q10 = unit_quantile(p.family, shape, 0.1);
    const double q90 = unit_quantile(p.family, shape, 0.9);
    const double width = (p.high - p.low) / (q90 - q10);
    return {p.family, p.low - width * q10, p.high + width * (1.0 - q90), shape};
}

Parameters unlimited(const ThreePoint& p) {
    const double z = p.meaning == Meaning::limits ? kZ999 : kZ90;
    const bool logarithmic = p.family == Family::lognormal;
    const double low = logarithmic ? std::log(p.low) : p.low;
    const double high = logarithmic ? std::log(p.high) : p.high;
    return {p.family, 0.5 * (low + high), (high - low) / (2.0 * z), 0.5};
}

bool has_limits(Family family) {
    return family == Family::uniform || family == Family::triangular || family == Family::pert;
}

double unit_mean(const Parameters& p) {
    switch (p.family) {
    case Family::triangular:
        return (1.0 + p.shape) / 3.0;
    case Family::pert:
        return detail::alpha_of(p.shape) / 6.0;
    default:
        return 0.5;
    }
}

double unit_sd(const Parameters& p) {
    switch (p.family) {
    case Family::triangular:
        return std::sqrt((1.0 - p.shape + p.shape * p.shape) / 18.0);
    case Family::pert:
        return std::sqrt(detail::alpha_of(p.shape) * detail::beta_of(p.shape) /
                         252.0); // (a+b)^2 (a+b+1) = 252
    default:
        return std::sqrt(1.0 / 12.0);
    }
}

double unit_cdf(const Parameters& p, double t) {
    switch (p.family) {
    case Family::triangular:
        return t <= p.shape ? t * (t / p.shape) : 1.0 - (1.0 - t) * ((1.0 - t) / (1.0 - p.shape));
    case Family::pert:
        return beta_cdf(t, detail::alpha_of(p.shape), detail::beta_of(p.shape));
    default:
        return t;
    }
}

double lognormal_mean(const Parameters& p) {
    return std::exp(p.a + 0.5 * p.b * p.b);
}

} // namespace

namespace detail {

Parameters parameters_of(const ThreePoint& point) {
    if (point.family == Family::fixed || point.low == point.high) {
        return {Family::fixed, point.likely, point.likely, 0.5};
    }
    if (point.listed != nullptr) {
        return {point.family, point.low, point.high, 0.5, point.listed};
    }
    return has_limits(point.family) ? limited(point) : unlimited(point);
}

} // namespace detail

double ThreePoint::mean() const {
    const Parameters p = detail::parameters_of(*this);
    if (p.listed != nullptr) {
        return p.listed->mean();
    }
    if (has_limits(p.family)) {
        return std::lerp(p.a, p.b, unit_mean(p));
    }
    return p.family == Family::lognormal ? lognormal_mean(p) : p.a;
}

double ThreePoint::sd() const {
    const Parameters p = detail::parameters_of(*this);
    switch (p.family) {
    case Family::discrete:
    case Family::empirical:
        return p.listed->sd();
    case Family::fixed:
        return 0.0;
    case Family::normal:
        return p.b;
    case Family::lognormal:
        return lognormal_mean(p) * std::sqrt(std::expm1(p.b * p.b));
    default:
        return (p.b - p.a) * unit_sd(p);
    }
}

double ThreePoint::quantile(double u) const {
    detail::check_probability(u);
    return detail::quantile(detail::parameters_of(*this), u, exact_pert);
}

double ThreePoint::cdf(double x) const {
    const Parameters p = detail::parameters_of(*this);
    switch (p.family) {
    case Family::discrete:
    case Family::empirical:
        return p.listed->cdf(x);
    case Family::fixed:
        return x < p.a ? 0.0 : 1.0;
    case Family::normal:
        return normal_cdf((x - p.a) / p.b);
    case Family::lognormal:
        return x <= 0.0 ? 0.0 : normal_cdf((std::log(x) - p.a) / p.b);
    default:
        return x <= p.a ? 0.0 : x >= p.b ? 1.0 : unit_cdf(p, (x - p.a) / (p.b - p.a));
    }
}

ThreePoint ThreePoint::limits() const {
    const Parameters p = detail::parameters_of(*this);
    switch (p.family) {
    case Family::fixed:
        return {likely, likely, likely, family, Meaning::limits};
    case Family::discrete:
    case Family::empirical:
        return *this;
    case Family::normal:
        return {p.a - kZ999 * p.b, p.a, p.a + kZ999 * p.b, family, Meaning::limits};
    case Family::lognormal:
        return {std::exp(p.a - kZ999 * p.b), std::exp(p.a), std::exp(p.a + kZ999 * p.b), family,
                Meaning::limits};
    default:
        return {p.a, likely, p.b, family, Meaning::limits};
    }
}

} // namespace scupper
