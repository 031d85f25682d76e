#include "lines.hpp"

#include "scupper/closure/placing.hpp"
#include "scupper/traced.hpp"

#include <algorithm>

namespace scupper::closure {
namespace {

using namespace scupper::literals;

constexpr Length<> beside_the_road = 6.0_ft; // of a sign from the shoulder's edge: MUTCD 6F.03
constexpr Length<> flagger_before_taper = 20.0_ft;

const Element* find(const Plan& plan, std::string_view name) {
    const auto found = std::find_if(plan.elements.begin(), plan.elements.end(),
                                    [&](const Element& e) { return e.name == name; });
    return found == plan.elements.end() ? nullptr : &*found;
}

Length<> end_of(const Element& e) {
    return e.start + e.length;
}

int lanes_of(const Plan& plan) {
    return plan.site.lanes_closed > 0 ? plan.site.lanes_closed : lanes_closed(plan.kind);
}

/// Offsets at the two ends of a stretch, by the lanes it has closed so far.
struct Offsets {
    Length<> from, to;
};

Offsets offsets_of(const Plan& plan, const Element& e, int& closed) {
    const Site& s = plan.site;
    const Length<> edge = -1.0 * s.shoulder_width;
    const Length<> here = closed == 0 && plan.kind == Kind::shoulder
                              ? 0.0_ft
                              : static_cast<double>(closed) * s.lane_width;
    if (e.name == "shoulder_taper") {
        return {edge, 0.0_ft};
    }
    if (e.name == "merging_taper" || e.name == "one_lane_two_way_taper") {
        ++closed;
        return {here, here + s.lane_width};
    }
    return {here, e.name == "downstream_taper" ? 0.0_ft : here};
}

void add(std::vector<Placed>& out, std::string_view what, const Length<>& station,
         const Length<>& offset) {
    out.push_back({what, station, offset});
}

/// The devices of a stretch, evenly; the first of a line under way stands already.
void add_devices(std::vector<Placed>& out, const Element& e, const Offsets& at, bool under_way) {
    const auto count = static_cast<int>(number(e.devices));
    const int intervals = under_way ? count : count - 1;
    for (int i = under_way ? 1 : 0; i <= intervals; ++i) {
        const double share = intervals > 0 ? static_cast<double>(i) / intervals : 0.0;
        add(out, "device", e.start + share * e.length, at.from + share * (at.to - at.from));
    }
}

Length<> left_edge(const Plan& plan) {
    return static_cast<double>(lanes_shown(plan)) * plan.site.lane_width;
}

void add_signs(std::vector<Placed>& out, const Plan& plan) {
    const Length<> right = -1.0 * (plan.site.shoulder_width + beside_the_road);
    const Length<> left = left_edge(plan) + beside_the_road;
    for (const Placing& p : placing_order(plan)) {
        if (!p.what.starts_with("advance_sign")) {
            continue;
        }
        const bool near_side = p.approach == "closed_lane";
        add(out, "sign", p.station, near_side ? right : left);
        if (p.pieces > 1.5_each) {
            add(out, "sign", p.station, near_side ? left : right);
        }
    }
}

void add_boards(std::vector<Placed>& out, const Plan& plan) {
    int lane = 0;
    for (const Element& e : plan.elements) {
        if (e.name == "merging_taper" && lane < plan.arrow_boards) {
            add(out, "arrow_board", e.start,
                (static_cast<double>(lane) - 0.25) * plan.site.lane_width);
            ++lane;
        }
    }
}

void add_vehicles(std::vector<Placed>& out, const Plan& plan) {
    const bool shoulder = plan.kind == Kind::shoulder;
    for (int i = 0; i < plan.shadow_vehicles; ++i) {
        const Length<> middle = (static_cast<double>(i) + 0.5) * plan.site.lane_width;
        add(out, "shadow_vehicle", detail::shadow_station(plan),
            shoulder ? -0.5 * plan.site.shoulder_width : middle);
    }
}

void add_flaggers(std::vector<Placed>& out, const Plan& plan) {
    if (plan.flaggers > 0) {
        const Length<> before = min_of(detail::first_line(plan), flagger_before_taper);
        add(out, "flagger", detail::first_line(plan) - before, -0.5 * beside_the_road);
        add(out, "flagger", plan.length + before, left_edge(plan) + 0.5 * beside_the_road);
    }
}

} // namespace

bool detail::is_warning(const Element& e) {
    return e.name.starts_with("advance_warning");
}

Length<> detail::first_line(const Plan& plan) {
    for (const Element& e : plan.elements) {
        if (!detail::is_warning(e)) {
            return e.start;
        }
    }
    return 0.0_ft;
}

Length<> detail::first_board(const Plan& plan) {
    const Element* taper = find(plan, "merging_taper");
    return taper == nullptr ? first_line(plan) : taper->start;
}

Length<> detail::shadow_station(const Plan& plan) {
    const Element* buffer = find(plan, "buffer");
    if (buffer == nullptr) {
        return first_line(plan);
    }
    return max_of(buffer->start, end_of(*buffer) - roll_ahead(plan.site.speed));
}

int lanes_shown(const Plan& plan) {
    return std::max(plan.site.lanes, lanes_of(plan) + 1);
}

std::vector<Placed> places(const Plan& plan) {
    std::vector<Placed> out;
    add_signs(out, plan);
    add_flaggers(out, plan);
    add_vehicles(out, plan);
    add_boards(out, plan);
    int closed = 0;
    bool under_way = false;
    for (const Element& e : plan.elements) {
        const Offsets at = offsets_of(plan, e, closed);
        if (e.devices > 0.0_each) {
            add_devices(out, e, at, under_way);
            under_way = true;
        }
    }
    return out;
}

} // namespace scupper::closure
