#include "scupper/hydraulics/lay_solution.hpp"

#include "lay_network.hpp"
#include "lay_warnings.hpp"
#include "require.hpp"
#include "scupper/hydraulics/friction.hpp"
#include "scupper/hydraulics/nozzle.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace scupper::hydraulics {
namespace {

using detail::Network;
using detail::Tip;

SegmentFlow segment_flow(const LaySegment& s, std::size_t i, const Network& net) {
    // The flow of a branch without open nozzles is exactly zero, never below.
    const Flow<> flow(std::max(net.flow(i), 0.0));
    SegmentFlow out;
    out.flow = flow;
    out.velocity = pipe_velocity(flow, s.hose.bore);
    out.reynolds = reynolds(flow, s.hose.bore, net.fluid().kinematic_viscosity);
    out.inlet_pressure = Pressure<>(net.pressure(s.from));
    out.outlet_pressure = Pressure<>(net.pressure(i));
    out.static_pressure = static_pressure(s.rise, net.fluid().density);
    out.friction_loss = segment_loss(s.hose, flow, net.fluid());
    out.minor_loss = minor_loss(flow, s.hose.bore, s.hose.minor_loss, net.fluid().density);
    return out;
}

NozzleFlow nozzle_flow_of(std::size_t i, const Network& net) {
    NozzleFlow out;
    out.flow = Flow<>(net.nozzle_flow(i));
    out.pressure = Pressure<>(net.nozzle_pressure(i));
    out.too_high = net.tip(i) == Tip::too_high;
    if (out.flow.si() > 0.0) {
        const Pressure<> p(std::max(out.pressure.si(), 0.0));
        out.jet_velocity = jet_velocity(p, net.fluid().density);
        out.reaction = nozzle_reaction(out.flow, p, net.fluid().density);
        out.power = hydraulic_power(p, out.flow);
    }
    return out;
}

PumpFlow pump_flow_of(const HoseLay& lay, const Network& net) {
    const Pump& pump = net.pump();
    PumpFlow out;
    out.flow = Flow<>(net.pump_flow());
    out.pressure = Pressure<>(net.pump_pressure());
    out.limit = net.limit();
    const bool lets_back =
        pump.kind == PumpKind::displacement && out.limit != PumpLimit::flow_limit;
    if (lets_back) {
        out.bypass = greatest_flow(pump) - out.flow;
    }
    const Pressure<> gain =
        out.pressure + static_pressure(pump.suction_lift + pump.suction_loss, net.fluid().density);
    out.hydraulic_power = hydraulic_power(gain, out.flow + out.bypass);
    out.shaft_power = shaft_power(gain, out.flow + out.bypass, pump.efficiency);
    out.npsh_available = npsh_available(pump, lay.temperature);
    return out;
}

std::vector<LimitUse> limits_of(const Pump& pump, const Fluid<>& fluid, const PumpFlow& flow) {
    std::vector<LimitUse> out;
    const auto add = [&](PumpLimit limit, auto value, auto allowed) {
        out.push_back(
            {limit, value.si(), allowed.si(), decltype(value)::dimension, flow.limit == limit});
    };
    if (pump.kind == PumpKind::pressure) {
        add(PumpLimit::pressure, flow.pressure, pump.pressure);
    }
    if (pump.kind == PumpKind::curve) {
        Pump alone = pump;
        alone.power_limit.reset();
        alone.unloader_pressure.reset();
        add(PumpLimit::curve, flow.pressure, pump_point(alone, flow.flow, fluid).pressure);
    }
    if (pump.flow_limit) {
        add(PumpLimit::flow_limit, flow.flow, greatest_flow(pump));
    }
    if (pump.power_limit) {
        add(PumpLimit::power_limit, flow.shaft_power, *pump.power_limit);
    }
    if (pump.unloader_pressure) {
        add(PumpLimit::unloader, flow.pressure, *pump.unloader_pressure);
    }
    return out;
}

/// Elevations from the pump outwards; a segment may stand before the one it starts from.
void set_elevations(const HoseLay& lay, std::vector<SegmentFlow>& flows) {
    std::vector<char> known(flows.size(), 0);
    std::vector<std::size_t> chain;
    for (std::size_t i = 0; i < flows.size(); ++i) {
        for (std::size_t s = i; s != at_pump && !known[s]; s = lay.segments[s].from) {
            chain.push_back(s);
            known[s] = 1;
        }
        for (; !chain.empty(); chain.pop_back()) {
            const LaySegment& segment = lay.segments[chain.back()];
            const Length<> start =
                segment.from == at_pump ? Length<>() : flows[segment.from].elevation;
            flows[chain.back()].elevation = start + segment.rise;
        }
    }
}

LaySolution report(const HoseLay& lay, const Network& net) {
    LaySolution out;
    out.pump = pump_flow_of(lay, net);
    out.segments.reserve(lay.segments.size());
    for (std::size_t i = 0; i < lay.segments.size(); ++i) {
        out.segments.push_back(segment_flow(lay.segments[i], i, net));
    }
    set_elevations(lay, out.segments);
    out.nozzles.reserve(lay.nozzles.size());
    for (std::size_t i = 0; i < lay.nozzles.size(); ++i) {
        out.nozzles.push_back(nozzle_flow_of(i, net));
    }
    if (lay.tank && out.pump.flow.si() > 0.0) {
        out.time_to_empty = *lay.tank / out.pump.flow;
    }
    out.mass_residual = net.mass_residual();
    out.energy_residual = net.energy_residual();
    out.iterations = net.iterations();
    out.limits = limits_of(net.pump(), net.fluid(), out.pump);
    out.warnings = detail::warnings_of(lay, net.pump(), out);
    return out;
}

} // namespace

