// Bars and worn nozzles: sums, undoing, and bad input.

#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/hydraulics.hpp"
#include "scupper/traced.hpp"

using namespace scupper;
using namespace scupper::hydraulics;
using namespace scupper::literals;
using reference::near;

namespace {

const std::vector<Nozzle<>> bar{{0.25_in, 0.80}, {0.25_in, 0.80}, {0.5_in, 0.97}, {3.0_mm, 0.6}};

} // namespace

TEST_CASE("a bar lets through what its nozzles do together") {
    const Density<> rho = water_density(60.0_degF);
    Flow<> sum;
    for (const Nozzle<>& n : bar) {
        sum += nozzle_flow(n.bore, 75.0_psi, n.discharge_coefficient, rho);
    }
    CHECK(near(bar_flow(bar, 75.0_psi, rho).si(), sum.si(), 1e-14));
    CHECK(near(bar_pressure(bar, sum, rho).in(1.0_psi), 75.0, 1e-13));
    const Nozzle<> one = bar_as_nozzle(bar);
    CHECK(near(nozzle_flow(one.bore, 75.0_psi, one.discharge_coefficient, rho).si(), sum.si(),
               1e-14));
}

TEST_CASE("a bar of one nozzle is that nozzle, of n equal ones n times its opening") {
    const std::vector<Nozzle<>> single{{0.25_in, 0.8}};
    CHECK(near(bar_as_nozzle(single).bore.si(), (0.25_in).si(), 1e-15));
    CHECK(near(bar_as_nozzle(single).discharge_coefficient, 0.8, 1e-15));
    const std::vector<Nozzle<>> nine(9, {0.25_in, 0.8});
    CHECK(near(bar_as_nozzle(nine).bore.in(1.0_in), 0.75, 1e-14));
}

TEST_CASE("a worn nozzle lets through more with the square of its bore") {
    const Density<> rho(999.0);
    const Flow<> fresh = nozzle_flow(2.0_mm, 2000.0_psi, 0.95, rho);
    const Flow<> worn = nozzle_flow(worn_bore(2.0_mm, 0.15), 2000.0_psi, 0.95, rho);
    CHECK(near(worn / fresh, 1.15 * 1.15, 1e-14));
    CHECK(near(nozzle_wear(worn, fresh), 0.15, 1e-13));
    CHECK(worn_bore(2.0_mm, 0.0).si() == (2.0_mm).si());
    CHECK(nozzle_wear(0.9 * fresh, fresh) < 0.0); // partly plugged
}

TEST_CASE("bars and worn nozzles refuse what cannot be") {
    const Density<> rho(999.0);
    CHECK_THROWS_AS(bar_as_nozzle(std::vector<Nozzle<>>{}), InputError);
    CHECK_THROWS_AS(bar_flow(std::vector<Nozzle<>>{{0.0_in, 0.8}}, 1.0_psi, rho), InputError);
    CHECK_THROWS_AS(bar_flow(std::vector<Nozzle<>>{{1.0_in, 0.0}}, 1.0_psi, rho), InputError);
    CHECK_THROWS_AS(bar_flow(bar, Pressure<>(-1.0), rho), InputError);
    CHECK_THROWS_AS(bar_pressure(bar, Flow<>(-1.0), rho), InputError);
    CHECK_THROWS_AS(worn_bore(0.0_in, 0.1), InputError);
    CHECK_THROWS_AS(worn_bore(1.0_in, -0.1), InputError);
    CHECK_THROWS_AS(nozzle_wear(Flow<>(), Flow<>(1.0)), InputError);
    CHECK_THROWS_AS(nozzle_wear(Flow<>(1.0), Flow<>()), InputError);
}

TEST_CASE("a traced bar is the same to the bit") {
    Recording tape;
    const auto input = [&](double x) { return Traced(x, &tape, tape.leaf(x, {})); };
    const std::vector<Nozzle<Traced>> traced{{Length<Traced>(input(0.004)), input(0.8)},
                                             {Length<Traced>(input(0.006)), input(0.9)}};
    const std::vector<Nozzle<>> plain{{Length<>(0.004), 0.8}, {Length<>(0.006), 0.9}};
    CHECK(bar_as_nozzle(traced).bore.si().value() == bar_as_nozzle(plain).bore.si());
    CHECK(worn_bore(Length<Traced>(input(0.004)), input(0.2)).si().value() ==
          worn_bore(Length<>(0.004), 0.2).si());
}
