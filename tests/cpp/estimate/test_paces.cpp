// What makes work take longer, and vehicles that take turns.
#include "catch.hpp"
#include "estimate/structures.hpp"

#include <cmath>
#include <string>

using namespace scupper;
using namespace made_up;

namespace test_paces {

namespace {

estimate::Estimate priced(const Job& job, const Structure& s = counted_overpass()) {
    return estimate::estimate(s, estimate::make_plan(job));
}

double productive(const estimate::Estimate& e, const std::string& operation) {
    return e.figure("operation[" + operation + "].productive_time");
}

/// The job as if that long had passed since the last cleaning, with the dirt left as it was.
Job since(Job job, const char* word) {
    job.build_up = word;
    return job;
}

Job with(const Job& job, const char* key, const char* value) {
    return json::with_input(job, key, value);
}

Job said(Job job, std::vector<std::string> words) {
    job.site["every"] = std::move(words);
    return job;
}

} // namespace

TEST_CASE("old dirt slows the operations that meet it, by its factor, and no others") {
    Job job = json::demo_job();
    job.price_at = PriceAt::likely;
    const auto fresh = priced(job);
    const auto old = priced(since(job, "neglected"));
    CHECK(productive(old, "windrow_pick_up") == Approx(1.3 * productive(fresh, "windrow_pick_up")));
    CHECK(productive(old, "deck_hand_line") == productive(fresh, "deck_hand_line"));
    CHECK(old.figure("drain_free") == fresh.figure("drain_free"));
    const auto some = priced(since(job, "some_years"));
    CHECK(productive(some, "windrow_pick_up") ==
          Approx(1.1 * productive(fresh, "windrow_pick_up")));
}

TEST_CASE("height and obstruction slow work where somebody says so, and more water runs") {
    Job job = full_job();
    job.price_at = PriceAt::likely;
    const auto plain = priced(job);
    const auto high = priced(said(job, {"high"}));
    CHECK(productive(high, "bearing_wash") == Approx(1.2 * productive(plain, "bearing_wash")));
    CHECK(productive(high, "deck_hand_line") == productive(plain, "deck_hand_line"));
    CHECK(high.figure("water") > plain.figure("water"));
    const auto both = priced(said(job, {"high", "obstructed"}));
    CHECK(productive(both, "bearing_wash") ==
          Approx(1.2 * 1.3 * productive(plain, "bearing_wash")));
    CHECK(productive(both, "deck_hand_line") == Approx(1.3 * productive(plain, "deck_hand_line")));
}

TEST_CASE("a factor of the job's own stands before the shipped one, and shows in the explanation") {
    const Job job = with(since(json::demo_job(), "neglected"), "pace[neglected_dirt].factor", "3");
    const auto fresh = priced(json::demo_job());
    const auto old = priced(job);
    CHECK(productive(old, "windrow_pick_up") == Approx(3.0 * productive(fresh, "windrow_pick_up")));
    bool told = false;
    for (const auto& a : estimate::assumptions(priced(since(json::demo_job(), "neglected")))) {
        told = told || a.key == "pace[neglected_dirt].factor";
    }
    CHECK(told);
}

TEST_CASE("more tankers never wait longer, and none waits less than not at all") {
    Job job = with(json::demo_job(), "refill.distance", "\"20 mi\"");
    double before = priced(job).figure("refill");
    CHECK(before > 0.0);
    for (const char* tankers : {"2", "3", "8", "20"}) {
        const auto e = priced(with(job, "refill.tankers", tankers));
        const double now = e.figure("refill");
        CHECK(now >= 0.0);
        CHECK(now < before + 1e-9);
        CHECK(e.figure("hours.paid") <= priced(job).figure("hours.paid"));
        before = now;
    }
    CHECK(before == 0.0);
}

TEST_CASE("a second haul truck is loaded while the first is away") {
    Job job = with(json::demo_job(), "haul.distance", "\"40 mi\"");
    job.sharing = Sharing::own_shifts;
    const double one = priced(job).figure("dump");
    const double two = priced(with(job, "haul.number", "2")).figure("dump");
    const double many = priced(with(job, "haul.number", "20")).figure("dump");
    CHECK(two < one);
    CHECK(many <= two);
    CHECK(many >= 0.0);
}

TEST_CASE("bucket positions: along the supports, and over the whole plan for whole girders") {
    Job job = json::demo_job();
    job.price_at = PriceAt::likely;
    job.service["girder"] = "full_clean";
    const auto ends = priced(job);
    const double reach = 30.0 * 0.3048;
    const double lines = ends.figure("support_line_length");
    CHECK(ends.figure("bucket_position_count") == std::ceil(lines / reach));
    job.service["girder"] = "full_length";
    const auto whole = priced(job);
    // 61 m by 11 m: 7 positions along, 2 across, by hand.
    CHECK(whole.figure("bucket_position_count") == std::ceil(lines / reach) + 7.0 * 2.0);
    Structure counted = counted_overpass();
    counted.given.push_back({"bucket_position_count", certain(5.0, Basis::measured)});
    CHECK(priced(job, counted).figure("bucket_position_count") == 5.0);
}

} // namespace test_paces
