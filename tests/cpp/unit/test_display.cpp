#include "catch.hpp"
#include "refusal.hpp"
#include "scupper/quantity.hpp"
#include "scupper/unit.hpp"

#include <string>
#include <vector>

using namespace scupper;

namespace {
/// Dimensions with up to three base dimensions to powers -2 to 3.
std::vector<Dimension> many_dimensions() {
    const std::vector<Dimension> bases{dim::length, dim::mass,  dim::time, dim::temperature,
                                       dim::money,  dim::count, dim::angle};
    std::vector<Dimension> all;
    for (const Dimension& a : bases) {
        for (const Dimension& b : bases) {
            for (int n = -2; n <= 3; ++n) {
                for (int m = -2; m <= 3; ++m) {
                    all.push_back(power(a, n) * power(b, m));
                }
            }
        }
    }
    return all;
}
} // namespace

TEST_CASE("coherent names") {
    CHECK(si_unit_name(dim::none) == "1");
    CHECK(si_unit_name(dim::area) == "m2");
    CHECK(si_unit_name(dim::flow) == "m3/s");
    CHECK(si_unit_name(dim::pressure) == "Pa");
    CHECK(si_unit_name(dim::density) == "kg/m3");
    CHECK(si_unit_name(dim::time / dim::area) == "s/m2");
    CHECK(si_unit_name(dim::money_per_time) == "currency/s");
    CHECK(si_unit_name(dim::acceleration) == "m/s2");
    CHECK(si_unit_name(dim::none / dim::time) == "1/s");
    CHECK(si_unit_name(dim::temperature) == "K");
}

TEST_CASE("customary and metric names") {
    CHECK(us_unit_name(dim::length) == "ft");
    CHECK(us_unit_name(dim::volume) == "gal");
    CHECK(us_unit_name(dim::mass) == "short ton");
    CHECK(us_unit_name(dim::flow) == "gpm");
    CHECK(us_unit_name(dim::speed) == "mph");
    CHECK(us_unit_name(dim::temperature) == "degF");
    CHECK(us_unit_name(dim::time / dim::area) == "h/ft2");
    CHECK(us_unit_name(dim::count * dim::time) == "labour-h");
    CHECK(us_unit_name(dim::mass / dim::time) == "lb/h");
    CHECK(metric_unit_name(dim::flow) == "L/min");
    CHECK(metric_unit_name(dim::mass) == "t");
    CHECK(metric_unit_name(dim::pressure) == "kPa");
    CHECK(metric_unit_name(dim::temperature) == "degC");
    CHECK(metric_unit_name(dim::mass / dim::time) == "kg/h");
}

TEST_CASE("every dimension has a unit in each system, of that dimension, coherent in SI") {
    for (const Dimension& dimension : many_dimensions()) {
        INFO(si_unit_name(dimension));
        const Unit si = display_unit(dimension, UnitSystem::si);
        REQUIRE(si.dimension == dimension);
        REQUIRE(si.factor == 1.0);
        REQUIRE(si.offset == 0.0);
        REQUIRE(display_unit(dimension, UnitSystem::us).dimension == dimension);
        REQUIRE(display_unit(dimension, UnitSystem::metric).dimension == dimension);
    }
}

TEST_CASE("prices show their currency") {
    const Unit unit = display_unit(dim::money_per_time, UnitSystem::us, "USD");
    CHECK(unit.name == "USD/h");
    CHECK(unit.currency == "USD");
    CHECK(refusal([] { display_unit(dim::money, UnitSystem::us, "usd"); }).id() == "unit.unknown");
}

TEST_CASE("the example of every dimension is a quantity of that dimension") {
    for (const Dimension& dimension : many_dimensions()) {
        const std::string phrase = dimension_phrase(dimension);
        INFO(phrase);
        const std::size_t start = phrase.find("e.g. \"") + 6;
        const std::string example = phrase.substr(start, phrase.rfind('"') - start);
        REQUIRE(parse_quantity(example, "x").dimension == dimension);
    }
    CHECK(dimension_phrase(dim::pressure) == "a pressure, e.g. \"100 psi\"");
}
