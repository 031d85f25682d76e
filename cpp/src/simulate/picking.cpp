#include "picking.hpp"

#include <algorithm>

namespace scupper::simulate::detail {

namespace {

using Remaining = std::map<std::size_t, std::array<double, strata>>;

/// What a measured structure varies together with all others.
double covariance_with_others(const Measurement& m, const Remaining& remaining) {
    if (m.shared.empty()) {
        return 0.0;
    }
    const std::array<double, strata>& all = remaining.at(m.place);
    return covariance_of(all, m.shared) - variance_of(m.shared);
}

/// The variance of the programme's cost that one measurement takes away.
double removed_by(const Measurement& m, const Remaining& remaining) {
    return m.variance + 2.0 * covariance_with_others(m, remaining);
}

/// The variance of the programme's cost that a visit takes away.
double removed_by(const Visit& visit, const Remaining& remaining) {
    double removed = visit.variance;
    for (const Measurement& m : visit.measurements) {
        removed += 2.0 * covariance_with_others(m, remaining);
    }
    return removed;
}

void take_away(const Visit& visit, Remaining& remaining) {
    for (const Measurement& m : visit.measurements) {
        for (std::size_t k = 0; k < m.shared.size(); ++k) {
            remaining.at(m.place)[k] -= m.shared[k];
        }
    }
}

/// What each visit and measurement does by itself to the range.
void put_alone(const Remaining& remaining, SurveyList& list) {
    const double range = list.high - list.low;
    for (Visit& visit : list.visits) {
        const double removed = removed_by(visit, remaining);
        visit.narrows = range - range_without(range, removed, list.variance);
        for (Measurement& m : visit.measurements) {
            m.narrows = range - range_without(range, removed_by(m, remaining), list.variance);
        }
        std::stable_sort(
            visit.measurements.begin(), visit.measurements.end(),
            [](const Measurement& a, const Measurement& b) { return a.narrows > b.narrows; });
    }
}

} // namespace

std::map<std::size_t, std::array<double, strata>> SharedTotals::values() const {
    std::map<std::size_t, std::array<double, strata>> values;
    for (const auto& [place, totals] : totals_) {
        std::transform(totals.begin(), totals.end(), values[place].begin(),
                       [](const estimate::FixedTotal& t) { return t.value(); });
    }
    return values;
}

void pick(std::size_t number, const SharedTotals& shared, SurveyList& list) {
    Remaining remaining = shared.values();
    put_alone(remaining, list);
    const double range = list.high - list.low;
    double removed = 0.0;
    std::vector<Visit> picked;
    while (picked.size() < number && !list.visits.empty()) {
        const auto best = std::max_element(
            list.visits.begin(), list.visits.end(), [&](const Visit& a, const Visit& b) {
                return removed_by(a, remaining) < removed_by(b, remaining);
            });
        const double gain = removed_by(*best, remaining);
        if (!(gain > 0.0)) {
            break; // what is left moves against the rest: its uncertainty cancels some of it
        }
        removed += gain;
        take_away(*best, remaining);
        picked.push_back(std::move(*best));
        picked.back().range_left = range_without(range, removed, list.variance);
        list.visits.erase(best);
    }
    list.visits = std::move(picked);
}

} // namespace scupper::simulate::detail
