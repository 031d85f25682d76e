#include "scupper/random/empirical.hpp"

#include "scupper/error.hpp"
#include "scupper/random/three_point.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace scupper {

namespace {

void check_sample(const std::vector<double>& sample, std::string_view path) {
    if (sample.empty()) {
        throw InputError(
            {"random.count", std::string(path), "an empty sample", "at least one value"});
    }
    for (std::size_t i = 0; i < sample.size(); ++i) {
        if (!std::isfinite(sample[i])) {
            throw InputError({"random.nan", std::string(path) + "[" + std::to_string(i) + "]",
                              std::to_string(sample[i]), "a finite number"});
        }
    }
}

/// The average over the straight pieces between neighbours of what `piece` gives for each.
template <typename Piece>
double piecewise_mean(const std::vector<double>& x, Piece&& piece) {
    double sum = 0.0;
    for (std::size_t i = 1; i < x.size(); ++i) {
        sum += piece(x[i - 1], x[i]);
    }
    return x.size() < 2 ? 0.0 : sum / static_cast<double>(x.size() - 1);
}

} // namespace

Empirical::Empirical(std::vector<double> sample, std::string_view path)
    : sorted_(std::move(sample)) {
    check_sample(sorted_, path);
    std::sort(sorted_.begin(), sorted_.end());
}

double Empirical::mean() const {
    const double origin = sorted_.front(); // so that equal values give their value to the bit
    return origin + piecewise_mean(sorted_, [origin](double a, double b) {
               return 0.5 * ((a - origin) + (b - origin));
           });
}

double Empirical::sd() const {
    const double centre = mean();
    return std::sqrt(piecewise_mean(sorted_, [centre](double a, double b) {
        const double p = a - centre;
        const double q = b - centre;
        return (p * p + p * q + q * q) / 3.0; // the mean square of a straight piece
    }));
}

double Empirical::quantile(double u) const {
    detail::check_probability(u);
    const double h = static_cast<double>(sorted_.size() - 1) * u;
    const auto below = static_cast<std::size_t>(h);
    const std::size_t above = std::min(below + 1, sorted_.size() - 1);
    return std::lerp(sorted_[below], sorted_[above], h - static_cast<double>(below));
}

double Empirical::cdf(double x) const {
    if (x < sorted_.front()) {
        return 0.0;
    }
    if (x >= sorted_.back()) {
        return 1.0;
    }
    const auto next = std::upper_bound(sorted_.begin(), sorted_.end(), x);
    const double a = *(next - 1);
    const auto below = static_cast<double>(next - 1 - sorted_.begin());
    return (below + (x - a) / (*next - a)) / static_cast<double>(sorted_.size() - 1);
}

} // namespace scupper
