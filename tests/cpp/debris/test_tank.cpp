// Pits, tanks full by volume or by weight, decanting.

#include "catch.hpp"
#include "refusal.hpp"
#include "scupper/debris.hpp"

#include <cmath>

using namespace scupper;
using namespace scupper::literals;

namespace {

const Density<> water = Density<>((8.345_lb).si() / (1.0_gal).si());
const debris::Bulk<> truck{12.0_yd3, 15000.0_lb};

} // namespace

TEST_CASE("a drain box of 2 ft by 1.5 ft holds 1.5 ft3 in half a foot of dirt") {
    CHECK(debris::box_volume<double>(2.0_ft, 1.5_ft, 0.5_ft).in(1.0_ft3) == Approx(1.5));
}

TEST_CASE("a round pit of 2 ft holds pi cubic feet in a foot of dirt") {
    CHECK(debris::round_pit_volume<double>(2.0_ft, 1.0_ft).in(1.0_ft3) ==
          Approx(3.14159265).epsilon(1e-8));
}

TEST_CASE("a year's dirt of a drain lies within what a free drain is taken to hold") {
    // 54 lb per drain and year, quoted from a study of 1994 (from memory), at 110 lb/ft3.
    CHECK((54.0_lb / 110.0_lb_per_ft3).in(1.0_ft3) == Approx(0.49).epsilon(0.01));
}

TEST_CASE("a tank of 3,000 gal of wet sand weighs about 24 short tons") {
    // Own arithmetic of a published tank at 119 lb/ft3, 7.48052 gal to a cubic foot: 23.86198.
    const debris::Bulk<> endless{3000.0_gal, 1e9_lb};
    const debris::Bulk<> load = debris::tank_fill<double>(endless, 119.0_lb_per_ft3);
    CHECK(load.mass.in(1.0_short_ton) == Approx(23.8619775096).epsilon(1e-7));
}

TEST_CASE("weight governs wet sand, volume governs leaves") {
    // By hand: 15,000 lb at 119 lb/ft3 are 126 ft3 of 324.
    const debris::Bulk<> sand = debris::tank_fill<double>(truck, 119.0_lb_per_ft3);
    CHECK(sand.mass.in(1.0_lb) == Approx(15000.0));
    CHECK(sand.volume.in(1.0_ft3) == Approx(126.05).epsilon(1e-4));
    const debris::Bulk<> leaves = debris::tank_fill<double>(truck, 7.0_lb_per_ft3);
    CHECK(leaves.volume.in(1.0_yd3) == Approx(12.0));
    CHECK(leaves.mass.in(1.0_lb) == Approx(2268.0));
}

TEST_CASE("at the balanced density room and payload are reached together") {
    const Density<> rho = debris::balanced_density<double>(truck);
    CHECK(rho.in(1.0_lb_per_ft3) == Approx(46.296).epsilon(1e-4));
    CHECK(debris::weight_governs(truck, 1.01 * rho));
    CHECK_FALSE(debris::weight_governs(truck, 0.99 * rho));
    const debris::Bulk<> load = debris::tank_fill<double>(truck, rho);
    CHECK(load.volume.si() == Approx(truck.volume.si()));
    CHECK(load.mass.si() == Approx(truck.mass.si()));
}

TEST_CASE("a load that is filled is one load") {
    for (double lb = 5.0; lb < 150.0; lb += 5.0) {
        const debris::Bulk<> load = debris::tank_fill<double>(truck, lb * 1.0_lb_per_ft3);
        INFO(lb);
        CHECK(load.volume <= truck.volume * (1.0 + 1e-12));
        CHECK(load.mass <= truck.mass * (1.0 + 1e-12));
        CHECK(number(debris::truck_loads(load, truck, true)) == Approx(1.0));
        CHECK(number(debris::truck_loads(load, truck, false)) == 1.0);
    }
}

TEST_CASE("decanting takes volume and weight of the water, and nothing else") {
    // By hand: 10 yd3 of 20,000 lb with a fifth of free water lose 54 ft3 and 3,371 lb.
    const debris::Bulk<> left = debris::decanted<double>({10.0_yd3, 20000.0_lb}, 0.2, water);
    CHECK(left.volume.in(1.0_yd3) == Approx(8.0));
    CHECK(left.mass.in(1.0_lb) == Approx(20000.0 - 3370.9).epsilon(1e-5));
    const debris::Bulk<> same = debris::decanted<double>({10.0_yd3, 20000.0_lb}, 0.0, water);
    CHECK(same.mass.in(1.0_lb) == 20000.0);
    const debris::Bulk<> wet = debris::with_water<double>({2.0_yd3, 5000.0_lb}, 1.0_yd3, water);
    const debris::Bulk<> dry = debris::decanted<double>(wet, 1.0 / 3.0, water);
    CHECK(dry.volume.in(1.0_yd3) == Approx(2.0));
    CHECK(dry.mass.in(1.0_lb) == Approx(5000.0));
}

TEST_CASE("tanks and loads that cannot be are refused") {
    CHECK(refusal([] {
              debris::tank_fill<double>({0.0_yd3, 1.0_lb}, water);
          }).id() == "debris.room");
    CHECK(refusal([] {
              debris::truck_loads({1.0_yd3, 1.0_lb}, {1.0_yd3, 0.0_lb}, false);
          }).id() == "debris.payload");
    CHECK(refusal([] {
              debris::truck_loads({1.0_yd3, Mass<>(std::nan(""))}, truck, false);
          }).id() == "debris.mass");
    CHECK(refusal([] { debris::tank_fill<double>(truck, Density<>()); }).id() == "debris.density");
    CHECK(refusal([] { debris::decanted<double>(truck, 1.2, water); }).id() == "debris.free_share");
    CHECK(refusal([] {
              debris::decanted<double>({10.0_yd3, 100.0_lb}, 0.9, water);
          }).id() == "debris.free_share");
    CHECK(refusal([] { debris::box_volume<double>(Length<>(-1.0), 1.0_m, 1.0_m); }).id() ==
          "debris.length");
    CHECK(refusal([] { debris::round_pit_volume<double>(1.0_m, Length<>(-1.0)); }).id() ==
          "debris.depth");
}
