#include "line_flow.hpp"

#include "line_fault.hpp"
#include "scupper/hydraulics/friction.hpp"
#include "scupper/hydraulics/nozzle.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace scupper::hydraulics::detail {

void LineFlow::take(const Line<>& line) {
    laws_.clear();
    for (const Segment<>& s : line.hose) {
        laws_.push_back(law_of(s, line.fluid));
    }
    roots_.assign(laws_.size(), 0.0);
    tip_ = nozzle_pressure(line.nozzle.bore, Flow<>(1.0), line.nozzle.discharge_coefficient,
                           line.fluid.density)
               .si();
    left_ = (line.pump_pressure - static_pressure(line.rise, line.fluid.density)).si();
}

LineFlow::Excess LineFlow::excess_at(double square) {
    const double flow = std::sqrt(square);
    Excess sum{tip_ * square - left_, tip_};
    for (std::size_t i = 0; i < laws_.size(); ++i) {
        const Loss loss = loss_at(laws_[i], flow, roots_[i]);
        sum.pressure += loss.pressure;
        sum.slope += loss.slope / (2.0 * flow);
    }
    return sum;
}

/// Newton inside a bracket, halved where a step would leave it.
Solved LineFlow::free_flow(double most) {
    constexpr double eps = std::numeric_limits<double>::epsilon();
    constexpr int bound = 200; // halving alone needs fewer
    double low = 0.0;
    double high = most;
    double square = most * left_ / (left_ + std::max(excess_at(most).pressure, 0.0));
    Excess e = excess_at(square);
    for (int i = 0; i < bound && std::abs(e.pressure) > 1e-13 * left_; ++i) {
        (e.pressure > 0.0 ? high : low) = square;
        double next = square - e.pressure / e.slope;
        if (!(next > low && next < high)) {
            next = 0.5 * (low + high);
        }
        if (std::abs(next - square) <= 2.0 * eps * square) {
            break;
        }
        square = next;
        e = excess_at(square);
    }
    return {std::sqrt(square), e.pressure / left_};
}

Solved LineFlow::solve(const Line<>& line) {
    constexpr double no_number = std::numeric_limits<double>::quiet_NaN();
    if (fault_of(line)) {
        return {no_number, no_number};
    }
    take(line);
    const double without_losses = nozzle_flow(line.nozzle.bore, Pressure<>(left_),
                                              line.nozzle.discharge_coefficient, line.fluid.density)
                                      .si();
    if (line.flow_limit && line.flow_limit->si() < without_losses) {
        const double limit = line.flow_limit->si();
        if (excess_at(limit * limit).pressure < 0.0) {
            return {limit, 0.0};
        }
        roots_.assign(laws_.size(), 0.0); // the flow is, to the bit, that of a line without a limit
    }
    return free_flow(without_losses * without_losses);
}

} // namespace scupper::hydraulics::detail
