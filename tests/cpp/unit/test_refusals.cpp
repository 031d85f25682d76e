#include "catch.hpp"
#include "refusal.hpp"
#include "scupper/unit.hpp"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

using namespace scupper;

namespace {
using Cases = std::vector<std::pair<std::string_view, std::string_view>>;

void check_ids(const Cases& cases, Dimension expected) {
    for (const auto& [text, id] : cases) {
        INFO(text);
        std::string currency;
        const auto error = refusal([&, t = text] { parse_as(t, expected, "job.x", currency); });
        CHECK(error.id() == id);
        CHECK(error.path() == "job.x");
        CHECK_FALSE(error.found().empty());
        CHECK(error.allowed().find(dimension_phrase(expected)) != std::string::npos);
    }
}
} // namespace

TEST_CASE("what is no pressure is refused, and a valid example is given") {
    check_ids(
        {
            {"100", "unit.missing"},
            {"1/2", "unit.missing"},
            {"3 ft", "unit.dimension"},
            {"100 lb", "unit.dimension"},
            {"100 psj", "unit.unknown"},
            {"100 psi/foo", "unit.unknown"},
            {"100 psi x", "unit.text"},
            {"100 psi)", "unit.text"},
            {"100 psi 5", "unit.missing"},
            {"100 psi 5 psi", "unit.text"},
            {"100 /", "unit.missing"},
            {"100 psi*", "unit.missing"},
            {"", "unit.number"},
            {"psi", "unit.number"},
            {"nan psi", "unit.number"},
            {"inf psi", "unit.number"},
            {"1e999 psi", "unit.number"},
            {"1e308 MPa", "unit.number"},
            {"1/0 psi", "unit.number"},
            {"--5 psi", "unit.number"},
            {"5. psi", "unit.number"},
            {"1.2.3 psi", "unit.number"},
            {"1,20 psi", "unit.number"},
            {"1.234,5 psi", "unit.number"},
            {"0,125 psi", "unit.number"},
            {"1 200 psi", "unit.number"},
            {"10-20 psi", "unit.number"},
            {"1 3/2 psi", "unit.number"},
            {"100 psia", "unit.ambiguous"},
            {"100 lb/in2", "unit.dimension"},
            {"100 Pa2", "unit.dimension"},
            {"100 Pa^0", "unit.text"},
            {"100 Pa12", "unit.text"},
            {"100 N/m*m", "unit.ambiguous"},
            {"100 USD", "unit.dimension"},
            {"USD 100 USD", "unit.currency"},
        },
        dim::pressure);
}

TEST_CASE("a name with several meanings is refused with all of them") {
    check_ids(
        {{"2 ton", "unit.ambiguous"}, {"2 tons", "unit.ambiguous"}, {"2 oz", "unit.ambiguous"}},
        dim::mass);
    const auto error = refusal([] { parse_as("2 ton", dim::mass, "debris.mass"); });
    CHECK(error.allowed() == "\"short ton\" (2,000 lb), \"t\" (1,000 kg) or \"long ton\" "
                             "(2,240 lb); a mass, e.g. \"1.2 short ton\"");
}

TEST_CASE("money without its code, or with two, is refused") {
    check_ids({{"$85/h", "unit.ambiguous"},
               {"85 $/h", "unit.ambiguous"},
               {"85 currency/h", "unit.currency"},
               {"85 USD*EUR/h", "unit.currency"},
               {"EUR 5 USD/h", "unit.currency"},
               {"85 /h", "unit.dimension"},
               {"85", "unit.missing"},
               {"usd 85/h", "unit.number"},
               {"USD 85/h 5 min", "unit.text"},
               {"5 USD/h 3 USD/day", "unit.text"}},
              dim::money_per_time);
}

TEST_CASE("temperatures that are none") {
    check_ids({{"15", "unit.missing"},
               {"15 C", "unit.ambiguous"},
               {"59 F", "unit.ambiguous"},
               {"15 deg", "unit.dimension"},
               {"9 delta_degF", "unit.dimension"},
               {"-1 K", "unit.number"},
               {"-500 degF", "unit.number"},
               {"15 degC2", "unit.text"},
               {"15 degC/h", "unit.text"},
               {"15 degC 5 degF", "unit.text"},
               {"300 K 1 degF", "unit.text"}},
              dim::temperature);
}

TEST_CASE("a unit where a plain number is due") {
    check_ids({{"5 ft", "unit.dimension"}, {"half", "unit.number"}}, dim::none);
}

TEST_CASE("an unknown unit names the nearest") {
    const auto error = refusal([] { parse_as("100 Psi", dim::pressure, "pump.pressure"); });
    CHECK(error.id() == "unit.unknown");
    CHECK(error.found() == "unit \"Psi\" in \"100 Psi\"");
    CHECK(error.allowed() == "\"psi\" is the nearest known; a pressure, e.g. \"100 psi\"");
    CHECK(refusal([] { parse_quantity("1 shrt ton", "x"); }).allowed() ==
          "\"short ton\" is the nearest known");
}

TEST_CASE("a decimal comma is told what to write") {
    const auto error = refusal([] { parse_as("1,20 gal", dim::volume, "tank.volume"); });
    CHECK(error.found() == "\"1,20 gal\"");
    CHECK(error.allowed() == "a decimal point, \"1.20\"; a comma only groups thousands, "
                             "\"1,200\"; a volume, e.g. \"1,200 gal\"");
}

TEST_CASE("without a known dimension the error still says what a quantity looks like") {
    CHECK(refusal([] { parse_quantity("5 qqqqqqqq", "x"); }).allowed() ==
          "a number and its unit, e.g. \"100 psi\"");
}

TEST_CASE("no text crashes the reader") {
    const std::string_view alphabet = "0123456789.,/*^-+ '\"%$()eEmftinpsUD\xc2\xb2\xff";
    unsigned state = 12345;
    int read = 0;
    for (int i = 0; i < 20000; ++i) {
        std::string text;
        for (unsigned n = state % 9; n > 0; --n) {
            state = state * 1664525u + 1013904223u;
            text += alphabet[(state >> 16) % alphabet.size()];
        }
        state = state * 1664525u + 1013904223u;
        try {
            const ParsedQuantity quantity = parse_quantity(text, "x");
            INFO(text);
            REQUIRE(std::isfinite(quantity.si));
            ++read;
        } catch (const UnitError&) {
        }
    }
    CHECK(read > 100);
}
