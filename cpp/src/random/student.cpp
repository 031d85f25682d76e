#include "scupper/error.hpp"
#include "scupper/random/special.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace scupper {

namespace {

/// Beyond these degrees of freedom the beta quantile is out of its range.
constexpr double most_freedom = 339.0;

/// Two terms of the expansion about the normal quantile.
double expanded(double z, double f) {
    const double z2 = z * z;
    const double first = z * (z2 + 1.0) / 4.0;
    const double second = z * ((5.0 * z2 + 16.0) * z2 + 3.0) / 96.0;
    return z + first / f + second / (f * f);
}

} // namespace

double student_quantile(double u, double freedom) {
    if (!(u > 0.0 && u < 1.0)) {
        throw InputError({"random.probability", "u", std::to_string(u), "between 0 and 1"});
    }
    if (freedom > most_freedom) {
        return expanded(normal_quantile(u), freedom);
    }
    if (u == 0.5) {
        return 0.0;
    }
    const double x = beta_quantile(2.0 * std::min(u, 1.0 - u), freedom / 2.0, 0.5);
    const double t = std::sqrt(freedom * (1.0 - x) / x);
    return u < 0.5 ? -t : t;
}

} // namespace scupper
