#include "scupper/hydraulics/pump.hpp"

#include "require.hpp"
#include "scupper/hydraulics/friction.hpp"
#include "scupper/hydraulics/suction.hpp"
#include "scupper/traced.hpp"

#include <cmath>
#include <limits>
#include <string>

namespace scupper::hydraulics {
namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

Pressure<> suction_pressure(const Pump& pump, const Fluid<>& fluid) {
    return static_pressure(pump.suction_lift + pump.suction_loss, fluid.density);
}

PumpPoint unlimited(const Pump& pump, const Flow<>& flow, const Fluid<>& fluid) {
    switch (pump.kind) {
    case PumpKind::pressure:
        return {pump.pressure, 0.0, PumpLimit::pressure};
    case PumpKind::curve: {
        const CurvePoint p = pump.curve.at(flow, pump.speed);
        const Pressure<> fall = static_pressure(Length<>(-p.slope), fluid.density);
        return {static_pressure(p.head, fluid.density) - suction_pressure(pump, fluid), fall.si(),
                PumpLimit::curve};
    }
    case PumpKind::displacement:
        break;
    }
    return {Pressure<>(infinite), 0.0, PumpLimit::unloader};
}

/// The pressure that the drive reaches with a flow.
PumpPoint driven(const Pump& pump, const Flow<>& flow, const Fluid<>& fluid) {
    const bool whole_flow = pump.kind == PumpKind::displacement;
    const Flow<> moved = whole_flow ? greatest_flow(pump) : flow;
    if (!pump.power_limit || !(moved.si() > 0.0)) {
        return {Pressure<>(infinite), 0.0, PumpLimit::power_limit};
    }
    const Pressure<> gain = pump.efficiency * *pump.power_limit / moved;
    const double slope = whole_flow ? 0.0 : gain.si() / moved.si();
    return {gain - suction_pressure(pump, fluid), slope, PumpLimit::power_limit};
}

class Check {
  public:
    explicit Check(std::string_view path) : path_(path) {}
    void operator()(bool right, const char* field, double found, const char* allowed) const {
        if (!right) {
            detail::refuse(field, path_ + "." + field, found, allowed);
        }
    }
    void positive(const char* field, double x) const {
        (*this)(x > 0.0 && std::isfinite(x), field, x, "> 0 and finite");
    }
    template <class Q>
    void positive(const char* field, const std::optional<Q>& x) const {
        if (x) {
            positive(field, x->si());
        }
    }
    void not_negative(const char* field, double x) const {
        (*this)(x >= 0.0 && std::isfinite(x), field, x, ">= 0 and finite");
    }
    void share(const char* field, double x) const {
        (*this)(x > 0.0 && x <= 1.0, field, x, "above 0, at most 1");
    }
    void missing(const char* field, const char* allowed) const {
        throw InputError(
            {std::string("hydraulics.") + field, path_ + "." + field, "nothing", allowed});
    }

  private:
    std::string path_;
};

void check_kind(const Pump& pump, const Check& check) {
    switch (pump.kind) {
    case PumpKind::pressure:
        check.positive("pressure", pump.pressure.si());
        break;
    case PumpKind::curve:
        if (pump.curve.points().empty()) {
            check.missing("curve", "points of flow and head");
        }
        break;
    case PumpKind::displacement:
        if (!pump.flow_limit) {
            check.missing("flow_limit", "the pump's flow at rated speed");
        }
        if (!pump.unloader_pressure) {
            check.missing("unloader_pressure",
                          "the set pressure: without an unloader a closed nozzle bursts the hose");
        }
        break;
    }
}

void check_suction(const Pump& pump, const Temperature<>& temperature, const Check& check) {
    check(std::isfinite(pump.suction_lift.si()), "suction_lift", pump.suction_lift.si(),
          "a number");
    check.not_negative("suction_loss", pump.suction_loss.si());
    if (pump.npsh_required) {
        check.not_negative("npsh_required", pump.npsh_required->si());
    }
    const Length<> left = npsh_available(pump, temperature);
    const std::string allowed =
        "less than " + std::to_string((pump.suction_lift + left).si()) +
        " m, which the air pushes at this altitude, temperature and suction loss";
    check(left.si() > 0.0, "suction_lift", pump.suction_lift.si(), allowed.c_str());
}

} // namespace

PumpPoint pump_point(const Pump& pump, const Flow<>& flow, const Fluid<>& fluid) {
    PumpPoint least = unlimited(pump, flow, fluid);
    if (const PumpPoint p = driven(pump, flow, fluid); p.pressure < least.pressure) {
        least = p;
    }
    if (pump.unloader_pressure && *pump.unloader_pressure < least.pressure) {
        least = {*pump.unloader_pressure, 0.0, PumpLimit::unloader};
    }
    return least;
}

Flow<> greatest_flow(const Pump& pump) {
    if (!pump.flow_limit) {
        return Flow<>(infinite);
    }
    const bool slips = pump.kind == PumpKind::displacement;
    return slips ? *pump.flow_limit * (pump.speed * pump.volumetric_efficiency) : *pump.flow_limit;
}

Length<> npsh_available(const Pump& pump, const Temperature<>& temperature) {
    return npsh_available(standard_atmosphere(pump.altitude), water_vapour_pressure(temperature),
                          pump.suction_lift, pump.suction_loss, water_density(temperature));
}

void check_pump(const Pump& pump, const Temperature<>& temperature, std::string_view path) {
    const Check check(path);
    check_kind(pump, check);
    check.positive("flow_limit", pump.flow_limit);
    check.positive("unloader_pressure", pump.unloader_pressure);
    check.positive("power_limit", pump.power_limit);
    check.positive("speed", pump.speed);
    check.share("volumetric_efficiency", pump.volumetric_efficiency);
    check.share("efficiency", pump.efficiency);
    check_suction(pump, temperature, check);
}

template <class T>
Power<T> hydraulic_power(const Pressure<T>& pressure, const Flow<T>& flow) {
    return pressure * flow;
}

template <class T>
Power<T> shaft_power(const Pressure<T>& pressure, const Flow<T>& flow, const T& efficiency) {
    detail::positive("efficiency", efficiency);
    return hydraulic_power(pressure, flow) / efficiency;
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Power<T> hydraulic_power(const Pressure<T>&, const Flow<T>&);                         \
    template Power<T> shaft_power(const Pressure<T>&, const Flow<T>&, const T&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::hydraulics
