#pragma once
// The root of a function inside a bracket.

#include <algorithm>
#include <cmath>
#include <limits>

namespace scupper::hydraulics::detail {

/// A root, and the function there.
struct Root {
    double x;
    double f;
};

/// Chandrupatla's method: inverse quadratic interpolation where the three last points allow it,
/// halving where not. The bracket holds a change of sign throughout; `first` is where to look
/// first. Stops at |f| <= small or where the bracket is two spacings of double wide.
/// Source: T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145-149.
template <class F>
Root bracketed_root(F&& f, Root low, Root high, double first, double small) {
    constexpr double eps = std::numeric_limits<double>::epsilon();
    constexpr int bound = 200; // halving alone needs fewer
    Root a = low;
    Root b = high;
    Root c = high;
    double t = (first - a.x) / (b.x - a.x);
    Root best = std::abs(low.f) < std::abs(high.f) ? low : high;
    for (int i = 0; i < bound && std::abs(best.f) > small; ++i) {
        const double x = a.x + t * (b.x - a.x);
        const Root next{x, f(x)};
        if ((next.f > 0.0) == (a.f > 0.0)) {
            c = a;
        } else {
            c = b;
            b = a;
        }
        a = next;
        best = std::abs(a.f) < std::abs(b.f) ? a : b;
        const double narrow = 2.0 * eps * std::abs(best.x) / std::abs(b.x - a.x);
        if (narrow > 0.5) {
            break;
        }
        const double xi = (a.x - b.x) / (c.x - b.x);
        const double phi = (a.f - b.f) / (c.f - b.f);
        const bool smooth = phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi;
        t = smooth ? a.f / (b.f - a.f) * c.f / (b.f - c.f) +
                         (c.x - a.x) / (b.x - a.x) * a.f / (c.f - a.f) * b.f / (c.f - b.f)
                   : 0.5;
        t = std::clamp(t, narrow, 1.0 - narrow);
    }
    return best;
}

} // namespace scupper::hydraulics::detail
