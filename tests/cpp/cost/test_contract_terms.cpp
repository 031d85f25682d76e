// Lane occupancy and damages, by hand.

#include "catch.hpp"
#include "scupper/cost.hpp"

using namespace scupper;
using namespace scupper::literals;

TEST_CASE("a closed lane is charged by the hour, damages by what they come to on average") {
    const AmountPerTime<> charge = Amount<>(250.0) / 1.0_h;
    CHECK(cost::occupancy(6.0_h, charge).si() == Approx(1500.0));
    const AmountPerTime<> damages = Amount<>(2000.0) / Time<>(factor::day);
    // One time in ten three days late, 2,000 a day.
    CHECK(cost::expected_damages(0.1, Time<>(3.0 * factor::day), damages).si() == Approx(600.0));
    CHECK(cost::expected_damages(0.0, Time<>(3.0 * factor::day), damages).si() == 0.0);
}

TEST_CASE("traced terms have the value of the plain ones") {
    const auto traced = cost::occupancy(Time<Traced>(6.0_h), AmountPerTime<Traced>(Traced(0.07)));
    CHECK(traced.si().value() == cost::occupancy(6.0_h, AmountPerTime<>(0.07)).si());
}
