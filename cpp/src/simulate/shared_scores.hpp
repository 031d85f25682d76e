#pragma once
// Uniforms and normal scores of the draws of a run. Internal to the part.

#include "score_table.hpp"
#include "scupper/random.hpp"
#include "scupper/simulate/simulation.hpp"

#include <cstddef>
#include <deque>
#include <mutex>
#include <optional>
#include <span>
#include <vector>

namespace scupper::simulate::detail {

/// The seed of a replicate; the first one's is that of the run.
inline std::uint64_t replicate_seed(std::uint64_t seed, std::size_t replicate) {
    return replicate == 0 ? seed : combine(seed, replicate);
}

/// Writes the uniforms of consecutive draws of one input in one stream.
void fill_uniforms(const SimulationSettings& settings, std::uint64_t stream, std::uint64_t input,
                   std::size_t first, std::span<double> out);

/// What structures share of each input, found once for a run by whichever thread asks first: normal
/// scores of the draws, kept as long as they take little memory, and values by score.
class SharedScores {
  public:
    SharedScores(const estimate::Plan& plan, const SimulationSettings& settings)
        : plan_(plan), settings_(settings), columns_(plan.hashes.size()) {}

    /// Writes the scores of consecutive draws.
    void fill(std::size_t place, std::size_t first, std::span<double> out) const;

    /// The values of a PERT input by its scores, as the job has it.
    const ValueOfScore& values_of(std::size_t place) const;

  private:
    struct Column {
        std::once_flag once;
        std::vector<double> scores;
        std::once_flag values_once;
        std::optional<ValueOfScore> values;
    };
    void draw(std::size_t place, std::size_t first, std::span<double> out) const;

    const estimate::Plan& plan_;
    SimulationSettings settings_;
    mutable std::deque<Column> columns_;
};

} // namespace scupper::simulate::detail
