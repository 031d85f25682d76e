// What holds for every hose lay: balances, monotony, scaling, order.

#include "lays.hpp"
#include "reference.hpp"

#include <algorithm>

using namespace lays;
using reference::near;

namespace test_lay_laws {

namespace {

constexpr int many = 1000;
constexpr double rounding = 1e-9; // of the greatest pressure

double scale_of(const HoseLay& lay, const LaySolution& s) {
    double scale = std::abs(s.pump.pressure.si());
    for (const SegmentFlow& f : s.segments) {
        scale = std::max(
            scale, std::abs(static_pressure(f.elevation, water_density(lay.temperature)).si()));
    }
    return scale + 1.0;
}

// Every segment, nozzle and the pump by the public formulas.
void require_energy(const HoseLay& lay, const LaySolution& s) {
    const Fluid<> fluid = water(lay.temperature);
    const double least = rounding * scale_of(lay, s);
    for (std::size_t i = 0; i < lay.segments.size(); ++i) {
        const SegmentFlow& f = s.segments[i];
        const std::size_t from = lay.segments[i].from;
        const Pressure<> start =
            from == at_pump ? s.pump.pressure : s.segments[from].outlet_pressure;
        const Pressure<> spent = f.static_pressure + f.friction_loss + f.minor_loss;
        REQUIRE(f.inlet_pressure == start);
        REQUIRE(std::abs((start - f.outlet_pressure - spent).si()) <= least);
    }
    for (std::size_t i = 0; i < lay.nozzles.size(); ++i) {
        const NozzleFlow& f = s.nozzles[i];
        const Length<> bore = bore_now(lay.nozzles[i]);
        if (f.flow.si() > 0.0) {
            const double c = lay.nozzles[i].tip.discharge_coefficient;
            const Pressure<> tip = nozzle_pressure(bore, f.flow, c, fluid.density);
            REQUIRE(std::abs((tip - f.pressure).si()) <= least);
        } else if (lay.nozzles[i].state != NozzleState::closed) {
            REQUIRE(f.pressure.si() <= least);
            REQUIRE(f.too_high);
        }
    }
    if (s.pump.limit == PumpLimit::flow_limit) {
        REQUIRE(near(s.pump.flow.si(), greatest_flow(lay.pump).si(), 1e-9));
        REQUIRE(s.pump.pressure <= pump_point(lay.pump, s.pump.flow, fluid).pressure * (1 + 1e-9));
    } else if (s.pump.limit != PumpLimit::nothing) {
        const PumpPoint p = pump_point(lay.pump, s.pump.flow, fluid);
        REQUIRE(std::abs((p.pressure - s.pump.pressure).si()) <= least);
    }
}

void require_mass(const HoseLay& lay, const LaySolution& s) {
    std::vector<double> left(lay.segments.size() + 1, 0.0);
    const auto node = [](std::size_t segment) { return segment == at_pump ? 0 : segment + 1; };
    left[0] = s.pump.flow.si();
    for (std::size_t i = 0; i < lay.segments.size(); ++i) {
        left[node(i)] += s.segments[i].flow.si();
        left[node(lay.segments[i].from)] -= s.segments[i].flow.si();
    }
    for (std::size_t i = 0; i < lay.nozzles.size(); ++i) {
        left[node(lay.nozzles[i].at)] -= s.nozzles[i].flow.si();
    }
    for (const double imbalance : left) {
        REQUIRE(std::abs(imbalance) <= 1e-9 * s.pump.flow.si());
    }
    REQUIRE(s.mass_residual <= 1e-12);
    REQUIRE(s.energy_residual <= 1e-10);
}

} // namespace

TEST_CASE("every lay is solved, mass and energy balance, and no nozzle draws in air") {
    LayMaker maker(12);
    int too_high = 0;
    int held = 0;
    for (int i = 0; i < 2 * many; ++i) {
        const HoseLay lay = maker.lay(static_cast<int>(maker.over(1.0, 100.0)));
        const LaySolution s = solve(lay);
        require_mass(lay, s);
        require_energy(lay, s);
        held += s.pump.limit == PumpLimit::flow_limit;
        for (const NozzleFlow& n : s.nozzles) {
            REQUIRE(n.flow.si() >= 0.0);
            too_high += n.too_high;
        }
    }
    CHECK(too_high > 100);
    CHECK(held > 100);
}

TEST_CASE("a nozzle that is too high may as well be closed") {
    LayMaker maker(13);
    for (int i = 0; i < many / 2; ++i) {
        HoseLay lay = maker.lay(30);
        const LaySolution before = solve(lay);
        for (std::size_t k = 0; k < lay.nozzles.size(); ++k) {
            if (before.nozzles[k].too_high) {
                lay.nozzles[k].state = NozzleState::closed;
            }
        }
        const LaySolution after = solve(lay);
        REQUIRE(near(after.pump.flow.si() + 1e-12, before.pump.flow.si() + 1e-12, 1e-7));
    }
}

TEST_CASE("more pressure, a shorter hose or a lower end never gives a nozzle less") {
    LayMaker maker(14);
    for (int i = 0; i < many / 2; ++i) {
        HoseLay lay = maker.lay(20);
        lay.pump.kind = PumpKind::pressure;
        if (lay.nozzles.empty()) {
            continue;
        }
        const LaySolution before = solve(lay);
        const double least = rounding * scale_of(lay, before);
        lay.pump.pressure = lay.pump.pressure * 1.3;
        lay.pump.unloader_pressure.reset();
        const LaySolution after = solve(lay);
        for (std::size_t k = 0; k < lay.nozzles.size(); ++k) {
            REQUIRE(after.nozzles[k].pressure.si() >= before.nozzles[k].pressure.si() - least);
        }
        const std::size_t last = lay.nozzles.back().at;
        lay.segments[last].hose.length = lay.segments[last].hose.length * 2.0;
        lay.segments[last].rise += 1.0_m;
        REQUIRE(solve(lay).nozzles.back().pressure.si() <=
                after.nozzles.back().pressure.si() + least);
    }
}

TEST_CASE("closing a branch never lowers the pressure elsewhere") {
    LayMaker maker(15);
    for (int i = 0; i < many / 2; ++i) {
        HoseLay lay = maker.lay(25);
        if (lay.nozzles.empty()) {
            continue;
        }
        const LaySolution before = solve(lay);
        const auto shut =
            static_cast<std::size_t>(maker.between(0.0, static_cast<double>(lay.nozzles.size())));
        lay.nozzles[shut].state = NozzleState::closed;
        const LaySolution after = solve(lay);
        const double least = rounding * (scale_of(lay, before) + scale_of(lay, after));
        for (std::size_t k = 0; k < lay.segments.size(); ++k) {
            REQUIRE(after.segments[k].outlet_pressure.si() >=
                    before.segments[k].outlet_pressure.si() - least);
        }
    }
}

TEST_CASE("where every loss goes with the square, four times the pressure doubles every flow") {
    LayMaker maker(16);
    for (int i = 0; i < many / 4; ++i) {
        HoseLay lay = maker.lay(40);
        lay.pump = Pump{};
        lay.pump.pressure = Pressure<>(maker.over(1e4, 1e6));
        for (LaySegment& s : lay.segments) {
            s.rise = 0.0_m;
            s.hose.law = FrictionLaw::hose_coefficient;
        }
        const LaySolution before = solve(lay);
        lay.pump.pressure = 4.0 * lay.pump.pressure;
        const LaySolution after = solve(lay);
        for (std::size_t k = 0; k < lay.nozzles.size(); ++k) {
            const double flow = before.nozzles[k].flow.si();
            REQUIRE(std::abs(after.nozzles[k].flow.si() - 2.0 * flow) <=
                    1e-8 * flow + 1e-6 * before.pump.flow.si());
        }
    }
}

TEST_CASE("the order of the segments does not matter") {
    LayMaker maker(17);
    HoseLay lay = maker.lay(50);
    const LaySolution before = solve(lay);
    std::reverse(lay.segments.begin(), lay.segments.end());
    const std::size_t last = lay.segments.size() - 1;
    for (LaySegment& s : lay.segments) {
        s.from = s.from == at_pump ? at_pump : last - s.from;
    }
    for (LayNozzle& n : lay.nozzles) {
        n.at = last - n.at;
    }
    const LaySolution after = solve(lay);
    CHECK(near(after.pump.flow.si(), before.pump.flow.si(), 1e-9));
    CHECK(near(after.segments.back().outlet_pressure.si(),
               before.segments.front().outlet_pressure.si(), 1e-9));
    CHECK(
        near(after.segments.back().elevation.si(), before.segments.front().elevation.si(), 1e-12));
}

} // namespace test_lay_laws
