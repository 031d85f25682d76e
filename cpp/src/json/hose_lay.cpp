#include "scupper/json/hose_lay.hpp"

#include "hose_lay_values.hpp"
#include "hose_parts.hpp"
#include "scupper/hydraulics.hpp"
#include "scupper/schema.hpp"

#include <array>

namespace scupper::json {

namespace {

using namespace hydraulics;
using detail::Json;
using detail::Values;

std::vector<CurvePoint> read_points(const Json& list, const Fluid<>& fluid,
                                    const std::string& path) {
    if (!list.is_array()) {
        throw InputError({"json.type", path, list.dump(), "a list of [flow, head]"});
    }
    std::vector<CurvePoint> points;
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string where = path + "[" + std::to_string(i) + "]";
        if (!list[i].is_array() || list[i].size() != 2) {
            throw InputError({"json.type", where, list[i].dump(), "[flow, head]"});
        }
        points.push_back({Flow<>(detail::si_of(list[i][0], dim::flow, where + "[0]")),
                          detail::head_of(list[i][1], fluid, where + "[1]")});
    }
    return points;
}

Pump read_pump(const Json& json, const Fluid<>& fluid, const std::string& path) {
    if (json.is_array()) {
        throw InputError({"hydraulics.pump", path, std::to_string(json.size()) + " pumps",
                          "one pump; two in series add their heads, two side by side their flows: "
                          "give the curve of both"});
    }
    detail::require_known_keys(json, hose_lay_pump_keys, path);
    const Values v(json, path);
    Pump out;
    out.kind = v.word<PumpKind>("kind", hose_lay_pump_kinds, PumpKind::pressure);
    v.set("pressure", out.pressure);
    v.set("flow_limit", out.flow_limit);
    v.set("speed", out.speed);
    v.set("volumetric_efficiency", out.volumetric_efficiency);
    v.set("unloader_pressure", out.unloader_pressure);
    v.set("power_limit", out.power_limit);
    v.set("efficiency", out.efficiency);
    v.set("suction_lift", out.suction_lift);
    v.set("suction_loss", out.suction_loss);
    v.set("altitude", out.altitude);
    v.set("npsh_required", out.npsh_required);
    if (out.kind == PumpKind::pressure) {
        v.require("pressure");
    }
    if (v.has("curve")) {
        out.curve = PumpCurve(read_points(json["curve"], fluid, path + ".curve"), path + ".curve");
    }
    v.only_for(out.kind == PumpKind::pressure, "pressure", "kind \"pressure\"");
    v.only_for(out.kind == PumpKind::curve, "curve", "kind \"curve\"");
    return out;
}

double read_fittings(const Json& list, const std::string& path) {
    if (!list.is_array()) {
        throw InputError({"json.type", path, list.dump(), "a list of fittings"});
    }
    double sum = 0.0;
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string where = path + "[" + std::to_string(i) + "]";
        if (list[i].is_string()) {
            sum += detail::fitting_loss(list[i].get<std::string>(), where);
            continue;
        }
        detail::require_known_keys(list[i], hose_lay_fitting_keys, where);
        const Values v(list[i], where);
        v.require("loss_coefficient");
        double loss = 0.0;
        v.set("loss_coefficient", loss);
        if (!(loss >= 0.0)) {
            throw InputError({"hydraulics.loss_coefficient", where + ".loss_coefficient",
                              std::to_string(loss), ">= 0"});
        }
        sum += loss;
    }
    return sum;
}

void read_friction(const Values& v, Segment<>& hose) {
    if (v.has("c")) {
        hose.law = FrictionLaw::hazen_williams;
        hose.form = v.word<HazenWilliamsForm>("form", hazen_williams_form_names,
                                              HazenWilliamsForm::si_10_67_4_8704);
        v.set("c", hose.coefficient);
    } else if (v.has("coefficient")) {
        hose.law = FrictionLaw::hose_coefficient;
        v.set("coefficient", hose.coefficient);
    } else if (v.has("roughness")) {
        hose.law = FrictionLaw::darcy_weisbach;
        v.set("roughness", hose.roughness);
    }
}

