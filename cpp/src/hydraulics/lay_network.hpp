#pragma once
// The flows of a hose lay by Newton's method on its nozzles' flows. Plain SI numbers.
//
// Unknowns are the flows of the open nozzles; segment flows are their sums, pressures follow from
// the pump downwards by the losses at those flows. What is left is each nozzle's mismatch: the
// pressure that arrives less the one that its flow needs. It is the downward slope of a strictly
// convex function of the flows, the sum of the integrals of all losses, tip pressures and rises
// less that of the pump's pressure. Newton's step solves one linear system; in a tree elimination
// from the ends to the pump and back does that in one pass.

#include "lay_loss.hpp"
#include "scupper/hydraulics/lay.hpp"

#include <vector>

namespace scupper::hydraulics::detail {

/// What a nozzle does in the solve.
enum class Tip : char { closed, open, too_high };

class Network {
  public:
    /// The lay is valid (see check_lay).
    explicit Network(const HoseLay& lay);

    void set_pressure(const Pressure<>& pressure);
    void solve();

    double pump_flow() const { return flow_[0]; }
    double pump_pressure() const { return pressure_[0]; }
    double flow(std::size_t segment) const { return flow_[node_of(segment)]; }
    /// At the end of a segment, or at the pump's outlet.
    double pressure(std::size_t segment) const { return pressure_[node_of(segment)]; }
    double nozzle_flow(std::size_t nozzle) const { return q_[nozzle]; }
    double nozzle_pressure(std::size_t nozzle) const {
        const std::size_t node = node_[nozzle];
        return pressure_[node];
    }
    Tip tip(std::size_t nozzle) const { return state_[nozzle]; }
    const SegmentLaw& law(std::size_t segment) const { return law_[node_of(segment)]; }

    const Fluid<>& fluid() const { return fluid_; }
    const Pump& pump() const { return pump_; }
    PumpLimit limit() const { return limit_; }
    double mass_residual() const;
    double energy_residual() const;
    int iterations() const { return iterations_; }

  private:
    std::size_t node_of(std::size_t segment) const {
        return segment == at_pump ? 0 : place_[segment];
    }
    /// The figure of the node that the segment of a node starts from.
    template <class List>
    auto& from(List& list, std::size_t node) const {
        const std::size_t start = parent_[node];
        return list[start];
    }
    /// The figure of the node that a nozzle stands at.
    template <class List>
    auto& at(List& list, std::size_t nozzle) const {
        const std::size_t node = node_[nozzle];
        return list[node];
    }
    bool open(std::size_t nozzle) const { return state_[nozzle] == Tip::open; }
    void order(const HoseLay& lay);
    void set_nozzles(const HoseLay& lay);
    void static_pressures();
    bool shut_what_is_too_high();
    void square_law_start();
    void share_out();
    void settle();
    void converge();
    void set_pump();
    void evaluate();
    void gather_flows();
    void eliminate();
    void hold_flow();
    void substitute();
    double descent() const;
    void move(double by);
    void line_search();
    bool shut_air_leaks();
    double worst_mismatch() const;

    Fluid<> fluid_;
    Pump pump_;
    double most_;           // greatest flow of the pump
    bool held_ = false;     // at that flow; the pump's pressure is then an unknown
    double pump_slope_ = 0; // fall of its pressure with flow
    PumpLimit limit_ = PumpLimit::nothing;
    int iterations_ = 0;
    double scale_ = 0; // the greatest pressure without flow

    // By node: 0 the pump's outlet, then the end of every segment, each after the one it starts
    // from.
    std::vector<std::size_t> place_; // node of each segment
    std::vector<std::size_t> parent_;
    std::vector<SegmentLaw> law_;
    std::vector<double> lift_;       // pressure taken by the rise
    std::vector<double> resistance_; // loss over the square of a usual flow
    std::vector<double> root_;       // see loss_at
    std::vector<double> flow_, pressure_, slope_;
    std::vector<double> pull_, give_, change_; // of the elimination

    // By nozzle.
    std::vector<std::size_t> node_;
    std::vector<double> tip_; // pressure at 1 m3/s
    std::vector<Tip> state_;
    std::vector<double> q_, mismatch_, step_;
    double gone_ = 0; // how far along the step
};

} // namespace scupper::hydraulics::detail
