// Sites, paces, surroundings and alternatives in a job's document.
#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/json.hpp"

#include <algorithm>
#include <string>

using namespace scupper;

namespace {

Job read(const std::string& members) {
    const std::string text =
        R"({"scupper_job": 1, "service": {"deck_top": "rinse"}, "methods": [{"name": "hand_line", "hose": []}], )" +
        members + "}";
    return json::read_job(text, "job.json", json::shipped_rates());
}

std::string refused(const std::string& members) {
    try {
        read(members);
    } catch (const InputError& e) {
        return e.path() + " | " + e.found() + " | " + e.allowed();
    }
    return "accepted";
}

template <class Rows>
const auto& named(const Rows& rows, const std::string& name) {
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const auto& r) { return r.name == name; });
    REQUIRE(found != rows.end());
    return *found;
}

bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("a job has the shipped paces, surroundings and alternatives, its own beside them") {
    const Job job =
        read(R"("paces": [{"name": "wind", "work": ["underside"], "factor": [1, 1.2, 2]}],
        "surroundings": [{"name": "nest_survey", "usual": "900 USD"},
                         {"name": "police", "when": ["any_closure"], "per": "shift", "usual": ["400 USD", "600 USD", "900 USD"]}],
        "site": {"every": ["high"], "17-B": ["nesting", "lead_paint"]})");
    CHECK(job.paces.size() == json::shipped_paces().size() + 1);
    CHECK(named(job.paces, "wind").factor.value.guess.high == 2.0);
    CHECK(job.surroundings.size() == json::shipped_surroundings().size() + 1);
    CHECK(named(job.surroundings, "nest_survey").usual.value.guess.likely == 900.0);
    CHECK(named(job.surroundings, "police").per == ChargePer::shift);
    CHECK(job.site.at("17-B") == std::vector<std::string>{"nesting", "lead_paint"});
    CHECK(job.alternatives.size() == 10);
    for (const Alternative& a : job.alternatives) {
        INFO(a.name);
        CHECK(!a.source.empty());
        CHECK(!a.note.empty());
    }
}

TEST_CASE("a charge named as a surrounding has its condition and count, unless it says its own") {
    const Job job = read(R"("charges": [{"name": "railway_flagger"},
        {"name": "safety_boat", "when": ["always"], "per": "visit"}, {"name": "permit"}])");
    CHECK(job.charges[0].when == std::vector<std::string>{"over_rail"});
    CHECK(job.charges[0].per == ChargePer::shift);
    CHECK(job.charges[1].when == std::vector<std::string>{"always"});
    CHECK(job.charges[1].per == ChargePer::visit);
    CHECK(job.charges[2].when.empty());
    CHECK(job.charges[2].per == ChargePer::visit);
}

TEST_CASE("an amount among the inputs prices a surrounding, listed among the charges or not") {
    const Job job = read(R"("inputs": {"charge[railway_permit].amount": "900 USD"})");
    REQUIRE(job.charges.size() == 1);
    CHECK(job.charges[0].name == "railway_permit");
    CHECK(job.charges[0].when == std::vector<std::string>{"over_rail"});
    CHECK(contains(refused(R"("inputs": {"charge[railway_permt].amount": "900 USD"})"), "charge["));
    const Job both =
        read(R"("charges": [{"name": "permit"}, {"name": "railway_permit", "per": "shift"}],
        "inputs": {"charge[railway_permit].amount": "900 USD", "charge[permit].amount": "1 USD"})");
    CHECK(both.charges.size() == 2);
    CHECK(both.charges[1].per == ChargePer::shift);
}

TEST_CASE("what a document says of a shipped alternative joins it, inputs beside inputs") {
    const Job job = read(R"("alternatives": [
        {"name": "under_bridge_unit", "limits": [], "inputs": {"equipment[under_bridge_unit].rate": "200 USD/h"}},
        {"name": "by_rope", "question": "underside", "instead": {"bucket_truck": ""}, "source": "a log",
         "removes": {"share": 0.9, "dirt": ["cap"]}}])");
    const Alternative& unit = named(job.alternatives, "under_bridge_unit");
    CHECK(unit.limits.empty());
    CHECK(unit.forbids.count("edge_blocked") == 1);
    CHECK(unit.settings.size() == 2);
    CHECK(job.alternatives.back().name == "by_rope");
    CHECK(job.alternatives.back().removes.share.origin->source == "a log");
}

TEST_CASE("a job is the same after it was written and read") {
    const std::string once = json::write_job(json::demo_job());
    const Job again = json::read_job(once, "again", RateBook{});
    CHECK(json::write_job(again) == once);
    CHECK(again.alternatives.size() == json::demo_job().alternatives.size());
}

TEST_CASE("what cannot be used is refused with its place and what would be right") {
    CHECK(contains(refused(R"("alternatives": [{"name": "odd", "qestion": "deck"}])"),
                   "\"question\"?"));
    CHECK(
        contains(refused(R"("alternatives": [{"name": "odd", "question": "dek"}])"), "\"deck\"?"));
    CHECK(contains(refused(R"("alternatives": [{"question": "deck"}])"), "a name"));
    CHECK(contains(refused(R"("alternatives": [{"name": "odd", "removes": {"share": 1.2}}])"),
                   "shares from 0 to 1"));
    CHECK(contains(
        refused(
            R"("alternatives": [{"name": "odd", "limits": [{"measure": "detour", "most": "5 lb"}]}])"),
        "alternatives[odd].limits[0].most"));
    CHECK(contains(
        refused(
            R"("alternatives": [{"name": "odd", "inputs": {"equipment[none].rate": "1 USD/h"}}])"),
        "odd"));
    CHECK(contains(refused(R"("surroundings": [{"name": "police"}])"), "surroundings[0].usual"));
    CHECK(contains(
        refused(R"("surroundings": [{"name": "police", "per": "hour", "usual": "1 USD"}])"),
        "visit, shift"));
    CHECK(contains(refused(R"("paces": [{"name": "wind", "work": ["deck"]}])"), "paces[0].factor"));
    CHECK(
        contains(refused(R"("paces": [{"name": "wind", "factor": [2, 1, 3]}])"), "in this order"));
    CHECK(contains(refused(R"("site": ["high"])"), "an object"));
}
