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

/// Of an input that no Sobol' points are at hand for.
inline constexpr std::size_t no_dimension = static_cast<std::size_t>(-1);

/// Whether what structures share is drawn by Sobol' points.
constexpr bool is_sobol(Sampling sampling) {
    return sampling == Sampling::sobol || sampling == Sampling::sobol_single;
}

/// Writes the uniforms of consecutive draws of one input in one stream: Sobol' points of a
/// dimension, or without one what a Sampler gives.
void fill_uniforms(const SimulationSettings& settings, std::uint64_t stream, std::uint64_t input,
                   std::size_t first, std::span<double> out, std::size_t dimension = no_dimension);

/// What structures share of each input, found once for a run by whichever thread asks first: normal
/// scores of the draws, kept as long as they take little memory, and values by score.
class SharedScores {
  public:
    SharedScores(const estimate::Plan& plan, const SimulationSettings& settings);

    /// The scores of consecutive draws: those kept, or written into memory as long as is asked for.
    const double* scores(std::size_t place, std::size_t first, std::span<double> memory) const;
    /// The first dimension that no shared part takes.
    std::size_t next_dimension() const { return next_dimension_; }

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
    void draw_together(const estimate::CorrelatedInput& input, std::span<double> out) const;

    const estimate::Plan& plan_;
    SimulationSettings settings_;
    mutable std::deque<Column> columns_;
    std::vector<std::size_t> dimensions_; ///< by place; no_dimension where it has none
    std::size_t next_dimension_ = 0;
};

} // namespace scupper::simulate::detail
