#pragma once
// Draws and prices one structure after the other on one thread. Internal to the part.

#include "drawing.hpp"
#include "tape.hpp"

#include <vector>

namespace scupper::simulate::detail {

/// One for each thread; holds all the memory that draws need.
class Worker {
  public:
    Worker(const estimate::Plan& plan, const SimulationSettings& settings,
           const SharedScores& shared);

    /// Writes the ranges of a structure; false where it has none, which is noted with the reason.
    bool simulate(const Structure& structure, std::size_t index, SimulatedStructure& ranges);
    const std::vector<estimate::FixedTotal>& estimated() const { return estimated_; }
    const std::vector<estimate::FixedTotal>& totals() const { return totals_; }
    /// Structures without a price as estimated, and those without one in some draw.
    std::vector<estimate::Unpriced>& unpriced() { return unpriced_; }
    std::vector<estimate::Unpriced>& left_out() { return left_out_; }

  private:
    void price_at(const std::vector<double>& values);
    void draw_all();
    void run_block(std::size_t first, std::size_t count);
    void price_block(std::size_t first, std::size_t count);
    /// How many draws lack one of the figures: such a sum would be of nothing.
    std::size_t lost_draws() const;
    void summarize(std::size_t figure, StructureRange& range);
    void add_to_totals(const SimulatedStructure& drawn);

    const estimate::Plan& plan_;
    const SimulationSettings& settings_;
    std::vector<std::size_t> places_; ///< of the simulated figures
    Tape tape_;
    Drawing drawing_;
    estimate::Resolved resolved_;
    estimate::Workspace<double> workspace_;
    std::vector<double> values_;  ///< inputs of the draw at hand
    std::vector<double> drawn_;   ///< figure after figure, draw by draw
    std::vector<double> scratch_; ///< draws of one figure, in the order that quantiles need
    std::vector<estimate::FixedTotal> estimated_;
    std::vector<estimate::FixedTotal> totals_; ///< draw by draw, figure by figure
    std::vector<estimate::Unpriced> unpriced_;
    std::vector<estimate::Unpriced> left_out_;
};

} // namespace scupper::simulate::detail
