#include "catch.hpp"
#include "scupper/cost.hpp"
#include "scupper/error.hpp"

using namespace scupper;
using namespace scupper::cost;
using namespace scupper::literals;

TEST_CASE("water is bought, drawn from a hydrant, or hauled by the truckload") {
    const AmountPerVolume<> price(2.0);
    CHECK(hydrant_water(Volume<>(10.0), price, Amount<>(0.0)).si() == Approx(20.0));
    CHECK(hydrant_water(Volume<>(10.0), price, Amount<>(75.0)).si() == Approx(95.0));
    const AmountPerTime<> truck(90.0 / factor::hour);
    CHECK(hauled_water(Volume<>(25.0), price, Volume<>(10.0), 0.5_h, truck).si() ==
          Approx(50.0 + 3 * 45.0)); // three loads, the last one not full
    CHECK(hauled_water(Volume<>(0.0), price, Volume<>(10.0), 0.5_h, truck).si() == 0.0);
}

TEST_CASE("disposal has a least charge, and a load begun is a load") {
    const AmountPerMass<> price(0.1);
    CHECK(disposal_by_mass(Mass<>(1000.0), price, Amount<>(40.0)).si() == Approx(100.0));
    CHECK(disposal_by_mass(Mass<>(100.0), price, Amount<>(40.0)).si() == Approx(40.0));
    CHECK(disposal_by_mass(Mass<>(0.0), price, Amount<>(40.0)).si() == 0.0);
    CHECK(disposal_by_load(Count<>(1.2), Amount<>(150.0)).si() == Approx(300.0));
}

TEST_CASE("mobilization grows with distance and pieces") {
    const AmountPerLength<> price(0.002);
    CHECK(mobilization(Count<>(3.0), Length<>(50000.0), price, Amount<>(120.0)).si() ==
          Approx(3 * (200.0 + 120.0)));
    CHECK(mobilization(Count<>(0.0), Length<>(50000.0), price, Amount<>(120.0)).si() == 0.0);
}

TEST_CASE("escalation runs to the midpoint of the work") {
    const auto year = [](double years) { return Time<>(years * factor::year); };
    CHECK(escalated(Amount<>(1000.0), 0.04, year(0.5), year(1.0)).si() == Approx(1040.0));
    CHECK(escalated(Amount<>(1000.0), 0.0, year(3), year(1)).si() == Approx(1000.0));
    CHECK(escalated(Amount<>(1000.0), -0.02, year(1), year(0)).si() == Approx(980.0));
    CHECK_THROWS_AS(escalated(Amount<>(1.0), 0.04, year(-1), year(1)), InputError);
    CHECK_THROWS_AS(hauled_water(Volume<>(1.0), AmountPerVolume<>(1.0), Volume<>(0.0), 1_h,
                                 AmountPerTime<>(1.0)),
                    InputError);
}
