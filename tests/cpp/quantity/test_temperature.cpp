#include "catch.hpp"
#include "scupper/quantity.hpp"

#include <concepts>

using namespace scupper;
using namespace scupper::literals;

TEST_CASE("fixed points of the scales") {
    // 0 degC = 273.15 K: SI brochure, 9th edition, 2.3.1. 32 degF and 212 degF are the ice and
    // steam points by the scale's definition, NIST SP 811 (2008), B.8 (formula from memory).
    CHECK((0.0_degC).kelvin() == 273.15);
    CHECK((32.0_degF).kelvin() == Approx(273.15).epsilon(1e-15));
    CHECK((212.0_degF).celsius() == Approx(100.0).epsilon(1e-13));
    CHECK((0.0_degF).kelvin() == Approx(459.67 / 1.8).epsilon(1e-15));
}

TEST_CASE("the scales cross at -40") {
    const Temperature<double> celsius(-40.0 + factor::celsius_zero);
    const Temperature<double> fahrenheit((-40.0 + factor::fahrenheit_zero) *
                                         factor::fahrenheit_step);
    CHECK(celsius.kelvin() == Approx(fahrenheit.kelvin()).epsilon(1e-14));
}

TEST_CASE("temperatures differ by a difference and move by one") {
    static_assert(std::same_as<decltype(20.0_degC - 15.0_degC), TemperatureDifference<double>>);
    static_assert(std::same_as<decltype(20.0_degC + 5.0_K), Temperature<double>>);
    CHECK((20.0_degC - 15.0_degC).si() == Approx(5.0).epsilon(1e-12));
    CHECK((15.0_degC + 5.0_K).celsius() == Approx(20.0).epsilon(1e-12));
    CHECK((68.0_degF - 50.0_degF).si() == Approx(10.0).epsilon(1e-12));
    CHECK(15.0_degC < 60.0_degF);
}
