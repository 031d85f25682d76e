#include "catch.hpp"
#include "refusal.hpp"
#include "scupper/debris.hpp"

using namespace scupper;
using namespace scupper::literals;

TEST_CASE("gutter dirt of a worked single span: 120 ft of 1.5 ft by a quarter inch") {
    // Worked by hand, inputs common practice: 3.750 ft3; at 95 lb/ft3 0.178 short ton.
    const Volume<> volume = debris::strip_volume<double>(120_ft, 1.5_ft, 0.25_in);
    CHECK(volume.in(1.0_ft3) == Approx(3.750).epsilon(1e-12));
    CHECK((volume * 95_lb_per_ft3).in(1_short_ton) == Approx(0.178125).epsilon(1e-12));
}

TEST_CASE("drain dirt of a worked river bridge: 24 free, 12 clogged, 4 frozen") {
    // Worked by hand, inputs common practice: 24 x 0.5 + 12 x 1.5 + 4 x 2.5 = 40.00 ft3.
    const auto each = [](double ft3) { return VolumeEach<>(ft3 * (1.0_ft3).si()); };
    const Volume<> volume = debris::drain_volume<double>(24_each, each(0.5)) +
                            debris::drain_volume<double>(12_each, each(1.5)) +
                            debris::drain_volume<double>(4_each, each(2.5));
    CHECK(volume.in(1.0_ft3) == Approx(40.0).epsilon(1e-12));
}

TEST_CASE("twice the strip is twice the dirt") {
    const Volume<> one = debris::strip_volume<double>(10_m, 1_m, 5_mm);
    CHECK(debris::strip_volume<double>(20_m, 1_m, 5_mm).si() == 2.0 * one.si());
}

TEST_CASE("strips and drains that cannot be are refused") {
    CHECK(refusal([] { debris::strip_volume<double>(-1.0 * 1.0_m, 1_m, 1_m); }).id() ==
          "debris.length");
    CHECK(refusal([] { debris::drain_volume<double>(Count<>(-1.0), VolumeEach<>(1.0)); }).id() ==
          "debris.drains");
}
