// Two directions in one lane against the Highway Capacity Manual, chapter 26.

#include "reference.hpp"
#include "refusal.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"
#include "scupper/traced.hpp"

using namespace scupper;
using namespace scupper::closure;
using namespace scupper::literals;
using reference::Row;

namespace test_flagging {

namespace {

constexpr TrafficFlow<> an_hour{1.0 / factor::hour};

double figure(const Row& row) {
    if (row.starts("truck equivalent")) {
        const Terrain terrain =
            row.is("truck equivalent, level") ? Terrain::level : Terrain::rolling;
        return truck_equivalent(row["flow"] * an_hour, terrain);
    }
    if (row.starts("RV")) {
        return recreational_equivalent(row.text("quantity").ends_with("rolling") ? Terrain::rolling
                                                                                 : Terrain::level);
    }
    if (row.starts("speed reduction")) {
        return (45.0_mph - one_lane_speed(45.0_mph)).in(1.0_mph);
    }
    if (row.starts("worked: optimal green")) {
        return optimal_green(row["length_ft"] * 1.0_ft).si();
    }
    return passenger_car_demand(row["V"] * an_hour, row["PHF"], row["f_g"], row["f_HV"]) / an_hour;
}

} // namespace

TEST_CASE("green, trucks, speed and demand agree with the manual") {
    reference::Tally tally;
    for (const Row& row : reference::rows("closure/flagging")) {
        tally.add(row, figure(row));
    }
    CHECK(tally.summary() == "agrees 19");
}

TEST_CASE("green keeps to its limits, and a traced one has the value of the plain one") {
    CHECK(optimal_green(100.0_ft).si() == Approx(20.0));
    CHECK(optimal_green(5000.0_ft).si() == Approx(60.0));
    CHECK(optimal_green(Length<Traced>(1000.0_ft)).si().value() == optimal_green(1000.0_ft).si());
    CHECK(refusal([] { optimal_green(-1.0 * 1.0_ft); }).id() == "closure.length");
}

TEST_CASE("trucks stand for fewer cars the denser the traffic, between the rows too") {
    for (const Terrain terrain : {Terrain::level, Terrain::rolling}) {
        double before = 10.0;
        for (double flow = 0.0; flow < 1200.0; flow += 25.0) {
            const double now = truck_equivalent(flow * an_hour, terrain);
            CHECK(now <= before);
            CHECK(now >= 1.0);
            before = now;
        }
    }
    CHECK(truck_equivalent(150.0 * an_hour, Terrain::level) == Approx(1.7));
    CHECK(terrain_by_name("rolling") == Terrain::rolling);
    CHECK_THROWS_AS(terrain_by_name("hilly"), UnknownNameError);
}

TEST_CASE("a demand without peak or grade is refused") {
    CHECK(refusal([] { passenger_car_demand(300.0 * an_hour, 0.0, 1.0, 1.0); }).id() ==
          "closure.peak_factor");
    CHECK(refusal([] { one_lane_speed(0.0_mph); }).id() == "closure.limit");
    CHECK(one_lane_speed(6.0_mph) == 5.0_mph);
}

} // namespace test_flagging
