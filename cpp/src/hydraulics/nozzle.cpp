#include "scupper/hydraulics/nozzle.hpp"

#include "circle.hpp"
#include "require.hpp"
#include "scupper/traced.hpp"

#include <cmath>
#include <numbers>

namespace scupper::hydraulics {

using detail::not_negative;
using detail::positive;

template <class T>
Flow<T> nozzle_flow(const Length<T>& bore, const Pressure<T>& pressure,
                    const T& discharge_coefficient, const Density<T>& density) {
    positive("bore", bore);
    positive("discharge_coefficient", discharge_coefficient);
    return discharge_coefficient * (detail::circle(bore) * jet_velocity(pressure, density));
}

template <class T>
Pressure<T> nozzle_pressure(const Length<T>& bore, const Flow<T>& flow,
                            const T& discharge_coefficient, const Density<T>& density) {
    positive("bore", bore);
    not_negative("flow", flow);
    positive("discharge_coefficient", discharge_coefficient);
    positive("density", density);
    const Speed<T> v = flow / (discharge_coefficient * detail::circle(bore));
    return density * (v * v) / 2.0;
}

template <class T>
Flow<T> rated_nozzle_flow(const Flow<T>& rated_flow, const Pressure<T>& rated_pressure,
                          const Pressure<T>& pressure) {
    using std::sqrt;
    positive("flow", rated_flow);
    positive("rated_pressure", rated_pressure);
    not_negative("pressure", pressure);
    return rated_flow * sqrt(pressure / rated_pressure);
}

template <class T>
Length<T> equivalent_bore(const Flow<T>& rated_flow, const Pressure<T>& rated_pressure,
                          const T& discharge_coefficient, const Density<T>& density) {
    positive("flow", rated_flow);
    positive("rated_pressure", rated_pressure);
    positive("discharge_coefficient", discharge_coefficient);
    const Area<T> opening =
        rated_flow / (discharge_coefficient * jet_velocity(rated_pressure, density));
    return sqrt(opening / (std::numbers::pi / 4.0));
}

template <class T>
Speed<T> jet_velocity(const Pressure<T>& pressure, const Density<T>& density) {
    not_negative("pressure", pressure);
    positive("density", density);
    return sqrt(2.0 * pressure / density);
}

template <class T>
Force<T> nozzle_reaction(const Flow<T>& flow, const Pressure<T>& pressure,
                         const Density<T>& density) {
    not_negative("flow", flow);
    return density * flow * jet_velocity(pressure, density);
}

template <class T>
Force<T> smooth_bore_reaction(const Length<T>& bore, const Pressure<T>& pressure,
                              const T& discharge_coefficient) {
    positive("bore", bore);
    not_negative("pressure", pressure);
    positive("discharge_coefficient", discharge_coefficient);
    return 2.0 * discharge_coefficient * (detail::circle(bore) * pressure);
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Flow<T> nozzle_flow(const Length<T>&, const Pressure<T>&, const T&,                   \
                                 const Density<T>&);                                               \
    template Pressure<T> nozzle_pressure(const Length<T>&, const Flow<T>&, const T&,               \
                                         const Density<T>&);                                       \
    template Flow<T> rated_nozzle_flow(const Flow<T>&, const Pressure<T>&, const Pressure<T>&);    \
    template Length<T> equivalent_bore(const Flow<T>&, const Pressure<T>&, const T&,               \
                                       const Density<T>&);                                         \
    template Speed<T> jet_velocity(const Pressure<T>&, const Density<T>&);                         \
    template Force<T> nozzle_reaction(const Flow<T>&, const Pressure<T>&, const Density<T>&);      \
    template Force<T> smooth_bore_reaction(const Length<T>&, const Pressure<T>&, const T&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::hydraulics