LaySegment read_segment(const Json& json, std::size_t i, const std::string& path) {
    detail::require_known_keys(json, hose_lay_segment_keys, path);
    const Values v(json, path);
    LaySegment out;
    out.name = v.text("name", "hose " + std::to_string(i + 1));
    if (v.has("hose")) {
        const auto hose = detail::named_hose(v.text("hose", {}), path + ".hose");
        out.hose = hose.hose;
        out.working_pressure = hose.working_pressure;
    } else {
        v.require("bore");
    }
    if (!v.has("hose") || v.has("roughness") || v.has("c") || v.has("coefficient")) {
        v.one_of({"roughness", "c", "coefficient"});
    }
    v.require("length");
    v.only_for(v.has("c"), "form", "Hazen-Williams, with \"c\"");
    v.set("bore", out.hose.bore);
    v.set("length", out.hose.length);
    v.set("rise", out.rise);
    v.set("minor_loss", out.hose.minor_loss);
    v.set("working_pressure", out.working_pressure);
    read_friction(v, out.hose);
    if (v.has("fittings")) {
        out.hose.minor_loss += read_fittings(json["fittings"], path + ".fittings");
    }
    return out;
}

void read_tip(const Values& v, const Density<>& density, Nozzle<>& tip) {
    v.one_of({"bore", "rated_flow"});
    v.set("discharge_coefficient", tip.discharge_coefficient);
    v.set("bore", tip.bore);
    if (v.has("rated_flow")) {
        v.require("rated_pressure");
        const Flow<> flow(v.positive("rated_flow", dim::flow));
        const Pressure<> pressure(v.positive("rated_pressure", dim::pressure));
        v.positive("discharge_coefficient", dim::none, 1.0);
        tip.bore = equivalent_bore(flow, pressure, tip.discharge_coefficient, density);
    }
    v.only_for(v.has("rated_flow"), "rated_pressure", "a nozzle with \"rated_flow\"");
}

LayNozzle read_nozzle(const Json& json, std::size_t i, const HoseLay& lay,
                      const std::string& path) {
    detail::require_known_keys(json, hose_lay_nozzle_keys, path);
    const Values v(json, path);
    LayNozzle out;
    out.name = v.text("name", "nozzle " + std::to_string(i + 1));
    v.require("at");
    out.at = segment_index(lay, v.text("at", {}), path + ".at");
    read_tip(v, water_density(lay.temperature), out.tip);
    const NozzleState usual = v.has("wear") ? NozzleState::worn : NozzleState::open;
    out.state = v.word<NozzleState>("state", hose_lay_nozzle_states, usual);
    if (out.state == NozzleState::worn) {
        v.require("wear");
    }
    v.only_for(out.state != NozzleState::open, "wear", "state \"worn\"");
    v.set("wear", out.wear);
    return out;
}

template <class Read>
void each(const Json& doc, const char* key, const std::string& path, Read read) {
    if (!doc.contains(key)) {
        return;
    }
    const Json& list = doc[key];
    if (!list.is_array()) {
        throw InputError({"json.type", path + "." + key, list.dump(), "a list"});
    }
    for (std::size_t i = 0; i < list.size(); ++i) {
        read(list[i], i, path + "." + key + "[" + std::to_string(i) + "]");
    }
}

/// Once all are named, since a segment may stand before the one it starts from.
void read_origins(const Json& doc, const std::string& path, HoseLay& lay) {
    each(doc, "segments", path, [&](const Json& json, std::size_t i, const std::string& where) {
        const std::string from = Values(json, where).text("from", "pump");
        lay.segments[i].from = segment_index(lay, from, where + ".from");
    });
}

} // namespace

HoseLay read_hose_lay(std::string_view text, std::string_view name) {
    const Json doc = detail::parse(text, name);
    const std::string path(name);
    detail::require_known_keys(doc, hose_lay_keys, path);
    const Values v(doc, path);
    v.require("pump");
    HoseLay lay;
    lay.name = v.text("name", {});
    if (v.has("water")) {
        lay.temperature =
            Temperature<>(detail::si_of(doc["water"], dim::temperature, path + ".water"));
    }
    v.set("tank", lay.tank);
    const Fluid<> fluid = detail::water_or_error(lay.temperature, path + ".water");
    lay.pump = read_pump(doc["pump"], fluid, path + ".pump");
    each(doc, "segments", path, [&](const Json& json, std::size_t i, const std::string& where) {
        lay.segments.push_back(read_segment(json, i, where));
    });
    read_origins(doc, path, lay);
    each(doc, "nozzles", path, [&](const Json& json, std::size_t i, const std::string& where) {
        lay.nozzles.push_back(read_nozzle(json, i, lay, where));
    });
    check_lay(lay, name);
    return lay;
}

} // namespace scupper::json
