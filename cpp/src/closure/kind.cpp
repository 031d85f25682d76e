#include "scupper/closure/kind.hpp"

#include "scupper/schema.hpp"

#include <cstddef>

namespace scupper::closure {

namespace {
constexpr int both_ways_in_one_lane = 3;
constexpr int one_way = 1;
constexpr int two_way = 2;
} // namespace

bool is_freeway(int functional_class) {
    return functional_class == 1 || functional_class == 11 || functional_class == 12;
}

Kind kind_by_record(const Road& road) {
    if (road.lanes == 0) {
        return Kind::none;
    }
    if (road.lanes == 1) {
        const bool nobody_passes =
            road.direction == both_ways_in_one_lane || road.direction == one_way;
        return nobody_passes ? Kind::full_closure : Kind::one_lane_two_way;
    }
    if (is_freeway(road.functional_class)) {
        return Kind::freeway_lane;
    }
    const bool can_pass = road.lanes > 2 || (road.direction != two_way && road.direction > 0);
    return can_pass ? Kind::rural_lane : Kind::one_lane_two_way;
}

bool takes_a_lane(Kind kind) {
    return kind != Kind::none && kind != Kind::shoulder && kind != Kind::off_road;
}

std::string_view kind_name(Kind kind) {
    return closure_kind_names[static_cast<std::size_t>(kind)];
}

} // namespace scupper::closure
