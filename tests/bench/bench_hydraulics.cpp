// Time to solve a line and lays of 1 to 10,000 branches: the flows alone, and the whole report.
#include "bench.hpp"
#include "scupper/hydraulics.hpp"

#include <string>

namespace {

using namespace scupper;
using namespace scupper::hydraulics;
using namespace scupper::literals;

Segment<> hose(double bore, double length) {
    return {
        FrictionLaw::darcy_weisbach, Length<>(bore), Length<>(length), Length<>(2e-5), 0.0, 0.5};
}

/// A header as wide as its branches need, a branch every metre, a nozzle at the end of each.
HoseLay lay_of(int branches) {
    HoseLay lay;
    lay.pump.pressure = 120.0_psi;
    const double wide = 0.03 * std::sqrt(static_cast<double>(branches));
    for (int i = 0; i < branches; ++i) {
        const auto before = i == 0 ? at_pump : lay.segments.size() - 2;
        lay.segments.push_back({"m" + std::to_string(i), before, hose(wide, 1.0)});
        lay.segments.push_back(
            {"b" + std::to_string(i), lay.segments.size() - 1, hose(0.025, 10.0 + i % 7)});
        lay.segments.back().rise = Length<>(i % 3 - 1.0);
        lay.nozzles.push_back({"n" + std::to_string(i), lay.segments.size() - 1, {6.0_mm, 0.95}});
    }
    return lay;
}

Line<> line_of_four() {
    Line<> line;
    line.pump_pressure = 120.0_psi;
    line.fluid = water(15.0_degC);
    line.hose = {hose(0.065, 30.0), hose(0.05, 30.0), hose(0.04, 15.0), hose(0.025, 5.0)};
    line.rise = 6.0_m;
    line.nozzle = {10.0_mm, 0.97};
    return line;
}

HoseLay as_lay(const Line<>& line) {
    HoseLay lay;
    lay.pump.pressure = line.pump_pressure;
    for (const Segment<>& s : line.hose) {
        lay.segments.push_back(
            {"s" + std::to_string(lay.segments.size()), lay.segments.size() - 1, s});
    }
    lay.segments.back().rise = line.rise;
    lay.nozzles = {{"tip", lay.segments.size() - 1, line.nozzle}};
    return lay;
}

double time_flows(const HoseLay& lay, int calls) {
    LaySolver solver(lay);
    return bench::nanoseconds(calls, [&] { bench::keep(solver.run().si()); });
}

} // namespace

int main() {
    const Line<> line = line_of_four();
    const double single =
        bench::nanoseconds(2000, [&] { bench::keep(operating_point(line).flow.si()); });
    bench::report("line of four segments, operating point", single);
    bench::report("the same as a lay, flows", time_flows(as_lay(line), 2000), single);
    double one = 0.0;
    for (const int branches : {1, 3, 10, 30, 60, 100, 300, 1000, 3000, 10000}) {
        const HoseLay lay = lay_of(branches);
        const int calls = 20000 / branches + 1;
        const double flows = time_flows(lay, calls);
        const double whole =
            bench::nanoseconds(calls / 4 + 1, [&] { bench::keep(solve(lay).pump.flow.si()); });
        const LaySolution s = solve(lay);
        int open = 0;
        for (const NozzleFlow& n : s.nozzles) {
            open += n.flow.si() > 0.0;
        }
        one = one > 0.0 ? one : flows;
        std::printf(
            "%6d branches (%d flowing): flows %10.2f us, a branch %6.1f ns; whole %10.2f us; "
            "%d steps\n",
            branches, open, flows * 1e-3, flows / branches, whole * 1e-3, s.iterations);
    }
    std::printf("\n");
}
