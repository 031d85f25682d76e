#include "catch.hpp"
#include "estimate/structures.hpp"

#include <algorithm>
#include <set>
#include <string>

using namespace scupper;
using namespace made_up;

namespace {
std::set<std::string> ids(const Structure& s, const Job& job = json::demo_job()) {
    std::set<std::string> found;
    for (const Caution& c : estimate::cautions(estimate::estimate(s, estimate::make_plan(job)))) {
        found.insert(c.id);
    }
    return found;
}
} // namespace

TEST_CASE("what lies below follows from the code (FHWA-PD-96-001, item 42B)") {
    CHECK(estimate::beneath(1).road);
    CHECK_FALSE(estimate::beneath(1).water);
    CHECK(estimate::beneath(2).rail);
    CHECK(estimate::beneath(5).water);
    const estimate::Beneath all = estimate::beneath(8);
    CHECK((all.water && all.road && all.rail));
    const estimate::Beneath unknown = estimate::beneath(no_code);
    CHECK_FALSE((unknown.water || unknown.road || unknown.rail));
}

TEST_CASE("cautions come with what triggers them, and each names its source") {
    CHECK(ids(overpass()).count("traffic") == 1);
    CHECK(ids(overpass()).count("road_below") == 1);
    CHECK(ids(overpass()).count("wash_water") == 0);
    CHECK(ids(creek_bridge()).count("wash_water") == 1);
    CHECK(ids(creek_bridge()).count("drowning") == 1);
    Structure over_rail = overpass();
    over_rail.codes.service_under = 2;
    CHECK(ids(over_rail).count("railway") == 1);
    Structure footbridge = overpass();
    footbridge.codes.lanes_on = 0;
    CHECK(ids(footbridge).count("no_closure") == 1);
    CHECK(ids(footbridge).count("traffic") == 0);
    for (const Caution& c : json::shipped_cautions()) {
        INFO(c.id);
        CHECK(!c.source.empty());
        CHECK(c.text.size() > 20);
    }
}

TEST_CASE("work from below brings its own cautions, steel the one for old paint") {
    for (const char* below : {"lift", "loose_concrete", "two_parties", "nests", "lead_paint"}) {
        INFO(below);
        CHECK(ids(overpass(), full_job()).count(below) == 1);
        CHECK(ids(overpass()).count(below) == 0);
    }
    Structure concrete = overpass();
    concrete.codes.material = Material::prestressed;
    CHECK(ids(concrete, full_job()).count("lead_paint") == 0);
    CHECK(ids(concrete, full_job()).count("lift") == 1);
}

TEST_CASE("every job defers to local codes and licensed practice") {
    for (const Structure& s : {overpass(), creek_bridge()}) {
        CHECK(ids(s).count("local_rules") == 1);
    }
}
