// Traffic past a closure: figures worked by hand, and what must hold for any.

#include "reference.hpp"
#include "refusal.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"
#include "scupper/traced.hpp"

#include <limits>
#include <vector>

using namespace scupper;
using namespace scupper::closure;
using namespace scupper::literals;
using reference::Row;

namespace test_capacity {

namespace {

TrafficFlow<> an_hour(double vehicles) {
    return Count<>(vehicles) / 1.0_h;
}

double worked(const Row& row) {
    if (row.is("demand")) {
        return hourly_demand(Count<>(row["daily"]), row["hourly_share"], row["directional_share"])
            .in(an_hour(1.0));
    }
    const Length<> length = row["length_ft"] * 1.0_ft;
    const Speed<> speed = row["speed_mph"] * 1.0_mph;
    const Time<> green = row["green_s"] * 1.0_s;
    return row.is("cycle") ? one_lane_cycle(length, speed, green).si()
                           : one_lane_capacity(length, speed, green, an_hour(row["saturation"]))
                                 .in(an_hour(1.0));
}

/// Shares in percent of the hours from 20 to 5 o'clock; invented, of one direction of a freeway.
std::vector<TrafficFlow<>> night(double daily) {
    std::vector<TrafficFlow<>> hours;
    for (const double percent : {4.4, 3.6, 3.0, 2.3, 1.4, 1.0, 0.9, 1.0, 1.8, 3.8}) {
        hours.push_back(hourly_demand(Count<>(daily), percent / 100.0, 1.0));
    }
    return hours;
}

} // namespace

TEST_CASE("cycle, capacity and demand as worked by hand") {
    reference::Tally tally;
    for (const Row& row : reference::rows("closure/capacity")) {
        tally.add(row, worked(row));
    }
    CHECK(tally.summary() == "agrees 5");
}

TEST_CASE("a longer or slower lane carries less, never more than half of the saturation") {
    double before = 750.0 + 1e-9;
    for (double ft = 0.0; ft < 5000.0; ft += 250.0) {
        const double now =
            one_lane_capacity(ft * 1.0_ft, 25.0_mph, 60.0_s, an_hour(1500.0)).in(an_hour(1.0));
        CHECK(now < before);
        CHECK(now > one_lane_capacity((ft + 1.0) * 1.0_ft, 15.0_mph, 60.0_s, an_hour(1500.0))
                        .in(an_hour(1.0)));
        before = now;
    }
}

TEST_CASE("a traced capacity has the value of the plain one") {
    const auto traced = one_lane_capacity(Length<Traced>(700.0), Speed<Traced>(11.0),
                                          Time<Traced>(60.0), TrafficFlow<Traced>(0.4));
    CHECK(traced.si().value() ==
          one_lane_capacity(Length<>(700.0), Speed<>(11.0), Time<>(60.0), TrafficFlow<>(0.4)).si());
}

TEST_CASE("the night window of one open lane, from the hourly demand") {
    // 45,000 vehicles a day of one direction, one lane of 1,450 an hour: by hand, 22 to 5 o'clock.
    const Window open = window(night(45000.0), an_hour(1450.0));
    CHECK(open.first == 2);
    CHECK(open.hours == 7);
    const Window busier = window(night(49500.0), an_hour(1450.0)); // 22 o'clock: 1,485
    CHECK(busier.first == 3);
    CHECK(busier.hours == 6);
    CHECK(window(night(45000.0), an_hour(100.0)).hours == 0);
    CHECK(window({}, an_hour(100.0)).hours == 0);
    CHECK(window(night(45000.0), night(45000.0).front()).hours == 10); // as much as fits
}

TEST_CASE("a whole day goes on past midnight") {
    std::vector<TrafficFlow<>> day(24, an_hour(2000.0));
    for (const std::size_t hour : {22u, 23u, 0u, 1u, 2u, 12u, 13u}) {
        day[hour] = an_hour(500.0);
    }
    const Window open = window(day, an_hour(1450.0));
    CHECK(open.first == 22);
    CHECK(open.hours == 5);
    CHECK(window(day, an_hour(3000.0)).hours == 24);
}

TEST_CASE("impossible traffic is refused") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    CHECK(refusal([] { hourly_demand(Count<>(100.0), 6.0, 1.0); }).id() == "closure.hourly_share");
    CHECK(refusal([&] { hourly_demand(Count<>(nan), 0.1, 1.0); }).id() == "closure.daily");
    CHECK(refusal([] { one_lane_cycle(Length<>(1.0), Speed<>(0.0), Time<>(1.0)); }).id() ==
          "closure.speed");
    CHECK(refusal([] { one_lane_cycle(Length<>(1.0), Speed<>(1.0), Time<>(0.0)); }).id() ==
          "closure.green");
    const std::vector<TrafficFlow<>> hours{TrafficFlow<>(nan)};
    CHECK(refusal([&] { window(hours, TrafficFlow<>(1.0)); }).id() == "closure.demand");
}

} // namespace test_capacity
