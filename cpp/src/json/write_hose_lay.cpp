#include "scupper/hydraulics.hpp"
#include "scupper/json/hose_lay.hpp"
#include "scupper/schema.hpp"
#include "values.hpp"

namespace scupper::json {

namespace {

using namespace hydraulics;
using detail::Json;

template <Dimension D>
Json value_of(const Quantity<D, double>& q) {
    return detail::write_number(q.si(), D, {});
}

template <class Q>
void put(Json& out, const char* key, const std::optional<Q>& q) {
    if (q) {
        out[key] = value_of(*q);
    }
}

template <class Words, class E>
std::string word_of(const Words& words, E value) {
    return std::string(words.at(static_cast<std::size_t>(value)));
}

Json pump_document(const Pump& pump) {
    Json out;
    out["kind"] = word_of(hose_lay_pump_kinds, pump.kind);
    if (pump.kind == PumpKind::pressure) {
        out["pressure"] = value_of(pump.pressure);
    }
    if (pump.kind == PumpKind::curve) {
        for (const CurvePoint& p : pump.curve.points()) {
            out["curve"].push_back({value_of(p.flow), value_of(p.head)});
        }
    }
    put(out, "flow_limit", pump.flow_limit);
    put(out, "unloader_pressure", pump.unloader_pressure);
    put(out, "power_limit", pump.power_limit);
    put(out, "npsh_required", pump.npsh_required);
    out["speed"] = pump.speed;
    out["volumetric_efficiency"] = pump.volumetric_efficiency;
    out["efficiency"] = pump.efficiency;
    out["suction_lift"] = value_of(pump.suction_lift);
    out["suction_loss"] = value_of(pump.suction_loss);
    out["altitude"] = value_of(pump.altitude);
    return out;
}

std::string name_of(const HoseLay& lay, std::size_t segment) {
    return segment == at_pump ? "pump" : lay.segments[segment].name;
}

Json segment_document(const HoseLay& lay, const LaySegment& s) {
    Json out;
    out["name"] = s.name;
    out["from"] = name_of(lay, s.from);
    out["bore"] = value_of(s.hose.bore);
    out["length"] = value_of(s.hose.length);
    out["rise"] = value_of(s.rise);
    out["minor_loss"] = s.hose.minor_loss;
    put(out, "working_pressure", s.working_pressure);
    switch (s.hose.law) {
    case FrictionLaw::darcy_weisbach:
        out["roughness"] = value_of(s.hose.roughness);
        break;
    case FrictionLaw::hazen_williams:
        out["c"] = s.hose.coefficient;
        out["form"] = word_of(hazen_williams_form_names, s.hose.form);
        break;
    case FrictionLaw::hose_coefficient:
        out["coefficient"] = s.hose.coefficient;
        break;
    }
    return out;
}

Json nozzle_document(const HoseLay& lay, const LayNozzle& n) {
    Json out;
    out["name"] = n.name;
    out["at"] = name_of(lay, n.at);
    out["bore"] = value_of(n.tip.bore);
    out["discharge_coefficient"] = n.tip.discharge_coefficient;
    out["state"] = word_of(hose_lay_nozzle_states, n.state);
    if (n.state != NozzleState::open) {
        out["wear"] = n.wear;
    }
    return out;
}

} // namespace

std::string write_hose_lay(const HoseLay& lay) {
    Json out;
    out["name"] = lay.name;
    out["water"] = detail::write_number(lay.temperature.kelvin(), dim::temperature, {});
    put(out, "tank", lay.tank);
    out["pump"] = pump_document(lay.pump);
    out["segments"] = Json::array();
    for (const LaySegment& s : lay.segments) {
        out["segments"].push_back(segment_document(lay, s));
    }
    out["nozzles"] = Json::array();
    for (const LayNozzle& n : lay.nozzles) {
        out["nozzles"].push_back(nozzle_document(lay, n));
    }
    return out.dump(2);
}

} // namespace scupper::json
