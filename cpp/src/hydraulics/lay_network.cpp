#include "lay_network.hpp"

#include "scupper/error.hpp"
#include "scupper/hydraulics/friction.hpp"
#include "scupper/hydraulics/nozzle.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace scupper::hydraulics::detail {
namespace {

constexpr double fine = 1e-12;     // mismatch over scale at which nothing is left to gain
constexpr double enough = 1e-10;   // and that is accepted where rounding stops the steps
constexpr double low_share = 1e-4; // of the scale: where a flow starts that has no pressure yet
constexpr double flat = 1e-6;      // of full flow: where the slope of a tip's law is cut off
constexpr int most_steps = 200;

double tip_pressure(double tip, double q) {
    return tip * q * std::abs(q); // goes on below zero, so that the law is smooth
}

} // namespace

Network::Network(const HoseLay& lay)
    : fluid_(water(lay.temperature)), pump_(lay.pump), most_(greatest_flow(lay.pump).si()) {
    order(lay);
    set_nozzles(lay);
    const std::size_t nodes = parent_.size();
    for (auto* v : {&root_, &flow_, &pressure_, &slope_, &pull_, &give_, &change_}) {
        v->assign(nodes, 0.0);
    }
}

// Places every segment after the one it starts from, by following each chain down to a placed one.
void Network::order(const HoseLay& lay) {
    const std::size_t n = lay.segments.size();
    place_.assign(n, 0);
    parent_.assign(1, 0);
    law_.assign(1, {});
    lift_.assign(1, 0.0);
    resistance_.assign(1, 0.0);
    parent_.reserve(n + 1);
    law_.reserve(n + 1);
    lift_.reserve(n + 1);
    std::vector<std::size_t> chain;
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t s = i; s != at_pump && place_[s] == 0; s = lay.segments[s].from) {
            chain.push_back(s);
        }
        for (; !chain.empty(); chain.pop_back()) {
            const LaySegment& segment = lay.segments[chain.back()];
            place_[chain.back()] = parent_.size();
            parent_.push_back(node_of(segment.from));
            law_.push_back(law_of(segment.hose, fluid_));
            lift_.push_back(static_pressure(segment.rise, fluid_.density).si());
            resistance_.push_back(usual_resistance(law_.back()));
        }
    }
}

void Network::set_nozzles(const HoseLay& lay) {
    const std::size_t n = lay.nozzles.size();
    node_.reserve(n);
    tip_.reserve(n);
    state_.reserve(n);
    for (const LayNozzle& nozzle : lay.nozzles) {
        node_.push_back(node_of(nozzle.at));
        state_.push_back(nozzle.state == NozzleState::closed ? Tip::closed : Tip::open);
        tip_.push_back(hydraulics::nozzle_pressure(bore_now(nozzle), Flow<>(1.0),
                                                   nozzle.tip.discharge_coefficient, fluid_.density)
                           .si());
    }
    q_.assign(n, 0.0);
    mismatch_.assign(n, 0.0);
    step_.assign(n, 0.0);
}

void Network::set_pressure(const Pressure<>& pressure) {
    (pump_.kind == PumpKind::displacement ? *pump_.unloader_pressure : pump_.pressure) = pressure;
}

void Network::set_pump() {
    if (held_) {
        return;
    }
    const PumpPoint p = pump_point(pump_, Flow<>(flow_[0]), fluid_);
    pressure_[0] = p.pressure.si();
    pump_slope_ = p.slope;
    limit_ = p.limit;
}

// The pressures without flow, which no flow exceeds.
void Network::static_pressures() {
    flow_[0] = 0.0;
    set_pump();
    scale_ = std::abs(pressure_[0]);
    for (std::size_t i = 1; i < parent_.size(); ++i) {
        pressure_[i] = from(pressure_, i) - lift_[i];
        scale_ = std::max(scale_, std::abs(pressure_[i]));
    }
}

