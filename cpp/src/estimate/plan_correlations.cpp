#include "plan_parts.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace scupper::estimate {

namespace {

/// Places of two inputs, the smaller first.
using Pair = std::pair<std::size_t, std::size_t>;

std::string path_of(std::size_t entry) {
    return "job.correlations[" + std::to_string(entry) + "]";
}

const std::string& key_of(const Plan& plan, std::size_t place) {
    return plan.inputs.fields()[place].key;
}

std::string rank_text(double rank) {
    std::string text = std::to_string(rank);
    text.erase(text.find_last_not_of('0') + 1);
    return text.ends_with('.') ? text + "0" : text;
}

std::vector<std::size_t> places_of(const Plan& plan, const Correlation& entry,
                                   const std::string& path) {
    if (entry.inputs.size() < 2) {
        throw InputError({"job.correlation", path + ".inputs",
                          std::to_string(entry.inputs.size()) + " inputs", "two inputs or more"});
    }
    std::vector<std::size_t> places;
    for (const std::string& key : entry.inputs) {
        const std::size_t place = plan.inputs.at(full_key(key), path + ".inputs");
        if (std::find(places.begin(), places.end(), place) != places.end()) {
            throw InputError(
                {"job.correlation", path + ".inputs", "\"" + key + "\" twice", "each input once"});
        }
        places.push_back(place);
    }
    return places;
}

void require_rank(double rank, const std::string& path) {
    if (!(rank > -1.0 && rank < 1.0)) {
        throw InputError({"job.correlation", path + ".rank", std::to_string(rank),
                          "above -1 and below 1, as 0.9"});
    }
}

/// The rank correlation of every pair that the job names.
std::map<Pair, double> ranks_of(const Plan& plan) {
    std::map<Pair, double> ranks;
    for (std::size_t e = 0; e < plan.job.correlations.size(); ++e) {
        const Correlation& entry = plan.job.correlations[e];
        require_rank(entry.rank, path_of(e));
        std::vector<std::size_t> places = places_of(plan, entry, path_of(e));
        std::sort(places.begin(), places.end());
        for (std::size_t i = 1; i < places.size(); ++i) {
            for (std::size_t j = 0; j < i; ++j) {
                if (!ranks.emplace(Pair{places[j], places[i]}, entry.rank).second) {
                    throw InputError(
                        {"job.correlation", path_of(e),
                         key_of(plan, places[j]) + " with " + key_of(plan, places[i]) + " again",
                         "each pair once"});
                }
            }
        }
    }
    return ranks;
}

/// The correlations of normal scores, a row for every input that any pair names.
struct ScoreMatrix {
    std::vector<std::size_t> places; ///< rising
    std::vector<double> values;      ///< row by row

    explicit ScoreMatrix(const std::map<Pair, double>& ranks) {
        std::set<std::size_t> named;
        for (const auto& [pair, rank] : ranks) {
            named.insert({pair.first, pair.second});
        }
        places.assign(named.begin(), named.end());
        values.assign(places.size() * places.size(), 0.0);
        for (std::size_t i = 0; i < places.size(); ++i) {
            values[i * places.size() + i] = 1.0;
        }
        for (const auto& [pair, rank] : ranks) {
            const std::size_t i = row_of(pair.first);
            const std::size_t j = row_of(pair.second);
            const double r = normal_correlation(rank);
            values[i * places.size() + j] = values[j * places.size() + i] = r;
        }
    }
    std::size_t row_of(std::size_t place) const {
        const auto at = std::lower_bound(places.begin(), places.end(), place);
        return static_cast<std::size_t>(at - places.begin());
    }
};

/// Names what was wished and what can be had: all shrunk alike, towards independence.
[[noreturn]] void refuse(const Plan& plan, const std::map<Pair, double>& ranks,
                         const ScoreMatrix& matrix) {
    constexpr double clear = 0.999; // of the limit, where the matrix is singular
    const double share = clear * possible_share(matrix.values, matrix.places.size());
    std::string found;
    std::string allowed;
    for (const auto& [pair, rank] : ranks) {
        const std::string names =
            key_of(plan, pair.first) + " with " + key_of(plan, pair.second) + " ";
        const double possible = rank_correlation(share * normal_correlation(rank));
        const double shown = std::trunc(possible * 1000.0) / 1000.0;
        found += (found.empty() ? "" : ", ") + names + rank_text(rank);
        allowed += (allowed.empty() ? "together at most " : ", ") + names + rank_text(shown);
    }
    throw InputError({"job.correlation", "job.correlations",
                      found + ": no inputs can vary together like that", allowed});
}

} // namespace

const CorrelatedInput* correlated_at(const Plan& plan, std::size_t place) {
    const auto at = std::lower_bound(
        plan.correlated.begin(), plan.correlated.end(), place,
        [](const CorrelatedInput& input, std::size_t p) { return input.place < p; });
    return at == plan.correlated.end() || at->place != place ? nullptr : &*at;
}

void detail::plan_correlations(Plan& plan) {
    const std::map<Pair, double> ranks = ranks_of(plan);
    const ScoreMatrix matrix(ranks);
    const std::size_t n = matrix.places.size();
    const auto weights = score_weights(matrix.values, n);
    if (!weights) {
        refuse(plan, ranks, matrix);
    }
    for (std::size_t i = 0; i < n; ++i) {
        CorrelatedInput input{matrix.places[i], {}};
        for (std::size_t j = 0; j <= i; ++j) {
            const double weight = (*weights)[i * n + j];
            if (weight != 0.0) {
                input.terms.push_back({matrix.places[j], weight});
            }
        }
        if (input.terms.size() > 1) {
            plan.correlated.push_back(std::move(input));
        }
    }
}

} // namespace scupper::estimate
