// Published figures of dirt: densities, swell, street dirt.

#include "reference.hpp"
#include "refusal.hpp"
#include "scupper/debris.hpp"

using namespace scupper;
using namespace scupper::literals;
using reference::Row;
using reference::Tally;

namespace {

constexpr double pounds_a_mile = factor::pound / factor::mile;
constexpr double percent = 0.01;

/// What the formula gives for a row in its unit; NaN where no formula stands behind it.
double by_formula(const Row& row) {
    if (row.has("kg_m3")) {
        return Density<>(row["kg_m3"]).in(1.0_lb_per_ft3);
    }
    if (row.has("kg_per_L")) {
        return (1.0_yd3 * Density<>(row["kg_per_L"] / factor::litre)).in(1.0_lb);
    }
    if (row.has("pct")) {
        const Density<> dry = Density<>(row["dry"] * (1.0_lb).si() / (1.0_yd3).si());
        return (1.0_yd3 * debris::wet_density<double>(dry, row["pct"] * percent)).in(1.0_lb);
    }
    if (row.is("load factor")) {
        return debris::load_factor<double>(row["swell_pct"] * percent);
    }
    if (row.is("voids")) {
        return debris::swell_voids<double>(row["swell_pct"] * percent) / percent;
    }
    if (row.has("bank_m3")) {
        return debris::loose_volume<double>(Volume<>(row["bank_m3"]), row["swell_pct"] * percent)
            .si();
    }
    if (row.starts("swell worked")) { // 10 yd3 become 13
        return (1.0 / debris::load_factor<double>(0.3) - 1.0) / percent;
    }
    if (row.has("tons")) {
        return row["tons"] * 2000.0 / row["miles_per_yr"];
    }
    if (row.has("curb_ft")) {
        const debris::LineMass<> line(row["lb_per_curb_mile"] * pounds_a_mile);
        return debris::strip_mass<double>(row["curb_ft"] * 1.0_ft, line).in(1.0_lb);
    }
    return std::nan("");
}

Row row_of(const char* id) {
    for (const Row& row : reference::rows("debris/debris")) {
        if (row.text("id") == id) {
            return row;
        }
    }
    throw std::runtime_error(id);
}

} // namespace

TEST_CASE("published figures of dirt agree with the formulas behind them") {
    Tally tally;
    for (const Row& row : reference::rows("debris/debris")) {
        const double value = by_formula(row);
        tally.add(row, value,
                  {{"no formula behind it", std::isnan(value)},
                   {"rounded factor", reference::within(row, value, 1e-6)}});
    }
    CHECK(tally.summary() ==
          "agrees 24, no formula behind it 21, no formula behind it_from_memory 5, "
          "rounded factor 1");
}

TEST_CASE("leaves are 14 times or more lighter than sand") {
    const double leaves = row_of("debris-024").expected() / factor::litre;
    const Density<> dry = row_of("debris-009").expected() * 1.0_lb_per_ft3;
    const Density<> wet = row_of("debris-010").expected() * 1.0_lb_per_ft3;
    CHECK(dry.si() / leaves == Approx(14.0).epsilon(0.02));
    CHECK(wet.si() / leaves > 17.0);
}

TEST_CASE("street dirt at the end of winter lies three to seven hundredths of an inch deep") {
    // Common practice: over 2 ft, at 95 lb/ft3.
    const auto inches = [](const char* id) {
        const debris::LineMass<> line(row_of(id).expected() * pounds_a_mile);
        return debris::build_up_depth<double>(line, 2.0_ft, 95.0_lb_per_ft3).in(1.0_in);
    };
    CHECK(inches("debris-056") == Approx(0.03).margin(0.005));
    CHECK(inches("debris-057") == Approx(0.06).margin(0.01));
    CHECK(inches("debris-055") < 0.01);
}

TEST_CASE("mass along a strip is its volume times its density") {
    const debris::LineMass<> line(2.5);
    const Length<> depth = debris::build_up_depth<double>(line, 0.5_m, 1500.0_kg_per_m3);
    const Volume<> volume = debris::strip_volume<double>(30.0_m, 0.5_m, depth);
    CHECK((volume * 1500.0_kg_per_m3).si() ==
          Approx(debris::strip_mass<double>(30.0_m, line).si()).epsilon(1e-12));
}

TEST_CASE("loosened dirt keeps its mass") {
    for (double swell = 0.0; swell < 1.0; swell += 0.05) {
        const Volume<> loose = debris::loose_volume<double>(10.0_m3, swell);
        CHECK((loose * debris::load_factor<double>(swell)).si() == Approx(10.0).epsilon(1e-12));
        CHECK(debris::load_factor<double>(swell) + debris::swell_voids<double>(swell) ==
              Approx(1.0).epsilon(1e-12));
    }
}

TEST_CASE("dirt that cannot be is refused") {
    CHECK(refusal([] { debris::load_factor<double>(-0.1); }).id() == "debris.swell");
    CHECK(refusal([] { debris::swell_voids<double>(std::nan("")); }).id() == "debris.swell");
    CHECK(refusal([] { debris::loose_volume<double>(Volume<>(-1.0), 0.1); }).path() == "volume");
    CHECK(refusal([] { debris::wet_density<double>(Density<>(), 0.1); }).id() == "debris.density");
    CHECK(refusal([] {
              debris::strip_mass<double>(Length<>(-1.0), debris::LineMass<>(1.0));
          }).id() == "debris.length");
    CHECK(refusal([] {
              debris::build_up_depth<double>(debris::LineMass<>(1.0), Length<>(), Density<>(1500));
          }).allowed() == "> 0");
}
