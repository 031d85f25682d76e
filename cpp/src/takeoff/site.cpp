#include "scupper/takeoff/site.hpp"

#include "sheet.hpp"

#include <algorithm>
#include <limits>

namespace scupper::takeoff {

namespace {

using detail::RuleId;

constexpr int last_year_of_lead = 1980;
constexpr double narrow_roadway = 20.0 * factor::foot;

Uncertain by_rule(RuleId rule, double low, double likely, double high) {
    Uncertain value =
        between(low, likely, high, rule->basis, detail::provenances().data() + rule.index);
    value.shared_share = is_certain(value) ? 0.0 : detail::rule_shared_share;
    return value;
}

Uncertain by_rule(RuleId rule) {
    return by_rule(rule, rule->low, rule->likely, rule->high);
}

RuleId limit_rule(char evaluation) {
    switch (evaluation) {
    case '4':
        return "posting.limit.shortfall_4";
    case '3':
        return "posting.limit.shortfall_3";
    case '2':
        return "posting.limit.shortfall_2";
    case '1':
        return "posting.limit.shortfall_1";
    case '0':
        return "posting.limit.shortfall_0";
    default:
        return "posting.limit.assumed";
    }
}

bool is_narrow(const Structure& s) {
    return s.codes.lanes_on == 2 && s.dimensions.roadway_width.si() > 0.0 &&
           s.dimensions.roadway_width.si() < narrow_roadway;
}

RuleId speed_rule(const Structure& s) {
    switch (s.codes.functional_class) {
    case 1:
        return "road.speed.rural_freeway";
    case 11:
    case 12:
        return "road.speed.urban_freeway";
    case 2:
    case 6:
        return "road.speed.rural_arterial";
    case 7:
    case 8:
        return is_narrow(s) ? RuleId("road.speed.narrow") : RuleId("road.speed.rural_collector");
    case 9:
        return is_narrow(s) ? RuleId("road.speed.narrow") : RuleId("road.speed.rural_local");
    case 14:
    case 16:
        return "road.speed.urban_arterial";
    case 17:
        return "road.speed.urban_collector";
    case 19:
        return "road.speed.urban_local";
    default:
        return "road.speed.unknown";
    }
}

bool has_lanes(const Structure& s) {
    return s.codes.lanes_on > 0 && s.dimensions.roadway_width.si() > 0.0;
}

Uncertain lane_width(const Structure& s) {
    const int road = s.codes.functional_class;
    if (road == 1 || road == 11 || road == 12) {
        return by_rule("road.lane_width.freeway");
    }
    if (!has_lanes(s)) {
        return by_rule("road.lane_width.unknown");
    }
    constexpr RuleId rule("road.lane_width.by_roadway");
    const double share = s.dimensions.roadway_width.si() / s.codes.lanes_on;
    const double likely = std::clamp(share, rule->low, rule->high);
    return by_rule(rule, std::max(likely - factor::foot, rule->low), likely, rule->high);
}

Uncertain shoulder_width(const Structure& s, double lane) {
    if (!has_lanes(s)) {
        return by_rule("road.shoulder_width.unknown");
    }
    constexpr RuleId rule("road.shoulder_width.rest");
    const double rest = std::max(s.dimensions.roadway_width.si() - s.codes.lanes_on * lane, 0.0);
    return by_rule(rule, rest * rule->low, rest * rule->likely, rest * rule->high);
}

} // namespace

WeightSign weight_sign(char posting) {
    switch (posting) {
    case 'P':
        return WeightSign::posted;
    case 'B':
        return WeightSign::recommended;
    case 'R':
        return WeightSign::other;
    case 'K':
        return WeightSign::closed;
    default:
        return WeightSign::none;
    }
}

Uncertain infer_posted_limit(const Structure& s) {
    const WeightSign sign = weight_sign(s.codes.posting);
    if (sign != WeightSign::posted && sign != WeightSign::recommended) {
        return certain(std::numeric_limits<double>::quiet_NaN(), Basis::assumed);
    }
    return by_rule(limit_rule(s.codes.posting_evaluation));
}

bool may_hold_lead(int year_built) {
    return year_built <= last_year_of_lead;
}

Uncertain infer_clearance(const Structure& s) {
    const auto times = [](RuleId rule, double recorded) {
        return by_rule(rule, recorded * rule->low, recorded * rule->likely, recorded * rule->high);
    };
    const bool traffic = s.codes.below == Below::highway || s.codes.below == Below::railroad;
    if (traffic && s.dimensions.clearance_under.si() > 0.0) {
        return times("site.clearance.traffic", s.dimensions.clearance_under.si());
    }
    if (s.dimensions.navigation_clearance.si() > 0.0) {
        return times("site.clearance.navigation", s.dimensions.navigation_clearance.si());
    }
    if (s.dimensions.height.si() > 0.0) {
        return times("site.clearance.height", s.dimensions.height.si());
    }
    return by_rule("site.clearance.assumed");
}

Road infer_road(const Structure& s) {
    const Uncertain lane = lane_width(s);
    return {by_rule(speed_rule(s)), lane, shoulder_width(s, lane.guess.likely)};
}

} // namespace scupper::takeoff
