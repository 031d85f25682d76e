#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/work/daylight.hpp"

#include <numbers>

using namespace scupper;

namespace {

double hours_of_daylight(double latitude, int month, int day) {
    const Date date = std::chrono::year(2027) / month / day;
    return work::day_length(Angle<>(latitude * std::numbers::pi / 180.0), date).si() / 3600.0;
}

} // namespace

TEST_CASE("the longest and the shortest day at 40 degrees north") {
    // 15 h 1 min and 9 h 20 min, as almanacs print them (from memory).
    CHECK(hours_of_daylight(40.0, 6, 21) == Approx(15.0 + 1.0 / 60.0).margin(5.0 / 60.0));
    CHECK(hours_of_daylight(40.0, 12, 21) == Approx(9.0 + 20.0 / 60.0).margin(5.0 / 60.0));
}

TEST_CASE("the days of spring and autumn are a little longer than half a day") {
    for (const double latitude : {0.0, 25.0, 45.0}) {
        CHECK(hours_of_daylight(latitude, 3, 20) == Approx(12.1).margin(0.15));
        CHECK(hours_of_daylight(latitude, 9, 23) == Approx(12.1).margin(0.15));
    }
}

TEST_CASE("north and south change places with summer and winter") {
    for (const double latitude : {20.0, 35.0, 50.0}) {
        CHECK(hours_of_daylight(latitude, 6, 21) ==
              Approx(hours_of_daylight(-latitude, 12, 21)).margin(0.05));
        CHECK(hours_of_daylight(latitude, 6, 21) > hours_of_daylight(latitude, 12, 21));
    }
}

TEST_CASE("near the poles the sun stays down, or up") {
    CHECK(hours_of_daylight(75.0, 12, 21) == 0.0);
    CHECK(hours_of_daylight(75.0, 6, 21) == 24.0);
    CHECK_THROWS_AS(hours_of_daylight(91.0, 6, 21), InputError);
}
