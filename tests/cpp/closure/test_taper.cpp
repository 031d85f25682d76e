// Tapers against the printed table, and what must hold at any speed and width.

#include "reference.hpp"
#include "refusal.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"
#include "scupper/traced.hpp"

#include <limits>

using namespace scupper;
using namespace scupper::closure;
using namespace scupper::literals;
using reference::Row;

namespace {

TaperKind kind_of(const Row& row) {
    if (row.starts("taper length merging")) {
        return TaperKind::merging;
    }
    return row.starts("taper length shifting") ? TaperKind::shifting : TaperKind::shoulder;
}

double printed_taper(const Row& row) {
    if (row.starts("one-lane two-way taper")) {
        return (row.is("one-lane two-way taper, minimum") ? shortest_short_taper
                                                          : longest_short_taper)
            .in(1.0_ft);
    }
    return taper_length(row["speed_mph"] * 1.0_mph, row["offset_ft"] * 1.0_ft, kind_of(row))
        .in(1.0_ft);
}

} // namespace

TEST_CASE("tapers agree with the printed table (California 2026, tables 6B-3 and 6B-3(CA))") {
    reference::Tally tally;
    for (const Row& row : reference::rows("closure/taper")) {
        tally.add(row, printed_taper(row));
    }
    CHECK(tally.summary() == "agrees 28");
}

TEST_CASE("a taper is never shorter at a higher speed or for a wider offset") {
    for (const TaperKind kind : {TaperKind::merging, TaperKind::shifting, TaperKind::shoulder,
                                 TaperKind::one_lane_two_way, TaperKind::downstream}) {
        for (double mph = 5.0; mph < 80.0; mph += 0.25) {
            for (double ft = 0.0; ft < 24.0; ft += 2.0) {
                const Length<> here = taper_length(mph * 1.0_mph, ft * 1.0_ft, kind);
                CHECK(taper_length((mph + 0.25) * 1.0_mph, ft * 1.0_ft, kind) >= here);
                CHECK(taper_length(mph * 1.0_mph, (ft + 2.0) * 1.0_ft, kind) >= here);
            }
        }
    }
}

TEST_CASE("between 40 and 45 mph there is no formula and the longer one is used") {
    CHECK(taper_formula_exists(40.0_mph));
    CHECK_FALSE(taper_formula_exists(41.0_mph));
    CHECK_FALSE(taper_formula_exists(44.0_mph));
    CHECK(taper_formula_exists(45.0_mph));
    const double s = 42.0;
    const double used = taper_length(s * 1.0_mph, 12.0_ft).in(1.0_ft);
    CHECK(used == Approx(12.0 * s));
    CHECK(used > 12.0 * s * s / 60.0);
}

TEST_CASE("40 mph stays 40 mph when it comes in metres and seconds") {
    const auto a_little_more = Speed<>((40.0_mph).si() * (1.0 + 1e-12));
    CHECK(taper_length(a_little_more, 12.0_ft).in(1.0_ft) == Approx(320.0));
    CHECK(taper_formula_exists(a_little_more));
}

TEST_CASE("tapers scale with the offset, and shifting and shoulder tapers are parts of merging") {
    const Length<> merging = taper_length(55.0_mph, 12.0_ft);
    CHECK(taper_length(55.0_mph, 24.0_ft).si() == Approx(2.0 * merging.si()));
    CHECK(taper_length(55.0_mph, 12.0_ft, TaperKind::shifting).si() == Approx(merging.si() / 2.0));
    CHECK(taper_length(55.0_mph, 12.0_ft, TaperKind::shoulder).si() == Approx(merging.si() / 3.0));
    CHECK(taper_length(55.0_mph, 12.0_ft, TaperKind::downstream) == longest_short_taper);
}

TEST_CASE("a traced taper has the value of the plain one, on both sides of the threshold") {
    for (const double mph : {30.0, 40.0, 42.0, 65.0}) {
        const Speed<> speed = mph * 1.0_mph;
        const auto traced = taper_length(Speed<Traced>(speed), Length<Traced>(12.0_ft));
        CHECK(traced.si().value() == taper_length(speed, 12.0_ft).si());
    }
}

TEST_CASE("speeds and offsets that cannot be are refused") {
    CHECK_THROWS_AS(taper_length(0.0_mph, 12.0_ft), InputError);
    CHECK_THROWS_AS(taper_length(40.0_mph, -1.0 * 1.0_ft), InputError);
    const Speed<> unknown(std::numeric_limits<double>::quiet_NaN());
    const InputError e = refusal([&] { taper_length(unknown, 12.0_ft); });
    CHECK(e.id() == "closure.speed");
    CHECK(e.allowed() == "> 0");
}
