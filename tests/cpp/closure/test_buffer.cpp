// Buffers against the printed stopping distances.

#include "reference.hpp"
#include "refusal.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"
#include "scupper/traced.hpp"

#include <cmath>

using namespace scupper;
using namespace scupper::closure;
using namespace scupper::literals;
using reference::Row;

namespace {
constexpr auto fps2 = Acceleration<>(factor::foot);
}

TEST_CASE("buffers agree with the printed tables (California 2026, tables 6B-2 and 6B-2(CA))") {
    reference::Tally tally;
    for (const Row& row : reference::rows("closure/buffer")) {
        const bool downhill = row.has("downgrade_pct");
        const double grade = downhill ? row["downgrade_pct"] / 100.0 : 0.0;
        const double ours = buffer_length(row["speed_mph"] * 1.0_mph, grade).in(1.0_ft);
        // The printed downgrade figures are rounded now up, now to the nearest foot.
        tally.add(row, ours, {{"rounded_otherwise", downhill && reference::cut_off(row, ours)}});
    }
    CHECK(tally.summary() == "agrees 28, rounded_otherwise 7");
}

TEST_CASE("the stopping distance is reaction plus braking, in any units") {
    const double v = (60.0_mph).si();
    const double a = (11.2 * fps2).si();
    CHECK(stopping_distance(60.0_mph).si() == Approx(v * 2.5 + v * v / (2.0 * a)));
    // The customary form with its rounded constants is within 0.3 %.
    CHECK(stopping_distance(60.0_mph).in(1.0_ft) ==
          Approx(1.47 * 60.0 * 2.5 + 1.075 * 60.0 * 60.0 / 11.2).epsilon(0.003));
}

TEST_CASE("a buffer is never shorter at a higher speed or on a steeper downgrade") {
    for (double mph = 5.0; mph < 80.0; mph += 0.5) {
        for (double grade = -0.1; grade < 0.1; grade += 0.01) {
            const Length<> here = buffer_length(mph * 1.0_mph, grade);
            CHECK(buffer_length((mph + 0.5) * 1.0_mph, grade) >= here);
            CHECK(buffer_length(mph * 1.0_mph, grade + 0.01) >= here);
            CHECK(here >= stopping_distance(mph * 1.0_mph, grade) * (1.0 - 1e-8));
        }
    }
}

TEST_CASE("uphill counts as level; level buffers are whole fives of feet") {
    CHECK(buffer_length(55.0_mph, -0.05) == buffer_length(55.0_mph));
    const double fives = buffer_length(47.0_mph).in(5.0_ft);
    CHECK(fives == Approx(std::round(fives)));
}

TEST_CASE("a traced buffer has the value of the plain one") {
    for (const double grade : {0.0, 0.06}) {
        const auto traced = buffer_length(Speed<Traced>(55.0_mph), Traced(grade));
        CHECK(traced.si().value() == buffer_length(55.0_mph, grade).si());
    }
}

TEST_CASE("a road too steep to brake on, and no speed, are refused") {
    CHECK(refusal([] { buffer_length(55.0_mph, 6.0); }).id() == "closure.downgrade");
    CHECK_THROWS_AS(stopping_distance(55.0_mph, -0.3), InputError);
    CHECK_THROWS_AS(buffer_length(-1.0 * 1.0_mph), InputError);
}
