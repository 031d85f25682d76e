#include "exchanging.hpp"

#include "scupper/estimate/fixed_total.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::simulate::detail {

namespace {

/// Sums keep 2^-24 of their unit, and some inputs are a thousandth of a millimetre: ranks do not
/// mind a factor.
constexpr int input_bits = 40;

} // namespace

void ExchangedTotals::add(const std::vector<double>& figures, const std::vector<double>& inputs) {
    for (std::size_t i = 0; i < figures_.size(); ++i) {
        figures_[i].add(figures[i]);
    }
    for (std::size_t i = 0; i < inputs_.size(); ++i) {
        inputs_[i].add(std::ldexp(inputs[i], input_bits));
    }
}

void ExchangedTotals::add(const ExchangedTotals& other) {
    for (std::size_t i = 0; i < figures_.size(); ++i) {
        figures_[i].add(other.figures_[i]);
    }
    for (std::size_t i = 0; i < inputs_.size(); ++i) {
        inputs_[i].add(other.inputs_[i]);
    }
}

std::vector<double> ExchangedTotals::values(std::size_t sample) const {
    std::vector<double> values(draws_);
    for (std::size_t d = 0; d < draws_; ++d) {
        values[d] = figures_[sample * draws_ + d].value();
    }
    return values;
}

FactorRuns ExchangedTotals::runs() const {
    FactorRuns runs{values(0), values(1), {}};
    for (std::size_t k = 0; k < inputs_.size() / draws_; ++k) {
        runs.exchanged.push_back(values(2 + k));
    }
    return runs;
}

std::vector<double> ExchangedTotals::inputs(std::size_t factor) const {
    std::vector<double> values(draws_);
    for (std::size_t d = 0; d < draws_; ++d) {
        values[d] = inputs_[factor * draws_ + d].value();
    }
    return values;
}

Exchanger::Exchanger(const estimate::Plan& plan, std::size_t figure,
                     const std::vector<Factor>& factors, const SimulationSettings& first,
                     const SharedScores& first_shared, const SimulationSettings& second,
                     const SharedScores& second_shared)
    : plan_(plan), factors_(factors),
      draws_(first.draws), figure_{estimate::figure_place_of(plan,
                                                             simulated_figures.at(figure).key)},
      tape_(plan), first_(first, first_shared), second_(second, second_shared), workspace_(plan),
      moving_(factors.size()), figures_((2 + factors.size()) * draws_),
      inputs_(factors.size() * draws_), totals_(factors.size(), draws_) {}

double Exchanger::figure_at(const std::vector<double>& values) {
    price(resolved_.model, estimate::Inputs<double>(plan_.inputs, values.data()), workspace_);
    return workspace_.figures.at(figure_.front());
}

void Exchanger::find_moving(const std::vector<char>& moves) {
    for (std::size_t k = 0; k < factors_.size(); ++k) {
        moving_[k].clear();
        for (const std::size_t place : factors_[k]) {
            const Uncertain& input = resolved_.uncertain[place];
            if (moves[place] && !std::isnan(input.guess.likely) && !is_certain(input)) {
                moving_[k].push_back(place);
            }
        }
    }
}

void Exchanger::run_draw(std::size_t draw) {
    const double figure = figure_at(a_);
    figures_[draw] = figure;
    figures_[draws_ + draw] = figure_at(b_);
    for (std::size_t k = 0; k < moving_.size(); ++k) {
        const Factor& places = moving_[k];
        const auto exchange = [&] {
            for (const std::size_t place : places) {
                std::swap(a_[place], b_[place]);
            }
        };
        inputs_[k * draws_ + draw] = places.size() == 1 ? a_[places.front()] : 0.0;
        exchange();
        figures_[(2 + k) * draws_ + draw] = places.empty() ? figure : figure_at(a_);
        exchange();
    }
}

Part Exchanger::run(const Structure& structure) {
    resolve(structure, plan_, resolved_);
    figure_at(resolved_.values);
    if (outcome_of(resolved_, workspace_.figures.values(), plan_) != estimate::Outcome::priced) {
        return Part::unpriced;
    }
    const std::vector<char>& moves = tape_.record(resolved_, figure_);
    find_moving(moves);
    first_.take(resolved_, moves);
    second_.take(resolved_, moves);
    a_ = b_ = resolved_.values;
    for (std::size_t begin = 0; begin < draws_; begin += block_draws) {
        const std::size_t count = std::min(block_draws, draws_ - begin);
        first_.draw(begin, count);
        second_.draw(begin, count);
        for (std::size_t i = 0; i < count; ++i) {
            first_.put(i, a_);
            second_.put(i, b_);
            run_draw(begin + i);
        }
    }
    if (!std::all_of(figures_.begin(), figures_.end(), [](double x) { return std::isfinite(x); })) {
        return Part::left_out;
    }
    totals_.add(figures_, inputs_);
    return Part::counted;
}

} // namespace scupper::simulate::detail
