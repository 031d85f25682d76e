#pragma once
// The flow of a line by Newton's method. Internal to the part.

#include "lay_loss.hpp"
#include "scupper/traced.hpp"

#include <vector>

namespace scupper::hydraulics::detail {

/// Solves lines one after the other; its memory is used again for the next.
class LineFlow {
  public:
    /// The flow at which losses and tip take the pressure that the rise leaves, at most the pump's
    /// [m3/s], and what is left of that pressure [-]; not a number where the line has a fault.
    Solved solve(const Line<>& line);

  private:
    /// What the line takes beyond the pressure left for it [Pa], and the slope over the square of
    /// the flow, in which it is nearly straight.
    struct Excess {
        double pressure;
        double slope;
    };
    void take(const Line<>& line);
    Excess excess_at(double square);
    Solved free_flow(double most);

    std::vector<SegmentLaw> laws_;
    std::vector<double> roots_; ///< of the friction factors, where the next search for them starts
    double tip_ = 0.0;          ///< tip pressure at 1 m3/s
    double left_ = 0.0;         ///< pressure left by the rise
};

} // namespace scupper::hydraulics::detail
