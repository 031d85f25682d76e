#include "catch.hpp"
#include "refusal.hpp"
#include "scupper/quantity.hpp"
#include "scupper/unit.hpp"

#include <limits>
#include <random>

using namespace scupper;
using namespace scupper::literals;

TEST_CASE("numbers are rounded to significant digits and grouped") {
    CHECK(format_number(1234.4, 4) == "1,234");
    CHECK(format_number(1234567.0, 3) == "1,230,000");
    CHECK(format_number(-1234.5, 6) == "-1,234.5");
    CHECK(format_number(0.0125, 3) == "0.0125");
    CHECK(format_number(2.0, 4) == "2");
    CHECK(format_number(999.96, 4) == "1,000");
    CHECK(format_number(0.0, 3) == "0");
    CHECK(format_number(-0.0, 3) == "0");
    CHECK(format_number(123.0, 1) == "100");
    CHECK(format_number(1e-7, 3) == "1e-07");
    CHECK(format_number(1.5e20, 3) == "1.5e+20");
}

TEST_CASE("quantities are written in the unit asked for") {
    CHECK(format_quantity((1234.0_gal).si(), "gal", 4) == "1,234 gal");
    CHECK(format_quantity((100.0_psi).si(), "psi", 3) == "100 psi");
    CHECK(format_quantity((100.0_psi).si(), "kPa", 4) == "689.5 kPa");
    CHECK(format_quantity(288.15, "degF", 3) == "59 degF");
    CHECK(format_quantity(0.02, "%", 2) == "2 %");
    CHECK(format_quantity(0.5, "1", 2) == "0.5");
    CHECK(format_quantity(85.0 / 3600.0, "USD/h", 4) == "85 USD/h");
}

TEST_CASE("what cannot be shown is refused") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinity = std::numeric_limits<double>::infinity();
    CHECK(refusal([&] { format_number(nan, 3); }).id() == "unit.number");
    CHECK(refusal([&] { format_quantity(-infinity, "m", 3); }).id() == "unit.number");
    CHECK(refusal([] { format_number(1.0, 0); }).id() == "unit.digits");
    CHECK(refusal([] { format_number(1.0, 16); }).id() == "unit.digits");
    CHECK(refusal([] { format_quantity(1.0, "foo", 3); }).id() == "unit.unknown");
}

TEST_CASE("fifteen digits read back to the same digits") {
    std::mt19937_64 engine(23);
    std::uniform_real_distribution<double> exponent(-9.0, 18.0);
    for (int i = 0; i < 2000; ++i) {
        const double value = std::pow(10.0, exponent(engine)) * (i % 2 == 0 ? 1.0 : -1.0);
        const std::string text = format_quantity(value, "m", 15);
        INFO(text);
        const double read = parse_as(text, dim::length, "x");
        REQUIRE(read == Approx(value).epsilon(1e-14));
        REQUIRE(format_quantity(read, "m", 15) == text);
    }
}
