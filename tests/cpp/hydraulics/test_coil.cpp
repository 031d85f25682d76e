// Coils against a reference library, and what holds for every coil.

#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/hydraulics.hpp"

using namespace scupper;
using namespace scupper::hydraulics;
using namespace scupper::literals;
using reference::near;
using reference::Row;

TEST_CASE("coils agree with a reference library to 1e-9") {
    for (const Row& row : reference::rows("hydraulics/coil")) {
        CAPTURE(row.text("id"), row.text("inputs_json"));
        const double value = row.has("Re") ? coil_friction_factor(row["Re"], row["x"], row["k"])
                                           : coil_critical_reynolds(row["x"]);
        CHECK(near(value, row.expected(), 1e-9));
    }
}

TEST_CASE("the loss in a coil grows with the flow and has no gap") {
    constexpr double step = 1.001;
    for (const double x : {0.0, 0.001, 0.01, 0.05, 0.1, 0.2}) {
        for (const double k : {0.0, 1e-3, 0.05}) {
            CAPTURE(x, k);
            double before = 0.0;
            bool grows = true;
            bool whole = true;
            for (double re = 10.0; re < 1e6; re *= step) {
                const double loss = coil_friction_factor(re, x, k) * re * re;
                grows = grows && loss > before;
                whole = whole && (before == 0.0 || loss / before < 1.02);
                before = loss;
            }
            CHECK(grows);
            CHECK(whole);
        }
    }
}

TEST_CASE("a coil loses more than the same hose straight, a wide one hardly more") {
    for (const double re : {500.0, 1500.0, 5e3, 2e4, 1e5}) {
        CHECK(coil_friction_factor(re, 0.08, 0.0) > coil_friction_factor(re, 0.02, 0.0));
    }
    for (const double re : {500.0, 1500.0, 5e3, 2e4, 1e5}) {
        CHECK(near(coil_friction_factor(re, 1e-9, 1e-4), friction_factor(re, 1e-4), 1e-4));
    }
    const Fluid<> w = water(60.0_degF);
    const Pressure<> straight = friction_loss(20.0_gpm, 1.0_in, 100.0_ft, 0.005_mm, w);
    const Pressure<> coiled = coil_loss(20.0_gpm, 1.0_in, 100.0_ft, 18.0_in, 0.005_mm, w);
    CHECK(coiled > straight);
    CHECK(coiled < 1.5 * straight);
    CHECK(near(coil_loss(20.0_gpm, 1.0_in, 200.0_ft, 18.0_in, 0.005_mm, w) / coiled, 2.0, 1e-14));
    CHECK(coil_loss(0.0_gpm, 1.0_in, 100.0_ft, 18.0_in, 0.005_mm, w).si() == 0.0);
}

TEST_CASE("coils refuse what cannot be") {
    const Fluid<> w = water(60.0_degF);
    CHECK_THROWS_AS(coil_critical_reynolds(-0.01), InputError);
    CHECK_THROWS_AS(coil_critical_reynolds(0.21), InputError);
    CHECK_THROWS_AS(coil_friction_factor(0.0, 0.05, 0.0), InputError);
    CHECK_THROWS_AS(coil_friction_factor(1e4, 0.05, 0.06), InputError);
    CHECK_THROWS_AS(coil_friction_factor(500.0, 0.05, -1.0), InputError);
    CHECK_THROWS_AS(coil_loss(1.0_gpm, 1.0_in, 1.0_ft, 4.0_in, 0.0_mm, w), InputError);
    CHECK_THROWS_AS(coil_loss(1.0_gpm, 1.0_in, 1.0_ft, 0.0_in, 0.0_mm, w), InputError);
    CHECK_THROWS_AS(coil_loss(1.0_gpm, 1.0_in, Length<>(-1.0), 18.0_in, 0.0_mm, w), InputError);
    CHECK(std::isnan(coil_friction_factor(std::nan(""), 0.05, 0.0)));
}
