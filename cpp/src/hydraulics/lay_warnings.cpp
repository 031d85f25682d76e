#include "lay_warnings.hpp"

#include "scupper/hydraulics/friction.hpp"
#include "scupper/hydraulics/suction.hpp"

#include <algorithm>

namespace scupper::hydraulics {
namespace {

using Kind = LayWarningKind;

/// Gathers warnings; a value that stays within its limit adds none.
class Gatherer {
  public:
    template <Dimension D>
    void add(Kind kind, const std::string& where, const Quantity<D, double>& value,
             const Quantity<D, double>& limit) {
        found.push_back({kind, where, value.si(), limit.si(), D});
    }
    template <class Q>
    void above(Kind kind, const std::string& where, const Q& value, const Q& limit) {
        if (value > limit) {
            add(kind, where, value, limit);
        }
    }
    template <class Q>
    void below(Kind kind, const std::string& where, const Q& value, const Q& limit) {
        if (value < limit) {
            add(kind, where, value, limit);
        }
    }
    std::vector<LayWarning> found;
};

void mind_curve(const Pump& pump, const PumpFlow& flow, Gatherer& out) {
    if (pump.kind != PumpKind::curve || flow.limit == PumpLimit::nothing) {
        return;
    }
    const double speed = pump.speed;
    out.above(Kind::off_curve, "pump", flow.flow,
              affinity_flow(pump.curve.last_flow(), speed, 1.0));
    out.below(Kind::off_curve, "pump", flow.flow,
              affinity_flow(pump.curve.first_flow(), speed, 1.0));
}

void mind_pump(const HoseLay& lay, const Pump& pump, const PumpFlow& flow, Gatherer& out) {
    mind_curve(pump, flow, out);
    if (pump.unloader_pressure && flow.limit == PumpLimit::unloader) {
        out.add(Kind::unloader_open, "pump", flow.pressure, *pump.unloader_pressure);
    }
    if (pump.npsh_required) {
        out.below(Kind::npsh, "pump", flow.npsh_available, *pump.npsh_required);
    }
    const Pressure<> air = standard_atmosphere(pump.altitude);
    const Length<> most =
        greatest_suction_lift(air, water_vapour_pressure(lay.temperature), pump.suction_loss,
                              Length<>(), water_density(lay.temperature));
    if (pump.suction_lift.si() > 0.0) {
        out.add(Kind::drafting, "pump", pump.suction_lift, most);
    }
}

void mind_pressure(const std::string& where, const Pressure<>& p, const Pressure<>& boiling,
                   Gatherer& out) {
    if (p < boiling) {
        out.add(Kind::boiling, where, p, boiling);
    } else {
        out.below(Kind::sub_atmospheric, where, p, Pressure<>());
    }
}

void mind_segment(const LaySegment& s, const SegmentFlow& flow, const Pressure<>& boiling,
                  Gatherer& out) {
    if (s.working_pressure) {
        out.above(Kind::working_pressure, s.name,
                  std::max(flow.inlet_pressure, flow.outlet_pressure), *s.working_pressure);
    }
    mind_pressure(s.name, flow.outlet_pressure, boiling, out);
    out.above(Kind::velocity, s.name, flow.velocity, Speed<>(brisk_velocity));
    const bool uncertain = flow.reynolds > laminar_limit && flow.reynolds < turbulent_limit;
    if (s.hose.law == FrictionLaw::darcy_weisbach && uncertain) {
        out.found.push_back({Kind::transition, s.name, flow.reynolds, turbulent_limit, dim::none});
    }
}

void mind_nozzle(const LayNozzle& n, const NozzleFlow& flow, Gatherer& out) {
    if (flow.too_high) {
        out.add(Kind::too_high, n.name, flow.pressure, Pressure<>());
    }
    constexpr Force<> bucket(bucket_reaction);
    constexpr Force<> one(one_person_reaction);
    constexpr Force<> two(two_person_reaction);
    if (flow.reaction > two) {
        out.add(Kind::reaction_two, n.name, flow.reaction, two);
    } else if (flow.reaction > one) {
        out.add(Kind::reaction_one, n.name, flow.reaction, one);
    } else {
        out.above(Kind::reaction_bucket, n.name, flow.reaction, bucket);
    }
}

const char* phrase(Kind kind) {
    switch (kind) {
    case Kind::working_pressure:
        return "{value} in the hose, whose working pressure is {limit}";
    case Kind::sub_atmospheric:
        return "{value} (gauge), below the air's pressure: soft hose collapses, air may enter";
    case Kind::boiling:
        return "{value} (gauge), below {limit} at which water boils: the column parts and the "
               "figures beyond it do not hold";
    case Kind::off_curve:
        return "{value}, outside the pump's curve, which is given up to {limit}: its head there is "
               "a guess";
    case Kind::unloader_open:
        return "the unloader is open at {limit}";
    case Kind::velocity:
        return "{value} in the hose; practice looks for a larger one above {limit}";
    case Kind::transition:
        return "Reynolds number {value}, between laminar and turbulent flow: friction is uncertain "
               "by up to half";
    case Kind::reaction_bucket:
        return "a reaction of {value}, more than one holds from a bucket ({limit}, common "
               "practice)";
    case Kind::reaction_one:
        return "a reaction of {value}, more than one person holds ({limit}, common practice)";
    case Kind::reaction_two:
        return "a reaction of {value}, more than two people hold ({limit}, common practice)";
    case Kind::too_high:
        return "no water: the pressure there is {value} without any, the nozzle is too high";
    case Kind::npsh:
        return "{value} of suction head available, {limit} required";
    case Kind::drafting:
        break;
    }
    return "draws from {value} below, of {limit} that the air pushes here; drawing from a stream "
           "or "
           "pond needs permission and a screen";
}

std::string filled(std::string text, const std::string& word, const std::string& with) {
    const std::size_t at = text.find(word);
    return at == std::string::npos ? text : text.replace(at, word.size(), with);
}

} // namespace

Unit lay_unit(const Dimension& dimension, UnitSystem units) {
    if (dimension == dim::speed) {
        return parse_unit(units == UnitSystem::us ? "ft/s" : "m/s", "units");
    }
    return display_unit(dimension, units);
}

std::string warning_text(const LayWarning& w, UnitSystem units) {
    const Unit unit = lay_unit(w.dimension, units);
    std::string text = w.where + ": " + phrase(w.kind);
    if (w.kind == Kind::off_curve && w.value < w.limit) {
        text = filled(text, "up to", "from");
    }
    text = filled(text, "{value}", format_quantity(w.value, unit, 3));
    return filled(text, "{limit}", format_quantity(w.limit, unit, 3));
}

namespace detail {

std::vector<LayWarning> warnings_of(const HoseLay& lay, const Pump& pump,
                                    const LaySolution& solution) {
    Gatherer out;
    mind_pump(lay, pump, solution.pump, out);
    const Pressure<> boiling =
        water_vapour_pressure(lay.temperature) - standard_atmosphere(pump.altitude);
    for (std::size_t i = 0; i < lay.segments.size(); ++i) {
        mind_segment(lay.segments[i], solution.segments[i], boiling, out);
    }
    for (std::size_t i = 0; i < lay.nozzles.size(); ++i) {
        mind_nozzle(lay.nozzles[i], solution.nozzles[i], out);
    }
    return std::move(out.found);
}

} // namespace detail

} // namespace scupper::hydraulics
