// The operating point: worked and closed-form lines, and what holds for every line.

#include "lines.hpp"
#include "reference.hpp"
#include "scupper/error.hpp"

using namespace lines;
using reference::near;

namespace test_line {

namespace {

constexpr int many = 2000;

// What losses and tip take at the flow, against what the rise leaves.
double residual(const Line<>& line, const OperatingPoint<>& p) {
    const Pressure<> left = line.pump_pressure - static_pressure(line.rise, line.fluid.density);
    return ((p.friction_loss + p.minor_loss + p.tip_pressure) - left) / left;
}

Line<> leg_of(const reference::Row& row, const char* length) {
    Line<> line = worked();
    line.rise = 0.0_ft;
    line.pump_pressure = row["P_wye_psi"] * 1.0_psi;
    line.hose[0].length = row[length] * 1.0_ft;
    line.hose[0].coefficient = row["C"];
    const Flow<> theory = nozzle_flow(row["nozzle_in"] * 1.0_in, 1.0_psi, 1.0, line.fluid.density);
    const double d = row["nozzle_in"];
    line.nozzle = {d * 1.0_in, row["k"] * d * d / theory.in(1.0_gpm)};
    return line;
}

// Two equal legs are one leg to which the common hose, carrying twice the flow, counts four times.
Line<> equal_legs(const reference::Row& row) {
    Line<> line = worked();
    line.rise = 0.0_ft;
    line.pump_pressure = row.expected() * 1.0_psi;
    line.hose = {
        {FrictionLaw::hose_coefficient, 2.5_in, row["L1"] * 1.0_ft, 0.0_m, 4.0 * row["C_supply"]},
        {FrictionLaw::hose_coefficient, 1.5_in, row["L2"] * 1.0_ft, 0.0_m, row["C_leg"]}};
    line.nozzle = {
        equivalent_bore(row["Q_leg"] * 1.0_gpm, row["NP"] * 1.0_psi, 1.0, line.fluid.density), 1.0};
    return line;
}

std::string error_path(const Line<>& line) {
    try {
        check_line(line, "equipment.line[1]");
    } catch (const InputError& e) {
        return e.id() + " " + e.path();
    }
    return "none";
}

} // namespace

TEST_CASE("worked line, figures of common practice") {
    const Line<> line = worked();
    const auto p = operating_point(line);
    CHECK(near(p.flow.in(1.0_gpm), 57.8, 0.05 / 57.8));
    CHECK(near(p.friction_loss.in(1.0_psi), 12.02, 0.01 / 12.02));
    CHECK(near(p.static_pressure.in(1.0_psi), 4.33, 0.005 / 4.33));
    CHECK(near(p.tip_pressure.in(1.0_psi), 60.0, 0.05 / 60.0));
    CHECK(near(p.reaction.in(1.0_lbf), 23.56, 0.02 / 23.56));
    CHECK(p.governs == Governs::pump_pressure);
}

TEST_CASE("worked line with a smooth hose by Darcy-Weisbach") {
    Line<> line = worked();
    line.fluid.kinematic_viscosity = KinematicViscosity<>(1.06e-5 * (1.0_ft2).si());
    line.hose[0].law = FrictionLaw::darcy_weisbach;
    line.hose[0].roughness = 5e-6 * 1.0_ft;
    line.pump_pressure = 79.86_psi;
    const auto p = operating_point(line);
    CHECK(near(p.flow.in(1.0_gpm), 57.8, 0.05 / 57.8));
    CHECK(near(p.friction_loss.in(1.0_psi), 15.53, 0.01 / 15.53));
    CHECK(near(p.tip_pressure.in(1.0_psi), 60.0, 0.05 / 60.0));
}

TEST_CASE("lines with a closed form") {
    for (const auto& row : reference::rows("hydraulics/line")) {
        CAPTURE(row.text("id"));
        if (row.has("P_wye_psi")) {
            const bool short_leg = row.text("quantity").find("short") != std::string::npos;
            const auto p = operating_point(leg_of(row, short_leg ? "La" : "Lb"));
            CHECK(prints_as(row, p.flow.in(1.0_gpm)));
        } else {
            const auto p = operating_point(equal_legs(row));
            CHECK(near(p.flow.in(1.0_gpm), row["Q_leg"], 1e-5));
            CHECK(near(p.tip_pressure.in(1.0_psi), row["NP"], 1e-5));
        }
    }
}

TEST_CASE("a nozzle at the pump has the flow without losses") {
    Line<> line = worked();
    line.hose.clear();
    line.rise = 0.0_ft;
    const auto p = operating_point(line);
    const auto q = nozzle_flow(0.5_in, 76.4_psi, 1.0, line.fluid.density);
    CHECK(near(p.flow.si(), q.si(), 1e-15));
    CHECK(p.friction_loss.si() == 0.0);
}

TEST_CASE("every line is solved and its pressures add up") {
    Maker maker(20250101);
    for (int i = 0; i < 20 * many; ++i) {
        const Line<> line = maker.line();
        const auto p = operating_point(line);
        REQUIRE(p.governs == Governs::pump_pressure);
        REQUIRE(std::abs(residual(line, p)) <= 1e-12);
        const Pressure<> sum = p.static_pressure + p.friction_loss + p.minor_loss + p.tip_pressure;
        REQUIRE(near(sum.si(), p.pump_pressure.si(), 1e-10));
        const double scale = std::abs(line.pump_pressure.si()) + std::abs(p.static_pressure.si());
        REQUIRE(std::abs(sum.si() - line.pump_pressure.si()) <= 1e-10 * scale);
    }
}

TEST_CASE("more pump pressure never gives less flow") {
    Maker maker(1);
    for (int i = 0; i < many; ++i) {
        Line<> line = maker.line();
        const auto before = operating_point(line);
        line.pump_pressure += Pressure<>(maker.over(1.0, 1e6));
        REQUIRE(operating_point(line).flow >= before.flow);
    }
}

TEST_CASE("a longer, rougher or higher line never gives more flow") {
    Maker maker(2);
    for (int i = 0; i < many; ++i) {
        Line<> line = maker.line();
        Flow<> before = operating_point(line).flow * (1.0 + 1e-12);
        const auto check = [&] {
            const Flow<> now = operating_point(line).flow;
            REQUIRE(now <= before);
            before = now * (1.0 + 1e-12);
        };
        line.hose[0].length = line.hose[0].length * maker.between(1.0, 2.0);
        check();
        line.hose[0].minor_loss += maker.between(0.0, 10.0);
        check();
        line.rise -= Length<>(maker.between(0.0, 1.0));
        before = operating_point(line).flow * (1.0 + 1e-12);
        line.rise += Length<>(maker.between(0.0, 1e-3));
        check();
    }
}

TEST_CASE("a larger nozzle gives more flow and less pressure at the tip") {
    Maker maker(3);
    for (int i = 0; i < many; ++i) {
        Line<> line = maker.line();
        const auto before = operating_point(line);
        line.nozzle.bore = line.nozzle.bore * maker.between(1.01, 2.0);
        const auto after = operating_point(line);
        REQUIRE(after.flow >= before.flow * (1.0 - 1e-12));
        REQUIRE(after.tip_pressure <= before.tip_pressure * (1.0 + 1e-12));
    }
}

TEST_CASE("where every loss goes with the square, four times the pressure doubles the flow") {
    Maker maker(4);
    for (int i = 0; i < many; ++i) {
        Line<> line = maker.line();
        line.rise = 0.0_m;
        line.pump_pressure = Pressure<>(maker.over(1e3, 1e7));
        for (Segment<>& s : line.hose) {
            s.law = FrictionLaw::hose_coefficient;
        }
        const auto before = operating_point(line);
        line.pump_pressure = 4.0 * line.pump_pressure;
        const auto after = operating_point(line);
        REQUIRE(near(after.flow / before.flow, 2.0, 1e-12));
        REQUIRE(near(after.reaction / before.reaction, 4.0, 1e-12));
    }
}

TEST_CASE("a segment cut in two is the same line") {
    Maker maker(5);
    for (int i = 0; i < many; ++i) {
        Line<> line = maker.line();
        const auto whole = operating_point(line);
        Segment<> rest = line.hose.back();
        rest.length = rest.length * 0.25;
        rest.minor_loss = 0.0;
        line.hose.back().length = line.hose.back().length * 0.75;
        line.hose.push_back(rest);
        REQUIRE(near(operating_point(line).flow.si(), whole.flow.si(), 1e-11));
    }
}

TEST_CASE("the flow limit is kept, and the pump's pressure falls to what the line needs") {
    Maker maker(6);
    for (int i = 0; i < many; ++i) {
        Line<> line = maker.line();
        const auto free = operating_point(line);
        line.flow_limit = free.flow * maker.between(0.05, 2.0);
        const auto p = operating_point(line);
        if (*line.flow_limit < free.flow) {
            REQUIRE(p.governs == Governs::flow_limit);
            REQUIRE(p.flow == *line.flow_limit);
            REQUIRE(p.pump_pressure < line.pump_pressure);
        } else {
            REQUIRE(p.governs == Governs::pump_pressure);
            REQUIRE(p.flow == free.flow);
        }
    }
}

TEST_CASE("a line without flow is not-a-number, and the check says why") {
    Line<> line = worked();
    line.rise = 200.0_ft;
    const auto p = operating_point(line);
    CHECK(p.governs == Governs::nothing);
    CHECK(std::isnan(p.flow.si()));
    CHECK(std::isnan(p.pump_pressure.si()));
    CHECK(std::isnan(p.reaction.si()));
    CHECK(error_path(line) == "hydraulics.no_flow equipment.line[1].pump_pressure");
    line.pump_pressure = static_pressure(line.rise, line.fluid.density);
    CHECK(operating_point(line).governs == Governs::nothing);
}

TEST_CASE("what is wrong with a line is named") {
    const auto with = [](auto change) {
        Line<> line = worked();
        line.hose.push_back({FrictionLaw::darcy_weisbach, 1.0_in, 50.0_ft, Length<>(1e-6)});
        change(line);
        CHECK(operating_point(line).governs ==
              (error_path(line) == "none" ? Governs::pump_pressure : Governs::nothing));
        return error_path(line);
    };
    CHECK(with([](Line<>&) {}) == "none");
    CHECK(with([](Line<>& l) { l.hose[1].bore = 0.0_in; }) ==
          "hydraulics.bore equipment.line[1].hose[1].bore");
    CHECK(with([](Line<>& l) { l.hose[1].roughness = 0.1_in; }) ==
          "hydraulics.relative_roughness equipment.line[1].hose[1].roughness");
    CHECK(with([](Line<>& l) { l.hose[0].length = Length<>(-1.0); }) ==
          "hydraulics.length equipment.line[1].hose[0].length");
    CHECK(with([](Line<>& l) { l.hose[0].coefficient = std::nan(""); }) ==
          "hydraulics.coefficient equipment.line[1].hose[0].coefficient");
    CHECK(with([](Line<>& l) { l.hose[0].minor_loss = -1.0; }) ==
          "hydraulics.loss_coefficient equipment.line[1].hose[0].minor_loss");
    CHECK(with([](Line<>& l) { l.nozzle.bore = 0.0_in; }) ==
          "hydraulics.bore equipment.line[1].nozzle.bore");
    CHECK(with([](Line<>& l) { l.nozzle.discharge_coefficient = 0.0; }) ==
          "hydraulics.discharge_coefficient equipment.line[1].nozzle.discharge_coefficient");
    CHECK(with([](Line<>& l) { l.flow_limit = 0.0_gpm; }) ==
          "hydraulics.flow_limit equipment.line[1].flow_limit");
    CHECK(with([](Line<>& l) { l.fluid = {}; }) ==
          "hydraulics.density equipment.line[1].fluid.density");
    CHECK(with([](Line<>& l) { l.pump_pressure = Pressure<>(INFINITY); }) ==
          "hydraulics.no_flow equipment.line[1].pump_pressure");
    CHECK(with([](Line<>& l) { l.rise = Length<>(NAN); }) ==
          "hydraulics.rise equipment.line[1].rise");
}

} // namespace test_line
