// Devices against the manual and a field handbook.

#include "reference.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"
#include "scupper/schema.hpp"
#include "scupper/traced.hpp"

using namespace scupper;
using namespace scupper::closure;
using namespace scupper::literals;
using reference::Row;

namespace {

double device_figure(const Row& row) {
    if (row.is("max device spacing in taper")) {
        return taper_device_spacing(55.0_mph).in(1.0_ft) / 55.0;
    }
    if (row.is("max device spacing in tangent")) {
        return tangent_device_spacing(55.0_mph).in(1.0_ft) / 55.0;
    }
    if (row.starts("device spacing, one-lane two-way")) {
        CHECK(taper_device_spacing(55.0_mph, TaperKind::downstream) ==
              taper_device_spacing(25.0_mph, TaperKind::one_lane_two_way));
        return taper_device_spacing(55.0_mph, TaperKind::downstream).in(1.0_ft);
    }
    const Speed<> speed = row["speed_mph"] * 1.0_mph;
    CHECK(taper_length(speed, row["offset_ft"] * 1.0_ft).in(1.0_ft) == Approx(row["taper_ft"]));
    return number(device_count(row["taper_ft"] * 1.0_ft, taper_device_spacing(speed)));
}

Kind kind(std::size_t i) {
    return static_cast<Kind>(i);
}

} // namespace

TEST_CASE("spacings agree with the manual, counts with a field handbook of 2002") {
    reference::Tally tally;
    for (const Row& row : reference::rows("closure/devices")) {
        tally.add(row, device_figure(row));
    }
    CHECK(tally.summary() == "agrees 11");
}

TEST_CASE("a line has a device at either end, and more the longer it is") {
    CHECK(number(device_count(0.0_ft, 20.0_ft)) == 1.0);
    double before = 1.0;
    for (double ft = 1.0; ft < 300.0; ft += 7.0) {
        const double count = number(device_count(ft * 1.0_ft, 20.0_ft));
        CHECK(count >= 2.0);
        CHECK(count >= before);
        CHECK((count - 1.0) * 20.0 >= ft * (1.0 - 1e-8));
        before = count;
    }
}

TEST_CASE("a traced count has the value of the plain one") {
    const auto spacing = taper_device_spacing(Speed<Traced>(55.0_mph));
    CHECK(device_count(Length<Traced>(500.0_ft), spacing).si().value() ==
          number(device_count(500.0_ft, taper_device_spacing(55.0_mph))));
    CHECK(tangent_device_spacing(Speed<Traced>(55.0_mph)).si().value() ==
          tangent_device_spacing(55.0_mph).si());
}

TEST_CASE("an arrow board stands at each lane that traffic leaves by merging") {
    CHECK(arrow_board_count(Kind::freeway_lane, 1) == 1);
    CHECK(arrow_board_count(Kind::two_freeway_lanes, 2) == 2);
    CHECK(arrow_board_count(Kind::rural_lane, 1) == 1);
    CHECK(arrow_board_count(Kind::one_lane_two_way, 1) == 0);
    CHECK(arrow_board_count(Kind::shoulder, 0) == 0);
    CHECK_THROWS_AS(arrow_board_count(Kind::rural_lane, -1), InputError);
}

TEST_CASE("faster traffic never has fewer shadow vehicles (common practice)") {
    for (std::size_t i = 0; i < closure_kind_names.size(); ++i) {
        const int lanes = lanes_closed(kind(i));
        for (double mph = 10.0; mph < 75.0; mph += 5.0) {
            CHECK(shadow_vehicle_count(kind(i), (mph + 5.0) * 1.0_mph, lanes) >=
                  shadow_vehicle_count(kind(i), mph * 1.0_mph, lanes));
        }
    }
    CHECK(shadow_vehicle_count(Kind::two_freeway_lanes, 40.0_mph, 2) == 2);
    CHECK(shadow_vehicle_count(Kind::shoulder, 45.0_mph, 0) == 1);
    CHECK(shadow_vehicle_count(Kind::one_lane_two_way, 55.0_mph, 1) == 0); // flaggers stop traffic
    CHECK(shadow_vehicle_count(Kind::rural_lane, 45.0_mph, 1) == 1);
    CHECK(shadow_vehicle_count(Kind::off_road, 55.0_mph, 0) == 0);
    CHECK(shadow_vehicle_count(Kind::full_closure, 55.0_mph, 0) == 0);
    CHECK_THROWS_AS(shadow_vehicle_count(Kind::shoulder, 0.0_mph, 0), InputError);
}

TEST_CASE("two flaggers hold a one-lane two-way section or stand at a closed road's ends") {
    for (std::size_t i = 0; i < closure_kind_names.size(); ++i) {
        const bool both_ends = kind(i) == Kind::one_lane_two_way || kind(i) == Kind::full_closure;
        CHECK(flagger_count(kind(i)) == (both_ends ? 2 : 0));
    }
}

TEST_CASE("no spacing and a negative length are refused") {
    CHECK_THROWS_AS(device_count(10.0_ft, 0.0_ft), InputError);
    CHECK_THROWS_AS(device_count(-1.0 * 1.0_ft, 20.0_ft), InputError);
    CHECK_THROWS_AS(tangent_device_spacing(0.0_mph), InputError);
}
