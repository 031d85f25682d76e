#include "shared_scores.hpp"

#include <algorithm>

namespace scupper::simulate::detail {

namespace {

/// The stream of what all structures have in common.
const std::uint64_t shared_stream = hash_text("shared by all structures");

/// Beyond this many draws a column is drawn anew for every structure: 300 of them would not fit.
constexpr std::size_t kept_draws = std::size_t{1} << 17;

} // namespace

void fill_uniforms(const SimulationSettings& settings, std::uint64_t stream, std::uint64_t input,
                   std::size_t first, std::span<double> out) {
    const std::size_t size = settings.draws / settings.replicates;
    while (!out.empty()) {
        const std::size_t replicate = first / size;
        const std::size_t within = first % size;
        const std::size_t count = std::min(out.size(), size - within);
        const DrawKey key{replicate_seed(settings.seed, replicate), stream, input};
        Sampler(settings.sampling, key, size).fill(within, out.first(count));
        first += count;
        out = out.subspan(count);
    }
}

void SharedScores::draw(std::size_t place, std::size_t first, std::span<double> out) const {
    fill_uniforms(settings_, shared_stream, plan_.hashes[place], first, out);
    std::transform(out.begin(), out.end(), out.begin(), normal_quantile);
}

void SharedScores::fill(std::size_t place, std::size_t first, std::span<double> out) const {
    if (settings_.draws > kept_draws) {
        draw(place, first, out);
        return;
    }
    Column& column = columns_[place];
    std::call_once(column.once, [&] {
        column.scores.resize(settings_.draws);
        draw(place, 0, column.scores);
    });
    std::copy_n(column.scores.begin() + static_cast<std::ptrdiff_t>(first), out.size(),
                out.begin());
}

const ValueOfScore& SharedScores::values_of(std::size_t place) const {
    Column& column = columns_[place];
    std::call_once(column.values_once, [&] { column.values.emplace(plan_.base[place].guess); });
    return *column.values;
}

} // namespace scupper::simulate::detail
