// Water properties against IAPWS-95 and printed tables.

#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/hydraulics/water.hpp"
#include "scupper/traced.hpp"

using namespace scupper;
using namespace scupper::hydraulics;
using namespace scupper::literals;

namespace test_water {

namespace {

Temperature<> temperature_of(const reference::Row& row) {
    if (row.has("T_C")) {
        return Temperature<>(row["T_C"] + 273.15);
    }
    return Temperature<>((row["T_F"] + 459.67) / 1.8);
}

double unit_of(const reference::Row& row) {
    static const std::map<std::string, double> units{
        {"kg/m3", 1.0},
        {"g/cm3", 1e3},
        {"Pa s", 1.0},
        {"mPa s", 1e-3},
        {"Pa", 1.0},
        {"kPa", 1e3},
        {"1e-6 m2/s", 1e-6},
        {"centistoke", 1e-6},
        {"1e-5 ft2/s", 1e-5 * (1.0_ft2).si()},
        {"1e-5 lbf s/ft2", 1e-5 * ((1.0_lbf).si() / (1.0_ft2).si())}};
    return units.at(row.text("unit"));
}

double formula(const reference::Row& row) {
    const Temperature<> t = temperature_of(row);
    const double unit = unit_of(row);
    if (row.is("water density")) {
        return water_density(t).si() / unit;
    }
    if (row.is("water dynamic viscosity")) {
        return water_dynamic_viscosity(t).si() / unit;
    }
    if (row.is("water vapour pressure")) {
        return water_vapour_pressure(t).si() / unit;
    }
    REQUIRE(row.is("water kinematic viscosity"));
    return water_kinematic_viscosity(t).si() / unit;
}

} // namespace

TEST_CASE("water agrees with IAPWS-95 within 0.01 percent") {
    for (const auto& row : reference::rows("hydraulics/water_iapws")) {
        CAPTURE(row.text("id"), row.text("quantity"), row["T_C"]);
        CHECK(reference::within(row, formula(row), 1e-4));
    }
}

TEST_CASE("water agrees with printed tables or the difference has a reason") {
    reference::Tally tally;
    for (const auto& row : reference::rows("hydraulics/water_properties")) {
        const double value = formula(row);
        const bool old_table = row.text("source").rfind("International Critical Tables", 0) == 0;
        // Until 1964 a millilitre was 1.000028 cm3, so that old g/mL exceed g/cm3 by 28 ppm.
        tally.add(row, value,
                  {{"old_millilitre", old_table && prints_as(row, value * 1.000028)},
                   {"old_viscosity_scale", old_table && row.is("water kinematic viscosity") &&
                                               reference::within(row, value, 0.008)},
                   {"cut_off", reference::cut_off(row, value)},
                   {"older_table_0.3_percent", reference::within(row, value, 0.003)},
                   {"older_table_0.8_percent", reference::within(row, value, 0.008)}});
    }
    CHECK(tally.summary() == "agrees 27, cut_off 7, old_millilitre 13, old_viscosity_scale 11, "
                             "older_table_0.3_percent 17, older_table_0.8_percent 1");
}

TEST_CASE("water is densest near 4 degC and thins as it warms") {
    const double at_4 = water_density(4.0_degC).si();
    for (double t = 0.5; t <= 50.0; t += 0.5) {
        const Temperature<> here(t + 273.15);
        const Temperature<> colder(t - 0.5 + 273.15);
        CHECK(water_density(here).si() <= at_4 + 1e-4);
        CHECK(water_dynamic_viscosity(here) < water_dynamic_viscosity(colder));
        CHECK(water_vapour_pressure(here) > water_vapour_pressure(colder));
    }
}

TEST_CASE("water outside 0 to 50 degC is refused") {
    for (const double kelvin : {273.14, 323.16, 0.0}) {
        const Temperature<> t(kelvin);
        CHECK_THROWS_AS(water_density(t), InputError);
        CHECK_THROWS_AS(water_dynamic_viscosity(t), InputError);
        CHECK_THROWS_AS(water_vapour_pressure(t), InputError);
        CHECK_THROWS_AS(water(t), InputError);
    }
    try {
        water(Temperature<>(350.0));
        FAIL("no error");
    } catch (const InputError& e) {
        CHECK(e.id() == "hydraulics.temperature");
        CHECK(e.found() == "350");
        CHECK(e.allowed() == "273.15 to 323.15 K (0 to 50 degC)");
    }
}

TEST_CASE("traced water is the same to the bit") {
    Recording tape;
    const Traced kelvin(288.15, &tape, tape.leaf(288.15, {}));
    const Temperature<Traced> t(kelvin);
    const Temperature<> same(288.15);
    CHECK(water_density(t).si().value() == water_density(same).si());
    CHECK(water_kinematic_viscosity(t).si().value() == water_kinematic_viscosity(same).si());
    CHECK(water_vapour_pressure(t).si().value() == water_vapour_pressure(same).si());
}

} // namespace test_water
