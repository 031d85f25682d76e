// What lies below and around a bridge: priced where the job has a price, named where it has none.
#include "catch.hpp"
#include "estimate/structures.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>

using namespace scupper;
using namespace made_up;

namespace {

std::map<std::string, double> amounts(const Structure& s, const Job& job = json::demo_job()) {
    std::map<std::string, double> found;
    for (const auto& f : estimate::surroundings(estimate::estimate(s, estimate::make_plan(job)))) {
        found[f.surrounding.name] = f.amount;
    }
    return found;
}

std::set<std::string> names(const Structure& s, const Job& job = json::demo_job()) {
    std::set<std::string> found;
    for (const auto& [name, amount] : amounts(s, job)) {
        found.insert(name);
    }
    return found;
}

Job without_charges(Job job) {
    job.charges.clear();
    std::erase_if(job.settings, [](const Setting& s) { return s.key.starts_with("charge["); });
    return job;
}

Job with_words(Job job, const std::string& id, std::vector<std::string> words) {
    job.site[id] = std::move(words);
    return job;
}

Structure over_rail() {
    Structure s = overpass();
    s.codes.service_under = 2;
    return s;
}

using Names = std::set<std::string>;

} // namespace

TEST_CASE("railway, road and water below follow from the record, the road only for the underside") {
    CHECK(names(overpass()).empty());
    CHECK(names(over_rail()) == Names{"railway_flagger", "railway_insurance", "railway_permit"});
    CHECK(names(creek_bridge()) == Names{"discharge_permit", "drain_screens"});
    Structure concrete = overpass();
    concrete.codes.material = Material::prestressed;
    CHECK(names(concrete, full_job()) == Names{"road_below_closure"});
    concrete.codes.service_under = 5;
    CHECK(names(concrete, full_job()) == Names{"discharge_permit", "drain_screens", "containment"});
    concrete.codes.navigation = 1;
    CHECK(names(concrete, full_job()).count("safety_boat") == 1);
}

TEST_CASE("old steel that is washed from below is presumed to hold lead until a test says not") {
    CHECK(names(overpass(), full_job()).count("lead_paint_protection") == 1);
    CHECK(names(overpass()).count("lead_paint_protection") == 0);
    Structure newer = overpass();
    newer.codes.year_built = 1995;
    CHECK(names(newer, full_job()).count("lead_paint_protection") == 0);
    CHECK(names(overpass(), with_words(full_job(), "Y1", {"no_lead_paint"}))
              .count("lead_paint_protection") == 0);
    CHECK(names(newer, with_words(full_job(), "99:Y1", {"lead_paint"}))
              .count("lead_paint_protection") == 1);
}

TEST_CASE("nests, lines and confined spaces are where somebody says so, and nowhere else") {
    const std::vector<std::string> words{"nesting", "overhead_line", "confined_space"};
    const Names three{"nest_survey", "overhead_line_cover", "confined_space_entry"};
    CHECK(names(overpass(), with_words(json::demo_job(), "Y1", words)) == three);
    CHECK(names(overpass(), with_words(json::demo_job(), "every", words)) == three);
    CHECK(names(overpass(), with_words(json::demo_job(), "another", words)).empty());
}

TEST_CASE("what has a price is a cost line, and together they are the charges") {
    const auto e = estimate::estimate(over_rail(), demo_plan());
    double sum = 0.0;
    for (const auto& f : estimate::surroundings(e)) {
        CHECK(f.priced);
        CHECK(f.amount > 0.0);
        sum += f.amount;
    }
    CHECK(sum == Approx(e.figure("cost.charges")).epsilon(1e-12));
    CHECK(estimate::unpriced_surroundings(e).empty());
    const auto plain =
        estimate::estimate(over_rail(), estimate::make_plan(without_charges(json::demo_job())));
    CHECK(e.figure("cost.total") - plain.figure("cost.total") == Approx(sum));
}

TEST_CASE("a charge by the shift counts the shifts, one by the visit does not") {
    Job own = json::demo_job();
    own.sharing = Sharing::own_shifts;
    for (const Job& job : {json::demo_job(), own}) {
        const auto e = estimate::estimate(over_rail(), estimate::make_plan(job));
        const auto found = amounts(over_rail(), job);
        const auto input = [&](const char* key) {
            return e.resolved.values[e.plan->inputs.at(key, "test")];
        };
        CHECK(found.at("railway_flagger") ==
              Approx(input("charge[railway_flagger].amount") * e.figure("shift.count")));
        CHECK(found.at("railway_permit") == Approx(input("charge[railway_permit].amount")));
    }
}

TEST_CASE("what has no price is never zero: it is named with what it usually costs") {
    const Job job = without_charges(json::demo_job());
    for (const auto& [name, amount] : amounts(over_rail(), job)) {
        INFO(name);
        CHECK(std::isnan(amount));
    }
    const auto texts =
        estimate::unpriced_surroundings(estimate::estimate(over_rail(), estimate::make_plan(job)));
    REQUIRE(texts.size() == 3);
    CHECK(texts.front() == "not priced: railway flagger (usually 900 USD to 2,000 USD a shift; "
                           "common practice)");
}

TEST_CASE("people or equipment of the name price it too") {
    Job job = without_charges(json::demo_job());
    job.labour.push_back({"railway_flagger", {"over_rail"}, {}});
    job = json::with_input(job, "labour[railway_flagger].people", "1");
    job = json::with_input(job, "labour[railway_flagger].wage", "\"90 USD/h\"");
    const auto found = amounts(over_rail(), job);
    CHECK(found.at("railway_flagger") > 0.0);
    CHECK(std::isnan(found.at("railway_permit")));
}

TEST_CASE("every shipped entry has a source, a caution that exists, and an order of amounts") {
    Names cautions;
    for (const Caution& c : json::shipped_cautions()) {
        cautions.insert(c.id);
    }
    for (const Surrounding& s : json::shipped_surroundings()) {
        INFO(s.name);
        CHECK(!s.source.empty());
        CHECK(!s.when.empty());
        CHECK(cautions.count(s.caution) == 1);
        CHECK(s.usual.value.guess.low <= s.usual.value.guess.likely);
        CHECK(s.usual.value.guess.likely < s.usual.value.guess.high);
    }
}
