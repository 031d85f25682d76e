// Jets against worked examples, and what holds for every jet.

#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/hydraulics.hpp"
#include "scupper/traced.hpp"

#include <numbers>

using namespace scupper;
using namespace scupper::hydraulics;
using namespace scupper::literals;
using reference::near;
using reference::Row;
using reference::Tally;

namespace test_jet {

namespace {

constexpr auto fps = Speed<>(0.3048);

Density<> density_of(const Row& row) {
    if (row.has("w")) {
        return row["w"] * 1.0_lb_per_ft3;
    }
    return Density<>(row.has("rho") ? row["rho"] : 1000.0);
}

Length<> bore_of(const Row& row) {
    if (row.has("A_m2")) {
        return Length<>(std::sqrt(row["A_m2"] * 4.0 / std::numbers::pi));
    }
    return row.has("d_in") ? row["d_in"] * 1.0_in : Length<>(row["d_m"]);
}

double force(const Row& row) {
    const char* speed = row.has("V1_fps") ? "V1_fps" : "V_fps";
    const Speed<> v = row.has(speed) ? row[speed] * fps : Speed<>(row["V_m_s"]);
    const Speed<> u(row.has("u_m_s") ? row["u_m_s"] : 0.0);
    const Angle<> angle = (row.has("theta_deg") ? row["theta_deg"] : 0.0) * 1.0_deg;
    const Force<> f = jet_force(bore_of(row), v, u, angle, density_of(row));
    return row.text("unit") == "lbf"  ? f.in(1.0_lbf)
           : row.text("unit") == "kN" ? f.si() / 1000.0
                                      : f.si();
}

double thrust(const Row& row) {
    const Length<> bore = row.has("d_mm") ? Length<>(row["d_mm"] / 1000.0) : Length<>(row["d_m"]);
    const Pressure<> p(row.has("dp_Pa") ? row["dp_Pa"] : row["p_Pa_gauge"]);
    return smooth_bore_reaction(bore, p, 1.0).si();
}

} // namespace

TEST_CASE("jets agree with printed figures or the difference has a reason") {
    Tally tally;
    for (const Row& row : reference::rows("hydraulics/jet_impact")) {
        if (row.is("jet thrust")) {
            tally.add(row, thrust(row));
        } else if (row.starts("stagnation")) {
            const Density<> rho = water_density(60.0_degF);
            const Speed<> v = jet_velocity(row["P_psi"] * 1.0_psi, rho);
            tally.add(row, stagnation_pressure(v, rho).in(1.0_psi));
        } else if (row.is("ideal jet velocity") || row.is("nozzle velocity")) {
            const double v = jet_velocity(row["P_psi"] * 1.0_psi, Density<>(998.2)).in(fps);
            // One source rounds g to 32 ft/s2.
            tally.add(row, v,
                      {{"rounded_gravity", row.has("g") && reference::within(row, v, 0.005)}});
        } else {
            // One source rounds g to 32.2 ft/s2 where it turns weight into mass.
            const double f = force(row);
            tally.add(row, f,
                      {{"rounded_gravity",
                        (row.has("w") || row.has("V1_fps")) && reference::within(row, f, 0.0025)}});
        }
    }
    CHECK(tally.summary() == "agrees 20, rounded_gravity 3");
}

TEST_CASE("the power of a jet is its momentum times half its speed") {
    const Density<> rho(1000.0);
    for (const double psi : {40.0, 100.0, 3000.0}) {
        const Flow<> q = nozzle_flow(0.25_in, psi * 1.0_psi, 1.0, rho);
        const Speed<> v = jet_velocity(psi * 1.0_psi, rho);
        const Power<> half = 0.5 * (nozzle_reaction(q, psi * 1.0_psi, rho) * v);
        CHECK(near(hydraulic_power(psi * 1.0_psi, q).si(), half.si(), 1e-14));
        CHECK(near(stagnation_pressure(v, rho).in(1.0_psi), psi, 1e-14));
    }
    // 20 gpm at 1,500 psi: 17.5 hp; 1 hp = 33,000 ft lbf/min, 1 gal = 231 in3 by definition.
    CHECK(near(hydraulic_power(1500.0_psi, 20.0_gpm).in(1.0_hp), 17.5, 1e-14));
}

TEST_CASE("the jet that leaves pushes back as hard as it pushes the wall") {
    const Density<> rho(999.0);
    const Speed<> v = jet_velocity(80.0_psi, rho);
    CHECK(near(jet_force(0.5_in, v, 0.0_mps, 0.0_deg, rho).si(),
               smooth_bore_reaction(0.5_in, 80.0_psi, 1.0).si(), 1e-13));
    CHECK(jet_force(0.5_in, v, v, 0.0_deg, rho).si() == 0.0);
}

TEST_CASE("a fan covers twice its half and leaves its flow on the strip") {
    // 90 degrees at any stand-off: twice as wide as far; 15 degrees at 12 in: 3.16 in.
    CHECK(near(fan_width(12.0_in, 90.0_deg).in(1.0_in), 24.0, 1e-14));
    CHECK(near(fan_width(12.0_in, 15.0_deg).in(1.0_in), 3.1597, 1e-4));
    CHECK(fan_width(0.0_in, 15.0_deg).si() == 0.0);
    const Length<> width(1.5);
    const Speed<> travel(0.5);
    const Length<> depth = water_by_area(Flow<>(0.003), width, travel);
    CHECK(near(depth.si(), 0.004, 1e-14)); // 4 L/m2
    CHECK(near(water_by_area(Flow<>(0.003), width, 2.0 * travel) / depth, 0.5, 1e-14));
}

TEST_CASE("jets refuse what cannot be") {
    const Density<> rho(1000.0);
    CHECK_THROWS_AS(stagnation_pressure(Speed<>(-1.0), rho), InputError);
    CHECK_THROWS_AS(jet_force(0.0_in, 1.0_mps, 0.0_mps, 0.0_deg, rho), InputError);
    CHECK_THROWS_AS(jet_force(1.0_in, 1.0_mps, 2.0_mps, 0.0_deg, rho), InputError);
    CHECK_THROWS_AS(jet_force(1.0_in, 1.0_mps, 0.0_mps, 90.0_deg, rho), InputError);
    CHECK_THROWS_AS(fan_width(Length<>(-1.0), 15.0_deg), InputError);
    CHECK_THROWS_AS(fan_width(1.0_in, 180.0_deg), InputError);
    CHECK_THROWS_AS(water_by_area(1.0_gpm, 0.0_in, 1.0_mps), InputError);
    CHECK_THROWS_AS(water_by_area(1.0_gpm, 1.0_in, 0.0_mps), InputError);
}

TEST_CASE("traced jets are the same to the bit") {
    Recording tape;
    const auto input = [&](double x) { return Traced(x, &tape, tape.leaf(x, {})); };
    const Length<Traced> stand_off(input(0.3));
    const Angle<Traced> fan(input(0.26));
    const Length<Traced> width = fan_width(stand_off, fan);
    CHECK(width.si().value() == fan_width(Length<>(0.3), Angle<>(0.26)).si());
    const Flow<Traced> q(input(2.5e-4));
    const Speed<Traced> u(input(0.4));
    CHECK(water_by_area(q, width, u).si().value() ==
          water_by_area(Flow<>(2.5e-4), Length<>(width.si().value()), Speed<>(0.4)).si());
    CHECK(hydraulic_power(Pressure<Traced>(input(2e7)), q).si().value() == 2.5e-4 * 2e7);
}

} // namespace test_jet
