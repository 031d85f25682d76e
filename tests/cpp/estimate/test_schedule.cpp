// Notices and lost days are dates, not hours.
#include "catch.hpp"
#include "estimate/structures.hpp"
#include "estimate/worked.hpp"

#include <algorithm>
#include <set>
#include <string>

using namespace scupper;
using namespace scupper::literals;
using namespace made_up;

namespace {

Date day(const char* text) {
    return work::parse_date(text, "test");
}

Job asked_on(Job job, const char* text) {
    job.calendar.asked = day(text);
    return job;
}

std::set<std::string> notices_of(const estimate::Schedule& schedule) {
    std::set<std::string> names;
    for (const estimate::NoticeGiven& given : schedule.notices) {
        names.insert(given.notice.name);
    }
    return names;
}

} // namespace

TEST_CASE("lead times are dates on the schedule, not hours (worked example C, variant d)") {
    Job job = asked_on(worked::job_of("river"), "2027-03-01");
    for (Notice& notice : job.notices) {
        if (notice.name == "railway") {
            notice.when = {"always"}; // a track on the bank
        }
    }
    const auto e = worked::priced("river", job);
    const estimate::Schedule plan = estimate::schedule(e);
    CHECK(notices_of(plan) ==
          std::set<std::string>{"railway", "mariners", "discharge_permit", "lane_closure"});
    CHECK(plan.earliest == day("2027-05-30"));             // 90 days after 1 March: the railway's
    CHECK(plan.shifts == 6);                               // 4 on deck and 2 below
    CHECK(plan.days.front().use == work::DayUse::weekday); // 30 May 2027 is a Sunday
    CHECK(plan.days.back().date == day("2027-06-07"));
    for (const estimate::NoticeGiven& given : plan.notices) {
        CHECK(*given.usual <= *plan.earliest);
        CHECK(*given.usual <= *given.longest);
    }
    CHECK(e.figures == worked::priced("river", worked::job_of("river")).figures);
}

TEST_CASE("no day below 40 degF becomes a shift, and the price stays (worked A, variant c)") {
    Job job = asked_on(worked::job_of("creek"), "2027-04-01");
    job.notices.clear();
    const auto e = worked::priced("creek", job);
    const estimate::Schedule warm = estimate::schedule(e);
    REQUIRE(warm.shifts == 1); // half a shift takes a day that another bridge may share
    CHECK(warm.days.back().date == day("2027-04-01"));
    const estimate::Schedule cold = estimate::schedule(
        e, {{day("2027-04-01"), {39.0_degF, false}}, {day("2027-04-02"), {42.0_degF, true}}});
    REQUIRE(cold.days.size() == 5);
    CHECK(cold.days[0].use == work::DayUse::too_cold);
    CHECK(cold.days[1].use == work::DayUse::falling_air);
    CHECK(cold.days.back().date == day("2027-04-05")); // the Monday after
    CHECK(e.figures == worked::priced("creek", worked::job_of("creek")).figures);
}

TEST_CASE("notices follow from what the record says lies below and around") {
    Structure over_rail = overpass();
    over_rail.codes.service_under = 2;
    const auto plan = estimate::make_plan(asked_on(json::demo_job(), "2027-03-01"));
    const auto of = [&](const Structure& s) {
        return notices_of(estimate::schedule(estimate::estimate(s, plan)));
    };
    CHECK(of(over_rail) == std::set<std::string>{"railway", "lane_closure"});
    CHECK(of(creek_bridge()) == std::set<std::string>{"discharge_permit", "lane_closure"});
    Structure navigable = creek_bridge();
    navigable.codes.navigation = 1;
    CHECK(of(navigable).count("mariners") == 1);
    for (const Notice& notice : json::shipped_notices()) {
        INFO(notice.name);
        CHECK(!notice.source.empty());
        CHECK(notice.longest > 0);
    }
}

TEST_CASE("a closed season counts where its condition holds") {
    Job job = asked_on(json::demo_job(), "2027-03-01");
    job.notices.clear();
    job.calendar.closed = {{"spawning",
                            std::chrono::March / 1,
                            std::chrono::May / 31,
                            {"over_water"},
                            "invented for the test"}};
    const auto plan = estimate::make_plan(job);
    const auto dry = estimate::schedule(estimate::estimate(overpass(), plan));
    const auto wet = estimate::schedule(estimate::estimate(creek_bridge(), plan));
    CHECK(dry.days.front().use == work::DayUse::work);
    CHECK(wet.days.front().use == work::DayUse::closed_season);
    CHECK(wet.days.back().date == day("2027-06-01"));
}

TEST_CASE("without a day of asking there are notices and shifts, but no days") {
    const auto e = estimate::estimate(overpass(), demo_plan());
    const estimate::Schedule plan = estimate::schedule(e);
    CHECK(!plan.notices.empty());
    CHECK(!plan.notices.front().usual);
    CHECK(plan.shifts >= 1);
    CHECK(!plan.earliest);
    CHECK(plan.days.empty());
}
