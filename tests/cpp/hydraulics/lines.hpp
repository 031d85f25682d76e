#pragma once
// Lines for the tests: a worked one and random ones.

#include "scupper/hydraulics.hpp"

#include <random>

namespace lines {

using namespace scupper;
using namespace scupper::hydraulics;
using namespace scupper::literals;

/// 150 ft of 1 1/2 in hose, a 1/2 in tip 10 ft up; common practice figures.
inline Line<> worked() {
    Line<> line;
    line.pump_pressure = 76.4_psi;
    line.fluid = water(60.0_degF);
    line.hose = {{FrictionLaw::hose_coefficient, 1.5_in, 150.0_ft, 0.0_m, 24.0}};
    line.rise = 10.0_ft;
    line.nozzle = {0.5_in, 1.0};
    return line;
}

/// Valid lines of every kind: one to four segments, laminar to turbulent, up or down.
class Maker {
  public:
    explicit Maker(unsigned seed) : random_(seed) {}

    double between(double low, double high) {
        return std::uniform_real_distribution<>(low, high)(random_);
    }
    /// Spread evenly over the powers of ten.
    double over(double low, double high) {
        return std::exp(between(std::log(low), std::log(high)));
    }
    Segment<> segment() {
        Segment<> s;
        s.law = static_cast<FrictionLaw>(static_cast<int>(between(0.0, 3.0)));
        s.form = static_cast<HazenWilliamsForm>(static_cast<int>(between(0.0, 4.0)));
        s.bore = Length<>(over(0.004, 0.1));
        s.length = Length<>(over(0.1, 1000.0));
        s.roughness = s.bore * over(1e-7, 0.05);
        s.coefficient =
            s.law == FrictionLaw::hose_coefficient ? over(0.05, 2000.0) : between(80.0, 150.0);
        s.minor_loss = between(0.0, 20.0);
        return s;
    }
    Line<> line() {
        Line<> line;
        line.fluid = water(Temperature<>(between(273.2, 323.1)));
        line.rise = Length<>(between(-20.0, 20.0));
        line.pump_pressure =
            static_pressure(line.rise, line.fluid.density) + Pressure<>(over(10.0, 3e7));
        line.nozzle = {Length<>(over(0.0005, 0.05)), between(0.6, 1.0)};
        for (int i = static_cast<int>(between(1.0, 5.0)); i > 0; --i) {
            line.hose.push_back(segment());
        }
        return line;
    }

  private:
    std::mt19937_64 random_;
};

} // namespace lines
