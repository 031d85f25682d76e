#include "catch.hpp"
#include "scupper/cost.hpp"

using namespace scupper;

TEST_CASE("the contract price of a worked single span") {
    // Worked by hand, shares common practice: direct 2,663.52 x 1.12 x 1.08 x 1.015 x 1.05.
    const auto a = cost::add_margins<double>(Amount<>(2663.52), {.overhead = 0.12,
                                                                 .profit = 0.08,
                                                                 .bond = 0.015,
                                                                 .mobilization = 0.05,
                                                                 .contingency = 0.0});
    CHECK(a.price.si() == Approx(3433.62).epsilon(1e-5));
    CHECK((a.overhead + a.profit + a.bond + a.mobilization + a.contingency).si() ==
          Approx(3433.62 - 2663.52).epsilon(1e-4));
    CHECK(a.overhead.si() == Approx(319.62).epsilon(1e-4));
}

TEST_CASE("without margins the price is the direct cost, to the bit") {
    CHECK(cost::add_margins<double>(Amount<>(1234.5678), {0.0, 0.0, 0.0, 0.0, 0.0}).price.si() ==
          1234.5678);
}
