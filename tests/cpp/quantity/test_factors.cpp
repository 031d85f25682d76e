#include "catch.hpp"
#include "scupper/quantity.hpp"

using namespace scupper;
using namespace scupper::literals;

namespace {
/// Whether a value agrees with a published one printed to this step.
bool prints_as(double value, double published, double step) {
    return std::abs(value - published) <= 0.5 * step * (1.0 + 1e-9);
}
} // namespace

TEST_CASE("exact factors") {
    // NIST SP 811 (2008), appendix B.8, printed in bold there as exact (from memory).
    CHECK(factor::foot == Approx(0.3048).epsilon(1e-15));
    CHECK(factor::yard == Approx(0.9144).epsilon(1e-15));
    CHECK(factor::mile == Approx(1609.344).epsilon(1e-15));
    CHECK(factor::pound == 0.45359237);
    CHECK(factor::year == 3.1536e7);
    CHECK(factor::standard_gravity == 9.80665);
    // NIST Handbook 44, appendix C: 1 gallon = 231 cubic inches (exactly); in litres from memory.
    CHECK(factor::us_gallon == Approx(3.785411784e-3).epsilon(1e-15));
    CHECK(factor::short_ton == Approx(907.18474).epsilon(1e-15));
    CHECK(factor::long_ton == Approx(1016.0469088).epsilon(1e-15));
}

TEST_CASE("derived factors as printed to seven digits") {
    // NIST SP 811 (2008), appendix B.8 (from memory).
    CHECK(prints_as(factor::pound_force, 4.448222, 1e-6));
    CHECK(prints_as(factor::psi, 6.894757e3, 1e-3));
    CHECK(prints_as(factor::horsepower, 7.456999e2, 1e-4));
    CHECK(prints_as(factor::degree, 1.745329e-2, 1e-8));
    CHECK(prints_as(factor::inch_of_mercury, 3.386389e3, 1e-3));
    CHECK(prints_as(factor::inch_of_water, 2.490889e2, 1e-4));
    CHECK(prints_as(factor::ounce_mass, 2.834952e-2, 1e-8));
    CHECK(prints_as(factor::fluid_ounce, 2.957353e-5, 1e-11));
}

TEST_CASE("literals agree with each other") {
    const auto same = [](double a, double b) { return a == Approx(b).epsilon(1e-14); };
    CHECK(same((1.0_ft2).si(), (12.0_in * 12.0_in).si()));
    CHECK(same((1.0_yd3).si(), (27.0_ft3).si()));
    CHECK(same((231.0_in * 1.0_in * 1.0_in).si(), (1.0_gal).si()));
    CHECK(same((60.0_gpm).si(), (1.0_gal / 1.0_s).si()));
    CHECK(same((60.0_mph).si(), (88.0_ft / 1.0_s).si()));
    CHECK(same((1.0_lbf / (1.0_in * 1.0_in)).si(), (1.0_psi).si()));
    CHECK(same((1.0_hp).si(), (550.0_lbf * (1.0_ft / 1.0_s)).si()));
    CHECK(same((2000.0_lb).si(), (1.0_short_ton).si()));
    CHECK(same((1.0_lb_per_ft3).si(), (1.0_lb / 1.0_ft3).si()));
    CHECK(same((1.0_bar).si(), (100.0_kPa).si()));
    CHECK(same((60.0_min).si(), (1.0_h).si()));
    CHECK(same((1000.0_L).si(), (1.0_m3).si()));
    CHECK(same((1000.0_mm).si(), (1.0_m).si()));
    CHECK(2_ft == 2.0_ft);
    CHECK((15_degC).kelvin() == (15.0_degC).kelvin());
    CHECK((59_degF).kelvin() == (59.0_degF).kelvin());
}
