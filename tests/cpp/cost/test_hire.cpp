#include "catch.hpp"
#include "scupper/cost.hpp"

using namespace scupper;
using namespace scupper::literals;

namespace {
AmountPerTime<> per_hour(double amount) {
    return AmountPerTime<>(amount / 3600.0);
}
} // namespace

TEST_CASE("wages and hire of a worked single span") {
    // Inputs common practice: six people for 4.6497 h at 46 an hour; 135 an hour of equipment.
    CHECK(cost::hire<double>(4.6497_h, 6_each, per_hour(46)).si() == Approx(1283.31).epsilon(1e-4));
    CHECK(cost::hire<double>(4.6497_h, 1_each, per_hour(135)).si() == Approx(627.71).epsilon(1e-4));
}

TEST_CASE("hire grows in proportion to time, number and rate") {
    const double one = cost::hire<double>(1_h, 1_each, per_hour(50)).si();
    CHECK(cost::hire<double>(3_h, 1_each, per_hour(50)).si() == Approx(3.0 * one));
    CHECK(cost::hire<double>(1_h, 2_each, per_hour(50)).si() == Approx(2.0 * one));
    CHECK(cost::hire<double>(0_h, 2_each, per_hour(50)).si() == 0.0);
}
