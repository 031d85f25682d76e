#pragma once
// Hose lays for the tests: a worked one and random ones.

#include "lines.hpp"
#include "scupper/hydraulics.hpp"

#include <string>

namespace lays {

using namespace lines;

/// A supply hose, a wye, and two equal legs by hose coefficients; common practice figures.
inline HoseLay wyed() {
    HoseLay lay;
    lay.temperature = 60.0_degF;
    lay.pump.pressure = 120.0_psi;
    lay.segments = {
        {"supply", at_pump, {FrictionLaw::hose_coefficient, 2.5_in, 200.0_ft, 0.0_m, 2.0}},
        {"left", 0, {FrictionLaw::hose_coefficient, 1.5_in, 100.0_ft, 0.0_m, 24.0}},
        {"right", 0, {FrictionLaw::hose_coefficient, 1.5_in, 100.0_ft, 0.0_m, 24.0}}};
    lay.nozzles = {{"left tip", 1, {0.5_in, 1.0}}, {"right tip", 2, {0.5_in, 1.0}}};
    return lay;
}

/// Valid lays of every kind: deep and wide, laminar to turbulent, up and down, pumps of each kind.
class LayMaker : public Maker {
  public:
    using Maker::Maker;

    HoseLay lay(int segments) {
        HoseLay out;
        out.temperature = Temperature<>(between(273.2, 323.1));
        out.pump = pump();
        for (int i = 0; i < segments; ++i) {
            const bool first = i == 0 || between(0.0, 1.0) < 0.05;
            const auto from = first ? at_pump : static_cast<std::size_t>(between(0.0, i));
            out.segments.push_back({"s" + std::to_string(i), from, segment()});
            out.segments.back().rise = Length<>(between(-20.0, 20.0));
            if (between(0.0, 1.0) < 0.7) {
                out.nozzles.push_back(nozzle(static_cast<std::size_t>(i)));
            }
        }
        return out;
    }

  private:
    LayNozzle nozzle(std::size_t at) {
        LayNozzle out{
            "n" + std::to_string(at), at, {Length<>(over(0.0005, 0.05)), between(0.6, 1.0)}};
        out.state = static_cast<NozzleState>(static_cast<int>(between(0.0, 3.0)));
        out.wear = out.state == NozzleState::worn ? between(0.0, 0.2) : 0.0;
        return out;
    }
    Pump pump() {
        Pump out;
        out.kind = static_cast<PumpKind>(static_cast<int>(between(0.0, 3.0)));
        out.pressure = Pressure<>(over(1e3, 3e7));
        out.unloader_pressure = Pressure<>(over(1e4, 3e7));
        out.flow_limit = Flow<>(over(1e-5, 0.1));
        out.power_limit = Power<>(over(1e3, 1e5));
        out.efficiency = between(0.5, 1.0);
        const double flow = over(1e-4, 0.1);
        const double head = over(5.0, 200.0);
        out.curve = PumpCurve({{Flow<>(0.0), Length<>(head)},
                               {Flow<>(0.5 * flow), Length<>(0.9 * head)},
                               {Flow<>(flow), Length<>(0.3 * head)}});
        if (out.kind != PumpKind::displacement && between(0.0, 1.0) < 0.5) {
            out.flow_limit.reset();
        }
        return out;
    }
};

} // namespace lays
