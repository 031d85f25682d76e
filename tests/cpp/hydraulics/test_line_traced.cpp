// The explained line: the same code, one step for the flow.

#include "lines.hpp"
#include "reference.hpp"
#include "scupper/traced.hpp"

using namespace lines;

namespace {

// The line with every number an input of the recording.
Line<Traced> traced(const Line<>& line, Recording& tape) {
    const auto input = [&](double x) { return Traced(x, &tape, tape.leaf(x, {})); };
    Line<Traced> out;
    out.pump_pressure = Pressure<Traced>(input(line.pump_pressure.si()));
    if (line.flow_limit) {
        out.flow_limit = Flow<Traced>(input(line.flow_limit->si()));
    }
    out.fluid = {Density<Traced>(input(line.fluid.density.si())),
                 KinematicViscosity<Traced>(input(line.fluid.kinematic_viscosity.si()))};
    out.rise = Length<Traced>(input(line.rise.si()));
    out.nozzle = {Length<Traced>(input(line.nozzle.bore.si())),
                  input(line.nozzle.discharge_coefficient)};
    for (const Segment<>& s : line.hose) {
        out.hose.push_back({s.law, Length<Traced>(input(s.bore.si())),
                            Length<Traced>(input(s.length.si())),
                            Length<Traced>(input(s.roughness.si())), input(s.coefficient),
                            input(s.minor_loss), s.form});
    }
    return out;
}

int solves_in(const Recording& tape) {
    int count = 0;
    for (const RecordedStep& step : tape.steps()) {
        count += step.op == Op::opaque ? 1 : 0;
    }
    return count;
}

} // namespace

TEST_CASE("a traced line is the same to the bit, whatever governs") {
    Maker maker(7);
    for (int i = 0; i < 500; ++i) {
        Line<> line = maker.line();
        if (i % 3 == 0) {
            line.flow_limit = Flow<>(maker.over(1e-7, 1e-2));
        }
        Recording tape;
        const auto p = operating_point(line);
        const auto t = operating_point(traced(line, tape));
        REQUIRE(t.flow.si().value() == p.flow.si());
        REQUIRE(t.pump_pressure.si().value() == p.pump_pressure.si());
        REQUIRE(t.friction_loss.si().value() == p.friction_loss.si());
        REQUIRE(t.tip_pressure.si().value() == p.tip_pressure.si());
        REQUIRE(t.reaction.si().value() == p.reaction.si());
        REQUIRE(t.governs == p.governs);
    }
}

TEST_CASE("the flow of a line is one step, each friction factor another") {
    Line<> line = worked();
    Recording tape;
    const auto t = operating_point(traced(line, tape));
    CHECK(solves_in(tape) == 1);
    const Label* label = tape.label(t.flow.si().step_in(tape));
    REQUIRE(label != nullptr);
    CHECK(label->name == "flow of the line");
    CHECK(std::abs(label->residual) <= 1e-12);

    line.hose[0].law = FrictionLaw::darcy_weisbach;
    tape.clear();
    operating_point(traced(line, tape));
    CHECK(solves_in(tape) == 2);
}

TEST_CASE("a traced line without flow is not-a-number and does not throw") {
    for (const double rise : {100.0, std::nan("")}) {
        Line<> line = worked();
        line.rise = Length<>(rise);
        line.nozzle.bore = rise > 0.0 ? 0.0_in : 0.5_in;
        Recording tape;
        const auto t = operating_point(traced(line, tape));
        CHECK(t.governs == Governs::nothing);
        CHECK(std::isnan(t.flow.si().value()));
        CHECK(std::isnan(t.tip_pressure.si().value()));
    }
}
