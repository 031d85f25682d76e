#include "scupper/random/discrete.hpp"

#include "scupper/error.hpp"
#include "scupper/random/three_point.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>
#include <utility>

namespace scupper {

namespace {

std::string place(std::string_view path, const char* field, std::size_t i) {
    return std::string(path) + "." + field + "[" + std::to_string(i) + "]";
}

void check_lengths(std::size_t values, std::size_t weights, std::string_view path) {
    if (values == 0 || values != weights) {
        throw InputError(
            {"random.count", std::string(path),
             std::to_string(values) + " values, " + std::to_string(weights) + " weights",
             "at least one value and as many weights"});
    }
}

void check_entry(double value, double weight, std::string_view path, std::size_t i) {
    if (!std::isfinite(value)) {
        throw InputError(
            {"random.nan", place(path, "values", i), std::to_string(value), "a finite number"});
    }
    if (!(weight >= 0.0 && std::isfinite(weight))) {
        throw InputError({"random.weights", place(path, "weights", i), std::to_string(weight),
                          "a finite number >= 0"});
    }
}

} // namespace

Discrete::Discrete(const std::vector<double>& values, const std::vector<double>& weights,
                   std::string_view path) {
    check_lengths(values.size(), weights.size(), path);
    std::vector<std::pair<double, double>> entries;
    for (std::size_t i = 0; i < values.size(); ++i) {
        check_entry(values[i], weights[i], path, i);
        if (weights[i] > 0.0) {
            entries.emplace_back(values[i], weights[i]);
        }
    }
    if (entries.empty()) {
        throw InputError(
            {"random.weights", std::string(path), "every weight is 0", "at least one weight > 0"});
    }
    std::sort(entries.begin(), entries.end());
    double total = 0.0;
    for (const auto& [value, weight] : entries) {
        total += weight;
    }
    for (const auto& [value, weight] : entries) {
        values_.push_back(value);
        shares_.push_back(weight / total);
    }
    cumulative_.resize(shares_.size());
    std::partial_sum(shares_.begin(), shares_.end(), cumulative_.begin());
    cumulative_.back() = 1.0;
}

double Discrete::mean() const {
    const double origin = values_.front(); // so that equal values give their value to the bit
    double excess = 0.0;
    for (std::size_t i = 0; i < values_.size(); ++i) {
        excess += shares_[i] * (values_[i] - origin);
    }
    return origin + excess;
}

double Discrete::sd() const {
    const double centre = mean();
    double variance = 0.0;
    for (std::size_t i = 0; i < values_.size(); ++i) {
        variance += shares_[i] * (values_[i] - centre) * (values_[i] - centre);
    }
    return std::sqrt(variance);
}

double Discrete::quantile(double u) const {
    detail::check_probability(u);
    const auto at = std::lower_bound(cumulative_.begin(), cumulative_.end(), u);
    return values_[static_cast<std::size_t>(at - cumulative_.begin())];
}

double Discrete::cdf(double x) const {
    const auto above = std::upper_bound(values_.begin(), values_.end(), x);
    return above == values_.begin()
               ? 0.0
               : cumulative_[static_cast<std::size_t>(above - values_.begin()) - 1];
}

} // namespace scupper
