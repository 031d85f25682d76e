#include "line_fault.hpp"

#include "require.hpp"
#include "scupper/hydraulics/friction.hpp"

#include <cmath>
#include <string>

namespace scupper::hydraulics {
namespace detail {
namespace {

using Fault = std::optional<LineFault>;

// Not-a-number is a fault here: the solver needs numbers.
Fault unless_positive(const char* name, const char* field, double x) {
    if (x > 0.0 && std::isfinite(x)) {
        return {};
    }
    return LineFault{name, field, x, "> 0 and finite"};
}

Fault unless_not_negative(const char* name, const char* field, double x) {
    if (x >= 0.0 && std::isfinite(x)) {
        return {};
    }
    return LineFault{name, field, x, ">= 0 and finite"};
}

Fault fault_of_roughness(const Segment<double>& s) {
    const double share = s.roughness / s.bore;
    if (share >= 0.0 && share <= roughest) {
        return {};
    }
    return LineFault{"relative_roughness", "roughness", s.roughness.si(), "0 to 0.05 of the bore"};
}

Fault fault_of_law(const Segment<double>& s) {
    switch (s.law) {
    case FrictionLaw::darcy_weisbach:
        return fault_of_roughness(s);
    case FrictionLaw::hazen_williams:
        return unless_positive("coefficient", "coefficient", s.coefficient);
    case FrictionLaw::hose_coefficient:
        break;
    }
    return unless_not_negative("coefficient", "coefficient", s.coefficient);
}

Fault fault_of_ends(const Line<double>& line) {
    if (auto f = unless_positive("density", "fluid.density", line.fluid.density.si())) {
        return f;
    }
    if (auto f = unless_positive("kinematic_viscosity", "fluid.kinematic_viscosity",
                                 line.fluid.kinematic_viscosity.si())) {
        return f;
    }
    if (line.flow_limit) {
        if (auto f = unless_positive("flow_limit", "flow_limit", line.flow_limit->si())) {
            return f;
        }
    }
    if (auto f = unless_positive("bore", "nozzle.bore", line.nozzle.bore.si())) {
        return f;
    }
    return unless_positive("discharge_coefficient", "nozzle.discharge_coefficient",
                           line.nozzle.discharge_coefficient);
}

Fault fault_of_lift(const Line<double>& line) {
    if (!std::isfinite(line.rise.si())) {
        return LineFault{"rise", "rise", line.rise.si(), "a number"};
    }
    const Pressure<double> lift = static_pressure(line.rise, line.fluid.density);
    if (line.pump_pressure > lift && std::isfinite(line.pump_pressure.si())) {
        return {};
    }
    return LineFault{"no_flow", "pump_pressure", line.pump_pressure.si(),
                     "more than the rise takes"};
}

} // namespace

std::optional<LineFault> fault_of(const Segment<double>& s) {
    if (auto f = unless_positive("bore", "bore", s.bore.si())) {
        return f;
    }
    if (auto f = unless_not_negative("length", "length", s.length.si())) {
        return f;
    }
    if (auto f = unless_not_negative("loss_coefficient", "minor_loss", s.minor_loss)) {
        return f;
    }
    return fault_of_law(s);
}

std::optional<LineFault> fault_of(const Line<double>& line) {
    if (auto f = fault_of_ends(line)) {
        return f;
    }
    for (std::size_t i = 0; i < line.hose.size(); ++i) {
        if (auto f = fault_of(line.hose[i])) {
            f->segment = static_cast<int>(i);
            return f;
        }
    }
    return fault_of_lift(line);
}

} // namespace detail

namespace {

std::string path_of(const detail::LineFault& fault, std::string_view path) {
    std::string text(path);
    if (fault.segment >= 0) {
        text += ".hose[" + std::to_string(fault.segment) + "]";
    }
    return text + "." + fault.field;
}

std::string allowed_of(const detail::LineFault& fault, const Line<double>& line) {
    if (std::string_view(fault.name) != "no_flow") {
        return fault.allowed;
    }
    const double lift = static_pressure(line.rise, line.fluid.density).si();
    return std::string("more than the rise takes, ") + std::to_string(lift) + " Pa";
}

} // namespace

void check_line(const Line<double>& line, std::string_view path) {
    if (const auto fault = detail::fault_of(line)) {
        detail::refuse(fault->name, path_of(*fault, path), fault->found, allowed_of(*fault, line));
    }
}

} // namespace scupper::hydraulics
