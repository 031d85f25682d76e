#include "shared_scores.hpp"

#include "correlated.hpp"
#include "scupper/takeoff.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::simulate::detail {

namespace {

/// The stream of what all structures have in common.
const std::uint64_t shared_stream = hash_text("shared by all structures");

/// Beyond this many draws a column is drawn anew for every structure: 300 of them would not fit.
constexpr std::size_t kept_draws = std::size_t{1} << 17;

} // namespace

void fill_uniforms(const SimulationSettings& settings, std::uint64_t stream, std::uint64_t input,
                   std::size_t first, std::span<double> out, std::size_t dimension) {
    const std::size_t size = settings.draws / settings.replicates;
    while (!out.empty()) {
        const std::size_t replicate = first / size;
        const std::size_t within = first % size;
        const std::size_t count = std::min(out.size(), size - within);
        const DrawKey key{replicate_seed(settings.seed, replicate), stream, input};
        if (dimension < sobol_dimensions) {
            ScrambledSobol(key, dimension, size).fill(within, out.first(count));
        } else {
            Sampler(settings.sampling, key, size).fill(within, out.first(count));
        }
        first += count;
        out = out.subspan(count);
    }
}

/// What the job says is uncertain comes first, then what follows from the record of a structure; so
/// an input has the same dimension whatever structures are on the list.
SharedScores::SharedScores(const estimate::Plan& plan, const SimulationSettings& settings)
    : plan_(plan), settings_(settings), columns_(plan.hashes.size()),
      dimensions_(plan.hashes.size(), no_dimension) {
    if (!is_sobol(settings.sampling)) {
        return;
    }
    for (std::size_t place = takeoff::dimension_count; place < plan.base.size(); ++place) {
        const Uncertain& input = plan.base[place];
        if (!std::isnan(input.guess.likely) && !is_certain(input) && input.shared_share > 0.0) {
            dimensions_[place] = next_dimension_++;
        }
    }
    for (std::size_t place = 0; place < takeoff::dimension_count; ++place) {
        dimensions_[place] = next_dimension_++;
    }
}

void SharedScores::draw(std::size_t place, std::size_t first, std::span<double> out) const {
    fill_uniforms(settings_, shared_stream, plan_.hashes[place], first, out, dimensions_[place]);
    std::transform(out.begin(), out.end(), out.begin(), normal_quantile);
}

void SharedScores::draw_together(const estimate::CorrelatedInput& input,
                                 std::span<double> out) const {
    std::vector<double> uniforms(out.size());
    for (const estimate::ScoreTerm& term : input.terms) {
        fill_uniforms(settings_, shared_stream, plan_.hashes[term.place], 0, uniforms,
                      dimensions_[term.place]);
        add_scores(term.weight, uniforms, out);
    }
    if (settings_.sampling == Sampling::latin_hypercube) {
        stratify(settings_, shared_stream, plan_.hashes[input.place], out);
    }
}

const double* SharedScores::scores(std::size_t place, std::size_t first,
                                   std::span<double> memory) const {
    const estimate::CorrelatedInput* together = correlated_at(plan_, place);
    if (settings_.draws > kept_draws && together == nullptr) {
        draw(place, first, memory);
        return memory.data();
    }
    Column& column = columns_[place];
    std::call_once(column.once, [&] {
        column.scores.resize(settings_.draws);
        if (together != nullptr) {
            draw_together(*together, column.scores);
        } else {
            draw(place, 0, column.scores);
        }
    });
    return column.scores.data() + first;
}

const ValueOfScore& SharedScores::values_of(std::size_t place) const {
    Column& column = columns_[place];
    std::call_once(column.values_once, [&] { column.values.emplace(plan_.base[place].guess); });
    return *column.values;
}

} // namespace scupper::simulate::detail
