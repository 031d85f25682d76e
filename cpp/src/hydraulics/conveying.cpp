#include "scupper/hydraulics/conveying.hpp"

#include "bracketed.hpp"
#include "require.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace scupper::hydraulics {

using detail::positive;

namespace {

constexpr double gravity = factor::standard_gravity;

/// Drag coefficient times Re^2: grows with Re, so that it has one root.
double drag_number(double re) {
    return 24.0 * re * (1.0 + 0.1806 * std::pow(re, 0.6459)) +
           0.4251 * re * re / (1.0 + 6880.95 / re);
}

} // namespace

Density<> air_density(const Pressure<>& pressure, const Temperature<>& temperature) {
    constexpr double gas_constant = 287.05287;
    positive("air_pressure", pressure);
    positive("air_temperature", temperature.kelvin());
    return Density<>(pressure.si() / (gas_constant * temperature.kelvin()));
}

DynamicViscosity<> air_viscosity(const Temperature<>& temperature) {
    const double t = temperature.kelvin();
    positive("air_temperature", t);
    return DynamicViscosity<>(1.458e-6 * t * std::sqrt(t) / (t + 110.4));
}

Speed<> terminal_velocity(const Length<>& size, const Density<>& grain_density,
                          const Density<>& density, const DynamicViscosity<>& viscosity) {
    positive("size", size);
    positive("density", density);
    positive("viscosity", viscosity);
    detail::require(grain_density <= density, "grain_density", grain_density.si(),
                    "above that of the air");
    const double rho = density.si();
    const double mu = viscosity.si();
    // Cd Re^2 = (4 / 3) Ar; between Stokes' speed and that of the least drag at any speed.
    const double weight =
        4.0 / 3.0 * power<3>(size).si() * rho * (grain_density.si() - rho) * gravity / (mu * mu);
    if (std::isnan(weight)) {
        return Speed<>(weight);
    }
    const double fastest = weight / 24.0;
    const auto excess = [&](double re) { return drag_number(re) / weight - 1.0; };
    const double least = fastest * 1e-12;
    const detail::Root root = detail::bracketed_root(
        excess, {least, excess(least)}, {fastest, excess(fastest)}, 0.5 * fastest, 1e-14);
    return Speed<>(root.x * mu / (rho * size.si()));
}

Speed<> saltation_velocity(const MassFlow& solids, const Length<>& size, const Density<>& density,
                           const Length<>& bore) {
    positive("solids", solids);
    positive("size", size);
    positive("density", density);
    positive("bore", bore);
    const double a = 1440.0 * size.si() + 1.96;
    const double b = 1100.0 * size.si() + 2.5;
    // In logarithms, so that a coarse grain's exponents do not overflow on the way.
    const double log_term = std::log(4.0 * solids.si() / (std::numbers::pi * density.si())) +
                            a * std::numbers::ln10 + b / 2.0 * std::log(gravity) +
                            (b / 2.0 - 2.0) * std::log(bore.si());
    return Speed<>(std::exp(log_term / (b + 1.0)));
}

Speed<> pick_up_velocity(const Length<>& size, const Density<>& grain_density,
                         const Density<>& density, const DynamicViscosity<>& viscosity,
                         const Length<>& bore) {
    positive("size", size);
    positive("grain_density", grain_density);
    positive("density", density);
    positive("viscosity", viscosity);
    positive("bore", bore);
    const double d = size.si();
    const double re_by_speed = density.si() * d / viscosity.si();
    const double right = 0.0428 * std::sqrt(gravity * d) * std::pow(re_by_speed, 0.175) *
                         std::pow(bore / size, 0.25) * std::pow(grain_density / density, 0.75);
    return Speed<>(std::pow(right, 1.0 / (1.0 - 0.175)));
}

const TransportVelocity& transport_velocity(std::string_view dust) {
    const auto* found = std::find_if(transport_velocities.begin(), transport_velocities.end(),
                                     [&](const TransportVelocity& t) { return t.dust == dust; });
    if (found != transport_velocities.end()) {
        return *found;
    }
    std::vector<std::string_view> known;
    for (const TransportVelocity& t : transport_velocities) {
        known.push_back(t.dust);
    }
    const std::string near = nearest_name(dust, known);
    throw UnknownNameError({"hydraulics.dust", "dust", "\"" + std::string(dust) + "\"",
                            near.empty() ? "very_fine_light, dry_powder, general, heavy or "
                                           "heavy_or_moist"
                                         : "\"" + near + "\"?"});
}

} // namespace scupper::hydraulics
