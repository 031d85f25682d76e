#pragma once
// The Darcy friction factor and how it changes, for formulas and for solvers that start near by.

#include <cmath>
#include <numbers>

namespace scupper::hydraulics::detail {

inline constexpr double colebrook_slope = 2.0 / std::numbers::ln10;

/// x = 1 / sqrt(f) of Colebrook's equation, its last step, and w = -dF/dx + 1 of that step.
struct Colebrook {
    double x;
    double step;
    double w;
};

/// Where to start without knowing better: one fixed-point step from f = 0.02 is within 0.7.
inline double colebrook_start(double re, double k) {
    constexpr double usual = 7.0;
    const double a = k / 3.7;
    const double b = 2.51 / re;
    return -colebrook_slope * std::log(a + b * usual);
}

// Newton on F(x) = x + 2 log10(k / 3.7 + 2.51 x / Re). F grows and is concave, so that after one
// step all others come from the left. What is left after a last step of a share `small` of x is
// below a thousandth of its square.
inline Colebrook colebrook(double re, double k, double start, double small = 1e-8) {
    constexpr double slope = colebrook_slope;
    const double a = k / 3.7;
    const double b = 2.51 / re;
    double x = start;
    double step = 0.0;
    double w = 0.0;
    for (int i = 0; i < 6; ++i) {
        const double inside = a + b * x;
        w = slope * b / inside;
        step = (x + slope * std::log(inside)) / (1.0 + w);
        x -= step;
        if (std::abs(step) <= small * x) {
            break;
        }
    }
    return {x, step, w};
}

} // namespace scupper::hydraulics::detail
