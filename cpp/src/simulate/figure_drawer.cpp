#include "figure_drawer.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace scupper::simulate::detail {

FigureDrawer::FigureDrawer(const estimate::Plan& plan, const SimulationSettings& settings,
                           const SharedScores& shared, std::vector<std::size_t> places)
    : plan_(plan), draws_(settings.draws), places_(std::move(places)), tape_(plan),
      drawing_(settings, shared), workspace_(plan), estimated_(places_.size()),
      drawn_(settings.draws * places_.size()) {}

void FigureDrawer::price_at(const std::vector<double>& values) {
    price(resolved_.model, estimate::Inputs<double>(plan_.inputs, values.data()), workspace_);
}

estimate::Outcome FigureDrawer::take(const Structure& structure) {
    resolve(structure, plan_, resolved_);
    price_at(resolved_.values);
    for (std::size_t f = 0; f < places_.size(); ++f) {
        estimated_[f] = workspace_.figures.at(places_[f]);
    }
    return outcome_of(resolved_, workspace_.figures.values(), plan_);
}

void FigureDrawer::draw() {
    drawing_.take(resolved_, tape_.record(resolved_, places_));
    tape_.draw_over(drawing_.places(), drawing_.columns());
    for (std::size_t first = 0; first < draws_; first += block_draws) {
        const std::size_t count = std::min(block_draws, draws_ - first);
        drawing_.draw(first, count);
        if (drawing_.is_out_of_bounds(count)) {
            price_block(first, count);
        } else {
            run_block(first, count);
        }
    }
}

void FigureDrawer::run_block(std::size_t first, std::size_t count) {
    tape_.run(count);
    for (std::size_t f = 0; f < places_.size(); ++f) {
        const Operand& figure = tape_.figure(f);
        for (std::size_t i = 0; i < count; ++i) {
            drawn_[f * draws_ + first + i] = figure[i];
        }
    }
}

/// Draw by draw: the price itself refuses what no calculator takes.
void FigureDrawer::price_block(std::size_t first, std::size_t count) {
    values_ = resolved_.values;
    for (std::size_t i = 0; i < count; ++i) {
        drawing_.put(i, values_);
        price_at(values_);
        for (std::size_t f = 0; f < places_.size(); ++f) {
            drawn_[f * draws_ + first + i] = workspace_.figures.at(places_[f]);
        }
    }
}

std::size_t FigureDrawer::lost_draws(std::size_t first, std::size_t last) const {
    std::size_t lost = 0;
    for (std::size_t d = 0; d < draws_; ++d) {
        bool whole = true;
        for (std::size_t f = first; f < last; ++f) {
            whole = whole && std::isfinite(drawn_[f * draws_ + d]);
        }
        lost += whole ? 0 : 1;
    }
    return lost;
}

} // namespace scupper::simulate::detail
