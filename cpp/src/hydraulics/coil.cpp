#include "scupper/hydraulics/coil.hpp"

#include "require.hpp"
#include "scupper/hydraulics/friction.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::hydraulics {

namespace {

void require_curvature(double x) {
    detail::require(x < 0.0 || x > 0.2, "curvature", x, "0 to 0.2: a coil of five bores or more");
}

double laminar(double re, double x) {
    const double exponent = 1.0 - 0.644 * std::pow(x, 0.312);
    return 64.0 / re * (1.0 + 0.14 * std::pow(x, 0.97) * std::pow(re, exponent));
}

double turbulent(double re, double x, double roughness) {
    const double low = 28800.0 * std::pow(x, 0.62) / re;
    const double high = 0.0823 * (1.0 + x) * std::pow(x, 0.53) * std::pow(re, 0.25);
    return friction_factor(re, roughness) * (1.0 + std::max(low, high));
}

} // namespace

double coil_critical_reynolds(double curvature) {
    require_curvature(curvature);
    return 2300.0 * (1.0 + 8.6 * std::pow(curvature, 0.45));
}

double coil_friction_factor(double re, double x, double roughness) {
    detail::positive("reynolds_number", re);
    const double critical = coil_critical_reynolds(x);
    const double above = coil_bridge * critical;
    if (re >= above) {
        return turbulent(re, x, roughness);
    }
    const double at_bridge = turbulent(above, x, roughness); // refuses a wrong roughness
    if (re <= critical) {
        return laminar(re, x);
    }
    const double share = (re - critical) / (above - critical);
    return laminar(critical, x) + share * (at_bridge - laminar(critical, x));
}

Pressure<> coil_loss(const Flow<>& flow, const Length<>& bore, const Length<>& length,
                     const Length<>& coil_diameter, const Length<>& roughness,
                     const Fluid<>& fluid) {
    detail::not_negative("length", length);
    const double re = reynolds(flow, bore, fluid.kinematic_viscosity);
    detail::positive("coil_diameter", coil_diameter);
    const double x = bore / coil_diameter;
    require_curvature(x);
    const Pressure<> velocity = velocity_pressure(flow, bore, fluid.density);
    return re > 0.0 ? coil_friction_factor(re, x, roughness / bore) * (length / bore) * velocity
                    : Pressure<>(std::isnan(re) ? re : 0.0);
}

} // namespace scupper::hydraulics