// Shuts what not even standing water reaches; whether anything is left to flow.
bool Network::shut_what_is_too_high() {
    bool any = false;
    std::replace(state_.begin(), state_.end(), Tip::too_high, Tip::open);
    for (std::size_t k = 0; k < q_.size(); ++k) {
        const double p = at(pressure_, k);
        if (open(k) && !(p > 0.0)) {
            state_[k] = Tip::too_high;
        }
        any = any || open(k);
    }
    return any;
}

void Network::gather_flows() {
    std::fill(flow_.begin(), flow_.end(), 0.0);
    for (std::size_t k = 0; k < q_.size(); ++k) {
        at(flow_, k) += q_[k];
    }
    for (std::size_t i = flow_.size() - 1; i > 0; --i) {
        from(flow_, i) += flow_[i];
    }
}

void Network::evaluate() {
    gather_flows();
    set_pump();
    for (std::size_t i = 1; i < parent_.size(); ++i) {
        const Loss loss = loss_at(law_[i], flow_[i], root_[i]);
        slope_[i] = loss.slope;
        pressure_[i] = from(pressure_, i) - lift_[i] - loss.pressure;
    }
    for (std::size_t k = 0; k < q_.size(); ++k) {
        mismatch_[k] = open(k) ? at(pressure_, k) - tip_pressure(tip_[k], q_[k]) : 0.0;
    }
}

// Flows as if every loss went with the square of the flow, as it does at a usual velocity, and no
// branch rose: resistances add in series, conductances side by side.
void Network::square_law_start() {
    std::fill(give_.begin(), give_.end(), 0.0); // conductance beyond each node
    for (std::size_t k = 0; k < q_.size(); ++k) {
        at(give_, k) += open(k) ? 1.0 / std::sqrt(tip_[k]) : 0.0;
    }
    for (std::size_t i = parent_.size() - 1; i > 0; --i) {
        change_[i] = 1.0 / (1.0 + resistance_[i] * give_[i] * give_[i]); // share that passes
        from(give_, i) += give_[i] * std::sqrt(change_[i]);
    }
    for (std::size_t i = 1; i < parent_.size(); ++i) {
        const double left = from(pressure_, i) - lift_[i];
        pressure_[i] = left > 0.0 ? left * change_[i] : left;
    }
    for (std::size_t k = 0; k < q_.size(); ++k) {
        const double p = std::max(at(pressure_, k), low_share * scale_);
        q_[k] = open(k) ? std::sqrt(p / tip_[k]) : 0.0;
    }
}

// One flow for all: the pump's greatest, shared as the flows stand.
void Network::share_out() {
    gather_flows();
    for (double& q : q_) {
        q *= most_ / flow_[0];
    }
}

// From the ends to the pump: what a node's flow changes by is pull + give x its pressure's change.
void Network::eliminate() {
    std::fill(pull_.begin(), pull_.end(), 0.0);
    std::fill(give_.begin(), give_.end(), 0.0);
    for (std::size_t k = 0; k < q_.size(); ++k) {
        if (open(k)) {
            const double least = flat * std::sqrt(scale_ * tip_[k]);
            const double conductance = 1.0 / std::max(2.0 * tip_[k] * std::abs(q_[k]), least);
            step_[k] = conductance;
            at(pull_, k) += mismatch_[k] * conductance;
            at(give_, k) += conductance;
        }
    }
    for (std::size_t i = parent_.size() - 1; i > 0; --i) {
        change_[i] = 1.0 / (1.0 + give_[i] * slope_[i]);
        from(pull_, i) += pull_[i] * change_[i];
        from(give_, i) += give_[i] * change_[i];
    }
}

// At a held flow the pump gives whatever pressure brings the flow's change to what is missing. A
// pressure added everywhere adds to the pulls in the proportion of what the nodes give.
void Network::hold_flow() {
    const double more = (most_ - flow_[0] - pull_[0]) / give_[0];
    for (std::size_t i = 0; i < parent_.size(); ++i) {
        pressure_[i] += more;
        pull_[i] += more * give_[i];
    }
    for (std::size_t k = 0; k < q_.size(); ++k) {
        mismatch_[k] += open(k) ? more : 0.0;
    }
    pump_slope_ = 0.0;
}

