#pragma once
// Any figures of one structure in every draw. Internal to the part.

#include "drawing.hpp"
#include "tape.hpp"

#include <cstddef>
#include <span>
#include <vector>

namespace scupper::simulate::detail {

/// Draws and prices one structure after the other; its memory is used again for the next.
class FigureDrawer {
  public:
    /// Follows figures at these places of the figure layout.
    FigureDrawer(const estimate::Plan& plan, const SimulationSettings& settings,
                 const SharedScores& shared, std::vector<std::size_t> places);

    /// Takes up a structure and prices it as estimated.
    estimate::Outcome take(const Structure& structure);
    const estimate::Resolved& resolved() const { return resolved_; }
    /// A figure as estimated.
    double estimated(std::size_t figure) const { return estimated_[figure]; }

    /// Draws all figures of the structure.
    void draw();
    /// A figure in every draw.
    std::span<const double> drawn(std::size_t figure) const {
        return {drawn_.data() + figure * draws_, draws_};
    }
    /// In how many draws one of the figures from `first` to before `last` has no number: a sum with
    /// it would be of nothing.
    std::size_t lost_draws(std::size_t first, std::size_t last) const;

    std::size_t figures() const { return places_.size(); }

  private:
    void price_at(const std::vector<double>& values);
    void run_block(std::size_t first, std::size_t count);
    void price_block(std::size_t first, std::size_t count);

    const estimate::Plan& plan_;
    std::size_t draws_;
    std::vector<std::size_t> places_;
    Tape tape_;
    Drawing drawing_;
    estimate::Resolved resolved_;
    estimate::Workspace<double> workspace_;
    std::vector<double> estimated_;
    std::vector<double> values_; ///< inputs of the draw at hand
    std::vector<double> drawn_;  ///< figure after figure, draw by draw
};

} // namespace scupper::simulate::detail
