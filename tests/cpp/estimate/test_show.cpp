#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"
#include "scupper/quantity.hpp"

#include <limits>

using namespace scupper;
using namespace scupper::literals;
using estimate::Show;

TEST_CASE("figures are shown in the unit the trade writes them in") {
    const Show us("us", "USD");
    CHECK(us.text((0.5_in).si(), dim::length, "nozzle.bore") == "0.5 in");
    CHECK(us.text((1.5_in).si(), dim::length, "hose[supply].bore") == "1.5 in");
    CHECK(us.text((200.0_ft).si(), dim::length, "deck.length") == "200 ft");
    CHECK(us.text((3.0_mi).si(), dim::length, "refill.distance") == "3 mi");
    CHECK(us.text((25.0_min).si(), dim::time, "closure[shoulder].set_up_time") == "25 min");
    CHECK(us.text((4.0_yd3).si(), dim::volume, "debris.volume") == "4 yd3");
    CHECK(us.text((1234.0_gal).si(), dim::volume, "water.volume") == "1,234 gal");
    const Show metric("metric", "USD");
    CHECK(metric.text(0.012, dim::length, "nozzle.bore") == "12 mm");
    CHECK(metric.text((3.0_mi).si(), dim::length, "refill.distance") == "4.828 km");
}

TEST_CASE("a time per unit is shown as the rate it stands for, except by the piece") {
    const Show us("us", "USD");
    const double per_area = (1.0_h).si() / (10000.0_ft2).si();
    CHECK(us.text(per_area, dim::time / dim::area, "operation[deck_hand_line].time_per_unit") ==
          "10,000 ft2/h");
    const double per_length = (1.0_h).si() / (400.0_ft).si();
    CHECK(us.text(per_length, dim::time / dim::length, "operation[x].time_per_unit") == "400 ft/h");
    CHECK(us.text(600.0, dim::time_each, "operation[drain_free].time_per_unit") == "10 min/each");
    CHECK(Show("si", "USD").text(3.0, dim::time / dim::length, "operation[x].time_per_unit") ==
          "3 s/m");
}

TEST_CASE("water by the foot is gallons by the foot, not an area") {
    const std::string key = "operation[joint_flushing].water_per_unit";
    const Show us("us", "USD");
    const double per_length = (2.0_gal).si() / (1.0_ft).si();
    CHECK(us.text(per_length, dim::volume / dim::length, key) == "2 gal/ft");
    CHECK(us.text(0.0, dim::volume / dim::length, key) == "0 gal/ft");
    CHECK(us.text((3.0_gal).si() / (1.0_ft2).si(), dim::volume / dim::area, key) == "3 gal/ft2");
    CHECK(us.text((3.0_gal).si(), dim::volume, key) == "3 gal");
    const Show metric("metric", "USD");
    CHECK(metric.text(0.002, dim::volume / dim::length, key) == "2 L/m");
    CHECK(metric.text(0.002, dim::volume / dim::area, key) == "2 L/m2");
    CHECK(metric.text(0.002, dim::none, key) == "2 L/m3");
}

TEST_CASE("a value that does not exist says so; unknown unit systems are refused") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    CHECK(Show("us", "USD").text(nan, dim::length) == "no value");
    CHECK_THROWS_AS(Show("imperial", "USD"), UnknownNameError);
}
