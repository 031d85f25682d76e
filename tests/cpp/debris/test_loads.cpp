#include "catch.hpp"
#include "scupper/debris.hpp"

#include <cmath>

using namespace scupper;
using namespace scupper::literals;

namespace {

/// 8.345 lb/gal, as the worked examples count.
const Density<> trade_water = Density<>((8.345_lb).si() / (1.0_gal).si());

double whole(const debris::Bulk<>& debris, const debris::Bulk<>& truck) {
    return number(debris::loads<double>(debris, truck, false));
}

} // namespace

TEST_CASE("a combination truck of 62,000 lb with 5,000 lb of water left carries 15,000 lb") {
    // Common practice, from memory: 62,000 lb gross, 42,000 lb empty.
    const Mass<> payload = debris::payload<double>(62000_lb, 42000_lb, 600_gal, trade_water);
    CHECK(payload.in(1.0_lb) == Approx(15000.0).epsilon(1e-3));
    CHECK(debris::payload<double>(42000_lb, 42000_lb, 0_gal, trade_water).si() == 0.0);
}

TEST_CASE("a jet/vac truck of a worked river bridge: weight governs, and the water decides it") {
    // Worked by hand, inputs common practice: 40 ft3 of drain dirt at 110 lb/ft3 and half of 3,680
    // gal: 19,755 lb and 10.59 yd3 into a truck of 12,000 lb and 12 yd3: 2 loads; dirt alone, 1.
    const debris::Bulk<> dirt{40_ft3, 4400_lb};
    const debris::Bulk<> truck{12_yd3, 12000_lb};
    const debris::Bulk<> wet = debris::with_water<double>(dirt, 1840_gal, trade_water);
    CHECK(wet.mass.in(1.0_lb) == Approx(19755.0).epsilon(1e-4));
    CHECK(wet.volume.in(1.0_yd3) == Approx(10.59).epsilon(1e-3));
    CHECK(whole(wet, truck) == 2.0);
    CHECK(whole(dirt, truck) == 1.0);
}

TEST_CASE("a sweeper fills by volume, the dump truck it tips into does not") {
    // Worked by hand, inputs common practice: 150 ft3 (5.56 yd3) at 95 lb/ft3, 14,250 lb.
    const debris::Bulk<> dirt{150_ft3, 14250_lb};
    CHECK(dirt.volume.in(1.0_yd3) == Approx(5.56).epsilon(1e-3));
    CHECK(whole(dirt, {3.4_yd3, 20000_lb}) == 2.0);
    CHECK(whole(dirt, {10_yd3, 20000_lb}) == 1.0);
}

TEST_CASE("loads are whole trips unless an outing fills them together") {
    const debris::Bulk<> truck{12_yd3, 12000_lb};
    CHECK(whole({1_yd3, 14250_lb}, truck) == 2.0);
    CHECK(whole({1_yd3, 12000_lb}, truck) == 1.0);
    CHECK(whole({0_yd3, 0_lb}, truck) == 0.0);
    CHECK(number(debris::loads<double>({1_yd3, 14250_lb}, truck, true)) == Approx(1.1875));
}

TEST_CASE("a truck that may carry nothing has no number of loads") {
    CHECK(std::isnan(whole({1_yd3, 1000_lb}, {12_yd3, 0_lb})));
    CHECK(std::isnan(whole({1_yd3, 1000_lb}, {12_yd3, -500_lb})));
}

TEST_CASE("more dirt or more water never makes fewer loads") {
    const debris::Bulk<> truck{3_yd3, 9000_lb};
    double before = 0.0;
    for (int step = 0; step <= 200; ++step) {
        const debris::Bulk<> dirt{step * 0.1_yd3, step * 250_lb};
        const double loads = whole(dirt, truck);
        CHECK(loads >= before);
        CHECK(loads >= number(debris::loads<double>(dirt, truck, true)) * (1.0 - 1e-9));
        CHECK(whole(debris::with_water<double>(dirt, 100_gal, trade_water), truck) >= loads);
        before = loads;
    }
}
