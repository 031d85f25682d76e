#pragma once
// The drawn inputs of one structure, a block of draws at a time. Internal to the part.

#include "scupper/random.hpp"
#include "shared_scores.hpp"
#include "tape.hpp"

#include <cstddef>
#include <cstdint>
#include <deque>
#include <optional>
#include <span>
#include <vector>

namespace scupper::simulate::detail {

/// Structures a thread takes at a time: each takes long, and a listener wants to hear.
inline constexpr std::size_t block_structures = 4;

/// Draws what is uncertain about a structure. Its memory is used again for the next.
class Drawing {
  public:
    Drawing(const SimulationSettings& settings, const SharedScores& shared)
        : settings_(settings), shared_(shared) {}

    /// Takes up a structure; of its uncertain inputs only those that move a figure are drawn.
    void take(const estimate::Resolved& resolved, const std::vector<char>& moves);
    /// Draws all inputs for at most `block_draws` consecutive draws.
    void draw(std::size_t first, std::size_t count);
    /// Places of the inputs that are drawn, and where the block's draws of each begin.
    const std::vector<std::size_t>& places() const { return places_; }
    const std::vector<const double*>& columns() const { return columns_; }
    /// Whether a draw of the block lies outside of what the schema allows.
    bool is_out_of_bounds(std::size_t count) const;
    /// Writes the inputs of a draw of the block over those of the structure.
    void put(std::size_t i, std::span<double> values) const {
        for (std::size_t k = 0; k < inputs_.size(); ++k) {
            values[inputs_[k].place] = columns_[k][i];
        }
    }

  private:
    struct Input {
        std::size_t place;
        const ValueOfScore* values;           ///< of a PERT, else none
        std::optional<FastQuantile> quantile; ///< of any other family
        double shared_weight; ///< of the scores; squares of both weights add up to one
        double own_weight;
        std::vector<double> own_scores{}; ///< of all draws, where it varies together with others
    };
    /// A dimension of Sobol' points for the own part of each input, where there is one structure.
    void choose_dimensions();
    /// Draws the own parts of inputs that vary together, which takes whole replicates.
    void draw_together(Input& input);
    void fill_own(const Input& input, std::size_t first, std::span<double> out) const;
    const ValueOfScore* values_of(std::size_t place);
    void draw_scores(const Input& input, std::size_t first, std::span<double> out) const;
    void draw_input(const Input& input, std::size_t first, std::span<double> out) const;

    const SimulationSettings& settings_;
    const SharedScores& shared_;
    const estimate::Resolved* resolved_ = nullptr;
    std::vector<Input> inputs_;
    std::deque<ValueOfScore> own_values_; ///< of inputs that are this structure's own
    std::vector<std::size_t> places_;
    std::vector<const double*> columns_;
    std::vector<double> drawn_;               ///< input after input
    std::vector<std::size_t> own_dimensions_; ///< by place
};

} // namespace scupper::simulate::detail
