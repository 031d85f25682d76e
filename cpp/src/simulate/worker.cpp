#include "worker.hpp"

#include "sample.hpp"

#include <algorithm>
#include <string>

namespace scupper::simulate::detail {

namespace {

estimate::Unpriced reason_of(const Structure& s, std::size_t index, std::string reason) {
    return {index, s.id, s.state, std::move(reason)};
}

} // namespace

std::vector<std::size_t> simulated_places(const estimate::Plan& plan) {
    std::vector<std::size_t> places;
    for (const SimulatedFigure& figure : simulated_figures) {
        places.push_back(estimate::figure_place_of(plan, figure.key));
    }
    return places;
}

Worker::Worker(const estimate::Plan& plan, const SimulationSettings& settings,
               const SharedScores& shared)
    : draws_(settings.draws), drawer_(plan, settings, shared, simulated_places(plan)),
      scratch_(settings.draws), estimated_(figure_count), totals_(settings.draws * figure_count) {}

bool Worker::simulate(const Structure& structure, std::size_t index, SimulatedStructure& drawn) {
    drawn.index = index;
    const estimate::Outcome outcome = drawer_.take(structure);
    if (outcome != estimate::Outcome::priced) {
        unpriced_.push_back(
            reason_of(structure, index, outcome_reason(outcome, drawer_.resolved())));
        return false;
    }
    drawer_.draw();
    const std::size_t lost = drawer_.lost_draws(0, figure_count);
    if (lost > 0) {
        left_out_.push_back(reason_of(structure, index,
                                      "no price in " + std::to_string(lost) + " of " +
                                          std::to_string(draws_) + " draws"));
        return false;
    }
    for (std::size_t f = 0; f < figure_count; ++f) {
        drawn.ranges[f].estimated = drawer_.estimated(f);
        summarize(f, drawn.ranges[f]);
    }
    add_to_totals();
    return true;
}

void Worker::summarize(std::size_t figure, StructureRange& range) {
    const std::span<const double> drawn = drawer_.drawn(figure);
    std::copy(drawn.begin(), drawn.end(), scratch_.begin());
    range.mean = mean_of_draws(scratch_);
    range.sd = sd_of_draws(scratch_);
    quantiles_of_draws(scratch_, kept_levels, range.quantiles);
}

void Worker::add_to_totals() {
    for (std::size_t f = 0; f < figure_count; ++f) {
        estimated_[f].add(drawer_.estimated(f));
        const std::span<const double> drawn = drawer_.drawn(f);
        for (std::size_t d = 0; d < draws_; ++d) {
            totals_[d * figure_count + f].add(drawn[d]);
        }
    }
}

} // namespace scupper::simulate::detail
