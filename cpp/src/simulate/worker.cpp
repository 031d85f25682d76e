#include "worker.hpp"

#include "sample.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace scupper::simulate::detail {

namespace {

std::vector<std::size_t> places_of(const estimate::Plan& plan) {
    std::vector<std::size_t> places;
    for (const SimulatedFigure& figure : simulated_figures) {
        places.push_back(estimate::figure_place_of(plan, figure.key));
    }
    return places;
}

estimate::Unpriced reason_of(const Structure& s, std::size_t index, std::string reason) {
    return {index, s.id, s.state, std::move(reason)};
}

} // namespace

Worker::Worker(const estimate::Plan& plan, const SimulationSettings& settings,
               const SharedScores& shared)
    : plan_(plan), settings_(settings), places_(places_of(plan)), tape_(plan),
      drawing_(settings, shared), workspace_(plan), drawn_(settings.draws * figure_count),
      scratch_(settings.draws), estimated_(figure_count), totals_(settings.draws * figure_count) {}

void Worker::price_at(const std::vector<double>& values) {
    price(resolved_.model, estimate::Inputs<double>(plan_.inputs, values.data()), workspace_);
}

bool Worker::simulate(const Structure& structure, std::size_t index, SimulatedStructure& drawn) {
    resolve(structure, plan_, resolved_);
    price_at(resolved_.values);
    drawn.index = index;
    const estimate::Outcome outcome = outcome_of(resolved_, workspace_.figures.values(), plan_);
    if (outcome != estimate::Outcome::priced) {
        unpriced_.push_back(reason_of(structure, index, outcome_reason(outcome, resolved_)));
        return false;
    }
    for (std::size_t f = 0; f < figure_count; ++f) {
        drawn.ranges[f].estimated = workspace_.figures.at(places_[f]);
    }
    draw_all();
    const std::size_t lost = lost_draws();
    if (lost > 0) {
        left_out_.push_back(reason_of(structure, index,
                                      "no price in " + std::to_string(lost) + " of " +
                                          std::to_string(settings_.draws) + " draws"));
        return false;
    }
    for (std::size_t f = 0; f < figure_count; ++f) {
        summarize(f, drawn.ranges[f]);
    }
    add_to_totals(drawn);
    return true;
}

void Worker::draw_all() {
    drawing_.take(resolved_, tape_.record(resolved_, places_));
    tape_.draw_over(drawing_.places(), drawing_.columns());
    for (std::size_t first = 0; first < settings_.draws; first += block_draws) {
        const std::size_t count = std::min(block_draws, settings_.draws - first);
        drawing_.draw(first, count);
        if (drawing_.is_out_of_bounds(count)) {
            price_block(first, count);
        } else {
            run_block(first, count);
        }
    }
}

void Worker::run_block(std::size_t first, std::size_t count) {
    tape_.run(count);
    for (std::size_t f = 0; f < figure_count; ++f) {
        const Operand& figure = tape_.figure(f);
        for (std::size_t i = 0; i < count; ++i) {
            drawn_[f * settings_.draws + first + i] = figure[i];
        }
    }
}

/// Draw by draw: the price itself refuses what no calculator takes.
void Worker::price_block(std::size_t first, std::size_t count) {
    values_ = resolved_.values;
    for (std::size_t i = 0; i < count; ++i) {
        drawing_.put(i, values_);
        price_at(values_);
        for (std::size_t f = 0; f < figure_count; ++f) {
            drawn_[f * settings_.draws + first + i] = workspace_.figures.at(places_[f]);
        }
    }
}

std::size_t Worker::lost_draws() const {
    std::size_t lost = 0;
    for (std::size_t d = 0; d < settings_.draws; ++d) {
        bool whole = true;
        for (std::size_t f = 0; f < figure_count; ++f) {
            whole = whole && std::isfinite(drawn_[f * settings_.draws + d]);
        }
        lost += whole ? 0 : 1;
    }
    return lost;
}

void Worker::summarize(std::size_t figure, StructureRange& range) {
    const auto first = drawn_.begin() + static_cast<std::ptrdiff_t>(figure * settings_.draws);
    std::copy_n(first, settings_.draws, scratch_.begin());
    range.mean = mean_of_draws(scratch_);
    range.sd = sd_of_draws(scratch_);
    quantiles_of_draws(scratch_, kept_levels, range.quantiles);
}

void Worker::add_to_totals(const SimulatedStructure& drawn) {
    for (std::size_t f = 0; f < figure_count; ++f) {
        estimated_[f].add(drawn.ranges[f].estimated);
        for (std::size_t d = 0; d < settings_.draws; ++d) {
            totals_[d * figure_count + f].add(drawn_[f * settings_.draws + d]);
        }
    }
}

} // namespace scupper::simulate::detail
