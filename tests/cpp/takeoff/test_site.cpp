// What the record tells about posting and road.

#include "records.hpp"
#include "scupper/takeoff.hpp"

#include <cmath>
#include <string>

using namespace records;

namespace {

constexpr double ton = factor::short_ton;
constexpr double mph = factor::mile / factor::hour;

Structure posted(char code, char evaluation) {
    Structure s = creek();
    s.codes.posting = code;
    s.codes.posting_evaluation = evaluation;
    return s;
}

Structure on_road(int functional_class) {
    Structure s = creek();
    s.codes.functional_class = functional_class;
    return s;
}

} // namespace

TEST_CASE("the height of the girders follows from clearances, else it is assumed") {
    Structure s = creek();
    s.codes.below = Below::highway;
    s.dimensions.clearance_under = Length<>(5.0);
    s.dimensions.navigation_clearance = Length<>(not_recorded);
    const Uncertain recorded = infer_clearance(s);
    CHECK(recorded.guess.low == 5.0); // item 54B is the least clearance
    CHECK(recorded.guess.likely > recorded.guess.low);
    s.codes.below = Below::neither;
    s.dimensions.navigation_clearance = Length<>(12.0);
    CHECK(infer_clearance(s).guess.low < 12.0);
    CHECK(infer_clearance(s).guess.high > 12.0);
    s.dimensions.navigation_clearance = Length<>(not_recorded);
    CHECK(infer_clearance(s).basis == Basis::assumed);
    CHECK(infer_clearance(s).guess.low > 0.0);
}

TEST_CASE("signs by code letter (FHWA-PD-96-001, item 41)") {
    CHECK(weight_sign('P') == WeightSign::posted);
    CHECK(weight_sign('B') == WeightSign::recommended);
    CHECK(weight_sign('R') == WeightSign::other);
    CHECK(weight_sign('K') == WeightSign::closed);
    for (const char code : {'A', 'D', 'E', 'G', ' ', '?'}) {
        CHECK(weight_sign(code) == WeightSign::none);
    }
}

TEST_CASE("only a bridge posted for load has a limit, lower the greater its shortfall") {
    for (const char code : {'A', 'D', 'E', 'G', 'K', 'R', ' '}) {
        CHECK(std::isnan(infer_posted_limit(posted(code, '0')).guess.likely));
    }
    double before = 0.0;
    for (const char evaluation : {'0', '1', '2', '3', '4'}) {
        const Uncertain limit = infer_posted_limit(posted('P', evaluation));
        CHECK(limit.basis == Basis::assumed);
        CHECK(limit.guess.likely > before);
        CHECK(limit.guess.low >= 3.0 * ton);
        CHECK(limit.guess.high < 25.0 * ton);
        before = limit.guess.likely;
    }
    // Item 70: code 2 stands for 20.0 to 29.9 % below; common practice where it says 5.
    CHECK(infer_posted_limit(posted('B', '2')).guess.high == Approx(20.0 * ton));
    CHECK(infer_posted_limit(posted('P', '5')).guess.likely == Approx(15.0 * ton));
}

TEST_CASE("speeds follow from the functional class, and are lower in town and on narrow roads") {
    // Common practice, no published table.
    CHECK(infer_road(on_road(1)).speed.guess.likely == Approx(65.0 * mph));
    CHECK(infer_road(on_road(2)).speed.guess.likely == Approx(55.0 * mph));
    CHECK(infer_road(on_road(7)).speed.guess.likely == Approx(45.0 * mph));
    CHECK(infer_road(on_road(9)).speed.guess.likely == Approx(35.0 * mph));
    for (const auto& [rural, urban] : {std::pair{1, 11}, {2, 14}, {7, 17}, {9, 19}}) {
        CHECK(infer_road(on_road(urban)).speed.guess.likely <
              infer_road(on_road(rural)).speed.guess.likely);
    }
    Structure narrow = on_road(7);
    narrow.codes.lanes_on = 2;
    narrow.dimensions.roadway_width = Length<>(5.5);
    CHECK(infer_road(narrow).speed.guess.likely < infer_road(on_road(7)).speed.guess.likely);
    CHECK(infer_road(on_road(no_code)).speed.basis == Basis::assumed);
}

TEST_CASE("lanes and shoulders share the roadway") {
    Structure s = on_road(7);
    s.codes.lanes_on = 2;
    for (const double roadway : {5.0, 6.0, 8.5, 12.0, 20.0}) {
        s.dimensions.roadway_width = Length<>(roadway);
        const Road road = infer_road(s);
        CHECK(road.lane_width.guess.likely <= 12.0 * factor::foot + 1e-12);
        CHECK(road.lane_width.guess.low <= road.lane_width.guess.likely);
        CHECK(2.0 * (road.lane_width.guess.likely + road.shoulder_width.guess.likely) <=
              std::max(roadway, 2.0 * 8.0 * factor::foot) + 1e-9);
    }
    s.dimensions.roadway_width = Length<>(not_recorded);
    CHECK(infer_road(s).lane_width.basis == Basis::assumed);
    CHECK(infer_road(s).shoulder_width.basis == Basis::assumed);
}

TEST_CASE("paint of 1980 or before is presumed to hold lead, so is that of an unknown year") {
    CHECK(takeoff::may_hold_lead(1968));
    CHECK(takeoff::may_hold_lead(1980));
    CHECK_FALSE(takeoff::may_hold_lead(1981));
    CHECK(takeoff::may_hold_lead(no_code));
}
