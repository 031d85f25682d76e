// Drain spacing by the flow in a gutter.

#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/takeoff.hpp"

using namespace scupper;
using namespace scupper::literals;
using reference::Row;
using takeoff::Gutter;

namespace {

Gutter gutter_of(const Row& row) {
    return {row["n"], row["Sx"], row["S"], row["T_ft"] * 1.0_ft};
}

/// In the unit of the row; NaN where no formula stands behind it.
double by_formula(const Row& row) {
    if (!row.has("n")) {
        return std::nan("");
    }
    if (!row.has("C")) {
        return takeoff::gutter_flow(gutter_of(row)).si() / (1.0_ft3).si();
    }
    const Speed<> rain(row["i_in_h"] * factor::inch / factor::hour);
    return takeoff::undrained_length(gutter_of(row), row["C"], rain, row["Wp_ft"] * 1.0_ft)
        .in(1.0_ft);
}

const Gutter usual{0.016, 0.02, 0.01, 10.0_ft};

Length<> length(const Gutter& gutter, double inches_an_hour, double feet) {
    return takeoff::undrained_length(
        gutter, 0.9, Speed<>(inches_an_hour * factor::inch / factor::hour), feet * 1.0_ft);
}

} // namespace

TEST_CASE("flow in gutters and decks without drains as computed in feet and acres") {
    reference::Tally tally;
    for (const Row& row : reference::rows("takeoff/drainage")) {
        const double value = by_formula(row);
        // 0.56 in feet stands for 0.5587; an acre inch an hour is taken as a cubic foot a second.
        tally.add(row, value,
                  {{"no formula behind it", std::isnan(value)},
                   {"constant 0.56", reference::within(row, value, 0.0025)},
                   {"constant 0.56, acre inch", reference::within(row, value, 0.0110)}});
    }
    CHECK(tally.summary() == "constant 0.56 4, constant 0.56, acre inch 4, no formula behind it 3");
}

TEST_CASE("short decks need no drain") {
    CHECK(length(usual, 5.3, 34.0).in(1.0_ft) > 600.0);
}

TEST_CASE("more rain, a wider deck, a flatter fall or a narrower spread shorten it") {
    const Length<> least = length(usual, 5.3, 34.0);
    CHECK(length(usual, 6.0, 34.0) < least);
    CHECK(length(usual, 5.3, 40.0) < least);
    CHECK(length({0.016, 0.02, 0.005, 10.0_ft}, 5.3, 34.0) < least);
    CHECK(length({0.016, 0.02, 0.01, 8.0_ft}, 5.3, 34.0) < least);
}

TEST_CASE("gutters that cannot be are refused") {
    CHECK_THROWS_AS(takeoff::gutter_flow({0.016, 0.02, 0.0, 10.0_ft}), InputError);
    CHECK_THROWS_AS(takeoff::gutter_flow({0.016, std::nan(""), 0.01, 10.0_ft}), InputError);
    CHECK_THROWS_AS(takeoff::undrained_length(usual, 1.5, Speed<>(1e-5), 10.0_m), InputError);
    CHECK_THROWS_AS(takeoff::undrained_length(usual, 0.9, Speed<>(), 10.0_m), InputError);
    CHECK_THROWS_AS(takeoff::undrained_length(usual, 0.9, Speed<>(1e-5), Length<>()), InputError);
}
