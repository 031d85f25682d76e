#include "catch.hpp"
#include "scupper/closure.hpp"

using namespace scupper;
using closure::Kind;
using closure::Road;

namespace {
constexpr int rural_interstate = 1;
constexpr int rural_major_collector = 7;
constexpr int urban_interstate = 11;
constexpr int one_way = 1;
constexpr int two_way = 2;
constexpr int both_ways_in_one_lane = 3;
} // namespace

TEST_CASE("the closure follows from lanes, direction and class of road") {
    const auto kind = [](int lanes, int direction, int functional_class) {
        return closure::kind_by_record(Road{lanes, direction, functional_class});
    };
    CHECK(kind(2, two_way, rural_major_collector) == Kind::one_lane_two_way);
    CHECK(kind(4, two_way, rural_major_collector) == Kind::rural_lane);
    CHECK(kind(2, one_way, rural_major_collector) == Kind::rural_lane);
    CHECK(kind(3, one_way, urban_interstate) == Kind::freeway_lane);
    CHECK(kind(2, one_way, rural_interstate) == Kind::freeway_lane);
    CHECK(kind(1, both_ways_in_one_lane, rural_major_collector) == Kind::full_closure);
    CHECK(kind(1, one_way, urban_interstate) == Kind::full_closure); // a ramp: nobody can pass
    CHECK(kind(0, 0, rural_major_collector) == Kind::none);
}

TEST_CASE("where the record does not tell the lanes, flaggers are assumed") {
    CHECK(closure::kind_by_record(Road{}) == Kind::one_lane_two_way);
}

TEST_CASE("freeways are the classes the coding guide names (FHWA-PD-96-001, item 26)") {
    for (int c = 0; c < 20; ++c) {
        CHECK(closure::is_freeway(c) == (c == 1 || c == 11 || c == 12));
    }
    CHECK_FALSE(closure::takes_a_lane(Kind::none));
    CHECK_FALSE(closure::takes_a_lane(Kind::shoulder));
    CHECK_FALSE(closure::takes_a_lane(Kind::off_road));
    CHECK(closure::takes_a_lane(Kind::full_closure));
    CHECK(closure::kind_name(Kind::one_lane_two_way) == "one_lane_two_way");
    CHECK(closure::kind_name(Kind::full_closure) == "full_closure");
}
