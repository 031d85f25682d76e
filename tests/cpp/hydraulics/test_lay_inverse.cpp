// Hose lays asked backwards: each answer, put in, gives what was wanted.

#include "lays.hpp"
#include "reference.hpp"
#include "scupper/error.hpp"

using namespace lays;
using reference::near;

namespace test_lay_inverse {

namespace {

constexpr std::size_t supply = 0;
constexpr std::size_t left = 1;

HoseLay by_roughness() {
    HoseLay lay = wyed();
    for (LaySegment& s : lay.segments) {
        s.hose.law = FrictionLaw::darcy_weisbach;
        s.hose.roughness = Length<>(2e-5);
    }
    return lay;
}

double tip_psi(const HoseLay& lay) {
    return solve(lay).nozzles[0].pressure.in(1.0_psi);
}

template <class F>
std::string no_answer(F question) {
    try {
        question();
    } catch (const SolveError& e) {
        return e.id() + " " + e.path();
    }
    return "answered";
}

} // namespace

TEST_CASE("pump pressure of published wyed lays") {
    for (const auto& row : reference::rows("hydraulics/line")) {
        if (row.has("P_wye_psi")) {
            continue;
        }
        CAPTURE(row.text("id"));
        HoseLay lay = wyed();
        const Length<> tip = equivalent_bore(row["Q_leg"] * 1.0_gpm, row["NP"] * 1.0_psi, 1.0,
                                             water_density(lay.temperature));
        lay.segments[0].hose.length = row["L1"] * 1.0_ft;
        lay.segments[0].hose.coefficient = row["C_supply"];
        for (const std::size_t leg : {1, 2}) {
            lay.segments[leg].hose.length = row["L2"] * 1.0_ft;
            lay.segments[leg].hose.coefficient = row["C_leg"];
            lay.nozzles[leg - 1].tip.bore = tip;
        }
        CHECK(prints_as(row, pump_pressure_for(lay, 0, row["NP"] * 1.0_psi).in(1.0_psi)));
    }
}

TEST_CASE("the pump pressure found gives the pressure wanted, whatever the lay") {
    LayMaker maker(21);
    int found = 0;
    for (int i = 0; i < 200; ++i) {
        HoseLay lay = maker.lay(15);
        if (lay.nozzles.empty()) {
            continue;
        }
        const Pressure<> wanted(maker.over(1e3, 1e6));
        try {
            const Pressure<> p = pump_pressure_for(lay, 0, wanted);
            lay.pump = Pump{};
            lay.pump.pressure = p;
            const double scale = p.si() + 4e6; // rises add to the rounding
            REQUIRE(std::abs((solve(lay).nozzles[0].pressure - wanted).si()) <= 1e-8 * scale);
            ++found;
        } catch (const SolveError& e) {
            REQUIRE(e.id() == "hydraulics.no_answer");
        }
    }
    CHECK(found > 100);
}

TEST_CASE("longest hose, greatest lift, smallest bore give the pressure wanted") {
    HoseLay lay = by_roughness();
    REQUIRE(tip_psi(lay) > 60.0);
    const Length<> length = longest_hose(lay, left, 0, 60.0_psi);
    CHECK(length > 100.0_ft);
    const Length<> rise = greatest_lift(lay, left, 0, 60.0_psi);
    CHECK(rise > 0.0_m);
    const Length<> bore = smallest_bore(lay, left, 0, 60.0_psi);
    CHECK(bore < 1.5_in);
    const auto with = [&](auto change) {
        HoseLay changed = lay;
        change(changed.segments[left]);
        return tip_psi(changed);
    };
    CHECK(near(with([&](LaySegment& s) { s.hose.length = length; }), 60.0, 1e-8));
    CHECK(near(with([&](LaySegment& s) { s.rise = rise; }), 60.0, 1e-8));
    CHECK(near(with([&](LaySegment& s) { s.hose.bore = bore; }), 60.0, 1e-8));
    CHECK(smallest_bore(lay, left, 0, 60.0_psi, {2.5_in, 1.0_in, 1.5_in, 1.75_in}) == 1.5_in);
}

TEST_CASE("the nozzle bore found gives the flow wanted") {
    HoseLay lay = by_roughness();
    const Length<> bore = nozzle_bore_for(lay, 0, 40.0_gpm);
    lay.nozzles[0].tip.bore = bore;
    CHECK(near(solve(lay).nozzles[0].flow.in(1.0_gpm), 40.0, 1e-8));
}

TEST_CASE("as many nozzles or legs as keep the pressure, and one more does not") {
    HoseLay lay = by_roughness();
    const std::size_t n = nozzle_count(lay, 0, at_pump, 40.0_psi);
    CHECK(n > 1);
    const auto with = [&](std::size_t count) {
        HoseLay more = lay;
        for (std::size_t i = 1; i < count; ++i) {
            more.nozzles.push_back(lay.nozzles[0]);
            more.nozzles.back().name += std::to_string(i);
        }
        return tip_psi(more);
    };
    CHECK(with(n) >= 40.0);
    CHECK(with(n + 1) < 40.0);
    const std::size_t legs = nozzle_count(lay, 0, left, 40.0_psi);
    CHECK(legs > n); // a hose each costs less than sharing one
    const auto with_legs = [&](std::size_t count) {
        HoseLay more = lay;
        for (std::size_t i = 1; i < count; ++i) {
            more.segments.push_back(lay.segments[left]);
            more.segments.back().name += std::to_string(i);
            more.nozzles.push_back(lay.nozzles[0]);
            more.nozzles.back().name += std::to_string(i);
            more.nozzles.back().at = more.segments.size() - 1;
        }
        return tip_psi(more);
    };
    CHECK(with_legs(legs) >= 40.0);
    CHECK(with_legs(legs + 1) < 40.0);
}

TEST_CASE("questions without an answer say what the best is") {
    const HoseLay lay = by_roughness();
    CHECK(no_answer([&] { longest_hose(lay, left, 0, 119.9_psi); }) ==
          "hydraulics.no_answer segments[1].length");
    CHECK(no_answer([&] { smallest_bore(lay, left, 0, 119.9_psi); }) ==
          "hydraulics.no_answer segments[1].bore");
    CHECK(no_answer([&] {
              smallest_bore(lay, left, 0, 60.0_psi, {0.5_in, 0.75_in});
          }) == "hydraulics.no_answer bores");
    CHECK(no_answer([&] { nozzle_bore_for(lay, 0, 5000.0_gpm); }) ==
          "hydraulics.no_answer nozzles[0].bore");
    CHECK(no_answer([&] { nozzle_count(lay, 0, at_pump, 110.0_psi); }) ==
          "hydraulics.no_answer nozzles");
    HoseLay falling = lay;
    falling.segments[supply].rise = Length<>(-200.0);
    CHECK(no_answer([&] { pump_pressure_for(falling, 0, 10.0_psi); }) ==
          "hydraulics.no_answer pump.pressure");
    HoseLay steady = lay;
    steady.pump.kind = PumpKind::displacement;
    steady.pump.flow_limit = 10.0_gpm;
    steady.pump.unloader_pressure = 5000.0_psi;
    CHECK(no_answer([&] { greatest_lift(steady, left, 0, 100.0_psi); }) ==
          "hydraulics.no_answer segments[1].rise");
}

TEST_CASE("questions that cannot be are refused") {
    const HoseLay lay = wyed();
    CHECK_THROWS_AS(pump_pressure_for(lay, 0, 0.0_psi), InputError);
    CHECK_THROWS_AS(pump_pressure_for(lay, 5, 10.0_psi), InputError);
    CHECK_THROWS_AS(longest_hose(lay, 2, 0, 10.0_psi), InputError);     // the other leg
    CHECK_THROWS_AS(smallest_bore(lay, left, 0, 60.0_psi), InputError); // a hose coefficient
    CHECK_THROWS_AS(nozzle_bore_for(lay, 0, Flow<>(NAN)), InputError);
    CHECK_THROWS_AS(nozzle_count(lay, 0, 2, 10.0_psi), InputError);
}

} // namespace test_lay_inverse
