#include "catch.hpp"
#include "scupper/work.hpp"

using namespace scupper;
using namespace scupper::literals;

TEST_CASE("the 45-minute hour: three productive quarters fill a clock hour") {
    CHECK(work::clock_time<double>(45_min, 0.75).in(1.0_h) == Approx(1.0).epsilon(1e-12));
    // A worked single span (inputs common practice): 2.050 productive hours take 2.733.
    CHECK(work::clock_time<double>(2.050_h, 0.75).in(1.0_h) == Approx(2.733).epsilon(5e-4));
}

TEST_CASE("water follows from flow, time and trigger") {
    // Worked by hand (inputs common practice): 57.785 gpm x 60 x 1.3268 h x 0.5 = 2,300 gal.
    const Volume<> water = work::nozzle_water<double>(57.785_gpm, 1.3268_h, 0.5);
    CHECK(water.in(1_gal) == Approx(2300.0).epsilon(5e-4));
    CHECK(work::nozzle_water<double>(50_gpm, 1_h, 0.0).si() == 0.0);
}

TEST_CASE("a refill and a dump trip of the worked examples") {
    // 2 x 3 mi / 30 mph + 10 min + 2,300 gal / 250 gpm = 31.2 min (inputs common practice).
    const Time<> stop = 10_min + 2300_gal / 250_gpm;
    CHECK(work::trip_time<double>(3_mi, 30_mph, stop).in(1_min) == Approx(31.2).epsilon(1e-3));
    // 2 x 12 mi / 35 mph + 30 min = 1.1857 h (inputs common practice).
    CHECK(work::trip_time<double>(12_mi, 35_mph, 30_min).in(1_h) == Approx(1.1857).epsilon(1e-4));
}

TEST_CASE("the first tank comes along full; a shared tank is fetched in proportion") {
    CHECK(number(work::refills<double>(2300_gal, 3000_gal, false)) == 0.0);
    CHECK(number(work::refills<double>(18132_gal, 3500_gal, false)) == 5.0); // 6 loads, one along
    CHECK(number(work::refills<double>(0_gal, 3000_gal, false)) == 0.0);
    CHECK(number(work::refills<double>(1500_gal, 3000_gal, true)) == Approx(0.5));
}

TEST_CASE("what is not brought along is fetched, and all of it where loads are shared") {
    CHECK(work::water_fetched<double>(2300_gal, 3000_gal, false).si() == 0.0);
    CHECK(work::water_fetched<double>(3500_gal, 3000_gal, false).in(1_gal) == Approx(500.0));
    CHECK(work::water_fetched<double>(2300_gal, 3000_gal, true).in(1_gal) == Approx(2300.0));
}

TEST_CASE("a smaller tank never needs fewer refills") {
    double before = 1e9;
    for (int gallons = 500; gallons <= 6000; gallons += 100) {
        const Volume<> tank = static_cast<double>(gallons) * 1_gal;
        const double refills = number(work::refills<double>(17000_gal, tank, false));
        CHECK(refills <= before);
        before = refills;
    }
}

TEST_CASE("vehicles that take turns wait for what the work between trips does not cover") {
    // Two of 30 min away, 20 min of work between: 30 - 20 = 10 min, by hand.
    CHECK(work::waiting_time<double>(30_min, 20_min, Count<>(2.0)).in(1_min) == Approx(10.0));
    CHECK(work::waiting_time<double>(30_min, 20_min, Count<>(3.0)).si() == 0.0);
    CHECK(work::waiting_time<double>(30_min, 20_min, Count<>(1.0)).in(1_min) == 30.0);
    CHECK(work::waiting_time<double>(0_min, 20_min, Count<>(1.0)).si() == 0.0);
}
