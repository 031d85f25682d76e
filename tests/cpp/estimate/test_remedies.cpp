// What a nozzle has at the tip against what cleans and what a surface bears.
#include "catch.hpp"
#include "estimate/structures.hpp"

#include <algorithm>
#include <cmath>
#include <string>

using namespace scupper;
using namespace scupper::literals;
using namespace made_up;

namespace test_remedies {

namespace {

Job with(Job job, const char* key, const char* value) {
    return json::with_input(job, key, value);
}

/// The demo's hand line through 1 1/4 in hose.
Job weak_line() {
    return with(json::demo_job(), "hose[supply].bore", "\"1.25 in\"");
}

estimate::Estimate priced(const Job& job, const Structure& s = overpass()) {
    return estimate::estimate(s, estimate::make_plan(job));
}

/// The demo's hand line from a truck on the ground.
Job from_below() {
    Job job = json::demo_job();
    for (WashMethod& method : job.methods) {
        method.truck = method.name == "hand_line" ? TruckPlace::below : TruckPlace::on_deck;
    }
    return job;
}

} // namespace

TEST_CASE("the demo's lines have what cleans: 30 gpm at 50 psi by common practice") {
    CHECK(estimate::shortfalls(priced(json::demo_job())).empty());
    for (const JetNeed& need : json::shipped_jet_rules().needs) {
        INFO(need.method);
        CHECK(!need.source.empty());
        CHECK(index_of(method_names, need.method) >= 0);
    }
}

TEST_CASE("a line that falls short is named with its figures and remedies, the cheapest first") {
    const auto e = priced(weak_line());
    const auto found = estimate::shortfalls(e);
    REQUIRE(found.size() == 1);
    const estimate::Shortfall& short_line = found.front();
    CHECK(short_line.method == "hand_line");
    CHECK(short_line.pressure.si() == e.figure("nozzle[hand_line].pressure"));
    CHECK(short_line.pressure < short_line.need.pressure);
    REQUIRE(short_line.remedies.size() >= 2);
    double before = 0.0;
    for (const estimate::Remedy& remedy : short_line.remedies) {
        INFO(remedy.what);
        CHECK(remedy.pressure >= short_line.need.pressure * (1.0 - 1e-9));
        CHECK(remedy.flow >= short_line.need.flow * (1.0 - 1e-9));
        CHECK(remedy.total >= before);
        before = remedy.total;
    }
}

TEST_CASE("a remedy is what pricing with that hose gives, to the bit") {
    const auto found = estimate::shortfalls(priced(weak_line()));
    const auto& remedies = found.front().remedies;
    const auto larger = std::find_if(remedies.begin(), remedies.end(), [](const auto& r) {
        return r.what == "hose supply of 1.5 in instead of 1.25 in";
    });
    REQUIRE(larger != remedies.end());
    const auto again = priced(with(weak_line(), "hose[supply].bore", "\"1.5 in\""));
    CHECK(larger->total == Approx(again.figure("cost.total")).epsilon(1e-12));
    CHECK(larger->pressure.si() ==
          Approx(again.figure("nozzle[hand_line].pressure")).epsilon(1e-12));
}

TEST_CASE("from below the water is lifted over the height of this structure, through more hose") {
    Structure low = overpass();
    Structure high = overpass();
    high.dimensions.clearance_under = Length<>(12.0);
    const auto deck = priced(json::demo_job(), low);
    const auto near = priced(from_below(), low);
    const auto far = priced(from_below(), high);
    CHECK(near.figure("nozzle[hand_line].pressure") < deck.figure("nozzle[hand_line].pressure"));
    CHECK(far.figure("nozzle[hand_line].pressure") < near.figure("nozzle[hand_line].pressure"));
    CHECK(deck.figure("nozzle[hand_line].pressure") ==
          priced(json::demo_job(), high).figure("nozzle[hand_line].pressure"));
    // 7 m more to lift: 9.8 psi less at a pump of constant pressure, and friction besides.
    const double lost =
        near.figure("nozzle[hand_line].pressure") - far.figure("nozzle[hand_line].pressure");
    CHECK(lost > 0.8 * 7.0 * 1000.0 * 9.80665);
    const auto found = estimate::shortfalls(far);
    REQUIRE(found.size() == 1);
    const auto& remedies = found.front().remedies;
    CHECK(std::any_of(remedies.begin(), remedies.end(),
                      [](const auto& r) { return r.what == "the truck on the deck"; }));
}

TEST_CASE("a wand on painted steel passes what owners allow; a hand line does not") {
    Job wand = full_job();
    wand.ways["girder"] = "wand";
    const auto strong = estimate::too_strong(priced(wand));
    REQUIRE(!strong.empty());
    CHECK(strong.front().method == "wand");
    CHECK(strong.front().limit.surface == "painted steel");
    CHECK(strong.front().pressure > strong.front().limit.from);
    Structure concrete = overpass();
    concrete.codes.material = Material::prestressed;
    for (const auto& found : estimate::too_strong(priced(wand, concrete))) {
        CHECK(found.limit.surface != "painted steel");
    }
    CHECK(estimate::too_strong(priced(full_job())).empty());
}

TEST_CASE("a bucket's limit of reaction counts for what is washed from below alone") {
    // Invented pumps and tips; 25 lbf from a bucket, 60 lbf for one person, common practice.
    const Job deck = with(json::demo_job(), "pump[hand_line].pressure", "\"100 psi\"");
    for (const auto& found : estimate::hard_to_hold(priced(deck))) {
        CHECK_FALSE(found.from_bucket);
    }
    const Job under = with(full_job(), "pump[under_line].pressure", "\"300 psi\"");
    const auto from_bucket = estimate::hard_to_hold(priced(under));
    const auto line = std::find_if(from_bucket.begin(), from_bucket.end(),
                                   [](const auto& h) { return h.method == "under_line"; });
    REQUIRE(line != from_bucket.end());
    CHECK(line->from_bucket);
    CHECK(line->reaction > line->limit);
    CHECK(line->limit.si() == Approx(25.0 * 4.4482216152605).epsilon(1e-12));
    const Job wide = with(deck, "hose[supply].bore", "\"3 in\"");
    const Job strong = with(wide, "pump[hand_line].pressure", "\"300 psi\"");
    const auto deck_line = estimate::hard_to_hold(priced(strong));
    REQUIRE(deck_line.size() == 1);
    CHECK_FALSE(deck_line.front().from_bucket);
}

} // namespace test_remedies