struct LaySolver::State {
    HoseLay lay;
    Network net;
};

LaySolver::LaySolver(const HoseLay& lay, std::string_view path) {
    check_lay(lay, path);
    state_ = std::make_unique<State>(State{lay, Network(lay)});
}
LaySolver::~LaySolver() = default;
LaySolver::LaySolver(LaySolver&&) noexcept = default;
LaySolver& LaySolver::operator=(LaySolver&&) noexcept = default;

void LaySolver::set_pressure(const Pressure<>& pressure) {
    const bool right = pressure.si() > 0.0 && std::isfinite(pressure.si());
    if (!right || state_->lay.pump.kind == PumpKind::curve) {
        detail::refuse("pressure", "pump.pressure", pressure.si(),
                       "> 0 and finite, of a pump that holds a pressure");
    }
    state_->net.set_pressure(pressure);
}

Flow<> LaySolver::run() {
    state_->net.solve();
    return Flow<>(state_->net.pump_flow());
}

Pressure<> LaySolver::pump_pressure() const {
    return Pressure<>(state_->net.pump_pressure());
}

Flow<> LaySolver::nozzle_flow(std::size_t nozzle) const {
    return Flow<>(state_->net.nozzle_flow(nozzle));
}

Pressure<> LaySolver::nozzle_pressure(std::size_t nozzle) const {
    return Pressure<>(state_->net.nozzle_pressure(nozzle));
}

LaySolution LaySolver::solution() const {
    return report(state_->lay, state_->net);
}

LaySolution solve(const HoseLay& lay) {
    check_lay(lay);
    Network net(lay);
    net.solve();
    return report(lay, net);
}

LaySweep solve_many(const HoseLay& lay, const std::vector<double>& pressures) {
    LaySolver solver(lay);
    LaySweep out;
    for (const double p : pressures) {
        solver.set_pressure(Pressure<>(p));
        out.pump_flow.push_back(solver.run().si());
        out.pump_pressure.push_back(solver.pump_pressure().si());
        for (std::size_t k = 0; k < lay.nozzles.size(); ++k) {
            out.nozzle_flow.push_back(solver.nozzle_flow(k).si());
            out.nozzle_pressure.push_back(solver.nozzle_pressure(k).si());
        }
    }
    return out;
}

} // namespace scupper::hydraulics
