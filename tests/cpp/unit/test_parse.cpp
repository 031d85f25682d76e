#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/quantity.hpp"
#include "scupper/unit.hpp"

#include <string>
#include <string_view>

using namespace scupper;
using namespace scupper::literals;

namespace {
struct Case {
    std::string_view text;
    Dimension dimension;
    double si;
};

bool near(double a, double b) {
    return std::abs(a - b) <= 4e-15 * std::abs(b);
}

void check_all(std::initializer_list<Case> cases) {
    for (const Case& c : cases) {
        INFO(c.text);
        const ParsedQuantity read = parse_quantity(c.text, "test");
        CHECK(read.dimension == c.dimension);
        CHECK(near(read.si, c.si));
        std::string currency;
        CHECK(near(parse_as(c.text, c.dimension, "test", currency), c.si));
    }
}
} // namespace

TEST_CASE("numbers as the trade writes them") {
    check_all({
        {"7/8 in", dim::length, (0.875_in).si()},
        {"1 1/2 in", dim::length, (1.5_in).si()},
        {"1-1/2 in", dim::length, (1.5_in).si()},
        {"1\u00bd in", dim::length, (1.5_in).si()},
        {"\u00be in", dim::length, (0.75_in).si()},
        {"1,200 gal", dim::volume, (1200.0_gal).si()},
        {"1,234,567.5 gal", dim::volume, (1234567.5_gal).si()},
        {"1.5e-6 m", dim::length, 1.5e-6},
        {"2E3 m", dim::length, 2000.0},
        {"1e+2 m", dim::length, 100.0},
        {".5 in", dim::length, (0.5_in).si()},
        {"-3 m", dim::length, -3.0},
        {"\u22123 m", dim::length, -3.0},
        {"+3 m", dim::length, 3.0},
        {"100psi", dim::pressure, (100.0_psi).si()},
        {"  100   psi  ", dim::pressure, (100.0_psi).si()},
        {"100\u00a0psi", dim::pressure, (100.0_psi).si()},
        {"5 each", dim::count, 5.0},
        {"5each", dim::count, 5.0},
    });
}

TEST_CASE("units of the trade") {
    check_all({
        {"100 psi", dim::pressure, (100.0_psi).si()},
        {"250 gpm", dim::flow, (250.0_gpm).si()},
        {"3.5 yd3", dim::volume, (3.5_yd3).si()},
        {"3.5 CY", dim::volume, (3.5_yd3).si()},
        {"45 mph", dim::speed, (45.0_mph).si()},
        {"2.1 t", dim::mass, 2100.0},
        {"1.2 short ton", dim::mass, (1.2_short_ton).si()},
        {"20 deg", dim::angle, (20.0_deg).si()},
        {"20\u00b0", dim::angle, (20.0_deg).si()},
        {"95 lb/ft3", dim::density, (95.0_lb_per_ft3).si()},
        {"10 ft2/min", dim::area / dim::time, 10.0 * (1.0_ft2).si() / 60.0},
        {"10 ft^2 per min", dim::area / dim::time, 10.0 * (1.0_ft2).si() / 60.0},
        {"850 sq ft", dim::area, (850.0_ft2).si()},
        {"4 in\u00b2", dim::area, (4.0_in * 1.0_in).si()},
        {"20 each/h", dim::count / dim::time, 20.0 / 3600.0},
        {"20 drains / h", dim::count / dim::time, 20.0 / 3600.0},
        {"30 /h", dim::none / dim::time, 30.0 / 3600.0},
        {"30 1/h", dim::none / dim::time, 30.0 / 3600.0},
        {"30 h^-1", dim::none / dim::time, 30.0 / 3600.0},
        {"24 labour-h", dim::count * dim::time, 24.0 * 3600.0},
        {"24 labor-hours", dim::count * dim::time, 24.0 * 3600.0},
    });
}

TEST_CASE("sums from greater to smaller units") {
    check_all({
        {"12 ft 6 in", dim::length, (150.0_in).si()},
        {"12 ft 6 1/2 in", dim::length, (150.5_in).si()},
        {"12' 6\"", dim::length, (150.0_in).si()},
        {"12'-6\"", dim::length, (150.0_in).si()},
        {"12'6 1/2\"", dim::length, (150.5_in).si()},
        {"12 ft-6 in", dim::length, (150.0_in).si()},
        {"-12 ft 6 in", dim::length, (-150.0_in).si()},
        {"1 h 30 min", dim::time, 5400.0},
        {"1 day 1 h 1 min", dim::time, 90060.0},
    });
}

TEST_CASE("plain numbers") {
    check_all({
        {"0.5", dim::none, 0.5},
        {"2 %", dim::none, 0.02},
        {"2%", dim::none, 0.02},
        {"3/4", dim::none, 0.75},
        {"1,200", dim::none, 1200.0},
        {"4 m/m", dim::none, 4.0},
    });
}

TEST_CASE("money names its currency, before or behind") {
    const Dimension per_volume = dim::money_per_volume;
    check_all({
        {"USD 85/h", dim::money_per_time, 85.0 / 3600.0},
        {"85 USD/h", dim::money_per_time, 85.0 / 3600.0},
        {"USD 85 per h", dim::money_per_time, 85.0 / 3600.0},
        {"USD 8/kgal", per_volume, 8.0 / (1000.0_gal).si()},
        {"USD 1,250", dim::money, 1250.0},
        {"USD -5", dim::money, -5.0},
        {"-5 USD", dim::money, -5.0},
        {"USD 1.20/ft2", dim::money / dim::area, 1.2 / (1.0_ft2).si()},
        {"EUR 38/labour-h", dim::money / dim::count / dim::time, 38.0 / 3600.0},
    });
    CHECK(parse_quantity("USD 85/h", "x").currency == "USD");
    CHECK(parse_quantity("85 EUR/h", "x").currency == "EUR");
    CHECK(parse_quantity("85 psi", "x").currency.empty());
}

TEST_CASE("the currency of the first price binds the next") {
    std::string currency;
    parse_as("USD 85/h", dim::money_per_time, "a", currency);
    CHECK(currency == "USD");
    parse_as("3 ft", dim::length, "b", currency);
    CHECK(currency == "USD");
    parse_as("95 USD/h", dim::money_per_time, "c", currency);
    CHECK_THROWS_AS(parse_as("EUR 85/h", dim::money_per_time, "d", currency), UnitError);
    CHECK_THROWS_AS(parse_as("USD 85/h", dim::money_per_time, "e"), UnitError);
}

TEST_CASE("temperatures") {
    CHECK(near(parse_temperature("15 degC", "x").kelvin(), 288.15));
    CHECK(near(parse_temperature("15 \u00b0C", "x").kelvin(), 288.15));
    CHECK(near(parse_temperature("59 degF", "x").kelvin(), 288.15));
    CHECK(near(parse_temperature("59 deg F", "x").kelvin(), 288.15));
    CHECK(near(parse_temperature("-40 degF", "x").kelvin(), 233.15));
    CHECK(parse_temperature("288.15 K", "x").kelvin() == 288.15);
    CHECK(parse_as("15 degC", dim::temperature, "x") == parse_temperature("15 degC", "x").kelvin());
    CHECK(parse_quantity("15 degC", "x").absolute_temperature);
    CHECK_FALSE(parse_quantity("9 delta_degF", "x").absolute_temperature);
    CHECK(near(parse_quantity("9 delta_degF", "x").si, 5.0));
    CHECK(near(parse_quantity("10 W/K", "x").si, 10.0));
}
