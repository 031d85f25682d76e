// Capacities of work zones against the manuals and two studies.

#include "reference.hpp"
#include "refusal.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"
#include "scupper/schema.hpp"
#include "scupper/traced.hpp"

using namespace scupper;
using namespace scupper::closure;
using namespace scupper::literals;
using reference::Row;

namespace test_work_zone {

namespace {

constexpr TrafficFlow<> an_hour{1.0 / factor::hour};
constexpr double default_drop = 0.134;

/// Lanes by their severity: 2 of 1, 0.75 of 3 to 2, 0.5 of two open of two.
LaneClosure closure_of(const Row& row) {
    LaneClosure c;
    const double severity = row["LCSI"];
    c.lanes = severity == 0.75 ? 3 : 2;
    c.open = severity == 2.0 ? 1 : 2;
    c.barrier = row["f_Br"] == 0.0;
    c.rural = row["f_AT"] == 1.0;
    c.night = row["f_DN"] == 1.0;
    c.clearance = row["f_LAT"] * 1.0_ft;
    return c;
}

double per_hour(const TrafficFlow<>& flow) {
    return flow / an_hour;
}

double figure(const Row& row) {
    if (row.is("lane closure severity index")) {
        return closure_severity(static_cast<int>(row["lanes_total"]),
                                static_cast<int>(row["lanes_open"]));
    }
    if (row.starts("QDR")) {
        return per_hour(queue_discharge(closure_of(row)));
    }
    if (row.starts("capacity")) {
        return per_hour(capacity_before_queue(row["QDR"] * an_hour, row["alpha_pct"] / 100.0));
    }
    if (row.starts("default queue discharge drop")) {
        const TrafficFlow<> before = capacity_before_queue(1412.0 * an_hour, default_drop);
        return 100.0 * (1.0 - 1412.0 * an_hour / before);
    }
    LaneClosure c;
    c.rural = false;
    if (row.starts("freeway work zone capacity")) {
        c.lanes = static_cast<int>(row["lanes"]);
        c.open = static_cast<int>(row["open"]);
        return per_hour(work_zone_capacity(c, CapacityMethod::hcm_2010)) / c.open;
    }
    const auto method = row.starts("short-term") ? CapacityMethod::hcm_2000
                        : row.starts("Missouri") ? CapacityMethod::missouri_2011
                                                 : CapacityMethod::north_carolina_1996;
    return per_hour(work_zone_capacity(c, method));
}

} // namespace

TEST_CASE("severity, discharge and capacity agree with what was published") {
    reference::Tally tally;
    for (const Row& row : reference::rows("closure/work_zone")) {
        tally.add(row, figure(row));
    }
    CHECK(tally.summary() == "agrees 17");
}

TEST_CASE("trucks thin a flow of cars; without any nothing changes") {
    CHECK(heavy_vehicle_factor(0.0, 2.0) == 1.0);
    CHECK(heavy_vehicle_factor(0.12, 2.0) == Approx(1.0 / 1.12));
    LaneClosure c;
    const auto cars = work_zone_capacity(c, CapacityMethod::hcm_2000);
    c.truck_share = 0.2;
    CHECK(work_zone_capacity(c, CapacityMethod::hcm_2000) < cars);
    CHECK(heavy_vehicle_factor(Traced(0.12), Traced(2.0)).value() ==
          heavy_vehicle_factor(0.12, 2.0));
}

TEST_CASE("more lanes open never carry less, by any method") {
    for (std::size_t i = 0; i < capacity_method_names.size(); ++i) {
        const CapacityMethod method = capacity_method_by_name(capacity_method_names[i]);
        CHECK(static_cast<std::size_t>(method) == i);
        for (int lanes = 2; lanes <= 6; ++lanes) {
            TrafficFlow<> before;
            for (int open = 1; open < lanes; ++open) {
                LaneClosure c;
                c.lanes = lanes;
                c.open = open;
                const TrafficFlow<> now = work_zone_capacity(c, method);
                CHECK(now > before);
                before = now;
            }
        }
    }
}

TEST_CASE("a work zone is driven slower: equation 10-10 by hand") {
    // 9.95 + 33.49 x 65/55 + 0.53 x 55 - 5.60 x 2 - 3.84 - 8.7 x 0.5 = 59.29 mph
    LaneClosure c;
    const auto ramps = Count<>(0.5) / 1.0_mi;
    const Speed<> day = work_zone_speed(c, 65.0_mph, 55.0_mph, ramps);
    CHECK(day.in(1.0_mph) == Approx(9.95 + 33.49 * 65.0 / 55.0 + 29.15 - 11.2 - 3.84 - 4.35));
    c.night = true;
    CHECK((day - work_zone_speed(c, 65.0_mph, 55.0_mph, ramps)).in(1.0_mph) == Approx(1.71));
    CHECK(work_zone_speed(c, 30.0_mph, 30.0_mph, ramps) <= 30.0_mph);
}

TEST_CASE("lanes that cannot be are refused") {
    LaneClosure c;
    c.open = 3;
    CHECK(refusal([&] { work_zone_capacity(c, CapacityMethod::hcm_7); }).id() == "closure.open");
    c.open = 2; // none is closed
    CHECK(refusal([&] { work_zone_capacity(c, CapacityMethod::hcm_2010); }).id() == "closure.open");
    CHECK(refusal([] { closure_severity(0, 1); }).id() == "closure.lanes");
    CHECK(refusal([] { capacity_before_queue(1.0 * an_hour, 1.0); }).id() == "closure.drop");
    CHECK(refusal([] { heavy_vehicle_factor(1.5, 2.0); }).id() == "closure.truck_share");
    CHECK_THROWS_AS(capacity_method_by_name("hcm_1985"), UnknownNameError);
}

} // namespace test_work_zone
