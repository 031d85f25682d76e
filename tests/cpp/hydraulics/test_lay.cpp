// Hose lays: closed forms, the single line, special cases, and what is refused.

#include "lays.hpp"
#include "reference.hpp"
#include "scupper/error.hpp"

#include <functional>

using namespace lays;
using reference::near;
using reference::Row;

namespace {

constexpr int many = 1000;

std::string refusal(const std::function<void(HoseLay&)>& change) {
    HoseLay lay = wyed();
    lay.segments[1].hose = {FrictionLaw::darcy_weisbach, 1.5_in, 100.0_ft, Length<>(1e-5)};
    change(lay);
    try {
        check_lay(lay);
    } catch (const InputError& e) {
        return e.id() + " " + e.path();
    }
    return "none";
}

HoseLay comb(int teeth) {
    HoseLay lay;
    lay.pump.pressure = 7.0e5 * Pressure<>(1.0);
    for (int i = 0; i < teeth; ++i) {
        const auto before = lay.segments.empty() ? at_pump : lay.segments.size() - 2;
        Segment<> main{FrictionLaw::darcy_weisbach, 250.0_mm, 0.1_m, Length<>(1e-5)};
        Segment<> tooth{FrictionLaw::hazen_williams, 25.0_mm, 5.0_m, 0.0_m, 140.0};
        lay.segments.push_back({"m" + std::to_string(i), before, main});
        lay.segments.push_back({"t" + std::to_string(i), lay.segments.size() - 1, tooth});
        lay.nozzles.push_back({"n" + std::to_string(i), lay.segments.size() - 1, {1.0_mm, 0.95}});
    }
    return lay;
}

} // namespace

TEST_CASE("wyed legs with a closed form, as real trees") {
    for (const Row& row : reference::rows("hydraulics/line")) {
        CAPTURE(row.text("id"));
        HoseLay lay = wyed();
        const Density<> rho = water_density(lay.temperature);
        if (row.has("P_wye_psi")) {
            const double d = row["nozzle_in"];
            const double c = row["k"] / nozzle_flow(1.0_in, 1.0_psi, 1.0, rho).in(1.0_gpm);
            lay.pump.pressure = row["P_wye_psi"] * 1.0_psi;
            lay.segments[0].hose.length = 0.0_m;
            lay.segments[1].hose.length = row["La"] * 1.0_ft;
            lay.segments[2].hose.length = row["Lb"] * 1.0_ft;
            lay.segments[1].hose.coefficient = lay.segments[2].hose.coefficient = row["C"];
            lay.nozzles[0].tip = lay.nozzles[1].tip = {d * 1.0_in, c};
            const bool short_leg = row.text("quantity").find("short") != std::string::npos;
            CHECK(prints_as(row, solve(lay).nozzles[short_leg ? 0 : 1].flow.in(1.0_gpm)));
            continue;
        }
        lay.pump.pressure = row.expected() * 1.0_psi;
        lay.segments[0].hose.length = row["L1"] * 1.0_ft;
        lay.segments[0].hose.coefficient = row["C_supply"];
        const Length<> tip = equivalent_bore(row["Q_leg"] * 1.0_gpm, row["NP"] * 1.0_psi, 1.0, rho);
        for (const std::size_t leg : {1, 2}) {
            lay.segments[leg].hose.length = row["L2"] * 1.0_ft;
            lay.segments[leg].hose.coefficient = row["C_leg"];
            lay.nozzles[leg - 1].tip = {tip, 1.0};
        }
        const LaySolution s = solve(lay);
        CHECK(near(s.nozzles[0].flow.in(1.0_gpm), row["Q_leg"], 1e-5));
        CHECK(near(s.nozzles[1].pressure.in(1.0_psi), row["NP"], 1e-5));
    }
}

