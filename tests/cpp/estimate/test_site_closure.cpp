// The lay-out of an estimate's closure: what follows from the record, what the job can say.

#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"

#include <utility>

using namespace scupper;
using namespace made_up;
using namespace scupper::literals;

namespace test_site_closure {

namespace {

estimate::Estimate priced(const Structure& s, const Job& job = json::demo_job()) {
    return estimate::estimate(s, estimate::make_plan(job));
}

Job with(const char* key, const char* value, Job job = json::demo_job()) {
    return json::with_input(job, key, value);
}

Job closed_by(const char* kind) {
    Job job = json::demo_job();
    job.closure = kind;
    return job;
}

} // namespace

TEST_CASE("a rural overpass is laid out from its record") {
    // Rural collector: 45 mph by rule (common practice); sign spacing 500 ft each (MUTCD table
    // 6C-1, rural); buffer 360 ft at 45 mph (table 6C-2); one-lane two-way taper 100 ft.
    const auto e = priced(overpass());
    const closure::Site site = estimate::closure_site(e);
    CHECK(site.speed.in(1.0_mph) == Approx(45.0));
    CHECK(site.road == closure::RoadClass::rural);
    CHECK_FALSE(site.divided);
    CHECK(site.work_length.si() == Approx(61.0 + (100.0_ft).si()));
    const closure::Plan plan = estimate::closure_plan(e);
    CHECK(plan.kind == closure::Kind::one_lane_two_way);
    CHECK(plan.advance_signs == 6);
    CHECK(plan.flaggers == 2);
    CHECK(plan.arrow_boards == 0);
    CHECK(plan.taper.in(1.0_ft) == Approx(100.0));
    CHECK(plan.buffer.in(1.0_ft) == Approx(360.0));
    CHECK(plan.length.in(1.0_ft) ==
          Approx(1500.0 + 100.0 + 360.0 + site.work_length.in(1.0_ft) + 100.0));
    bool told = false;
    for (const std::string& caution : plan.cautions) {
        told |= caution.find("45 mph (35 mph to 55 mph), assumed by road.speed.rural_collector") !=
                std::string::npos;
    }
    CHECK(told);
}

TEST_CASE("a freeway by its record: divided, merging taper, arrow board") {
    Structure s = overpass();
    s.codes.functional_class = 1;
    s.codes.lanes_on = 3;
    s.codes.traffic_direction = 1;
    s.dimensions.roadway_width = Length<>(17.1);
    s.dimensions.deck_width = Length<>(18.0);
    const auto e = priced(s);
    const closure::Site site = estimate::closure_site(e);
    CHECK(site.divided);
    CHECK(site.road == closure::RoadClass::freeway);
    CHECK(site.speed.in(1.0_mph) == Approx(65.0));
    const closure::Plan plan = estimate::closure_plan(e);
    CHECK(plan.kind == closure::Kind::freeway_lane);
    CHECK(plan.arrow_boards == 1);
    // W S = 12 x 65 (MUTCD table 6C-4), and a shoulder taper where the shoulder is 8 ft or more.
    CHECK(plan.taper.in(1.0_ft) >= 780.0 - 1e-9);
    CHECK(plan.buffer.in(1.0_ft) == Approx(645.0));
}

TEST_CASE("what the job or a survey says of the road beats the record") {
    const auto e = priced(overpass(), with("road.speed", "\"30 mph\""));
    CHECK(estimate::closure_site(e).speed.in(1.0_mph) == Approx(30.0));
    CHECK(estimate::closure_plan(e).buffer.in(1.0_ft) == Approx(200.0)); // MUTCD table 6C-2
    CHECK(estimate::road_of(e).speed.basis == Basis::given);
    const Job own = json::with_override(json::demo_job(), "Y1", "road.speed", "\"25 mph\"");
    CHECK(estimate::closure_site(priced(overpass(), own)).speed.in(1.0_mph) == Approx(25.0));
    CHECK(estimate::closure_site(priced(creek_bridge(), own)).speed.in(1.0_mph) == Approx(45.0));
}

TEST_CASE("every input of the road moves the lay-out, and none the price") {
    const auto before = priced(overpass(), closed_by("rural_lane"));
    const closure::Plan plan = estimate::closure_plan(before);
    for (const auto& [key, value] : {std::pair{"road.speed", "\"60 mph\""},
                                     {"road.lane_width", "\"9 ft\""},
                                     {"road.shoulder_width", "\"10 ft\""},
                                     {"road.work_margin", "\"400 ft\""}}) {
        INFO(key);
        const auto after = priced(overpass(), with(key, value, closed_by("rural_lane")));
        CHECK(estimate::closure_plan(after).length.si() != plan.length.si());
        CHECK(after.figure("cost.total") == before.figure("cost.total"));
    }
}

TEST_CASE("town roads are low speed up to 40 mph") {
    using closure::RoadClass;
    CHECK(estimate::road_class_by_record(17, 30.0_mph) == RoadClass::urban_low_speed);
    CHECK(estimate::road_class_by_record(14, 40.0_mph) == RoadClass::urban_low_speed);
    CHECK(estimate::road_class_by_record(14, 45.0_mph) == RoadClass::urban_high_speed);
    CHECK(estimate::road_class_by_record(12, 45.0_mph) == RoadClass::freeway);
    CHECK(estimate::road_class_by_record(2, 45.0_mph) == RoadClass::rural);
    CHECK(estimate::road_class_by_record(no_code, 45.0_mph) == RoadClass::rural);
}

TEST_CASE("a truck on the approach closes the road further back") {
    const Job job =
        json::with_override(json::demo_job(), "Y1", "posting.limit", "\"15 short_ton\"");
    CHECK(estimate::closure_site(priced(overpass(), job)).work_length.si() >
          estimate::closure_site(priced(overpass())).work_length.si());
}

TEST_CASE("every kind of closure has a lay-out, none an empty one") {
    for (const std::string_view kind : closure_kind_names) {
        const std::string word(kind);
        const Job job = with("road.shoulder_width", "\"6 ft\"", closed_by(word.c_str()));
        const closure::Plan plan = estimate::closure_plan(priced(overpass(), job));
        INFO(word);
        CHECK(closure::kind_name(plan.kind) == kind);
        CHECK(plan.elements.empty() == (word == "none"));
    }
    const Job none = with("road.shoulder_width", "\"0 ft\"", closed_by("shoulder"));
    CHECK_THROWS_AS(estimate::closure_plan(priced(overpass(), none)), InputError);
}

} // namespace test_site_closure
