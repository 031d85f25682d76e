#include "scupper/estimate/draws.hpp"

#include "figure_keys.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace scupper::estimate {

namespace {

/// The stream of what all structures have in common.
const std::uint64_t shared_stream = hash_text("shared by all structures");

} // namespace

double blend(double shared, double own, double shared_share) {
    const double z = std::sqrt(shared_share) * normal_quantile(shared) +
                     std::sqrt(1.0 - shared_share) * normal_quantile(own);
    return normal_cdf(z);
}

InputDraws::InputDraws(const Resolved& resolved, const DrawSettings& settings)
    : resolved_(&resolved) {
    const Plan& plan = *resolved.model.plan;
    for (std::size_t i = 0; i < resolved.uncertain.size(); ++i) {
        const Uncertain& input = resolved.uncertain[i];
        if (!detail::has_range(input)) {
            continue;
        }
        Drawn drawn{i, FastQuantile(input.guess), input.shared_share, {}};
        const CorrelatedInput* together = correlated_at(plan, i);
        const CorrelatedInput alone{i, {{i, 1.0}}};
        for (const ScoreTerm& term : (together == nullptr ? alone : *together).terms) {
            const std::uint64_t hash = plan.hashes[term.place];
            drawn.terms.push_back(
                {term.weight,
                 Sampler(settings.sampling, {settings.seed, resolved.stream, hash}, settings.draws),
                 Sampler(settings.sampling, {settings.seed, shared_stream, hash}, settings.draws)});
        }
        inputs_.push_back(std::move(drawn));
    }
}

double InputDraws::Drawn::uniform(std::size_t draw, Sampler Term::*part) const {
    if (terms.size() == 1) {
        return (terms.front().*part)(draw);
    }
    double score = 0.0;
    for (const Term& term : terms) {
        score += term.weight * normal_quantile((term.*part)(draw));
    }
    return normal_cdf(score);
}

double InputDraws::Drawn::uniform(std::size_t draw) const {
    if (shared_share <= 0.0) {
        return uniform(draw, &Term::own);
    }
    if (shared_share >= 1.0) {
        return uniform(draw, &Term::shared);
    }
    return blend(uniform(draw, &Term::shared), uniform(draw, &Term::own), shared_share);
}

double InputDraws::uniform(std::size_t draw, std::size_t place) const {
    const auto at = std::ranges::lower_bound(inputs_, place, {}, &Drawn::place);
    if (at == inputs_.end() || at->place != place) {
        throw InputError({"estimate.draws", resolved_->model.plan->inputs.fields()[place].key,
                          "no spread", "an input with a spread"});
    }
    return at->uniform(draw);
}

void InputDraws::fill(std::size_t draw, std::span<double> values) const {
    std::copy(resolved_->values.begin(), resolved_->values.end(), values.begin());
    for (const Drawn& input : inputs_) {
        values[input.place] = input.quantile(input.uniform(draw));
    }
}

std::vector<double> draw_group(std::span<const Resolved> group, const DrawSettings& settings,
                               std::span<const std::size_t> places) {
    std::vector<double> results;
    if (group.empty()) {
        return results;
    }
    results.reserve(group.size() * settings.draws * places.size());
    const Plan& plan = *group.front().model.plan;
    Workspace<double> workspace(plan);
    std::vector<double> values(plan.inputs.size());
    for (const Resolved& resolved : group) {
        const InputDraws draws(resolved, settings);
        for (std::size_t d = 0; d < settings.draws; ++d) {
            draws.fill(d, values);
            price(resolved.model, Inputs<double>(plan.inputs, values.data()), workspace);
            for (const std::size_t place : places) {
                results.push_back(workspace.figures.at(place));
            }
        }
    }
    return results;
}

double quantile_position(double u, std::size_t n) {
    const auto size = static_cast<double>(n);
    return std::clamp(u * size - 0.5, 0.0, size - 1.0);
}

double sorted_quantile(std::span<const double> sorted, double u) {
    if (sorted.empty()) {
        return std::numeric_limits<double>::quiet_NaN();
    }
    const double position = quantile_position(u, sorted.size());
    const auto below = static_cast<std::size_t>(position);
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    const double weight = position - static_cast<double>(below);
    return sorted[below] + weight * (sorted[above] - sorted[below]);
}

double quantile_error(std::span<const double> sorted, double u) {
    const double spread = std::sqrt(u * (1.0 - u) / static_cast<double>(sorted.size()));
    return 0.5 * (sorted_quantile(sorted, std::min(u + spread, 1.0)) -
                  sorted_quantile(sorted, std::max(u - spread, 0.0)));
}

double sample_quantile(std::span<double> sample, double u) {
    std::sort(sample.begin(), sample.end());
    return sorted_quantile(sample, u);
}

} // namespace scupper::estimate
