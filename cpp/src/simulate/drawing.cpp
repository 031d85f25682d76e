#include "drawing.hpp"

#include "correlated.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace scupper::simulate::detail {

void Drawing::take(const estimate::Resolved& resolved, const std::vector<char>& moves) {
    resolved_ = &resolved;
    inputs_.clear();
    for (std::size_t i = 0; i < resolved.uncertain.size(); ++i) {
        const Uncertain& input = resolved.uncertain[i];
        if (moves[i] && !std::isnan(input.guess.likely) && !is_certain(input)) {
            inputs_.push_back({i, FastQuantile(input.guess), std::sqrt(input.shared_share),
                               std::sqrt(1.0 - input.shared_share)});
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

/// Uniforms of the own part; its scores where inputs vary together.
void Drawing::fill_own(const Input& input, std::size_t first, std::span<double> out) const {
    if (!input.own_scores.empty()) {
        std::copy_n(input.own_scores.begin() + static_cast<std::ptrdiff_t>(first), out.size(),
                    out.begin());
        std::transform(out.begin(), out.end(), out.begin(), normal_cdf);
    } else if (input.own_weight > 0.0) {
        fill_uniforms(settings_, resolved_->stream, resolved_->model.plan->hashes[input.place],
                      first, out, own_dimensions_[input.place]);
    }
}

void Drawing::draw_input(const Input& input, std::size_t first, std::span<double> out) {
    fill_own(input, first, out);
    if (input.shared_weight > 0.0) {
        std::array<double, block_draws> common;
        const std::span<double> shared(common.data(), out.size());
        shared_.fill(input.place, first, shared);
        for (std::size_t i = 0; i < out.size(); ++i) {
            const double own =
                input.own_weight > 0.0 ? input.own_weight * normal_quantile(out[i]) : 0.0;
            out[i] = normal_cdf(input.shared_weight * shared[i] + own);
        }
    }
    for (double& x : out) {
        x = input.quantile(x);
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
