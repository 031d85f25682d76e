#include "scupper/closure/plan.hpp"

#include "require.hpp"
#include "scupper/closure/buffer.hpp"
#include "scupper/closure/taper.hpp"
#include "scupper/traced.hpp"

namespace scupper::closure {
namespace {

using namespace scupper::literals;

// Manual on Uniform Traffic Control Devices, notes for figures 6H-32, 6H-33, 6H-37 (2009).
constexpr Length<> shoulder_that_reads_as_lane = 8.0_ft;
constexpr double tangent_in_merging_tapers = 2.0;
constexpr int signs_of_an_approach = 3;
constexpr int signs_off_the_road = 1;
constexpr Length<> behind_a_curb = 2.0_ft;
constexpr Length<> beside_a_road = 15.0_ft;

bool merges(Kind kind) {
    return arrow_board_count(kind, 1) > 0;
}

bool is_divided(const Site& site) {
    return site.divided || site.kind == Kind::freeway_lane || site.kind == Kind::two_freeway_lanes;
}

// Both directions are stopped or turned away.
bool has_opposite_approach(const Site& site) {
    return site.kind == Kind::one_lane_two_way ||
           (site.kind == Kind::full_closure && !is_divided(site));
}

int lanes_of(const Site& site) {
    return site.lanes_closed == 0 ? lanes_closed(site.kind) : site.lanes_closed;
}

void require_lanes(const Site& site) {
    const int least = lanes_closed(site.kind);
    const bool may_be_more = merges(site.kind);
    const int lanes = lanes_of(site);
    if (lanes < least || (lanes > least && !may_be_more)) {
        detail::refuse("lanes_closed", site.lanes_closed,
                       may_be_more ? "0, or no fewer than the kind says" : "0: the kind says it");
    }
}

void require_site(const Site& site) {
    detail::positive("speed", site.speed);
    detail::positive("lane_width", site.lane_width);
    detail::not_negative("shoulder_width", site.shoulder_width);
    detail::not_negative("work_length", site.work_length);
    if (site.kind == Kind::shoulder) {
        detail::positive("shoulder_width", site.shoulder_width);
    }
    detail::not_negative("set_back", site.set_back);
    detail::not_negative("lanes", static_cast<double>(site.lanes));
    require_lanes(site);
}

void append(Plan& plan, std::string_view name, const Length<>& length, const Count<>& devices) {
    plan.elements.push_back({name, plan.length, length, devices});
    plan.length += length;
    plan.devices += devices;
}

// A line of devices; where one is under way already, its last device is the first of this.
void append_line(Plan& plan, std::string_view name, const Length<>& length,
                 const Length<>& spacing) {
    const Count<> shared = choose(plan.devices > 0.0_each, 1.0_each, 0.0_each);
    append(plan, name, length, device_count(length, spacing) - shared);
}

void append_taper(Plan& plan, const Site& site, std::string_view name, TaperKind kind) {
    const Length<> offset = kind == TaperKind::shoulder ? site.shoulder_width : site.lane_width;
    const Length<> length = taper_length(site.speed, offset, kind);
    append_line(plan, name, length, taper_device_spacing(site.speed, kind));
    if (kind != TaperKind::downstream) {
        plan.taper += length;
    }
}

void append_advance_warning(Plan& plan, const SignSpacing& spacing) {
    append(plan, "advance_warning_c", spacing.c, 0.0_each);
    append(plan, "advance_warning_b", spacing.b, 0.0_each);
    append(plan, "advance_warning_a", spacing.a, 0.0_each);
}

void append_merging_tapers(Plan& plan, const Site& site) {
    const Length<> between =
        tangent_in_merging_tapers * taper_length(site.speed, site.lane_width, TaperKind::merging);
    for (int lane = 0; lane < lanes_of(site); ++lane) {
        if (lane > 0) {
            append_line(plan, "tangent_between_tapers", between,
                        tangent_device_spacing(site.speed));
        }
        append_taper(plan, site, "merging_taper", TaperKind::merging);
    }
}

void append_transition(Plan& plan, const Site& site) {
    if (site.kind == Kind::one_lane_two_way) {
        append_taper(plan, site, "one_lane_two_way_taper", TaperKind::one_lane_two_way);
        return;
    }
    const bool wide = site.shoulder_width >= shoulder_that_reads_as_lane * (1.0 - count_slack);
    if (site.kind == Kind::shoulder || wide) {
        append_taper(plan, site, "shoulder_taper", TaperKind::shoulder);
    }
    if (merges(site.kind)) {
        append_merging_tapers(plan, site);
    }
}

void append_activity(Plan& plan, const Site& site) {
    const Length<> spacing = tangent_device_spacing(site.speed);
    plan.buffer = buffer_length(site.speed, site.downgrade);
    append_line(plan, "buffer", plan.buffer, spacing);
    append_line(plan, "work_space", site.work_length, spacing);
    if (site.kind != Kind::shoulder) {
        append_taper(plan, site, "downstream_taper", TaperKind::downstream);
    }
}

// One sign, where the work is near enough to the road to need it.
void lay_out_off_road(Plan& plan, const Site& site, const SignSpacing& spacing) {
    if (!advance_warning_may_be_omitted(site.set_back, site.at_curb)) {
        append(plan, "advance_warning_a", spacing.a, 0.0_each);
        plan.advance_signs = signs_off_the_road * (is_divided(site) ? 1 : 2);
        plan.opposite_approach = is_divided(site) ? 0.0_ft : spacing.a;
    }
    append(plan, "work_space", site.work_length, 0.0_each);
}

void count_signs(Plan& plan, const Site& site, const SignSpacing& spacing) {
    const bool opposite = has_opposite_approach(site);
    plan.opposite_approach = opposite ? advance_warning_length(spacing) : 0.0_ft;
    plan.advance_signs = signs_of_an_approach * (opposite ? 2 : 1) * (is_divided(site) ? 2 : 1);
}

void add_cautions(Plan& plan, const Site& site) {
    if (site.kind == Kind::full_closure) {
        plan.cautions.emplace_back(
            "A full closure needs barricades at both ends and a signed detour; they are not "
            "counted here.");
    } else if (site.kind == Kind::off_road) {
        plan.cautions.emplace_back(
            "Work off the road: vehicles and people who step onto it need a closure of their own.");
    } else if (site.kind != Kind::one_lane_two_way && !taper_formula_exists(site.speed)) {
        plan.cautions.emplace_back(
            "No taper formula is published between 40 and 45 mph; the longer "
            "one is used.");
    }
}

} // namespace

Plan plan(const Site& site) {
    require_site(site);
    Plan out;
    out.kind = site.kind;
    out.site = site;
    out.cautions.emplace_back(plan_caution);
    if (site.kind == Kind::none) {
        return out;
    }
    const SignSpacing spacing = sign_spacing(site.road, site.edition);
    if (site.kind == Kind::off_road) {
        lay_out_off_road(out, site, spacing);
        add_cautions(out, site);
        return out;
    }
    append_advance_warning(out, spacing);
    if (site.kind == Kind::full_closure) {
        append(out, "work_space", site.work_length, 0.0_each);
    } else {
        append_transition(out, site);
        append_activity(out, site);
    }
    count_signs(out, site, spacing);
    out.arrow_boards = arrow_board_count(site.kind, lanes_of(site));
    out.shadow_vehicles = shadow_vehicle_count(site.kind, site.speed, lanes_of(site));
    out.flaggers = flagger_count(site.kind);
    add_cautions(out, site);
    return out;
}

bool advance_warning_may_be_omitted(const Length<>& set_back, bool at_curb) {
    detail::not_negative("set_back", set_back);
    const bool far = set_back >= beside_a_road * (1.0 - count_slack);
    return far || (at_curb && set_back > behind_a_curb * (1.0 + count_slack));
}

std::vector<Element> removal_order(const Plan& plan) {
    return {plan.elements.rbegin(), plan.elements.rend()};
}

} // namespace scupper::closure
