#include "catch.hpp"
#include "refusal.hpp"
#include "scupper/quantity.hpp"
#include "scupper/unit.hpp"

using namespace scupper;
using namespace scupper::literals;

TEST_CASE("units alone") {
    CHECK(parse_unit("ft2/h", "x").name == "ft2/h");
    CHECK(parse_unit("ft2/h", "x").dimension == dim::area / dim::time);
    CHECK(parse_unit(" m\u00b2 ", "x").name == "m2");
    CHECK(parse_unit("USD/h", "x").currency == "USD");
    CHECK(parse_unit("USD/h", "x").dimension == dim::money_per_time);
    CHECK(parse_unit("currency/h", "x").currency.empty());
    CHECK(parse_unit("1", "x").dimension == dim::none);
    CHECK(parse_unit("1/s", "x").dimension == dim::none / dim::time);
    CHECK(parse_unit("gal / short ton", "x").dimension == dim::volume / dim::mass);
    CHECK(parse_unit("degF", "x").offset == 459.67);
}

TEST_CASE("compound factors are the products of their parts") {
    CHECK(parse_unit("gal/min", "x").factor == (1.0_gpm).si());
    CHECK(parse_unit("mi/h", "x").factor == (1.0_mph).si());
    CHECK(parse_unit("lbf/in2", "x").factor == Approx((1.0_psi).si()).epsilon(1e-15));
    CHECK(parse_unit("kg/m/s", "x").dimension == dim::dynamic_viscosity);
    CHECK(parse_unit("Pa*s", "x").dimension == dim::dynamic_viscosity);
    CHECK(parse_unit("m^-2", "x").factor == 1.0);
    CHECK(parse_unit("ft^-2", "x").factor == Approx(1.0 / (1.0_ft2).si()).epsilon(1e-15));
}

TEST_CASE("what is no unit is refused") {
    const auto id = [](std::string_view text) {
        return refusal([text] { parse_unit(text, "column"); }).id();
    };
    CHECK(id("") == "unit.missing");
    CHECK(id("foo") == "unit.unknown");
    CHECK(id("ton/h") == "unit.ambiguous");
    CHECK(id("5 ft") == "unit.unknown");
    CHECK(id("ft h") == "unit.text");
    CHECK(id("m/s*s") == "unit.ambiguous");
    CHECK(id("degC/s") == "unit.text");
    CHECK(id("USD/EUR") == "unit.currency");
    CHECK(id("m2.5") == "unit.text");
    CHECK(id("m-2") == "unit.text");
    CHECK(id("ft-lbf") == "unit.unknown");
}
