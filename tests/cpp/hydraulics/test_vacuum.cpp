// A vacuum truck's hose: closed forms, what holds for every lay, and bad input.

#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/hydraulics.hpp"

using namespace scupper;
using namespace scupper::hydraulics;
using namespace scupper::literals;
using reference::near;

namespace {

constexpr Pressure<> atmosphere(101325.0);
constexpr Pressure<> inch_of_mercury(3386.389); // conventional, at 32 degF

Blower blower() {
    const Flow<> cfm = (1.0_ft3) / (1.0_min);
    return {3500.0 * cfm, 16.0 * inch_of_mercury};
}
VacuumHose hose() {
    return {8.0_in, 60.0_ft, 15.0_ft, 0.05_mm, 2.0};
}
Ambient ambient() {
    return {atmosphere, 15.0_degC};
}
LooseDirt sand() {
    return {2.0_mm, Density<>(2650.0), MassFlow(1.0), Speed<>(23.0)};
}

// What drives the air less what the hose takes of it, as a share.
double residual(const AirFlow& a, const VacuumHose& h) {
    const double inside = (atmosphere - a.vacuum).si();
    const double rt = atmosphere.si() / air_density(atmosphere, 15.0_degC).si();
    const double flux = a.inlet_velocity.si() * inside / rt;
    const double re = flux * h.bore.si() / air_viscosity(15.0_degC).si();
    const double k = friction_factor(re, h.roughness / h.bore) * (h.length / h.bore) +
                     h.minor_loss + 1.0 + 2.0 * std::log(atmosphere.si() / inside);
    const double driven = atmosphere.si() * atmosphere.si() - inside * inside;
    return (k * flux * flux * rt - driven) / driven;
}

} // namespace

TEST_CASE("air balances: what drives it is what the hose takes") {
    for (const double feet : {0.0, 20.0, 200.0, 2000.0}) {
        for (const double inches : {2.0, 4.0, 8.0}) {
            VacuumHose h = hose();
            h.length = feet * 1.0_ft;
            h.bore = inches * 1.0_in;
            const AirFlow a = vacuum_air_flow(blower(), h, ambient());
            CAPTURE(feet, inches, a.relief_open);
            CHECK(std::abs(residual(a, h)) < 1e-9);
            CHECK(a.vacuum <= blower().relief_vacuum * (1.0 + 1e-12));
            CHECK(a.inlet_velocity > a.end_velocity);
            const Flow<> drawn = a.inlet_velocity * (a.free_flow / a.end_velocity);
            CHECK((a.relief_open ? drawn < blower().flow
                                 : near(drawn.si(), blower().flow.si(), 1e-9)));
        }
    }
}

TEST_CASE("a wide short hose takes the pressure of its velocity and its fittings") {
    VacuumHose h = hose();
    h.length = 0.0_ft;
    Blower slow = blower();
    slow.flow = Flow<>(0.1); // 3 m/s: the air is as good as incompressible
    const AirFlow a = vacuum_air_flow(slow, h, ambient());
    const Pressure<> expected =
        3.0 * velocity_pressure(slow.flow, h.bore, air_density(atmosphere, 15.0_degC));
    CHECK(near(a.vacuum.si(), expected.si(), 1e-3));
    CHECK_FALSE(a.relief_open);
}

TEST_CASE("a longer or narrower hose never draws more air") {
    Flow<> before(1e9);
    for (double feet = 10.0; feet < 5000.0; feet *= 1.5) {
        VacuumHose h = hose();
        h.length = feet * 1.0_ft;
        const Flow<> q = vacuum_air_flow(blower(), h, ambient()).free_flow;
        CHECK(q <= before);
        before = q;
        h.bore = 6.0_in;
        CHECK(vacuum_air_flow(blower(), h, ambient()).free_flow < q);
    }
}

