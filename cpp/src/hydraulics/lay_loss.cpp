#include "lay_loss.hpp"

#include "friction_kernel.hpp"
#include "scupper/hydraulics/friction.hpp"
#include "scupper/hydraulics/trade_friction.hpp"

#include <cmath>

namespace scupper::hydraulics::detail {
namespace {

const Flow<> unit_flow(1.0);

/// Darcy's friction factor and the power with which the loss grows with the flow there.
struct Growth {
    double factor;
    double power;
};

// Ten digits while the flows are on their way; all of them once the flows no longer move.
Growth turbulent(double re, double k, double& root) {
    constexpr double small = 1e-4;
    const Colebrook c = colebrook(re, k, root > 0.0 ? root : colebrook_start(re, k), small);
    root = c.x;
    return {1.0 / (c.x * c.x), 2.0 / (1.0 + c.w)};
}

/// On the straight line between laminar and turbulent flow.
Growth bridge(double re, double k) {
    const double factor = friction_factor(re, k);
    const double slope = (friction_factor(turbulent_limit, k) - friction_factor(laminar_limit, k)) /
                         (turbulent_limit - laminar_limit);
    return {factor, 2.0 + slope * re / factor};
}

Growth darcy(double re, double k, double& root) {
    if (re >= turbulent_limit) {
        return turbulent(re, k, root);
    }
    if (re > laminar_limit) {
        return bridge(re, k);
    }
    return {friction_factor(re, k), 1.0};
}

Loss darcy_loss(const SegmentLaw& law, double q, double& root) {
    if (q == 0.0) { // the laminar slope, without an infinite factor
        const double tiny = laminar_limit / law.reynolds;
        return {0.0, law.friction * friction_factor(laminar_limit, 0.0) * tiny};
    }
    const Growth g = darcy(law.reynolds * q, law.rel_roughness, root);
    const double loss = g.factor * law.friction * q * q;
    return {loss, g.power * loss / q};
}

} // namespace

SegmentLaw law_of(const Segment<>& s, const Fluid<>& fluid) {
    SegmentLaw out{s.law, 0.0, 0.0, 2.0, 0.0, 0.0};
    out.minor = minor_loss(unit_flow, s.bore, s.minor_loss, fluid.density).si();
    out.reynolds = reynolds(unit_flow, s.bore, fluid.kinematic_viscosity);
    if (s.law == FrictionLaw::darcy_weisbach) {
        out.friction =
            velocity_pressure(unit_flow, s.bore, fluid.density).si() * (s.length / s.bore);
        out.rel_roughness = s.roughness / s.bore;
        return out;
    }
    out.friction = segment_loss(s, unit_flow, fluid).si();
    if (s.law == FrictionLaw::hazen_williams) {
        out.power = hazen_williams_power(s.form);
    }
    return out;
}

double usual_resistance(const SegmentLaw& law) {
    constexpr double usual_factor = 0.02;
    constexpr double usual_flow = 0.1 / 60.0;
    switch (law.law) {
    case FrictionLaw::darcy_weisbach:
        return usual_factor * law.friction + law.minor;
    case FrictionLaw::hazen_williams:
        return law.friction * std::pow(usual_flow, law.power - 2.0) + law.minor;
    case FrictionLaw::hose_coefficient:
        break;
    }
    return law.friction + law.minor;
}

Loss loss_at(const SegmentLaw& law, double flow, double& root) {
    const double q = std::abs(flow);
    Loss out{};
    switch (law.law) {
    case FrictionLaw::darcy_weisbach:
        out = darcy_loss(law, q, root);
        break;
    case FrictionLaw::hazen_williams: {
        const double per_flow = law.friction * std::pow(q, law.power - 1.0);
        out = {per_flow * q, law.power * per_flow};
        break;
    }
    case FrictionLaw::hose_coefficient:
        out = {law.friction * q * q, 2.0 * law.friction * q};
        break;
    }
    out.pressure = std::copysign(out.pressure + law.minor * q * q, flow);
    out.slope += 2.0 * law.minor * q;
    return out;
}

} // namespace scupper::hydraulics::detail
