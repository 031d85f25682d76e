#include "correlated.hpp"

#include "shared_scores.hpp"

#include <algorithm>
#include <numeric>
#include <vector>

namespace scupper::simulate::detail {

namespace {

/// What keys the places of draws within their strata, apart from the draws themselves.
const std::uint64_t within_strata = hash_text("places within strata");

} // namespace

void stratify(const SimulationSettings& settings, std::uint64_t stream, std::uint64_t input,
              std::span<double> scores) {
    const std::size_t size = settings.draws / settings.replicates;
    std::vector<std::size_t> order(size);
    for (std::size_t r = 0; r < settings.replicates; ++r) {
        const std::span<double> replicate = scores.subspan(r * size, size);
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return replicate[a] != replicate[b] ? replicate[a] < replicate[b] : a < b;
        });
        const DrawKey key{replicate_seed(settings.seed, r), stream, combine(input, within_strata)};
        for (std::size_t k = 0; k < size; ++k) {
            const double u = (static_cast<double>(k) + uniform(key, k)) / static_cast<double>(size);
            replicate[order[k]] = normal_quantile(std::min(u, 1.0 - 0x1p-53));
        }
    }
}

void add_scores(double weight, std::span<const double> uniforms, std::span<double> scores) {
    for (std::size_t i = 0; i < scores.size(); ++i) {
        scores[i] += weight * normal_quantile(uniforms[i]);
    }
}

} // namespace scupper::simulate::detail
