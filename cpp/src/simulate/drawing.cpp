#include "drawing.hpp"

#include "correlated.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace scupper::simulate::detail {

namespace {

bool is_same(const ThreePoint& a, const ThreePoint& b) {
    return a.low == b.low && a.likely == b.likely && a.high == b.high && a.family == b.family &&
           a.meaning == b.meaning;
}

} // namespace

void Drawing::take(const estimate::Resolved& resolved, const std::vector<char>& moves) {
    resolved_ = &resolved;
    inputs_.clear();
    own_values_.clear();
    for (std::size_t i = 0; i < resolved.uncertain.size(); ++i) {
        const Uncertain& input = resolved.uncertain[i];
        if (moves[i] && !std::isnan(input.guess.likely) && !is_certain(input)) {
            Input drawn{i,
                        values_of(i),
                        {},
                        std::sqrt(input.shared_share),
                        std::sqrt(1.0 - input.shared_share)};
            if (drawn.values == nullptr) {
                drawn.quantile.emplace(input.guess);
            }
            inputs_.push_back(drawn);
        }
    }
    drawn_.resize(inputs_.size() * block_draws);
    places_.clear();
    columns_.clear();
    for (std::size_t k = 0; k < inputs_.size(); ++k) {
        places_.push_back(inputs_[k].place);
        columns_.push_back(drawn_.data() + k * block_draws);
    }
    choose_dimensions();
    for (Input& input : inputs_) {
        draw_together(input);
    }
}

void Drawing::choose_dimensions() {
    own_dimensions_.assign(resolved_->uncertain.size(), no_dimension);
    if (settings_.sampling != Sampling::sobol_single) {
        return;
    }
    std::size_t next = shared_.next_dimension();
    for (const Input& input : inputs_) {
        if (input.own_weight > 0.0) {
            own_dimensions_[input.place] = next++;
        }
    }
}

void Drawing::draw_together(Input& input) {
    const estimate::Plan& plan = *resolved_->model.plan;
    const estimate::CorrelatedInput* together = correlated_at(plan, input.place);
    if (together == nullptr || input.own_weight <= 0.0) {
        return;
    }
    std::vector<double> uniforms(settings_.draws);
    input.own_scores.assign(settings_.draws, 0.0);
    for (const estimate::ScoreTerm& term : together->terms) {
        fill_uniforms(settings_, resolved_->stream, plan.hashes[term.place], 0, uniforms,
                      own_dimensions_[term.place]);
        add_scores(term.weight, uniforms, input.own_scores);
    }
    if (settings_.sampling == Sampling::latin_hypercube || settings_.sampling == Sampling::sobol) {
        stratify(settings_, resolved_->stream, plan.hashes[input.place], input.own_scores);
    }
}

/// A table serves all structures whose input is as the job has it.
const ValueOfScore* Drawing::values_of(std::size_t place) {
    const ThreePoint& guess = resolved_->uncertain[place].guess;
    if (guess.family != Family::pert) {
        return nullptr;
    }
    if (is_same(guess, resolved_->model.plan->base[place].guess)) {
        return &shared_.values_of(place);
    }
    return &own_values_.emplace_back(guess);
}

/// Weighted scores of each structure's own part.
void Drawing::fill_own(const Input& input, std::size_t first, std::span<double> out) const {
    if (!input.own_scores.empty()) {
        std::transform(out.begin(), out.end(),
                       input.own_scores.begin() + static_cast<std::ptrdiff_t>(first), out.begin(),
                       [&](double, double score) { return input.own_weight * score; });
        return;
    }
    fill_uniforms(settings_, resolved_->stream, resolved_->model.plan->hashes[input.place], first,
                  out, own_dimensions_[input.place]);
    ScoreOfUniform::instance().each(input.own_weight, out);
}

/// Normal scores: what structures share and each one's own, put together.
void Drawing::draw_scores(const Input& input, std::size_t first, std::span<double> out) const {
    if (input.own_weight > 0.0) {
        fill_own(input, first, out);
    }
    if (input.shared_weight > 0.0) {
        std::array<double, block_draws> memory;
        const double* common = shared_.scores(input.place, first, {memory.data(), out.size()});
        for (std::size_t i = 0; i < out.size(); ++i) {
            const double own = input.own_weight > 0.0 ? out[i] : 0.0;
            out[i] = own + input.shared_weight * common[i];
        }
    }
}

void Drawing::draw_input(const Input& input, std::size_t first, std::span<double> out) const {
    draw_scores(input, first, out);
    if (input.values != nullptr) {
        input.values->each(out);
        return;
    }
    for (double& x : out) {
        x = (*input.quantile)(normal_cdf(x));
    }
}

void Drawing::draw(std::size_t first, std::size_t count) {
    for (std::size_t k = 0; k < inputs_.size(); ++k) {
        draw_input(inputs_[k], first, {drawn_.data() + k * block_draws, count});
    }
}

bool Drawing::is_out_of_bounds(std::size_t count) const {
    const auto& fields = resolved_->model.plan->inputs.fields();
    for (std::size_t k = 0; k < inputs_.size(); ++k) {
        const LayoutField& field = fields[inputs_[k].place];
        const ValueOfScore* values = inputs_[k].values;
        if (values != nullptr && values->least() >= field.least &&
            values->greatest() <= field.greatest) {
            continue; // no draw can be
        }
        bool inside = true;
        for (std::size_t i = 0; i < count; ++i) {
            inside &= columns_[k][i] >= field.least && columns_[k][i] <= field.greatest;
        }
        if (!inside) {
            return true;
        }
    }
    return false;
}

} // namespace scupper::simulate::detail
