#include "scupper/simulate/indices.hpp"

#include "require.hpp"
#include "sample.hpp"
#include "scupper/error.hpp"
#include "shared_scores.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>

namespace scupper::simulate {

namespace {

using Values = std::span<const double>;

const std::uint64_t first_stream = hash_text("first sample");
const std::uint64_t second_stream = hash_text("second sample");

void require_length(Values one, Values other) {
    if (one.empty() || one.size() != other.size()) {
        throw InputError({"simulate.runs", "runs", std::to_string(other.size()),
                          "as many as of the first, at least 1"});
    }
}

/// Mean and variance over both samples, about the mean of all.
struct Moments {
    double mean = 0.0, variance = 0.0;
};

Moments moments_of(Values first, Values second) {
    const double mean = 0.5 * (detail::mean_of_draws(first) + detail::mean_of_draws(second));
    double sum = 0.0;
    for (std::size_t i = 0; i < first.size(); ++i) {
        sum += (first[i] - mean) * (first[i] - mean) + (second[i] - mean) * (second[i] - mean);
    }
    return {mean, sum / (2.0 * static_cast<double>(first.size()))};
}

/// A sample's points: the uniforms of every input, draw by draw.
std::vector<std::vector<double>> sample(std::size_t inputs, std::uint64_t stream,
                                        const SimulationSettings& settings) {
    std::vector<std::vector<double>> columns(inputs, std::vector<double>(settings.draws));
    for (std::size_t i = 0; i < inputs; ++i) {
        detail::fill_uniforms(settings, stream, i, 0, columns[i]);
    }
    return columns;
}

/// Ranks from 0, equal values with the mean of theirs.
std::vector<double> ranks_of(Values values) {
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return values[a] < values[b]; });
    const auto at = [&](std::size_t place) { return values[order.at(place)]; };
    std::vector<double> ranks(values.size());
    for (std::size_t first = 0; first < order.size();) {
        const double value = at(first);
        std::size_t last = first + 1;
        while (last < order.size() && at(last) == value) {
            ++last;
        }
        const double rank = 0.5 * static_cast<double>(first + last - 1);
        for (; first < last; ++first) {
            const std::size_t place = order[first];
            ranks[place] = rank;
        }
    }
    return ranks;
}

/// The standard error of an index from what it is in each replicate.
template <class Index>
double error_of(const Index& index, const FactorRuns& runs, const std::vector<double>& exchanged,
                std::size_t replicates) {
    const std::size_t size = runs.first.size() / replicates;
    std::vector<double> found;
    for (std::size_t r = 0; r < replicates; ++r) {
        const auto part = [&](Values all) { return all.subspan(r * size, size); };
        found.push_back(index(part(runs.first), part(runs.second), part(exchanged)));
    }
    return detail::sd_of_draws(found) / std::sqrt(static_cast<double>(replicates));
}

void check(const SimulationSettings& settings, std::size_t inputs,
           std::span<const Factor> factors) {
    detail::require_whole_replicates(settings);
    for (const Factor& factor : factors) {
        for (const std::size_t place : factor) {
            if (place >= inputs) {
                throw InputError({"simulate.factor", "factor", std::to_string(place),
                                  "below " + std::to_string(inputs) + " inputs"});
            }
        }
    }
}

} // namespace

FactorRuns run_factors(const CubeFunction& function, std::size_t inputs,
                       std::span<const Factor> factors, const SimulationSettings& settings) {
    check(settings, inputs, factors);
    const auto first = sample(inputs, first_stream, settings);
    const auto second = sample(inputs, second_stream, settings);
    FactorRuns runs{std::vector<double>(settings.draws), std::vector<double>(settings.draws), {}};
    runs.exchanged.assign(factors.size(), std::vector<double>(settings.draws));
    std::vector<double> a(inputs), b(inputs);
    for (std::size_t d = 0; d < settings.draws; ++d) {
        for (std::size_t i = 0; i < inputs; ++i) {
            a[i] = first[i][d];
            b[i] = second[i][d];
        }
        runs.first[d] = function(a);
        runs.second[d] = function(b);
        for (std::size_t k = 0; k < factors.size(); ++k) {
            std::vector<double> point = a;
            for (const std::size_t place : factors[k]) {
                point[place] = b[place];
            }
            runs.exchanged[k][d] = function(point);
        }
    }
    return runs;
}

double first_order_index(Values first, Values second, Values exchanged) {
    require_length(first, second);
    require_length(first, exchanged);
    const Moments all = moments_of(first, second);
    double sum = 0.0;
    for (std::size_t i = 0; i < first.size(); ++i) {
        sum += (second[i] - all.mean) * (exchanged[i] - first[i]);
    }
    return all.variance > 0.0 ? sum / static_cast<double>(first.size()) / all.variance : 0.0;
}

double total_index(Values first, Values second, Values exchanged) {
    require_length(first, second);
    require_length(first, exchanged);
    const double variance = moments_of(first, second).variance;
    double sum = 0.0;
    for (std::size_t i = 0; i < first.size(); ++i) {
        sum += (first[i] - exchanged[i]) * (first[i] - exchanged[i]);
    }
    return variance > 0.0 ? sum / (2.0 * static_cast<double>(first.size()) * variance) : 0.0;
}

std::vector<FactorIndices> indices_of(const FactorRuns& runs, std::size_t replicates) {
    if (replicates == 0 || runs.first.size() % replicates != 0) {
        throw InputError({"simulate.runs", "runs", std::to_string(runs.first.size()),
                          "a whole multiple of " + std::to_string(replicates) + " replicates"});
    }
    std::vector<FactorIndices> indices;
    for (const std::vector<double>& exchanged : runs.exchanged) {
        indices.push_back({first_order_index(runs.first, runs.second, exchanged),
                           error_of(first_order_index, runs, exchanged, replicates),
                           total_index(runs.first, runs.second, exchanged),
                           error_of(total_index, runs, exchanged, replicates)});
    }
    return indices;
}

double rank_correlation(Values x, Values y) {
    require_length(x, y);
    const std::vector<double> a = ranks_of(x);
    const std::vector<double> b = ranks_of(y);
    const double mean = 0.5 * static_cast<double>(x.size() - 1);
    double ab = 0.0, aa = 0.0, bb = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        ab += (a[i] - mean) * (b[i] - mean);
        aa += (a[i] - mean) * (a[i] - mean);
        bb += (b[i] - mean) * (b[i] - mean);
    }
    return aa > 0.0 && bb > 0.0 ? ab / std::sqrt(aa * bb) : 0.0;
}

} // namespace scupper::simulate
