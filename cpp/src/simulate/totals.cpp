#include "scupper/simulate/totals.hpp"

#include "sample.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>

namespace scupper::simulate {

namespace {

void check_level(double level) {
    if (!(level >= 0.0 && level <= 1.0)) {
        throw InputError({"simulate.level", "level", std::to_string(level), "0 to 1"});
    }
}

double share_above(std::span<const double> sorted, double limit) {
    const auto first = std::upper_bound(sorted.begin(), sorted.end(), limit);
    return static_cast<double>(sorted.end() - first) / static_cast<double>(sorted.size());
}

} // namespace

DrawnTotal::DrawnTotal(const Simulation& simulation, std::size_t figure)
    : estimated_(simulation.estimated.at(figure).value()),
      replicates_(simulation.settings.replicates) {
    for (std::size_t i = figure; i < simulation.totals.size(); i += figure_count) {
        draws_.push_back(simulation.totals[i].value());
    }
    sorted_ = sorted_within_ = draws_;
    std::sort(sorted_.begin(), sorted_.end());
    const auto size = static_cast<std::ptrdiff_t>(draws_.size() / replicates_);
    for (auto at = sorted_within_.begin(); at != sorted_within_.end(); at += size) {
        std::sort(at, at + size);
    }
}

template <class Statistic>
Estimated DrawnTotal::over_replicates(const Statistic& statistic) const {
    std::vector<double> values;
    const std::size_t size = sorted_within_.size() / replicates_;
    for (std::size_t r = 0; r < replicates_; ++r) {
        values.push_back(statistic(std::span(sorted_within_).subspan(r * size, size)));
    }
    return {statistic(std::span(sorted_)),
            detail::sd_of_draws(values) / std::sqrt(static_cast<double>(replicates_))};
}

Estimated DrawnTotal::mean() const {
    return over_replicates([](std::span<const double> x) { return detail::mean_of_draws(x); });
}

Estimated DrawnTotal::sd() const {
    return over_replicates([](std::span<const double> x) { return detail::sd_of_draws(x); });
}

Estimated DrawnTotal::quantile(double level) const {
    check_level(level);
    return over_replicates(
        [level](std::span<const double> x) { return estimate::sorted_quantile(x, level); });
}

Estimated DrawnTotal::chance_above(double limit) const {
    if (std::isnan(limit)) {
        throw InputError({"simulate.limit", "limit", "not a number", "a number"});
    }
    return over_replicates([limit](std::span<const double> x) { return share_above(x, limit); });
}

double DrawnTotal::half_width(const Estimated& found, double confidence) const {
    if (!(confidence >= 0.0 && confidence < 1.0)) {
        throw InputError({"simulate.confidence", "confidence", std::to_string(confidence),
                          "at least 0 and below 1"});
    }
    if (replicates_ < 2) {
        return std::numeric_limits<double>::quiet_NaN();
    }
    const auto freedom = static_cast<double>(replicates_ - 1);
    return student_quantile(0.5 + 0.5 * confidence, freedom) * found.standard_error;
}

Estimated DrawnTotal::contingency(double level) const {
    Estimated result = quantile(level);
    result.value -= estimated_;
    return result;
}

} // namespace scupper::simulate
