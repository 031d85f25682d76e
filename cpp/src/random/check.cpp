#include "scupper/error.hpp"
#include "scupper/random/three_point.hpp"

#include <cmath>
#include <sstream>
#include <string>

namespace scupper {

namespace {

constexpr double kLikelyTolerance = 0.01; // of the width: three typed digits of a mean are enough

std::string text_of(double x) {
    std::ostringstream out;
    out.precision(10);
    out << x;
    return out.str();
}

std::string text_of(const ThreePoint& p) {
    return "low " + text_of(p.low) + ", likely " + text_of(p.likely) + ", high " + text_of(p.high);
}

void require(bool good, const char* id, const ThreePoint& p, std::string_view path,
             const std::string& allowed) {
    if (!good) {
        throw InputError({id, std::string(path), text_of(p), allowed});
    }
}

bool has_middle(Family family) {
    return family == Family::normal || family == Family::lognormal;
}

void check_likely(const ThreePoint& p, std::string_view path) {
    const double implied = implied_likely(p.low, p.high, p.family);
    const bool near = std::fabs(p.likely - implied) <= kLikelyTolerance * (p.high - p.low);
    require(near, "random.skew", p, path,
            "likely " + text_of(implied) + " with this family, or another family (pert)");
}

} // namespace

double implied_likely(double low, double high, Family family) {
    if (low == high) {
        return low;
    }
    return family == Family::lognormal ? std::sqrt(low) * std::sqrt(high) : 0.5 * low + 0.5 * high;
}

void check(const ThreePoint& p, std::string_view path) {
    const bool is_listed = p.family == Family::discrete || p.family == Family::empirical;
    require(is_listed == (p.listed != nullptr), "random.family", p, path,
            "values or a sample with the families discrete and empirical, and no others");
    require(std::isfinite(p.low) && std::isfinite(p.likely) && std::isfinite(p.high), "random.nan",
            p, path, "finite numbers");
    require(p.low <= p.likely && p.likely <= p.high, "random.order", p, path,
            "low <= likely <= high");
    require(p.family != Family::fixed || p.low == p.high, "random.fixed", p, path,
            "one value three times, or a family with a width");
    require(p.family != Family::lognormal || p.low > 0.0, "random.positive", p, path, "low > 0");
    if (has_middle(p.family)) {
        check_likely(p, path);
    }
}

namespace detail {

void check_probability(double u) {
    if (!(u >= 0.0 && u <= 1.0)) {
        throw InputError({"random.probability", "u", text_of(u), "0 to 1"});
    }
}

} // namespace detail

} // namespace scupper
