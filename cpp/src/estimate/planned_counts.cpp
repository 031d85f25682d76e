// People and pieces that the closure's lay-out counts.

#include "resolve_parts.hpp"
#include "scupper/error.hpp"
#include "traffic_facts.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace scupper::estimate::detail {

namespace {

using closure::Kind;

enum Counted : std::size_t { advance_signs, devices, arrow_boards, shadow_vehicles, flaggers };

const Provenance& plan_origin() {
    static const Provenance origin{"lay-out of the closure", "", "common practice"};
    return origin;
}

/// Whether the road has the room that a lay-out needs.
bool has_room(const closure::Site& site) {
    return site.kind != Kind::shoulder || site.shoulder_width > Length<>(0.0);
}

double counted(const closure::Site& site, std::size_t what) {
    const int lanes = closure::lanes_closed(site.kind);
    switch (what) {
    case arrow_boards:
        return closure::arrow_board_count(site.kind, lanes);
    case shadow_vehicles:
        return closure::shadow_vehicle_count(site.kind, site.speed, lanes);
    case flaggers:
        return closure::flagger_count(site.kind);
    default:
        break;
    }
    if (!has_room(site)) {
        return std::numeric_limits<double>::quiet_NaN();
    }
    const closure::Plan plan = closure::plan(site);
    return what == devices ? number(plan.devices) : plan.advance_signs;
}

/// The stages in which a crew works.
bool works_in(const Plan& plan, std::size_t crew, std::size_t stage) {
    if (crew == everyone) {
        return true;
    }
    const std::size_t stages = plan.stages.size();
    return crew <= stages ? crew - 1 == stage : plan.parties[crew - 1 - stages].stage == stage;
}

double most_needed(const Structure& s, const Resolved& r, const PlannedCount& c) {
    double most = 0.0;
    for (std::size_t stage = 0; stage < r.model.closures.size(); ++stage) {
        if (works_in(*r.model.plan, c.crew, stage)) {
            const double here = counted(site_of(s, r, r.model.closures[stage]), c.what);
            most = std::isnan(here) ? here : std::max(most, here);
        }
    }
    return most;
}

} // namespace

void put_counts(const Structure& structure, Resolved& r) {
    for (const PlannedCount& c : r.model.plan->planned_counts) {
        if (std::isnan(r.uncertain[c.place].guess.likely)) {
            const double pieces = most_needed(structure, r, c);
            r.uncertain[c.place] = certain(pieces, Basis::inferred, &plan_origin());
            r.values[c.place] = pieces;
        }
    }
}

} // namespace scupper::estimate::detail
