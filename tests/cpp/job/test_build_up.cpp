#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/job.hpp"

#include <algorithm>

using namespace scupper;

namespace {

BuildUp build_up(const char* since, double depth) {
    return {
        since,
        {make_setting("dirt[gutter].depth", between(0.5 * depth, depth, 4.0 * depth, Basis::given),
                      {"a survey", "2026-01", {}})},
        {}};
}

DirtTable table() {
    DirtTable all;
    all.build_ups = {build_up("washed_last_year", 0.004), build_up("neglected", 0.013)};
    return all;
}

double depth(const Job& job) {
    const auto found = std::find_if(job.settings.begin(), job.settings.end(),
                                    [](const Setting& s) { return s.key == "dirt[gutter].depth"; });
    return found == job.settings.end() ? 0.0 : found->value.guess.likely;
}

} // namespace

TEST_CASE("a job has the build-up of its word, with range and source") {
    Job job;
    fill_build_up_values(job, table());
    CHECK(depth(job) == 0.004);
    CHECK(job.settings.front().value.guess.high == 0.016);
    CHECK(job.settings.front().origin->source == "a survey");
    Job other;
    other.build_up = "neglected";
    fill_build_up_values(other, table());
    CHECK(depth(other) == 0.013);
}

TEST_CASE("a job's own depth stands before the table's and stays when that is taken away") {
    Job job;
    job.settings = {
        make_setting("dirt[gutter].depth", certain(0.02, Basis::measured), {"rule", {}, {}})};
    fill_build_up_values(job, table());
    CHECK(depth(job) == 0.02);
    clear_build_up_values(job, table());
    CHECK(depth(job) == 0.02);
}

TEST_CASE("what the table gave can be taken away, so that another word holds") {
    Job job;
    fill_build_up_values(job, table());
    clear_build_up_values(job, table());
    CHECK(job.settings.empty());
    job.build_up = "neglected";
    fill_build_up_values(job, table());
    CHECK(depth(job) == 0.013);
}

TEST_CASE("an unknown word is refused, naming the nearest") {
    Job job;
    job.build_up = "neglectd";
    try {
        fill_build_up_values(job, table());
        FAIL("was accepted");
    } catch (const UnknownNameError& e) {
        CHECK(e.path() == "job.build_up");
        CHECK(e.allowed() == "\"neglected\"?");
    }
}
