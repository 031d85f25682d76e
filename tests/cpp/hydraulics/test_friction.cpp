// Friction against a reference library, handbook tables and worked examples.

#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/hydraulics.hpp"
#include "scupper/traced.hpp"

using namespace scupper;
using namespace scupper::hydraulics;
using namespace scupper::literals;
using reference::near;
using reference::Row;
using reference::Tally;

namespace test_friction {

namespace {

constexpr auto fps = Speed<>(0.3048);

Flow<> flow_of(const Row& row) {
    if (row.has("Q_gpm")) {
        return row["Q_gpm"] * 1.0_gpm;
    }
    if (row.has("Q_L_min")) {
        return row["Q_L_min"] * Flow<>(1e-3 / 60.0);
    }
    if (row.has("Q_m3_hr")) {
        return row["Q_m3_hr"] * Flow<>(1.0 / 3600.0);
    }
    return row.has("Q_ft3_s") ? Flow<>(row["Q_ft3_s"] * (1.0_ft3).si()) : Flow<>(row["Q_m3_s"]);
}

Length<> bore_of(const Row& row) {
    if (row.has("D_m")) {
        return Length<>(row["D_m"]);
    }
    return row[row.has("d_in") ? "d_in" : "bore_in"] * 1.0_in;
}

Length<> roughness_of(const Row& row) {
    return row.has("eps_m") ? Length<>(row["eps_m"]) : row["eps_ft"] * 1.0_ft;
}

Fluid<> fluid_of(const Row& row) {
    if (row.has("nu_ft2_s")) {
        return {water_density(60.0_degF), KinematicViscosity<>(row["nu_ft2_s"] * (1.0_ft2).si())};
    }
    if (row.has("nu")) {
        return {Density<>(999.0), KinematicViscosity<>(row["nu"])};
    }
    if (row.has("mu")) {
        const double rho = row.has("rho") ? row["rho"] : 1000.0;
        return {Density<>(rho), KinematicViscosity<>(row["mu"] / rho)};
    }
    return water(60.0_degF);
}

// Feet of head per hundred feet of pipe.
double head_per_hundred(const Row& row) {
    const Fluid<> w = fluid_of(row);
    return head(friction_loss(flow_of(row), bore_of(row), 100.0_ft, roughness_of(row), w),
                w.density)
        .in(1.0_ft);
}

// A loss with a friction factor read from a chart: K = f L / D + other K.
double charted_head(const Row& row, double other) {
    const Length<> length = row.has("L_ft") ? row["L_ft"] * 1.0_ft : Length<>(row["L_m"]);
    const double f = row.has("f") ? row["f"] : 4.0 * row["f_fanning"];
    const Density<> rho(row.has("rho") ? row["rho"] : 1000.0);
    if (row.has("V_m_s")) {
        return head(factor_loss(f, Speed<>(row["V_m_s"]), bore_of(row), length, rho), rho).si();
    }
    return head(minor_loss(flow_of(row), bore_of(row), f * (length / bore_of(row)) + other, rho),
                rho)
        .si();
}

double factor_of(const Row& row) {
    if (row.has("Re")) {
        return friction_factor(row["Re"], row.has("eD") ? row["eD"] : 0.0);
    }
    if (row.is("Darcy friction factor, rough")) {
        return friction_factor(1e12, row["eD"]);
    }
    return friction_factor(reynolds(flow_of(row), bore_of(row), fluid_of(row).kinematic_viscosity),
                           roughness_of(row) / bore_of(row));
}

double laminar_head(const Row& row) {
    const Fluid<> w = fluid_of(row);
    const Length<> bore = bore_of(row);
    const Flow<> flow = row.has("V_m_s")
                            ? Speed<>(row["V_m_s"]) / pipe_velocity(Flow<>(1.0), bore) * Flow<>(1.0)
                            : flow_of(row);
    return head(friction_loss(flow, bore, Length<>(row["L_m"]), 0.0_m, w), w.density).si();
}

double reynolds_of(const Row& row) {
    const double rho = row["gamma"] / row["g"]; // slug/ft3
    return reynolds(flow_of(row), bore_of(row),
                    KinematicViscosity<>(row["mu_lbf_s_ft2"] / rho * (1.0_ft2).si()));
}

double conical_head(const Row& row) {
    const Speed<> v(row["V1_m_s"]);
    const Flow<> q = v / pipe_velocity(Flow<>(1.0), 1.0_m) * Flow<>(1.0);
    return head(minor_loss(q, 1.0_m, row["K"], Density<>(1000.0)), Density<>(1000.0)).si();
}

// Bernoulli from the main to the tap: rise, losses, and the speed at the faucet's exit.
double domestic_line(const Row& row) {
    const Density<> rho = 62.4_lb_per_ft3;
    const Flow<> q = flow_of(row);
    const Length<> bore = row["D_ft"] * 1.0_ft;
    const double k = row["K"] + row["f"] * (row["L_ft"] * 1.0_ft / bore);
    const Pressure<> speeds =
        velocity_pressure(q, 0.0417_ft, rho) - velocity_pressure(q, bore, rho);
    return (static_pressure(row["dz_ft"] * 1.0_ft, rho) + minor_loss(q, bore, k, rho) + speeds)
        .in(1.0_psi);
}

double formula(const Row& row) {
    if (row.is("pipe velocity")) {
        return pipe_velocity(flow_of(row), bore_of(row)).in(fps);
    }
    if (row.starts("Darcy friction factor")) {
        return factor_of(row);
    }
    if (row.starts("steel pipe") || row.starts("smooth hose")) {
        return head_per_hundred(row);
    }
    if (row.is("head loss (laminar)")) {
        return 1e3 * laminar_head(row);
    }
    if (row.is("laminar head loss")) {
        return laminar_head(row);
    }
    if (row.is("Reynolds number")) {
        return reynolds_of(row);
    }
    if (row.is("conical expansion head loss")) {
        return conical_head(row);
    }
    if (row.is("pipe head loss")) {
        return charted_head(row, 0.0);
    }
    if (row.is("pipe pressure drop")) {
        const Density<> rho(row["rho"]);
        return static_pressure(Length<>(charted_head(row, 0.0)), rho).si();
    }
    if (row.is("level difference")) {
        return charted_head(row, row["K"]) / 0.3048;
    }
    if (row.starts("reservoir elevation")) {
        return row["z2_m"] + charted_head(row, row["sumK"]);
    }
    if (row.is("head loss (turbulent)")) {
        return charted_head(row, 0.0);
    }
    if (row.is("pumping power")) {
        return hydraulic_power(Pressure<>(row["dP_Pa"]), Flow<>(row["Q_m3_s"])).si();
    }
    if (row.is("friction loss")) { // J/kg: pressure over density
        return static_pressure(Length<>(charted_head(row, 0.0)), Density<>(1.0)).si();
    }
    if (row.starts("total pressure drop")) {
        return domestic_line(row);
    }
    REQUIRE(row.is("head loss, petroleum line"));
    return charted_head(row, 0.5 + 1.0); // entrance and exit
}

} // namespace

TEST_CASE("friction factor agrees with a reference library to 1e-9") {
    for (const Row& row : reference::rows("hydraulics/friction_factor")) {
        CAPTURE(row.text("id"), row["Re"], row["eD"]);
        CHECK(near(friction_factor(row["Re"], row["eD"]), row.expected(), 1e-9));
    }
}

TEST_CASE("friction agrees with printed figures or the difference has a reason") {
    Tally tally;
    for (const Row& row : reference::rows("hydraulics/darcy_minor")) {
        if (row.is("minor loss coefficient K")) {
            continue; // data, not a formula: see the hose library's test
        }
        const double value = formula(row);
        const bool chart = row.text("notes").find("chart") != std::string::npos;
        tally.add(row, value,
                  {{"read_from_chart", chart && reference::within(row, value, 0.02)},
                   {"cut_off", reference::cut_off(row, value)},
                   {"within_0.5_percent", reference::within(row, value, 0.005)},
                   {"within_1_percent", reference::within(row, value, 0.01)}});
    }
    CHECK(tally.summary() == "agrees 65, cut_off 12, read_from_chart 1, within_0.5_percent 6");
}

TEST_CASE("friction factor solves its equation to machine precision") {
    for (double re = turbulent_limit; re < 1e9; re *= 1.37) {
        for (const double k : {0.0, 1e-7, 1e-4, 3e-3, 0.05}) {
            const double x = 1.0 / std::sqrt(friction_factor(re, k));
            CHECK(near(x, -2.0 * std::log10(k / 3.7 + 2.51 * x / re), 1e-14));
        }
    }
}

TEST_CASE("loss grows with the flow and has no gap, across the bridge too") {
    for (const double k : {0.0, 1e-4, 1e-2, 0.05}) {
        double before = 0.0;
        for (double re = 1.0; re < 1e7; re *= 1.0007) {
            const double loss = friction_factor(re, k) * re * re;
            CHECK(loss > before);
            CHECK((before == 0.0 || loss / before < 1.0007 * 1.0007 * 1.0007 * 1.0007));
            before = loss;
        }
        for (const double limit : {laminar_limit, turbulent_limit}) {
            CHECK(near(friction_factor(limit * (1.0 - 1e-12), k),
                       friction_factor(limit * (1.0 + 1e-12), k), 1e-10));
        }
    }
}

TEST_CASE("friction laws of scale") {
    const Fluid<> w = water(60.0_degF);
    const Flow<> q = 60.0_gpm;
    const Pressure<> p = friction_loss(q, 1.5_in, 100.0_ft, 0.0_m, w);
    CHECK(near(friction_loss(q, 1.5_in, 300.0_ft, 0.0_m, w) / p, 3.0, 1e-14));
    CHECK(friction_loss(q, 1.5_in, 100.0_ft, Length<>(1e-5), w) > p);
    CHECK(friction_loss(q, 1.75_in, 100.0_ft, 0.0_m, w) < p);
    CHECK(friction_loss(0.0_gpm, 1.5_in, 100.0_ft, 0.0_m, w).si() == 0.0);
    CHECK(near(head(static_pressure(10.0_ft, w.density), w.density).si(), 3.048, 1e-15));
    CHECK(static_pressure(Length<>(-2.0), w.density).si() < 0.0);
    CHECK(near(minor_loss(q, 1.5_in, 2.0, w.density) / minor_loss(q, 3.0_in, 2.0, w.density), 16.0,
               1e-14));
}

TEST_CASE("friction refuses what cannot be") {
    const Fluid<> w = water(60.0_degF);
    CHECK_THROWS_AS(friction_factor(-1.0, 0.0), InputError);
    CHECK_THROWS_AS(friction_factor(1e5, 0.051), InputError);
    CHECK_THROWS_AS(friction_factor(1e5, -1e-9), InputError);
    CHECK_THROWS_AS(reynolds(Flow<>(-1.0), 1.0_in, w.kinematic_viscosity), InputError);
    CHECK_THROWS_AS(reynolds(1.0_gpm, 0.0_in, w.kinematic_viscosity), InputError);
    CHECK_THROWS_AS(friction_loss(1.0_gpm, 1.0_in, Length<>(-1.0), 0.0_m, w), InputError);
    CHECK_THROWS_AS(minor_loss(1.0_gpm, 1.0_in, -0.1, w.density), InputError);
    CHECK_THROWS_AS(static_pressure(1.0_ft, Density<>(0.0)), InputError);
    CHECK(std::isnan(friction_factor(std::nan(""), 0.0)));
}

TEST_CASE("traced friction is the same to the bit, the factor one step") {
    Recording tape;
    const auto input = [&](double x) { return Traced(x, &tape, tape.leaf(x, {})); };
    for (const double q : {0.0, 2e-6, 4e-5, 4e-3}) {
        const Flow<Traced> flow(input(q));
        const Fluid<Traced> w = water(Temperature<Traced>(input(288.15)));
        const Pressure<Traced> p = friction_loss<Traced>(flow, 1.0_in, 30.0_m, Length<>(1e-5), w);
        const Pressure<> plain =
            friction_loss(Flow<>(q), 1.0_in, 30.0_m, Length<>(1e-5), water(Temperature<>(288.15)));
        CHECK(p.si().value() == plain.si());
    }
    int solves = 0;
    for (const RecordedStep& step : tape.steps()) {
        solves += step.op == Op::opaque ? 1 : 0;
    }
    CHECK(solves == 4);
}

} // namespace test_friction
