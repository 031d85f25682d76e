#include "scupper/hydraulics/friction.hpp"

#include "circle.hpp"
#include "friction_kernel.hpp"
#include "require.hpp"
#include "scupper/traced.hpp"

#include <array>
#include <cmath>
#include <numbers>

namespace scupper::hydraulics {
namespace {

using detail::not_negative;
using detail::positive;

constexpr NamedConstant standard_gravity{factor::standard_gravity, dim::acceleration,
                                         "standard gravity", "3rd CGPM (1901)"};

constexpr double laminar(double re) {
    return 64.0 / re;
}

Solved colebrook(double re, double k) {
    const detail::Colebrook c = detail::colebrook(re, k, detail::colebrook_start(re, k));
    return {1.0 / (c.x * c.x), c.step * c.step / c.x};
}

Solved factor_of(double re, double k) {
    if (re >= turbulent_limit) {
        return colebrook(re, k);
    }
    if (re <= laminar_limit) {
        return {laminar(re), 0.0};
    }
    const Solved above = colebrook(turbulent_limit, k);
    const double below = laminar(laminar_limit);
    const double share = (re - laminar_limit) / (turbulent_limit - laminar_limit);
    return {below + share * (above.value - below), above.residual};
}

void require_factor_inputs(double re, double k) {
    not_negative("reynolds_number", re);
    detail::require(k < 0.0 || k > roughest, "relative_roughness", k, "0 to 0.05");
}
void require_factor_inputs(const Traced&, const Traced&) {}

} // namespace

template <class T>
Speed<T> pipe_velocity(const Flow<T>& flow, const Length<T>& bore) {
    positive("bore", bore);
    return flow / detail::circle(bore);
}

template <class T>
Pressure<T> velocity_pressure(const Flow<T>& flow, const Length<T>& bore,
                              const Density<T>& density) {
    positive("density", density);
    const Speed<T> v = pipe_velocity(flow, bore);
    return density * (v * v) / 2.0;
}

template <class T>
T reynolds(const Flow<T>& flow, const Length<T>& bore,
           const KinematicViscosity<T>& kinematic_viscosity) {
    not_negative("flow", flow);
    positive("kinematic_viscosity", kinematic_viscosity);
    return pipe_velocity(flow, bore) * bore / kinematic_viscosity;
}

template <class T>
T friction_factor(const T& reynolds_number, const T& relative_roughness) {
    require_factor_inputs(reynolds_number, relative_roughness);
    const SolveInfo info{"friction factor",
                         "64 / Re below 2,000; Colebrook by Newton from 4,000, which converges "
                         "since the equation is concave; linear in Re between",
                         dim::none};
    return solve_opaque(info, std::array<T, 2>{reynolds_number, relative_roughness},
                        [](const std::array<double, 2>& x) { return factor_of(x[0], x[1]); });
}

template <class T>
Pressure<T> factor_loss(const T& factor, const Speed<T>& velocity, const Length<T>& bore,
                        const Length<T>& length, const Density<T>& density) {
    not_negative("factor", factor);
    not_negative("velocity", velocity);
    positive("bore", bore);
    not_negative("length", length);
    positive("density", density);
    return factor * (length / bore) * (density * (velocity * velocity) / 2.0);
}

template <class T>
Pressure<T> friction_loss(const Flow<T>& flow, const Length<T>& bore, const Length<T>& length,
                          const Length<T>& roughness, const Fluid<T>& fluid) {
    not_negative("length", length);
    const T re = reynolds(flow, bore, fluid.kinematic_viscosity);
    const T factor = friction_factor<T>(re, roughness / bore);
    const Pressure<T> loss =
        factor_loss(factor, pipe_velocity(flow, bore), bore, length, fluid.density);
    return choose(flow == Flow<T>(), Pressure<T>(), loss); // infinite factor times no velocity
}

template <class T>
Pressure<T> minor_loss(const Flow<T>& flow, const Length<T>& bore, const T& loss_coefficient,
                       const Density<T>& density) {
    not_negative("loss_coefficient", loss_coefficient);
    return loss_coefficient * velocity_pressure(flow, bore, density);
}

template <class T>
Pressure<T> static_pressure(const Length<T>& rise, const Density<T>& density) {
    positive("density", density);
    return density * Acceleration<T>(constant<T>(standard_gravity)) * rise;
}

template <class T>
Length<T> head(const Pressure<T>& pressure, const Density<T>& density) {
    positive("density", density);
    return pressure / (density * Acceleration<T>(constant<T>(standard_gravity)));
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Speed<T> pipe_velocity(const Flow<T>&, const Length<T>&);                             \
    template Pressure<T> velocity_pressure(const Flow<T>&, const Length<T>&, const Density<T>&);   \
    template T reynolds(const Flow<T>&, const Length<T>&, const KinematicViscosity<T>&);           \
    template T friction_factor(const T&, const T&);                                                \
    template Pressure<T> factor_loss(const T&, const Speed<T>&, const Length<T>&,                  \
                                     const Length<T>&, const Density<T>&);                         \
    template Pressure<T> friction_loss(const Flow<T>&, const Length<T>&, const Length<T>&,         \
                                       const Length<T>&, const Fluid<T>&);                         \
    template Pressure<T> minor_loss(const Flow<T>&, const Length<T>&, const T&,                    \
                                    const Density<T>&);                                            \
    template Pressure<T> static_pressure(const Length<T>&, const Density<T>&);                     \
    template Length<T> head(const Pressure<T>&, const Density<T>&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::hydraulics
