#include "narrowing.hpp"

#include "sample.hpp"
#include "score_table.hpp"
#include "scupper/estimate/run.hpp"
#include "strata.hpp"
#include "told.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace scupper::simulate::detail {

namespace {

/// Of the probable outcomes of a visit, equally probable each.
constexpr std::size_t outcomes = strata;

/// The draws in so many batches tell how sure a width is.
constexpr std::size_t batches = 8;

/// What a visit adds to the total of every draw, by outcome.
using Changes = std::array<std::vector<double>, outcomes>;

double p10_p90(std::vector<double> costs) {
    std::sort(costs.begin(), costs.end());
    return estimate::sorted_quantile(costs, 0.9) - estimate::sorted_quantile(costs, 0.1);
}

/// What the measurements of a visit find.
struct Found {
    std::vector<double> values;
    std::vector<double> scores;
};

/// Prices a structure in all draws, as they are and with measurements certain.
class Outcomes {
  public:
    Outcomes(const estimate::Plan& plan, const estimate::DrawSettings& settings)
        : plan_(plan), settings_(settings), workspace_(plan),
          cost_(estimate::figure_place_of(plan, "cost.total")) {}

    Changes of(const Structure& structure, const Visit& visit) {
        resolve(structure, plan_, resolved_);
        std::vector<std::size_t> places;
        for (const Measurement& m : visit.measurements) {
            places.push_back(m.place);
        }
        const Told told(resolved_, places);
        find_values(places, told);
        values_ = resolved_.values;
        const estimate::InputDraws draws(resolved_, settings_);
        Changes changes;
        for (std::size_t d = 0; d < settings_.draws; ++d) {
            draws.fill(d, values_);
            const double before = cost();
            const std::vector<double> scores = told_scores(draws, d, places, told);
            for (std::size_t k = 0; k < outcomes; ++k) {
                put_found(places, found_[k]);
                put_told(told, scores, found_[k].scores);
                changes[k].push_back(cost() - before);
            }
        }
        return changes;
    }

  private:
    double cost() {
        price(resolved_.model, estimate::Inputs<double>(plan_.inputs, values_.data()), workspace_);
        return workspace_.figures.at(cost_);
    }
    /// What each measurement finds, by outcome: a hypercube apart from the draws, and where they
    /// vary together scores that do as well.
    void find_values(const std::vector<std::size_t>& places, const Told& told) {
        found_.assign(outcomes, {});
        for (const std::size_t place : places) {
            const FastQuantile quantile(resolved_.uncertain[place].guess);
            const Permutation stratum({combine(settings_.seed, hash_text("found")),
                                       resolved_.stream, plan_.hashes[place]},
                                      outcomes);
            for (std::size_t k = 0; k < outcomes; ++k) {
                const double u = middle_of(stratum(k));
                found_[k].values.push_back(quantile(u));
                found_[k].scores.push_back(normal_quantile(u));
            }
        }
        for (Found& found : found_) {
            if (told.is_joint()) {
                told.mix(found.scores);
                for (std::size_t m = 0; m < places.size(); ++m) {
                    const FastQuantile quantile(resolved_.uncertain.at(places[m]).guess);
                    found.values[m] = quantile(inner_probability(found.scores[m]));
                }
            }
        }
    }
    void put_found(const std::vector<std::size_t>& places, const Found& found) {
        for (std::size_t m = 0; m < places.size(); ++m) {
            values_.at(places[m]) = found.values[m];
        }
    }
    /// What of the scores of told inputs does not go with the measured ones, in a draw.
    static std::vector<double> told_scores(const estimate::InputDraws& draws, std::size_t draw,
                                           const std::vector<std::size_t>& places,
                                           const Told& told) {
        std::vector<double> rest;
        if (told.inputs().empty()) {
            return rest;
        }
        std::vector<double> measured;
        for (const std::size_t place : places) {
            measured.push_back(normal_quantile(draws.uniform(draw, place)));
        }
        for (const ToldInput& input : told.inputs()) {
            rest.push_back(normal_quantile(draws.uniform(draw, input.place)) -
                           told_score(input, measured));
        }
        return rest;
    }
    void put_told(const Told& told, const std::vector<double>& rest,
                  const std::vector<double>& measured) {
        for (std::size_t i = 0; i < rest.size(); ++i) {
            const ToldInput& input = told.inputs()[i];
            values_[input.place] =
                input.quantile(inner_probability(rest[i] + told_score(input, measured)));
        }
    }

    const estimate::Plan& plan_;
    const estimate::DrawSettings& settings_;
    estimate::Resolved resolved_;
    estimate::Workspace<double> workspace_;
    std::size_t cost_;
    std::vector<double> values_;
    std::vector<Found> found_; ///< by outcome
};

/// The width to be expected once a visit's changes are added to each outcome's totals.
double expected_width(const Changes& totals, const Changes& changes) {
    double sum = 0.0;
    for (std::size_t k = 0; k < outcomes; ++k) {
        std::vector<double> costs = totals[k];
        for (std::size_t d = 0; d < costs.size(); ++d) {
            costs[d] += changes[k][d];
        }
        if (!std::all_of(costs.begin(), costs.end(), [](double x) { return std::isfinite(x); })) {
            return std::numeric_limits<double>::quiet_NaN();
        }
        sum += p10_p90(std::move(costs));
    }
    return sum / static_cast<double>(outcomes);
}

/// Every so many draws of each outcome, from one of the first on.
Changes batch_of(const Changes& all, std::size_t batch) {
    Changes some;
    for (std::size_t k = 0; k < outcomes; ++k) {
        for (std::size_t d = batch; d < all[k].size(); d += batches) {
            some[k].push_back(all[k][d]);
        }
    }
    return some;
}

/// The standard error of what a visit narrows by, from what batches of the draws differ by.
double error_of(const Changes& now, const Changes& changes) {
    std::vector<double> narrowings;
    for (std::size_t batch = 0; batch < batches; ++batch) {
        const Changes some = batch_of(now, batch);
        narrowings.push_back(p10_p90(some.front()) -
                             expected_width(some, batch_of(changes, batch)));
    }
    return sd_of_draws(narrowings) / std::sqrt(static_cast<double>(batches));
}

void add(const Changes& changes, Changes& totals) {
    for (std::size_t k = 0; k < outcomes; ++k) {
        for (std::size_t d = 0; d < totals[k].size(); ++d) {
            totals[k][d] += changes[k][d];
        }
    }
}

} // namespace

void put_narrowing(std::span<const Structure> structures, const estimate::DrawSettings& settings,
                   std::span<const double> costs, unsigned threads, SurveyList& list) {
    std::vector<Changes> changes(list.visits.size());
    const auto block = [&](std::size_t first, std::size_t last) {
        Outcomes outcomes_of(*list.plan, settings);
        for (std::size_t v = first; v < last; ++v) {
            changes[v] = outcomes_of.of(structures[list.visits[v].index], list.visits[v]);
        }
    };
    estimate::run_blocks(list.visits.size(), threads, block, {}, 1);
    Changes now;
    now.fill({costs.begin(), costs.end()});
    list.middle_range = p10_p90(now.front());
    Changes totals = now;
    for (std::size_t v = 0; v < changes.size(); ++v) {
        Visit& visit = list.visits[v];
        visit.narrows_by_draws = list.middle_range - expected_width(now, changes[v]);
        visit.narrows_error = error_of(now, changes[v]);
        visit.left_by_draws = expected_width(totals, changes[v]);
        add(changes[v], totals);
    }
}

} // namespace scupper::simulate::detail
