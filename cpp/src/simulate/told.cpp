#include "told.hpp"

#include "score_table.hpp"
#include "strata.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>
#include <utility>

namespace scupper::simulate::detail {

namespace {

std::vector<estimate::ScoreTerm> terms_of(const estimate::Plan& plan, std::size_t place) {
    const estimate::CorrelatedInput* together = correlated_at(plan, place);
    return together == nullptr ? std::vector<estimate::ScoreTerm>{{place, 1.0}} : together->terms;
}

/// The correlation of the scores of two inputs at a structure.
double score_correlation(const estimate::Resolved& resolved, std::size_t a, std::size_t b) {
    if (a == b) {
        return 1.0;
    }
    const estimate::Plan& plan = *resolved.model.plan;
    double product = 0.0;
    for (const estimate::ScoreTerm& x : terms_of(plan, a)) {
        for (const estimate::ScoreTerm& y : terms_of(plan, b)) {
            product += x.place == y.place ? x.weight * y.weight : 0.0;
        }
    }
    const double s = resolved.uncertain[a].shared_share;
    const double t = resolved.uncertain[b].shared_share;
    return product * (std::sqrt(s * t) + std::sqrt((1.0 - s) * (1.0 - t)));
}

/// The inputs that the job draws together with any other.
std::set<std::size_t> correlated_places(const estimate::Plan& plan) {
    std::set<std::size_t> places;
    for (const estimate::CorrelatedInput& input : plan.correlated) {
        for (const estimate::ScoreTerm& term : input.terms) {
            places.insert(term.place);
        }
    }
    return places;
}

bool varies(const Uncertain& input) {
    return !std::isnan(input.guess.likely) && !is_certain(input);
}

/// x with L L' x = b.
std::vector<double> solve(std::span<const double> lower, std::vector<double> b) {
    const std::size_t n = b.size();
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            b[i] -= lower[i * n + j] * b[j];
        }
        b[i] /= lower[i * n + i];
    }
    for (std::size_t i = n; i-- > 0;) {
        for (std::size_t j = i + 1; j < n; ++j) {
            b[i] -= lower[j * n + i] * b[j];
        }
        b[i] /= lower[i * n + i];
    }
    return b;
}

} // namespace

Told::Told(const estimate::Resolved& resolved, std::vector<std::size_t> measured)
    : measured_(std::move(measured)) {
    const estimate::Plan& plan = *resolved.model.plan;
    if (plan.correlated.empty()) {
        return;
    }
    const std::size_t n = measured_.size();
    std::vector<double> matrix(n * n);
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < n; ++j) {
            const double r = score_correlation(resolved, measured_[i], measured_[j]);
            matrix[i * n + j] = r;
            is_joint_ = is_joint_ || (i != j && r != 0.0);
        }
    }
    weights_ = score_weights(matrix, n).value(); // no wider apart than those of the job
    for (const std::size_t place : correlated_places(plan)) {
        const bool is_measured =
            std::find(measured_.begin(), measured_.end(), place) != measured_.end();
        if (!is_measured && varies(resolved.uncertain[place])) {
            add(resolved, place);
        }
    }
}

void Told::add(const estimate::Resolved& resolved, std::size_t place) {
    std::vector<double> correlations;
    for (const std::size_t m : measured_) {
        correlations.push_back(score_correlation(resolved, place, m));
    }
    if (std::all_of(correlations.begin(), correlations.end(), [](double r) { return r == 0.0; })) {
        return;
    }
    std::vector<double> weights = solve(weights_, correlations);
    const double explained =
        std::inner_product(weights.begin(), weights.end(), correlations.begin(), 0.0);
    inputs_.push_back({place, FastQuantile(resolved.uncertain[place].guess), std::move(weights),
                       std::sqrt(std::max(1.0 - explained, 0.0))});
}

void Told::mix(std::span<double> scores) const {
    const std::size_t n = measured_.size();
    for (std::size_t i = is_joint_ ? n : 0; i-- > 0;) { // from the last, which needs all before it
        double mixed = 0.0;
        for (std::size_t j = 0; j <= i; ++j) {
            mixed += weights_[i * n + j] * scores[j];
        }
        scores[i] = mixed;
    }
}

double expected_at(const FastQuantile& quantile, double score, double spread) {
    double sum = 0.0;
    for (std::size_t j = 0; j < strata; ++j) {
        sum += quantile(inner_probability(score + spread * normal_quantile(middle_of(j))));
    }
    return sum / static_cast<double>(strata);
}

double told_score(const ToldInput& input, std::span<const double> scores) {
    return std::inner_product(scores.begin(), scores.end(), input.weights.begin(), 0.0);
}

} // namespace scupper::simulate::detail
