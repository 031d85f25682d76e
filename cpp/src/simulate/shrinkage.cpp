#include "scupper/simulate/shrinkage.hpp"

#include "scupper/error.hpp"
#include "scupper/unit.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace scupper::simulate {

namespace {

/// The least and the greatest power by which a stated value is narrowed or widened.
constexpr double least_power = 1e-6, greatest_power = 16.0;
/// Fewer observations tell nothing of what lies far out.
constexpr std::size_t least_for_outliers = 5;

double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return values.size() % 2 == 1 ? *middle
                                  : 0.5 * (*middle + *std::max_element(values.begin(), middle));
}

void mark_group(const std::vector<Observed*>& group, double limit) {
    if (group.size() < least_for_outliers) {
        return;
    }
    std::vector<double> logs, distances;
    for (const Observed* o : group) {
        logs.push_back(o->log);
    }
    const double middle = median(logs);
    for (const double y : logs) {
        distances.push_back(std::fabs(y - middle));
    }
    const double scale = 1.4826 * median(distances);
    for (Observed* o : group) {
        o->far_out = scale > 0.0 && std::fabs(o->log - middle) > limit * scale;
    }
}

ThreePoint to_power(const ThreePoint& old, double p) {
    ThreePoint changed = old;
    const double by = old.high; // keeps powers near 1
    changed.low = std::pow(old.low / by, p);
    changed.likely = std::pow(old.likely / by, p);
    changed.high = 1.0;
    return changed;
}

double variation(const ThreePoint& point) {
    return point.sd() / point.mean();
}

ThreePoint log_normal(double log_mean, double log_sd) {
    const double reach = normal_quantile(0.9) * log_sd;
    return {.low = std::exp(log_mean - reach),
            .likely = std::exp(log_mean),
            .high = std::exp(log_mean + reach),
            .family = Family::lognormal,
            .meaning = Meaning::p10_p90};
}

bool has_limits(const ThreePoint& point) {
    const bool bounded = point.family == Family::pert || point.family == Family::triangular ||
                         point.family == Family::uniform;
    return bounded && point.high > point.low && point.low >= 0.0;
}

} // namespace

Evidence evidence_of(std::span<const double> logs) {
    Evidence e{.jobs = logs.size(), .weight = static_cast<double>(logs.size())};
    for (const double y : logs) {
        e.mean += y / e.weight;
    }
    for (const double y : logs) {
        e.squares += (y - e.mean) * (y - e.mean);
    }
    return e;
}

Belief updated(const Belief& b, const Evidence& e) {
    if (e.jobs == 0) {
        return b;
    }
    Belief after;
    after.weight = b.weight + e.weight;
    after.mean = (b.weight * b.mean + e.weight * e.mean) / after.weight;
    after.freedom = b.freedom + static_cast<double>(e.jobs);
    const double apart = b.weight * e.weight / after.weight * (e.mean - b.mean) * (e.mean - b.mean);
    after.scale = (b.freedom * b.scale + e.squares + apart) / after.freedom;
    return after;
}

Belief belief_of(const Uncertain& value, const PriorSettings& s) {
    const double mean = value.guess.mean();
    const double spread = is_certain(value) ? s.unstated_spread : variation(value.guess);
    if (!(mean > 0.0 && std::isfinite(mean) && spread > 0.0 && std::isfinite(spread))) {
        throw InputError(
            {"learning.value", "value",
             "mean " + format_number(mean, 6) + ", relative spread " + format_number(spread, 6),
             "a positive value"});
    }
    const double variance = std::log1p(spread * spread);
    const bool stated = value.shared_share > 0.0 && value.shared_share < 1.0;
    const double q = stated ? value.shared_share : s.level_share;
    Belief belief;
    belief.mean = std::log(mean) - variance / 2.0;
    belief.weight = (1.0 - q) / q;
    belief.freedom = s.freedom;
    belief.scale = (1.0 - q) * variance * (s.freedom - 2.0) / s.freedom;
    return belief;
}

double Observed::value() const {
    return std::exp(log);
}

void mark_outliers(std::span<Observed> jobs, double limit) {
    std::map<std::string, std::vector<Observed*>> crews;
    std::vector<Observed*> all, of_small;
    for (Observed& o : jobs) {
        o.far_out = false;
        crews[o.agency + '\n' + o.crew].push_back(&o);
        all.push_back(&o);
    }
    mark_group(all, limit);
    for (const auto& [name, group] : crews) {
        if (group.size() >= least_for_outliers) {
            for (Observed* o : group) {
                o->far_out = false;
            }
            mark_group(group, limit);
        }
    }
}

ThreePoint restated(const ThreePoint& old, double log_mean, double log_sd) {
    const double mean = std::exp(log_mean + log_sd * log_sd / 2.0);
    const double wanted = std::sqrt(std::expm1(log_sd * log_sd));
    const bool can_be = has_limits(old) && variation(to_power(old, least_power)) < wanted &&
                        wanted < variation(to_power(old, greatest_power));
    if (!can_be) {
        return log_normal(log_mean, log_sd);
    }
    double low = least_power, high = greatest_power;
    for (int i = 0; i < 60; ++i) { // halves until the last bit
        const double middle = 0.5 * (low + high);
        (variation(to_power(old, middle)) < wanted ? low : high) = middle;
    }
    ThreePoint changed = to_power(old, 0.5 * (low + high));
    const double by = mean / changed.mean();
    changed.low *= by;
    changed.likely *= by;
    changed.high *= by;
    return changed;
}

} // namespace scupper::simulate
