// Both services on a well-known kind of overpass against what crews report (common practice).
// The bands cover crews and bridges of all kinds, so draws of one bridge lie within them; a price
// in the bands is a likely one, in-house to contracted, so the price itself is compared.
#include "catch.hpp"
#include "estimate/structures.hpp"
#include "reference.hpp"
#include "scupper/unit.hpp"

#include <algorithm>
#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;

namespace {

constexpr double square_foot = 0.09290304;

/// Measured: 30 girder ends of 5 ft at 8.5 ft2/ft, 30 bearings, 416 ft2 of caps and seats.
Structure measured_overpass() {
    Structure s = counted_overpass();
    const auto measure = [&](const char* key, double value) {
        s.given.push_back({key, certain(value, Basis::measured)});
    };
    measure("girder_count", 5.0);
    measure("girder_end_area", 1275.0 * square_foot);
    measure("bearing_count", 30.0);
    measure("cap_area", 272.0 * square_foot);
    measure("cap_top_area", 136.0 * square_foot);
    measure("seat_area", 144.0 * square_foot);
    measure("joint_count", 4.0);
    return s;
}

Job flusher_job() {
    Job job = json::demo_job();
    job.ways["deck_top"] = "flusher";
    job.ways["gutter"] = "flusher";
    return job;
}

Job full_clean_job() {
    Job job = json::demo_job();
    for (const char* component : {"deck_top", "gutter", "drain", "sidewalk", "joint", "rail",
                                  "parapet", "girder", "bearing", "cap", "seat", "back_wall"}) {
        job.service[component] = "full_clean";
    }
    return job;
}

double si_of(const reference::Row& row, const char* column) {
    return from_unit(std::stod(row.text(column)), parse_unit(row.text("unit"), row.text("id")));
}

/// Checks every figure of a service; gives back the figures whose draws leave their band.
std::vector<std::string> compare(const std::string& service, const Structure& s, const Job& job) {
    const auto ranges = estimate::ranges(estimate::estimate(s, estimate::make_plan(job)), {});
    std::vector<std::string> outside;
    int compared = 0;
    for (const reference::Row& row : reference::rows("estimate/yardstick")) {
        const auto range = std::find_if(ranges.begin(), ranges.end(),
                                        [&](const auto& r) { return r.key == row.text("figure"); });
        if (row.text("service") != service) {
            continue;
        }
        REQUIRE(range != ranges.end());
        const double low = si_of(row, "low"), high = si_of(row, "high");
        INFO(service << " " << range->key << ": " << range->low << " - " << range->value << " - "
                     << range->high << " against " << low << " - " << high);
        CHECK(range->value >= low);
        CHECK(range->value <= high);
        CHECK(range->low <= 2.0 * si_of(row, "likely")); // the ranges meet
        CHECK(range->high >= 0.5 * si_of(row, "likely"));
        if (range->low < low || range->high > high) {
            outside.push_back(range->key);
        }
        ++compared;
    }
    CHECK(compared == 4);
    return outside;
}

/// The dearest guess of a bridge under a job.
std::string dearest_guess(const Structure& s, const Job& job) {
    return estimate::assumptions(estimate::estimate(s, estimate::make_plan(job))).front().key;
}

using Figures = std::vector<std::string>;

} // namespace

TEST_CASE("the yardstick rinsed by hand line: in the bands, counted or from the record alone") {
    const Job job = json::demo_job();
    // The band of money holds likely prices; the draws of one price are wider.
    CHECK(compare("rinse, hand line", counted_overpass(), job) == Figures{"cost.total"});
    // From the record alone the hours leave the band too: the drains are not counted.
    CHECK(compare("rinse, hand line", overpass(), job) == Figures{"hours.labour", "cost.total"});
    CHECK(dearest_guess(overpass(), job) == "drain.per_length");
}

TEST_CASE("the yardstick rinsed by flusher: in the bands") {
    CHECK(compare("rinse, flusher", counted_overpass(), flusher_job()) == Figures{"cost.total"});
}

TEST_CASE("the yardstick cleaned in full: in the bands, measured or from the record alone") {
    CHECK(compare("full clean", measured_overpass(), full_clean_job()).empty());
    const Figures outside = compare("full clean", overpass(), full_clean_job());
    CHECK((outside.empty() || outside == Figures{"cost.total"}));
    CHECK(dearest_guess(overpass(), full_clean_job()) == "drain.per_length");
}

TEST_CASE("the full clean takes more of everything than the rinse, the flusher more water") {
    const auto plan = [](const Job& job) { return estimate::make_plan(job); };
    const auto rinse = estimate::estimate(measured_overpass(), plan(json::demo_job()));
    const auto full = estimate::estimate(measured_overpass(), plan(full_clean_job()));
    const auto flusher = estimate::estimate(measured_overpass(), plan(flusher_job()));
    for (const char* figure : {"hours.labour", "water.volume", "debris.mass", "cost.total"}) {
        INFO(figure);
        CHECK(full.figure(figure) > rinse.figure(figure));
    }
    CHECK(flusher.figure("water.volume") > rinse.figure("water.volume"));
}

TEST_CASE("eight drains, one frozen, take more labour than four") {
    // Common practice: some 16 labour-hours more for eight drains of which one is frozen; within
    // a factor of two, as the estimate prices at the mean.
    Structure eight = overpass();
    eight.given = {{"drain_count", certain(8.0, Basis::measured)},
                   {"drain_free_count", certain(6.0, Basis::measured)},
                   {"drain_clogged_count", certain(1.0, Basis::measured)},
                   {"drain_frozen_count", certain(1.0, Basis::measured)}};
    const double more = estimate::estimate(eight, demo_plan()).figure("hours.labour") -
                        estimate::estimate(counted_overpass(), demo_plan()).figure("hours.labour");
    CHECK(more / 3600.0 > 8.0);
    CHECK(more / 3600.0 < 32.0);
}
