#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/job.hpp"

#include <algorithm>

using namespace scupper;

namespace {

HoseKind hose(const char* name, double bore) {
    HoseKind kind;
    kind.name = name;
    kind.bore = make_setting("bore", between(0.99 * bore, bore, 1.1 * bore, Basis::given),
                             {"a maker's table", "2026-01", {}});
    kind.roughness =
        make_setting("roughness", certain(1e-5, Basis::given), {"common practice", {}, {}});
    return kind;
}

HoseLibrary library() {
    HoseLibrary all;
    all.hoses = {hose("lined_1in", 0.0254), hose("lined_2in", 0.0508)};
    return all;
}

Job washing() {
    Job job;
    job.methods = {{"hand_line", {"supply", "leg"}, {}}};
    job.hoses = {{"supply", "lined_2in"}};
    return job;
}

const Setting* value(const Job& job, const std::string& key) {
    const auto found = std::find_if(job.settings.begin(), job.settings.end(),
                                    [&](const Setting& s) { return s.key == key; });
    return found == job.settings.end() ? nullptr : &*found;
}

template <class F>
UnknownNameError refusal(F change) {
    try {
        change();
    } catch (const UnknownNameError& e) {
        return e;
    }
    throw InputError({"test.accepted", "job", "was accepted", "an error"});
}

} // namespace

TEST_CASE("a segment has bore and roughness of its hose, with range and source") {
    Job job = washing();
    fill_hose_values(job, library());
    const Setting* bore = value(job, "hose[supply].bore");
    REQUIRE(bore != nullptr);
    CHECK(bore->value.guess.low == 0.99 * 0.0508);
    CHECK(bore->value.guess.high == 1.1 * 0.0508);
    CHECK(bore->origin->source == "a maker's table");
    CHECK(value(job, "hose[supply].roughness")->value.guess.likely == 1e-5);
    CHECK(value(job, "hose[leg].bore") == nullptr);
    CHECK(job.settings.size() == 2);
}

TEST_CASE("a job's own value stands before the library's") {
    Job job = washing();
    job.settings = {
        make_setting("hose[supply].bore", certain(0.05, Basis::measured), {"caliper", {}, {}})};
    fill_hose_values(job, library());
    CHECK(value(job, "hose[supply].bore")->value.guess.likely == 0.05);
    CHECK(value(job, "hose[supply].roughness") != nullptr);
}

TEST_CASE("the library's values can be taken away again, the job's own stay") {
    Job job = washing();
    job.settings = {
        make_setting("hose[supply].bore", certain(0.05, Basis::measured), {"caliper", {}, {}})};
    fill_hose_values(job, library());
    clear_hose_values(job, library());
    CHECK(value(job, "hose[supply].bore") != nullptr);
    CHECK(value(job, "hose[supply].roughness") == nullptr);
}

TEST_CASE("an unknown segment or hose is refused, naming the nearest") {
    Job job = washing();
    job.hoses = {{"suply", "lined_2in"}};
    const auto segment = refusal([&] { fill_hose_values(job, library()); });
    CHECK(segment.id() == "job.word");
    CHECK(segment.allowed().rfind("\"supply\"?", 0) == 0);
    job.hoses = {{"supply", "lined_3in"}};
    const auto kind = refusal([&] { fill_hose_values(job, library()); });
    CHECK(kind.path() == "job.hoses.supply");
    CHECK(kind.allowed() == "\"lined_1in\"?");
}

TEST_CASE("a bar that a truck carries has nobody holding it") {
    CHECK(is_hand_held({"hand_line", {"supply"}, {}}));
    CHECK(is_hand_held({"jetter", {"reel"}, {}})); // its gun
    CHECK_FALSE(is_hand_held({"jetter", {}, {}})); // its bar
    CHECK_FALSE(is_hand_held({"flusher", {"pipe"}, {}}));
}
