// What lost time costs, by hand.

#include "reference.hpp"
#include "refusal.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"
#include "scupper/traced.hpp"

using namespace scupper;
using namespace scupper::closure;
using namespace scupper::literals;
using reference::Row;

namespace test_road_user {

namespace {

constexpr AmountPerTime<> an_hour{1.0 / factor::hour};
constexpr Time<> a_day{factor::day};

} // namespace

TEST_CASE("bids with time are compared as by hand") {
    reference::Tally tally;
    for (const Row& row : reference::rows("closure/road_user")) {
        const AmountPerTime<> daily = Amount<>(row["RUC_per_day"]) / a_day;
        tally.add(row, bid_with_time(Amount<>(row["A"]), row["days"] * a_day, daily).si());
    }
    CHECK(tally.summary() == "agrees 2");
}

TEST_CASE("time of mixed traffic is valued by its shares") {
    const auto value = time_value(23.0 * an_hour, 41.0 * an_hour, 0.1);
    CHECK(value / an_hour == Approx(24.8));
    CHECK(delay_cost(VehicleTime<>(100.0 * factor::hour), value).si() == Approx(2480.0));
    CHECK(refusal([] { time_value(an_hour, an_hour, 1.5); }).id() == "closure.truck_share");
}

TEST_CASE("slower driving and turns lose time, a detour time and fuel: by hand") {
    // 1,000 vehicles, 1 mile at 45 instead of 60 mph: 20 s each.
    CHECK(slowing_delay(Count<>(1000.0), 1.0_mi, 60.0_mph, 45.0_mph).si() == Approx(20000.0));
    CHECK(slowing_delay(Count<>(1000.0), 1.0_mi, 45.0_mph, 60.0_mph).si() == 0.0);
    // cycle 240 s, green 60 s: 180^2 / 480 = 67.5 s each.
    CHECK(turn_delay(Count<>(10.0), 240.0_s, 60.0_s).si() == Approx(675.0));
    // 100 vehicles, 10 miles at 40 mph: 0.25 h x 24 + 10 x 0.5 = 11 each.
    const auto running = Amount<>(0.5) / 1.0_mi;
    CHECK(detour_cost(Count<>(100.0), 10.0_mi, 40.0_mph, 24.0 * an_hour, running).si() ==
          Approx(1100.0));
}

TEST_CASE("traced costs have the value of the plain ones") {
    const auto plain = slowing_delay(Count<>(1000.0), 1.0_mi, 60.0_mph, 45.0_mph);
    CHECK(slowing_delay(Count<Traced>(Traced(1000.0)), Length<Traced>(1.0_mi),
                        Speed<Traced>(60.0_mph), Speed<Traced>(45.0_mph))
              .si()
              .value() == plain.si());
}

TEST_CASE("what cannot be is refused") {
    CHECK(refusal([] { slowing_delay(Count<>(-1.0), 1.0_mi, 60.0_mph, 45.0_mph); }).id() ==
          "closure.vehicles");
    CHECK(refusal([] { turn_delay(Count<>(1.0), 60.0_s, 61.0_s); }).id() == "closure.green");
    CHECK(refusal([] {
              detour_cost(Count<>(1.0), 1.0_mi, 0.0_mph, an_hour, Amount<>(0.5) / 1.0_mi);
          }).id() == "closure.speed");
}

} // namespace test_road_user
