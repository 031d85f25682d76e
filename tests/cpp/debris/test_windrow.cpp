// Windrows by their angle of repose, and the shoulder they leave.

#include "catch.hpp"
#include "refusal.hpp"
#include "scupper/debris.hpp"

#include <cmath>
#include <numbers>

using namespace scupper;
using namespace scupper::literals;
using debris::Lean;

namespace {

debris::Windrow<> of(Volume<> volume, double degrees, Lean lean) {
    return debris::windrow<double>(volume, 10.0_m, degrees * 1.0_deg, lean);
}

} // namespace

TEST_CASE("a windrow of 45 degrees against a parapet is as high as it is wide") {
    // By hand: 5 m3 over 10 m are 0.5 m2, half a square of 1 m.
    const debris::Windrow<> leaning = of(5.0_m3, 45.0, Lean::parapet);
    CHECK(leaning.section.si() == Approx(0.5));
    CHECK(leaning.width.si() == Approx(1.0));
    CHECK(leaning.height.si() == Approx(1.0));
}

TEST_CASE("a windrow of 45 degrees in the open is half as high as it is wide") {
    // By hand: 0.5 m2 is a triangle of base sqrt 2 and height sqrt 2 / 2.
    const debris::Windrow<> open = of(5.0_m3, 45.0, Lean::none);
    CHECK(open.width.si() == Approx(std::numbers::sqrt2));
    CHECK(open.height.si() == Approx(0.5 * std::numbers::sqrt2));
}

TEST_CASE("every windrow holds its dirt, at its slope") {
    for (const Lean lean : {Lean::parapet, Lean::none}) {
        double width = 1e9;
        for (double degrees = 5.0; degrees < 90.0; degrees += 5.0) {
            const debris::Windrow<> w = of(2.0_m3, degrees, lean);
            INFO(degrees);
            CHECK(0.5 * w.width.si() * w.height.si() == Approx(w.section.si()).epsilon(1e-12));
            const double base = lean == Lean::none ? 0.5 * w.width.si() : w.width.si();
            CHECK(w.height.si() / base == Approx(std::tan(degrees * factor::degree)));
            CHECK(w.width.si() < width); // steeper lies narrower
            width = w.width.si();
        }
    }
}

TEST_CASE("four times the dirt lies twice as wide and twice as high") {
    const debris::Windrow<> one = of(1.0_m3, 34.0, Lean::parapet);
    const debris::Windrow<> four = of(4.0_m3, 34.0, Lean::parapet);
    CHECK(four.width.si() == Approx(2.0 * one.width.si()));
    CHECK(four.height.si() == Approx(2.0 * one.height.si()));
    CHECK(of(0.0_m3, 34.0, Lean::parapet).width.si() == 0.0);
}

TEST_CASE("neglected gutters of a short bridge leave a windrow that a walker steps over") {
    // 200 ft of 2 ft by half an inch, from both sides of no shoulder to speak of: by hand
    // 2 ft x 0.5/12 ft = 0.0833 ft2, at 34 degrees sqrt(2 x 0.0833 / 0.6745) = 0.497 ft wide.
    const Volume<> volume = debris::strip_volume<double>(200.0_ft, 2.0_ft, 0.5_in);
    const debris::Windrow<> w = debris::windrow<double>(volume, 200.0_ft, 34.0_deg, Lean::parapet);
    CHECK(w.width.in(1.0_ft) == Approx(0.497).epsilon(1e-3));
    CHECK(w.height.in(1.0_ft) == Approx(0.335).epsilon(2e-3));
    CHECK(debris::clear_shoulder<double>(4.0_ft, w.width).in(1.0_ft) ==
          Approx(3.503).epsilon(1e-3));
    CHECK(debris::clear_shoulder<double>(0.3_ft, w.width).si() < 0.0); // into the lane
    CHECK(debris::blocks_shoulder(0.3_ft, w.width));
    CHECK_FALSE(debris::blocks_shoulder(4.0_ft, w.width));
}

TEST_CASE("windrows that cannot be are refused") {
    CHECK(refusal([] { of(Volume<>(-1.0), 30.0, Lean::none); }).id() == "debris.volume");
    CHECK(refusal([] { of(1.0_m3, 0.0, Lean::none); }).id() == "debris.repose");
    CHECK(refusal([] { of(1.0_m3, 90.0, Lean::none); }).id() == "debris.repose");
    CHECK(refusal([] { of(1.0_m3, std::nan(""), Lean::none); }).id() == "debris.repose");
    CHECK(refusal([] { debris::windrow<double>(1.0_m3, Length<>(), 30.0_deg, Lean::none); }).id() ==
          "debris.length");
    CHECK(refusal([] { debris::clear_shoulder<double>(Length<>(-1.0), Length<>()); }).id() ==
          "debris.shoulder");
}

TEST_CASE("a recorded windrow is the priced one to the bit") {
    Recording tape;
    const auto input = [&](double x) { return Traced(x, &tape, tape.leaf(x, {})); };
    const debris::Windrow<Traced> w =
        debris::windrow<Traced>(Volume<Traced>(input(0.7)), Length<Traced>(input(31.0)),
                                Angle<Traced>(input(0.6)), Lean::none);
    const debris::Windrow<> plain =
        debris::windrow<double>(Volume<>(0.7), Length<>(31.0), Angle<>(0.6), Lean::none);
    CHECK(w.width.si().value() == plain.width.si());
    CHECK(w.height.si().value() == plain.height.si());
}
