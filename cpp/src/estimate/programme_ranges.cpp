#include "figure_keys.hpp"
#include "scupper/estimate/fixed_total.hpp"
#include "scupper/estimate/programme.hpp"
#include "scupper/estimate/run.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <mutex>

namespace scupper::estimate {

namespace {

/// The sum of a figure over the structures in one draw; none where one of them has no number.
struct DrawnTotal {
    FixedTotal sum;
    bool known = true;

    void add(double part) {
        if (std::isfinite(part)) {
            sum.add(part);
        } else {
            known = false;
        }
    }
    void add(const DrawnTotal& other) {
        sum.add(other.sum);
        known = known && other.known;
    }
    double value() const { return known ? sum.value() : std::numeric_limits<double>::quiet_NaN(); }
};

/// Draw by draw, column by column.
using DrawnTotals = std::vector<DrawnTotal>;

void add_draws(const Resolved& resolved, const DrawSettings& settings,
               std::span<const std::size_t> places, DrawnTotals& totals) {
    const std::vector<double> drawn = draw_group({&resolved, 1}, settings, places);
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        totals[i].add(drawn[i]);
    }
}

std::vector<double> sample_of(std::size_t column, std::size_t columns, const DrawnTotals& totals) {
    std::vector<double> sample;
    for (std::size_t i = column; i < totals.size(); i += columns) {
        sample.push_back(totals[i].value());
    }
    if (std::any_of(sample.begin(), sample.end(), [](double x) { return std::isnan(x); })) {
        sample.clear(); // a range of the other draws would hide what stops the work in these
    }
    std::sort(sample.begin(), sample.end());
    return sample;
}

} // namespace

std::vector<std::vector<double>> total_samples(const Programme& programme,
                                               std::span<const Structure> structures,
                                               const DrawSettings& settings, unsigned threads,
                                               const RunProgress& progress) {
    const std::vector<std::size_t> places = detail::figure_places(*programme.plan, programme.keys);
    DrawnTotals totals(settings.draws * places.size());
    std::mutex adding;
    const auto block = [&](std::size_t first, std::size_t last) {
        Resolved resolved;
        DrawnTotals part(totals.size());
        for (std::size_t i = first; i < last; ++i) {
            resolve(structures[programme.priced[i]], *programme.plan, resolved);
            add_draws(resolved, settings, places, part);
        }
        const std::lock_guard lock(adding);
        for (std::size_t i = 0; i < part.size(); ++i) {
            totals[i].add(part[i]);
        }
    };
    run_blocks(programme.priced.size(), threads, block, progress);
    std::vector<std::vector<double>> samples;
    for (std::size_t column = 0; column < places.size(); ++column) {
        samples.push_back(sample_of(column, places.size(), totals));
    }
    return samples;
}

std::vector<RangedFigure> total_ranges(const Programme& programme,
                                       std::span<const Structure> structures,
                                       const DrawSettings& settings, unsigned threads,
                                       const RunProgress& progress) {
    const auto samples = total_samples(programme, structures, settings, threads, progress);
    std::vector<RangedFigure> result;
    for (std::size_t column = 0; column < programme.keys.size(); ++column) {
        const std::vector<double>& sample = samples[column];
        result.push_back({programme.keys[column], programme.totals[column],
                          sorted_quantile(sample, 0.05), sorted_quantile(sample, 0.5),
                          sorted_quantile(sample, 0.95)});
    }
    return result;
}

} // namespace scupper::estimate
