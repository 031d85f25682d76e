#include "catch.hpp"
#include "scupper/cost.hpp"
#include "scupper/error.hpp"

using namespace scupper;
using namespace scupper::cost;

namespace test_operating {

namespace {
AmountPerTime<> per_hour(double value) {
    return AmountPerTime<>(value / factor::hour);
}
double an_hour(const AmountPerTime<>& rate) {
    return rate.si() * factor::hour;
}
} // namespace

TEST_CASE("an hour is ownership and operating, fuel brought to the price of today") {
    // USACE EP 1110-1-8, paragraph 3-9: (DEPR + FCCM) + (FOG + tyre wear + tyre repair + repair)
    // + (new fuel price / base fuel price) FUEL; figures invented
    const AmountPerTime<> ownership = per_hour(20.0 + 5.0);
    const AmountPerTime<> fuel_now =
        updated_fuel(per_hour(24.0), AmountPerVolume<>(5.0), AmountPerVolume<>(4.0));
    const AmountPerTime<> operating = per_hour(3.0 + 2.0 + 0.3 + 14.1) + fuel_now;
    CHECK(an_hour(fuel_now) == Approx(30.0));
    CHECK(an_hour(equipment_hour(ownership, operating, 1.0)) == Approx(25.0 + 19.4 + 30.0));
}

TEST_CASE("equipment that stands costs what owning it costs, or the share that is paid") {
    CHECK(an_hour(equipment_hour(per_hour(40), per_hour(30), 0.0)) == Approx(40.0));
    CHECK(an_hour(equipment_hour(per_hour(40), per_hour(30), 0.5)) == Approx(55.0));
    CHECK(an_hour(standby(per_hour(40), 0.5)) == Approx(20.0));
}

TEST_CASE("running that cannot be is refused") {
    CHECK_THROWS_AS(equipment_hour(per_hour(1), per_hour(1), 1.5), InputError);
    CHECK_THROWS_AS(standby(per_hour(1), -0.1), InputError);
    CHECK_THROWS_AS(tyres(Amount<>(1.0), Time<>(0.0), 0.0), InputError);
    CHECK_THROWS_AS(cost::fuel(Power<>(-1.0), FuelUse<>(1.0), 1.0, AmountPerVolume<>(1.0)),
                    InputError);
    CHECK_THROWS_AS(updated_fuel(per_hour(1), AmountPerVolume<>(1.0), AmountPerVolume<>(0.0)),
                    InputError);
}

} // namespace test_operating
