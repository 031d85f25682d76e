#include "scupper/estimate/site_closure.hpp"

#include "scupper/estimate/inputs.hpp"
#include "scupper/estimate/show.hpp"
#include "traffic_facts.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::estimate {

namespace {

using namespace scupper::literals;

constexpr Speed<> fastest_low_speed = 40.0_mph;
constexpr int one_way = 1;
constexpr int first_urban_class = 11;

const Uncertain& input(const Resolved& r, std::string_view key) {
    return r.uncertain[r.model.plan->inputs.at(key, "closure")];
}

Length<> likely_length(const Resolved& r, std::string_view key) {
    return Length<>(input(r, key).guess.likely);
}

/// A value of the job or the survey beats the record's.
Uncertain given_or(const Uncertain& given, const Uncertain& by_record) {
    return std::isnan(given.guess.likely) ? by_record : given;
}

bool is_divided(const RecordedCodes& codes) {
    return codes.traffic_direction == one_way || codes.median > 0;
}

/// "speed of the traffic 45 mph (35 to 55), assumed by road.speed.rural_collector: common practice"
std::string note_on(const Estimate& e, std::string_view key, const Uncertain& value) {
    const LayoutField& field = e.plan->inputs.fields()[e.plan->inputs.at(key, "closure")];
    const Show show(e.plan->job);
    const auto text = [&](double si) { return show.text(si, field.dimension, field.key); };
    const std::string source = value.origin == nullptr ? "" : " by " + value.origin->source;
    return field.label + " " + text(value.guess.likely) + " (" + text(value.guess.low) + " to " +
           text(value.guess.high) + "), " + std::string(basis_name(value.basis)) + source;
}

} // namespace

takeoff::Road detail::road_of(const Structure& structure, const Resolved& r) {
    Structure s = structure;
    s.dimensions.roadway_width = likely_length(r, "deck.roadway_width");
    const takeoff::Road road = takeoff::infer_road(s);
    return {given_or(input(r, "road.speed"), road.speed),
            given_or(input(r, "road.lane_width"), road.lane_width),
            given_or(input(r, "road.shoulder_width"), road.shoulder_width)};
}

takeoff::Road road_of(const Estimate& e) {
    return detail::road_of(e.structure, e.resolved);
}

closure::RoadClass road_class_by_record(int functional_class, const Speed<>& speed) {
    if (closure::is_freeway(functional_class)) {
        return closure::RoadClass::freeway;
    }
    if (functional_class < first_urban_class) {
        return closure::RoadClass::rural;
    }
    return speed <= fastest_low_speed * (1.0 + count_slack) ? closure::RoadClass::urban_low_speed
                                                            : closure::RoadClass::urban_high_speed;
}

closure::Site detail::site_of(const Structure& s, const Resolved& r, closure::Kind kind) {
    const takeoff::Road road = road_of(s, r);
    closure::Site site;
    site.speed = Speed<>(road.speed.guess.likely);
    site.kind = kind;
    site.road = road_class_by_record(s.codes.functional_class, site.speed);
    site.lane_width = Length<>(road.lane_width.guess.likely);
    site.shoulder_width = Length<>(road.shoulder_width.guess.likely);
    site.work_length = likely_length(r, "deck.length") + likely_length(r, "road.work_margin");
    if (r.model.posting == Posting::approach) {
        site.work_length += likely_length(r, "posting.set_back");
    }
    site.divided = is_divided(s.codes);
    site.lanes = std::max(s.codes.lanes_on, 0);
    return site;
}

namespace {

closure::Plan plan_of(const Estimate& e, closure::Kind kind) {
    closure::Plan plan = closure::plan(detail::site_of(e.structure, e.resolved, kind));
    if (plan.kind == closure::Kind::none) {
        return plan;
    }
    const takeoff::Road road = road_of(e);
    plan.cautions.push_back(note_on(e, "road.speed", road.speed));
    plan.cautions.push_back(note_on(e, "road.lane_width", road.lane_width));
    plan.cautions.push_back(note_on(e, "road.shoulder_width", road.shoulder_width));
    return plan;
}

} // namespace

closure::Site closure_site(const Estimate& e) {
    return detail::site_of(e.structure, e.resolved, e.resolved.model.closure);
}

closure::Plan closure_plan(const Estimate& e) {
    return plan_of(e, e.resolved.model.closure);
}

std::vector<StagePlan> closure_plans(const Estimate& e) {
    std::vector<StagePlan> plans;
    for (std::size_t row = 0; row < e.plan->stages.size(); ++row) {
        if (const closure::Kind kind = e.resolved.model.closures[row];
            kind != closure::Kind::none) {
            plans.push_back({e.plan->stages[row].name, plan_of(e, kind)});
        }
    }
    return plans;
}

} // namespace scupper::estimate
