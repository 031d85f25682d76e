#pragma once
// Draws and sums up one structure after the other on one thread. Internal to the part.

#include "figure_drawer.hpp"

#include <vector>

namespace scupper::simulate::detail {

/// Where the simulated figures stand in the figure layout, in their order.
std::vector<std::size_t> simulated_places(const estimate::Plan& plan);

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
    void summarize(std::size_t figure, StructureRange& range);
    void add_to_totals();

    std::size_t draws_;
    FigureDrawer drawer_;
    std::vector<double> scratch_; ///< draws of one figure, in the order that quantiles need
    std::vector<estimate::FixedTotal> estimated_;
    std::vector<estimate::FixedTotal> totals_; ///< draw by draw, figure by figure
    std::vector<estimate::Unpriced> unpriced_;
    std::vector<estimate::Unpriced> left_out_;
};

} // namespace scupper::simulate::detail