TEST_CASE("sand comes through a usual hose; each hindrance has its lay") {
    const PickUp usual = vacuum_pick_up(blower(), hose(), ambient(), sand());
    CHECK(usual.hinders == Hinders::nothing);
    CHECK(usual.margin > 1.0);
    CHECK(near(usual.water_lift.in(1.0_ft), 18.13, 1e-3)); // 16 inHg, 1.133 ft of water each

    LooseDirt stones = sand();
    stones.size = 80.0_mm;
    CHECK(vacuum_pick_up(blower(), hose(), ambient(), stones).hinders == Hinders::pick_up);
    LooseDirt much = sand();
    much.rate = MassFlow(2000.0);
    CHECK(vacuum_pick_up(blower(), hose(), ambient(), much).hinders == Hinders::saltation);
    Blower weak = blower();
    weak.flow = 0.35 * weak.flow;
    LooseDirt fine = sand();
    fine.size = 0.3_mm;
    CHECK(vacuum_pick_up(weak, hose(), ambient(), fine).hinders == Hinders::transport);
    fine.transport_least = Speed<>();
    CHECK(vacuum_pick_up(weak, hose(), ambient(), fine).hinders == Hinders::nothing);
    Blower small = blower();
    small.flow = Flow<>(0.30);
    VacuumHose narrow = hose();
    narrow.bore = 4.0_in;
    narrow.length = 10.0_ft;
    LooseDirt gravel = sand();
    gravel.size = 5.0_mm;
    gravel.rate = MassFlow(0.01);
    CHECK(vacuum_pick_up(small, narrow, ambient(), gravel).hinders == Hinders::fall_back);
    LooseDirt heavy = sand();
    heavy.rate = MassFlow(40.0);
    VacuumHose high = hose();
    high.lift = 300.0_ft;
    CHECK(vacuum_pick_up(blower(), high, ambient(), heavy).hinders == Hinders::vacuum);
}

TEST_CASE("a hose that does not rise has no rise to clear") {
    VacuumHose level = hose();
    level.lift = Length<>(-3.0);
    const PickUp p = vacuum_pick_up(blower(), level, ambient(), sand());
    CHECK(p.rise_velocity.si() == 0.0);
    CHECK(p.dirt_vacuum < vacuum_pick_up(blower(), hose(), ambient(), sand()).dirt_vacuum);
}

TEST_CASE("vacuum hoses refuse what cannot be") {
    const auto refused = [&](auto change) {
        Blower b = blower();
        VacuumHose h = hose();
        Ambient a = ambient();
        LooseDirt d = sand();
        change(b, h, a, d);
        CHECK_THROWS_AS(vacuum_pick_up(b, h, a, d), InputError);
    };
    refused([](auto& b, auto&, auto&, auto&) { b.flow = Flow<>(); });
    refused([](auto& b, auto&, auto&, auto&) { b.relief_vacuum = Pressure<>(); });
    refused([](auto& b, auto&, auto&, auto&) { b.relief_vacuum = atmosphere; });
    refused([](auto&, auto& h, auto&, auto&) { h.bore = Length<>(); });
    refused([](auto&, auto& h, auto&, auto&) { h.length = Length<>(-1.0); });
    refused([](auto&, auto& h, auto&, auto&) { h.roughness = 0.1 * h.bore; });
    refused([](auto&, auto& h, auto&, auto&) { h.minor_loss = -1.0; });
    refused([](auto&, auto&, auto& a, auto&) { a.pressure = Pressure<>(); });
    refused([](auto&, auto&, auto& a, auto&) { a.temperature = Temperature<>(); });
    refused([](auto&, auto&, auto&, auto& d) { d.rate = MassFlow(); });
    refused([](auto&, auto&, auto&, auto& d) { d.size = Length<>(); });
    refused([](auto&, auto&, auto&, auto& d) { d.density = Density<>(1.0); });
    refused([](auto&, auto&, auto&, auto& d) { d.transport_least = Speed<>(-1.0); });
}