TEST_CASE("parallel and series pipes agree with textbooks, or the row asks for a loop") {
    using Formula = std::function<double(const Row&)>;
    const Density<> rho = water_density(60.0_degF);
    constexpr Flow<> cfs(0.3048 * 0.3048 * 0.3048);
    const Formula by_velocity = [](const Row& r) {
        return r["v_m_s"] / pipe_velocity(Flow<>(1.0), Length<>(r["d_m"])).si();
    };
    const std::map<std::string, Formula> formulas{
        {"wye: one of two equal legs",
         [](const Row& r) {
             return hose_coefficient_loss(r["Q_gpm"] * 1.0_gpm, r["L_ft"] * 1.0_ft, r["C"])
                 .in(1.0_psi);
         }},
        {"parallel pipes, flow A", by_velocity},
        {"parallel pipes, flow B", by_velocity},
        {"two pipes in series, flow",
         [&](const Row& r) {
             return nozzle_flow(Length<>(r["d2_m"]), static_pressure(Length<>(r["head_m"]), rho),
                                1.0 / std::sqrt(r["K"]), rho)
                 .si();
         }},
        {"two pipes in series: head to pump",
         [&](const Row& r) {
             const auto lost = [&](double f, double feet, double inches) {
                 return minor_loss(r["Q_cfs"] * cfs, inches * 1.0_in, 12.0 * f * feet / inches,
                                   rho);
             };
             return head(lost(r["f8"], r["8 in"], 8.0) + lost(r["f6"], r["6 in"], 6.0), rho)
                 .in(1.0_ft);
         }},
        {"max flow limited by suction head 30 ft", [&](const Row& r) {
             const double k = r["f8"] * r["L_ft"] / r["d_ft"];
             return nozzle_flow(r["d_ft"] * 1.0_ft, static_pressure(30.0_ft, rho),
                                1.0 / std::sqrt(k), rho)
                 .in(cfs);
         }}};
    reference::Tally tally;
    int asks_for_more = 0; // loops, and lengths equivalent to each other
    for (const Row& row : reference::rows("hydraulics/parallel_series")) {
        const auto found = formulas.find(row.text("quantity"));
        if (found == formulas.end()) {
            ++asks_for_more;
            continue;
        }
        const double value = found->second(row);
        tally.add(row, value,
                  {{"cut_off", reference::cut_off(row, value)},
                   {"gravity_of_32.2", reference::within(row, value, 0.001)}});
    }
    CHECK(tally.summary() == "agrees 5, gravity_of_32.2 1");
    CHECK(asks_for_more == 6);
}

TEST_CASE("a lay without branches is the single line") {
    Maker maker(11);
    for (int i = 0; i < many; ++i) {
        const Line<> line = maker.line();
        HoseLay lay;
        lay.temperature = 60.0_degF;
        lay.pump.pressure = line.pump_pressure;
        if (!(lay.pump.pressure.si() > 0.0)) {
            continue;
        }
        for (const Segment<>& s : line.hose) {
            lay.segments.push_back(
                {"s" + std::to_string(lay.segments.size()), lay.segments.size() - 1, s});
        }
        lay.segments.back().rise = line.rise;
        lay.nozzles = {{"tip", lay.segments.size() - 1, line.nozzle}};
        Line<> same = line;
        same.fluid = water(lay.temperature);
        const Pressure<> left = line.pump_pressure - static_pressure(line.rise, same.fluid.density);
        if (left.si() < 1e-4 * line.pump_pressure.si()) {
            continue; // what is left is a difference of two nearly equal numbers
        }
        REQUIRE(near(solve(lay).pump.flow.si(), operating_point(same).flow.si(), 1e-8));
    }
}

TEST_CASE("with no nozzle open the shut-off pressure stands everywhere") {
    HoseLay lay = wyed();
    lay.segments[1].rise = 10.0_ft;
    lay.nozzles[0].state = lay.nozzles[1].state = NozzleState::closed;
    lay.tank = 500.0_gal;
    const LaySolution s = solve(lay);
    CHECK(s.pump.flow.si() == 0.0);
    CHECK(s.pump.limit == PumpLimit::nothing);
    CHECK(s.pump.pressure == 120.0_psi);
    CHECK(s.segments[2].outlet_pressure == 120.0_psi);
    CHECK(near(s.nozzles[0].pressure.in(1.0_psi), 115.67, 1e-4));
    CHECK(!s.time_to_empty);
    lay.nozzles.clear();
    CHECK(solve(lay).pump.flow.si() == 0.0);
    lay.segments.clear();
    CHECK(solve(lay).pump.pressure == 120.0_psi);
}

TEST_CASE("a worn nozzle takes more and leaves less for its neighbour") {
    HoseLay lay = wyed();
    const LaySolution before = solve(lay);
    lay.nozzles[0].state = NozzleState::worn;
    lay.nozzles[0].wear = 0.1;
    CHECK(near(bore_now(lay.nozzles[0]).in(1.0_in), 0.55, 1e-14));
    const LaySolution after = solve(lay);
    CHECK(after.nozzles[0].flow > before.nozzles[0].flow);
    CHECK(after.nozzles[1].flow < before.nozzles[1].flow);
    lay.nozzles[0] = {"left tip", 1, {0.55_in, 1.0}};
    CHECK(near(solve(lay).pump.flow.si(), after.pump.flow.si(), 1e-12));
}

TEST_CASE("an unloader lets back what the nozzle does not take, a greater nozzle closes it") {
    HoseLay lay = wyed();
    lay.pump = Pump{};
    lay.pump.kind = PumpKind::displacement;
    lay.pump.flow_limit = 100.0_gpm;
    lay.pump.volumetric_efficiency = 0.9;
    lay.pump.unloader_pressure = 60.0_psi;
    lay.tank = 900.0_gal;
    const LaySolution small = solve(lay);
    CHECK(small.pump.limit == PumpLimit::flow_limit);
    CHECK(near(small.time_to_empty->in(Time<>(60.0)), 10.0, 1e-9));
    CHECK(small.pump.bypass.si() == 0.0);
    lay.nozzles[1].state = NozzleState::closed;
    const LaySolution one = solve(lay);
    CHECK(one.pump.limit == PumpLimit::unloader);
    CHECK(one.pump.pressure == 60.0_psi);
    CHECK(near((one.pump.flow + one.pump.bypass).in(1.0_gpm), 90.0, 1e-12));
    CHECK(near(one.pump.hydraulic_power.in(Power<>(factor::horsepower)), 90.0 * 60.0 / 1714.3,
               1e-4)); // 1714: pump formula sheet
}

