#pragma once
// Prices one structure after the other in two samples, with one factor after the other exchanged.
// Internal to the part.

#include "drawing.hpp"
#include "factors.hpp"
#include "tape.hpp"

#include <vector>

namespace scupper::simulate::detail {

/// What all structures give, draw by draw; the same bits in whatever order they are added.
class ExchangedTotals {
  public:
    ExchangedTotals(std::size_t factors, std::size_t draws)
        : draws_(draws), figures_((2 + factors) * draws), inputs_(factors * draws) {}

    /// Adds what one structure gives: its figures sample after sample, its inputs.
    void add(const std::vector<double>& figures, const std::vector<double>& inputs);
    void add(const ExchangedTotals& other);
    FactorRuns runs() const;
    /// The sums of a factor's only input over structures, times a power of two.
    std::vector<double> inputs(std::size_t factor) const;

  private:
    std::vector<double> values(std::size_t sample) const;

    std::size_t draws_;
    std::vector<estimate::FixedTotal> figures_; ///< both samples, then each factor exchanged
    std::vector<estimate::FixedTotal> inputs_;
};

/// How a structure took part.
enum class Part : char { unpriced, counted, left_out };

/// One for each thread; holds all the memory that the draws need.
class Exchanger {
  public:
    /// Two kinds of shared scores, for the two samples; all must outlive this.
    Exchanger(const estimate::Plan& plan, std::size_t figure, const std::vector<Factor>& factors,
              const SimulationSettings& first, const SharedScores& first_shared,
              const SimulationSettings& second, const SharedScores& second_shared);

    Part run(const Structure& structure);
    const ExchangedTotals& totals() const { return totals_; }

  private:
    double figure_at(const std::vector<double>& values);
    void find_moving(const std::vector<char>& moves);
    void run_draw(std::size_t draw);

    const estimate::Plan& plan_;
    const std::vector<Factor>& factors_;
    std::size_t draws_;
    std::vector<std::size_t> figure_; ///< the one place
    Tape tape_;
    Drawing first_, second_;
    estimate::Resolved resolved_;
    estimate::Workspace<double> workspace_;
    std::vector<Factor> moving_;  ///< of each factor what is drawn at this structure
    std::vector<double> a_, b_;   ///< inputs of the draw at hand
    std::vector<double> figures_; ///< of this structure, as in ExchangedTotals
    std::vector<double> inputs_;  ///< of this structure, as in ExchangedTotals
    ExchangedTotals totals_;
};

} // namespace scupper::simulate::detail
