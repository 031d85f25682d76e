// Air speeds that carry dirt, against a reference library and published tables.

#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/hydraulics.hpp"

using namespace scupper;
using namespace scupper::hydraulics;
using namespace scupper::literals;
using reference::near;
using reference::Row;
using reference::Tally;

namespace {

MassFlow kg_per_s(double x) {
    return MassFlow(x);
}

double saltation(const Row& row) {
    return saltation_velocity(kg_per_s(row["mp_kg_s"]), Length<>(row["dp_m"]),
                              Density<>(row["rhog"]), Length<>(row["D_m"]))
        .si();
}

double pick_up(const Row& row) {
    return pick_up_velocity(Length<>(row["dp_m"]), Density<>(row["rhop"]), Density<>(row["rhog"]),
                            DynamicViscosity<>(row["mug"]), Length<>(row["D_m"]))
        .si();
}

std::string dust_of(const Row& row) {
    static const std::map<std::string, std::string> words{
        {"very fine light dust", "very_fine_light"},
        {"dry dusts and powders", "dry_powder"},
        {"dry powder & dusts", "dry_powder"},
        {"general industrial dust", "general"},
        {"heavy dust\"", "heavy"},
        {"heavy dusts", "heavy"},
        {"heavy or moist", "heavy_or_moist"}};
    for (const auto& [printed, word] : words) {
        if (row.text("inputs_json").find(printed) != std::string::npos) {
            return word;
        }
    }
    return "unknown";
}

double unit_of(const Row& row) {
    return row.text("unit") == "ft/min" ? 0.3048 / 60.0 : 1.0;
}

} // namespace

TEST_CASE("conveying speeds agree with published ones or the difference has a reason") {
    Tally tally;
    for (const Row& row : reference::rows("hydraulics/vacuum")) {
        if (row.starts("saltation velocity, Rizk")) {
            tally.add(row, saltation(row));
        } else if (row.starts("pickup velocity")) {
            // The rows were computed with g of 9.81 m/s2.
            const double u = pick_up(row);
            tally.add(row, u, {{"rounded_gravity", reference::within(row, u, 5e-4)}});
        } else {
            REQUIRE(row.is("minimum duct transport velocity"));
            const TransportVelocity& known = transport_velocity(dust_of(row));
            const bool low = row.text("inputs_json").find("\"low\"") != std::string::npos;
            const double si = row.expected() * unit_of(row);
            // The library's range spans both publishers.
            tally.add(row, (low ? known.low : known.high) / unit_of(row),
                      {{"publishers_differ", si >= known.low - 1e-9 && si <= known.high + 1e-9}});
        }
    }
    CHECK(tally.summary() == "agrees 21, publishers_differ 1, rounded_gravity_from_memory 11");
}

TEST_CASE("air and falling grains agree with a reference library") {
    for (const Row& row : reference::rows("hydraulics/air")) {
        CAPTURE(row.text("id"), row.text("inputs_json"));
        if (row.is("terminal velocity")) {
            const double v =
                terminal_velocity(Length<>(row["dp_m"]), Density<>(row["rhop"]),
                                  Density<>(row["rhog"]), DynamicViscosity<>(row["mug"]))
                    .si();
            CHECK(near(v, row.expected(), 1e-6));
        } else if (row.is("air density")) {
            CHECK(near(air_density(Pressure<>(row["p_Pa"]), Temperature<>(row["T_K"])).si(),
                       row.expected(), 1e-6));
        } else {
            CHECK(near(1e6 * air_viscosity(Temperature<>(row["T_K"])).si(), row.expected(), 1e-6));
        }
    }
}

TEST_CASE("coarser and heavier grains need more air") {
    const Density<> air(1.2);
    const DynamicViscosity<> mu(1.8e-5);
    double falls = 0.0;
    double lifts = 0.0;
    for (double d = 2e-5; d < 0.05; d *= 1.5) {
        const double v = terminal_velocity(Length<>(d), Density<>(2650.0), air, mu).si();
        const double u = pick_up_velocity(Length<>(d), Density<>(2650.0), air, mu, 6.0_in).si();
        CHECK(v > falls);
        CHECK(u > lifts);
        CHECK(terminal_velocity(Length<>(d), Density<>(1200.0), air, mu).si() < v);
        falls = v;
        lifts = u;
    }
    // Small grains fall by Stokes' law: v = d^2 (rho_s - rho) g / (18 mu).
    const double stokes = 1e-10 * (2650.0 - 1.2) * 9.80665 / (18.0 * 1.8e-5);
    CHECK(near(terminal_velocity(Length<>(1e-5), Density<>(2650.0), air, mu).si(), stokes, 0.02));
    const auto salt = [&](double rate) {
        return saltation_velocity(kg_per_s(rate), 1.0_mm, air, 6.0_in).si();
    };
    CHECK(salt(2.0) > salt(1.0));
}

TEST_CASE("conveying refuses what cannot be") {
    const Density<> air(1.2);
    const DynamicViscosity<> mu(1.8e-5);
    CHECK_THROWS_AS(air_density(Pressure<>(), 20.0_degC), InputError);
    CHECK_THROWS_AS(air_viscosity(Temperature<>(0.0)), InputError);
    CHECK_THROWS_AS(terminal_velocity(0.0_mm, Density<>(2650.0), air, mu), InputError);
    CHECK_THROWS_AS(terminal_velocity(1.0_mm, Density<>(1.0), air, mu), InputError);
    CHECK_THROWS_AS(saltation_velocity(kg_per_s(0.0), 1.0_mm, air, 6.0_in), InputError);
    CHECK_THROWS_AS(saltation_velocity(kg_per_s(1.0), 1.0_mm, air, 0.0_in), InputError);
    CHECK_THROWS_AS(pick_up_velocity(1.0_mm, Density<>(0.0), air, mu, 6.0_in), InputError);
    try {
        transport_velocity("heavy_or_most");
        FAIL("was accepted");
    } catch (const UnknownNameError& e) {
        CHECK(e.id() == "hydraulics.dust");
        CHECK(e.allowed() == "\"heavy_or_moist\"?");
    }
}