TEST_CASE("ten thousand branches have an answer") {
    const HoseLay lay = comb(10000);
    const LaySolution s = solve(lay);
    REQUIRE(s.nozzles.size() == 10000);
    CHECK(s.mass_residual <= 1e-9);
    CHECK(s.energy_residual <= 1e-10);
    CHECK(s.nozzles.back().flow.si() > 0.0);
    CHECK(s.nozzles.back().flow < s.nozzles.front().flow);
}

TEST_CASE("many pump pressures give what single solves give") {
    HoseLay lay = wyed();
    const std::vector<double> pressures{2e5, 5e5, 9e5};
    const LaySweep sweep = solve_many(lay, pressures);
    for (std::size_t i = 0; i < pressures.size(); ++i) {
        lay.pump.pressure = Pressure<>(pressures[i]);
        const LaySolution s = solve(lay);
        CHECK(sweep.pump_flow[i] == s.pump.flow.si());
        CHECK(sweep.nozzle_flow[2 * i + 1] == s.nozzles[1].flow.si());
        CHECK(sweep.nozzle_pressure[2 * i] == s.nozzles[0].pressure.si());
    }
    CHECK_THROWS_AS(solve_many(lay, {1e5, -1.0}), InputError);
    CHECK_THROWS_AS(solve_many(lay, {NAN}), InputError);
}

TEST_CASE("what is wrong with a lay is named") {
    CHECK(refusal([](HoseLay&) {}) == "none");
    CHECK(refusal([](HoseLay& l) { l.segments[2].hose.bore = 0.0_m; }) ==
          "hydraulics.bore lay.segments[2].bore");
    CHECK(refusal([](HoseLay& l) { l.segments[2].hose.bore = Length<>(-0.1); }) ==
          "hydraulics.bore lay.segments[2].bore");
    CHECK(refusal([](HoseLay& l) { l.segments[1].hose.roughness = 0.5_in; }) ==
          "hydraulics.relative_roughness lay.segments[1].roughness");
    CHECK(refusal([](HoseLay& l) { l.segments[0].rise = Length<>(NAN); }) ==
          "hydraulics.rise lay.segments[0].rise");
    CHECK(refusal([](HoseLay& l) { l.segments[0].working_pressure = 0.0_psi; }) ==
          "hydraulics.working_pressure lay.segments[0].working_pressure");
    CHECK(refusal([](HoseLay& l) { l.segments[0].from = 1; }) ==
          "hydraulics.loop lay.segments[0].from");
    CHECK(refusal([](HoseLay& l) { l.segments[1].from = 1; }) ==
          "hydraulics.loop lay.segments[1].from");
    CHECK(refusal([](HoseLay& l) { l.segments[1].from = 7; }) ==
          "hydraulics.from lay.segments[1].from");
    CHECK(refusal([](HoseLay& l) { l.segments[1].name = "supply"; }) ==
          "hydraulics.name lay.segments[1].name");
    CHECK(refusal([](HoseLay& l) { l.segments[0].name = "pump"; }) ==
          "hydraulics.name lay.segments[0].name");
    CHECK(refusal([](HoseLay& l) { l.nozzles[1].at = 3; }) == "hydraulics.at lay.nozzles[1].at");
    CHECK(refusal([](HoseLay& l) { l.nozzles[1].tip.bore = 0.0_m; }) ==
          "hydraulics.bore lay.nozzles[1].bore");
    CHECK(refusal([](HoseLay& l) { l.nozzles[0].wear = -0.1; }) ==
          "hydraulics.wear lay.nozzles[0].wear");
    CHECK(refusal([](HoseLay& l) { l.temperature = Temperature<>(270.0); }) ==
          "hydraulics.temperature lay.water");
    CHECK(refusal([](HoseLay& l) { l.tank = 0.0_gal; }) == "hydraulics.tank lay.tank");
    CHECK(refusal([](HoseLay& l) { l.pump.pressure = 0.0_psi; }) ==
          "hydraulics.pressure lay.pump.pressure");
    CHECK_THROWS_AS(segment_index(wyed(), "suply", "segment"), UnknownNameError);
    CHECK_THROWS_AS(nozzle_index(wyed(), "left", "nozzle"), UnknownNameError);
    CHECK(segment_index(wyed(), "pump", "segment") == at_pump);
}
