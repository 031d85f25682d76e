#include "scupper/hydraulics/line.hpp"

#include "line_flow.hpp"
#include "scupper/hydraulics/friction.hpp"
#include "scupper/hydraulics/nozzle.hpp"
#include "scupper/traced.hpp"

#include <algorithm>
#include <cmath>
#include <span>
#include <type_traits>
#include <utility>
#include <vector>

namespace scupper::hydraulics {
namespace {

template <class T>
Pressure<T> hose_loss(const Line<T>& line, const Flow<T>& flow) {
    Pressure<T> sum;
    for (const Segment<T>& s : line.hose) {
        sum += segment_loss(s, flow, line.fluid);
    }
    return sum;
}

template <class T>
Pressure<T> fittings_loss(const Line<T>& line, const Flow<T>& flow) {
    Pressure<T> sum;
    for (const Segment<T>& s : line.hose) {
        sum += minor_loss(flow, s.bore, s.minor_loss, line.fluid.density);
    }
    return sum;
}

template <class T>
Pressure<T> tip_pressure(const Line<T>& line, const Flow<T>& flow) {
    return nozzle_pressure(line.nozzle.bore, flow, line.nozzle.discharge_coefficient,
                           line.fluid.density);
}

constexpr SolveInfo line_info{
    "flow of the line",
    "Newton inside a bracket for the flow at which rise, friction, fittings and tip take the "
    "pump's "
    "pressure, at most the pump's flow; their sum grows with the flow, so that it converges",
    dim::flow};

Segment<double> plain(const Segment<Traced>& s) {
    return {s.law,
            Length<>(s.bore.si().value()),
            Length<>(s.length.si().value()),
            Length<>(s.roughness.si().value()),
            s.coefficient.value(),
            s.minor_loss.value(),
            s.form};
}

Line<double> plain(const Line<Traced>& line) {
    Line<double> out;
    out.pump_pressure = Pressure<>(line.pump_pressure.si().value());
    if (line.flow_limit) {
        out.flow_limit = Flow<>(line.flow_limit->si().value());
    }
    out.fluid.density = Density<>(line.fluid.density.si().value());
    out.fluid.kinematic_viscosity =
        KinematicViscosity<>(line.fluid.kinematic_viscosity.si().value());
    for (const Segment<Traced>& s : line.hose) {
        out.hose.push_back(plain(s));
    }
    out.rise = Length<>(line.rise.si().value());
    out.nozzle.bore = Length<>(line.nozzle.bore.si().value());
    out.nozzle.discharge_coefficient = line.nozzle.discharge_coefficient.value();
    return out;
}

/// Hands over every number that the flow of a line follows from, always in the same order.
template <class AnyLine, class Visit>
void each_number(AnyLine& line, Visit&& visit) {
    visit(line.pump_pressure);
    visit(line.rise);
    visit(line.fluid.density);
    visit(line.fluid.kinematic_viscosity);
    visit(line.nozzle.bore);
    visit(line.nozzle.discharge_coefficient);
    if (line.flow_limit) {
        visit(*line.flow_limit);
    }
    for (auto& s : line.hose) {
        visit(s.bore);
        visit(s.length);
        visit(s.minor_loss);
        if (s.law == FrictionLaw::darcy_weisbach) {
            visit(s.roughness);
        } else {
            visit(s.coefficient);
        }
    }
}

const Traced& plain_number(const Traced& x) {
    return x;
}
template <Dimension D>
Traced plain_number(const Quantity<D, Traced>& x) {
    return x.si();
}

std::vector<Traced> inputs_of(const Line<Traced>& line) {
    std::vector<Traced> inputs;
    each_number(line, [&](const auto& number) { inputs.push_back(plain_number(number)); });
    return inputs;
}

/// The same line with other numbers, as `inputs_of` has them.
double solve_again(detail::LineFlow& solver, Line<double>& line, std::span<const double> numbers) {
    auto next = numbers.begin();
    each_number(line, [&](auto& number) {
        number = std::remove_reference_t<decltype(number)>(*next);
        ++next;
    });
    return solver.solve(line).value;
}

double flow_of(const Line<double>& line) {
    return detail::LineFlow().solve(line).value;
}

Traced flow_of(const Line<Traced>& line) {
    Line<double> numbers = plain(line);
    detail::LineFlow solver;
    const Solved solved = solver.solve(numbers);
    return scupper::detail::record_solve(line_info, solved, inputs_of(line),
                                         [solver, numbers](std::span<const double> x) mutable {
                                             return solve_again(solver, numbers, x);
                                         });
}

template <class T>
Governs governs(const Line<T>& line, const Flow<T>& flow) {
    const double q = value_of(flow.si());
    if (!(q > 0.0)) {
        return Governs::nothing;
    }
    const bool limited = line.flow_limit && value_of(line.flow_limit->si()) == q;
    return limited ? Governs::flow_limit : Governs::pump_pressure;
}

} // namespace

template <class T>
Pressure<T> segment_loss(const Segment<T>& s, const Flow<T>& flow, const Fluid<T>& fluid) {
    switch (s.law) {
    case FrictionLaw::darcy_weisbach:
        return friction_loss(flow, s.bore, s.length, s.roughness, fluid);
    case FrictionLaw::hazen_williams:
        return hazen_williams_loss(s.form, flow, s.bore, s.length, s.coefficient, fluid.density);
    case FrictionLaw::hose_coefficient:
        break;
    }
    return hose_coefficient_loss(flow, s.length, s.coefficient);
}

namespace {

// Every figure is the answer of the solve, not-a-number.
template <class T>
OperatingPoint<T> no_point(const T& none) {
    const Pressure<T> p(none);
    return {Flow<T>(none), p, p, p, p, p, Force<T>(none), Governs::nothing};
}

} // namespace

template <class T>
OperatingPoint<T> operating_point(const Line<T>& line) {
    const Flow<T> flow(flow_of(line));
    const Governs holds = governs(line, flow);
    if (holds == Governs::nothing) {
        return no_point(flow.si());
    }
    const Pressure<T> lift =
        named("static pressure", static_pressure(line.rise, line.fluid.density));
    const Pressure<T> friction = named("friction loss", hose_loss(line, flow));
    const Pressure<T> fittings = named("minor loss", fittings_loss(line, flow));
    const Pressure<T> tip = named("tip pressure", tip_pressure(line, flow));
    const Force<T> reaction =
        named("nozzle reaction", nozzle_reaction(flow, tip, line.fluid.density));
    const Pressure<T> outlet = named("pressure at the pump", lift + friction + fittings + tip);
    return {flow, outlet, lift, friction, fittings, tip, reaction, holds};
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Pressure<T> segment_loss(const Segment<T>&, const Flow<T>&, const Fluid<T>&);         \
    template OperatingPoint<T> operating_point(const Line<T>&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::hydraulics