// And back: changes of pressure, then of the nozzles' flows.
void Network::substitute() {
    change_[0] = -pump_slope_ * pull_[0] / (1.0 + give_[0] * pump_slope_);
    for (std::size_t i = 1; i < parent_.size(); ++i) {
        change_[i] *= from(change_, i) - slope_[i] * pull_[i];
    }
    for (std::size_t k = 0; k < q_.size(); ++k) {
        step_[k] = open(k) ? (mismatch_[k] + at(change_, k)) * step_[k] : 0.0;
    }
}

// The slope of the function along the step; below zero while it goes down.
double Network::descent() const {
    double sum = 0.0;
    for (std::size_t k = 0; k < q_.size(); ++k) {
        sum -= mismatch_[k] * step_[k];
    }
    return sum;
}

void Network::move(double by) {
    for (std::size_t k = 0; k < q_.size(); ++k) {
        q_[k] += by * step_[k];
    }
    gone_ += by;
    evaluate();
}

// The whole step, or where the function rises again less of it, until the slope is half of what it
// was at the start.
void Network::line_search() {
    const double at_start = descent();
    gone_ = 0.0;
    move(1.0);
    double low = 0.0;
    double high = 1.0;
    double f_low = at_start;
    double f_high = descent();
    double f = f_high;
    for (int i = 0; i < 60 && f > -0.5 * at_start; ++i) {
        const double guess = low + (high - low) * f_low / (f_low - f_high);
        const double margin = 0.1 * (high - low);
        move(std::clamp(guess, low + margin, high - margin) - gone_);
        f = descent();
        (f > 0.0 ? high : low) = gone_;
        (f > 0.0 ? f_high : f_low) = f;
    }
}

double Network::worst_mismatch() const {
    double worst = 0.0;
    for (const double m : mismatch_) {
        worst = std::max(worst, std::abs(m));
    }
    return worst / scale_;
}

void Network::converge() {
    evaluate();
    double worst = worst_mismatch();
    for (int i = 0; i < most_steps && worst > fine; ++i) {
        eliminate();
        if (held_) {
            hold_flow();
        }
        substitute();
        if (!(descent() < 0.0)) {
            break; // nothing but rounding is left
        }
        line_search();
        ++iterations_;
        const double before = worst;
        worst = worst_mismatch();
        if (worst <= enough && worst > 0.5 * before) {
            break;
        }
    }
    worst = worst_mismatch();
    if (!(worst <= enough)) {
        throw SolveError(
            {"hydraulics.not_converged", "lay", "a residual of " + std::to_string(worst), "1e-10"});
    }
}

bool Network::shut_air_leaks() {
    bool any = false;
    for (std::size_t k = 0; k < q_.size(); ++k) {
        if (open(k) && q_[k] <= 0.0) {
            state_[k] = Tip::too_high;
            q_[k] = 0.0;
            any = true;
        }
    }
    return any;
}

// Shuts nozzles until none draws in air. Water that the others lose lowers pressures elsewhere, so
// that one that was rightly shut stays so.
void Network::settle() {
    do {
        if (held_) {
            share_out();
        }
        converge();
    } while (shut_air_leaks());
}

void Network::solve() {
    iterations_ = 0;
    held_ = false;
    std::fill(root_.begin(), root_.end(), 0.0); // so that no solve depends on the one before
    static_pressures();
    if (!shut_what_is_too_high()) {
        std::fill(q_.begin(), q_.end(), 0.0);
        gather_flows();
        limit_ = PumpLimit::nothing;
        return;
    }
    square_law_start();
    settle();
    if (flow_[0] > most_) {
        held_ = true;
        limit_ = PumpLimit::flow_limit;
        settle();
    }
}

double Network::mass_residual() const {
    double sum = 0.0;
    for (const double q : q_) {
        sum += q;
    }
    return flow_[0] > 0.0 ? std::abs(sum - flow_[0]) / flow_[0] : 0.0;
}

double Network::energy_residual() const {
    return scale_ > 0.0 ? worst_mismatch() : 0.0;
}

} // namespace scupper::hydraulics::detail
