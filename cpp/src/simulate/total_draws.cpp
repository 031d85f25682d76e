#include "scupper/simulate/total_draws.hpp"

#include "figure_drawer.hpp"
#include "require.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <mutex>

namespace scupper::simulate {

namespace {

using estimate::FixedTotal;

/// Sums over structures, figure after figure and draw by draw; none where one has no number.
class FigureSums {
  public:
    FigureSums(std::size_t figures, std::size_t draws)
        : draws_(draws), sums_(figures * draws), lost_(figures * draws, 0) {}

    void add(const detail::FigureDrawer& structure) {
        for (std::size_t f = 0; f < structure.figures(); ++f) {
            const std::span<const double> drawn = structure.drawn(f);
            for (std::size_t d = 0; d < draws_; ++d) {
                if (std::isfinite(drawn[d])) {
                    sums_[f * draws_ + d].add(drawn[d]);
                } else {
                    lost_[f * draws_ + d] = 1;
                }
            }
        }
    }
    void add(const FigureSums& other) {
        for (std::size_t i = 0; i < sums_.size(); ++i) {
            sums_[i].add(other.sums_[i]);
            lost_[i] = lost_[i] | other.lost_[i];
        }
    }
    std::vector<double> values(std::size_t figure) const {
        std::vector<double> values;
        for (std::size_t i = figure * draws_; i < (figure + 1) * draws_; ++i) {
            values.push_back(lost_[i] ? std::numeric_limits<double>::quiet_NaN()
                                      : sums_[i].value());
        }
        return values;
    }

  private:
    std::size_t draws_;
    std::vector<FixedTotal> sums_;
    std::vector<char> lost_;
};

} // namespace

std::vector<std::vector<double>> total_draws(const estimate::Programme& programme,
                                             std::span<const Structure> structures,
                                             std::span<const std::size_t> places,
                                             const SimulationSettings& settings, unsigned threads,
                                             const estimate::RunProgress& progress) {
    detail::require_whole_replicates(settings);
    const estimate::Plan& plan = *programme.plan;
    const detail::SharedScores shared(plan, settings);
    FigureSums sums(places.size(), settings.draws);
    std::mutex adding;
    const auto block = [&](std::size_t first, std::size_t last) {
        detail::FigureDrawer drawer(plan, settings, shared, {places.begin(), places.end()});
        FigureSums part(places.size(), settings.draws);
        for (std::size_t i = first; i < last; ++i) {
            const std::size_t row = programme.priced[i];
            drawer.take(structures[row]);
            drawer.draw();
            part.add(drawer);
        }
        const std::lock_guard lock(adding);
        sums.add(part);
    };
    estimate::run_blocks(programme.priced.size(), threads, block, progress);
    std::vector<std::vector<double>> totals;
    for (std::size_t f = 0; f < places.size(); ++f) {
        totals.push_back(sums.values(f));
    }
    return totals;
}

std::vector<std::vector<double>> total_samples(const estimate::Programme& programme,
                                               std::span<const Structure> structures,
                                               const SimulationSettings& settings, unsigned threads,
                                               const estimate::RunProgress& progress) {
    std::vector<std::size_t> places;
    for (const std::string& key : programme.keys) {
        places.push_back(estimate::figure_place_of(*programme.plan, key));
    }
    auto samples = total_draws(programme, structures, places, settings, threads, progress);
    for (std::vector<double>& sample : samples) {
        if (std::any_of(sample.begin(), sample.end(), [](double x) { return std::isnan(x); })) {
            sample.clear();
        }
        std::sort(sample.begin(), sample.end());
    }
    return samples;
}

} // namespace scupper::simulate
