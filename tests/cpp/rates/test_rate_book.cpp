#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/rates.hpp"

using namespace scupper;

namespace {

RateBook book(const std::string& name, double water) {
    RateBook b;
    b.name = name;
    b.currency = "USD";
    put_setting(b.settings,
                make_setting("price.water", certain(water, Basis::given), {name, {}, {}}));
    return b;
}

} // namespace

TEST_CASE("what the book on top says stands, the rest is that of the book beneath") {
    RateBook base = book("default", 2.0);
    base.date = "2026-11";
    put_setting(base.settings,
                make_setting("price.disposal", certain(0.1, Basis::given), {"default", {}, {}}));
    base.labour = {{"crew", {}, {}}};
    RateBook agency = book("agency", 3.0);
    agency.version = "4";
    agency.labour = {{"crew", {"underside"}, {}}, {"foreman", {}, {}}};
    const RateBook merged = merge(base, agency);
    REQUIRE(merged.settings.size() == 2);
    CHECK(merged.settings[0].value.guess.likely == 3.0);
    CHECK(merged.settings[0].origin->source == "agency");
    CHECK(merged.settings[1].origin->source == "default");
    REQUIRE(merged.labour.size() == 2);
    CHECK(merged.labour[0].when == std::vector<std::string>{"underside"});
    CHECK(title_of(merged) == "agency, version 4");
    CHECK(merged.beneath == std::vector<std::string>{"default, 2026-11"});
}

TEST_CASE("books of two currencies do not merge") {
    RateBook euro = book("europe", 3.0);
    euro.currency = "EUR";
    CHECK_THROWS_AS(merge(book("default", 2.0), euro), InputError);
}
