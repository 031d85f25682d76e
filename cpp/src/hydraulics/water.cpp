#include "scupper/hydraulics/water.hpp"

#include "require.hpp"
#include "scupper/traced.hpp"

#include <cmath>

namespace scupper::hydraulics {
namespace {

constexpr double coldest = factor::celsius_zero; // kelvin
constexpr double warmest = factor::celsius_zero + 50.0;

// IAPWS-95 critical point, for the saturation equation.
constexpr double critical_temperature = 647.096; // kelvin
constexpr double critical_pressure = 22.064e6;   // pascal

void require_liquid(const Temperature<double>& t) {
    const double kelvin = t.kelvin();
    detail::require(kelvin < coldest || kelvin > warmest, "temperature", kelvin,
                    "273.15 to 323.15 K (0 to 50 degC)");
}
void require_liquid(const Temperature<Traced>&) {}

} // namespace

template <class T>
Density<T> water_density(const Temperature<T>& temperature) {
    require_liquid(temperature);
    const T t = temperature.celsius();
    const T above =
        999.83952 +
        t * (16.945176 +
             t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
    return Density<T>(above / (1.0 + 16.87985e-3 * t));
}

template <class T>
DynamicViscosity<T> water_dynamic_viscosity(const Temperature<T>& temperature) {
    using std::pow;
    require_liquid(temperature);
    const T t = temperature.kelvin() / 300.0;
    return DynamicViscosity<T>(1e-6 * (280.68 * pow(t, T(-1.9)) + 511.45 * pow(t, T(-7.7)) +
                                       61.131 * pow(t, T(-19.6)) + 0.45903 * pow(t, T(-40.0))));
}

template <class T>
KinematicViscosity<T> water_kinematic_viscosity(const Temperature<T>& temperature) {
    return water_dynamic_viscosity(temperature) / water_density(temperature);
}

template <class T>
Pressure<T> water_vapour_pressure(const Temperature<T>& temperature) {
    using std::exp;
    using std::pow;
    require_liquid(temperature);
    const T reduced = temperature.kelvin() / critical_temperature;
    const T x = 1.0 - reduced;
    const T sum = -7.85951783 * x + 1.84408259 * pow(x, T(1.5)) - 11.7866497 * pow(x, T(3.0)) +
                  22.6807411 * pow(x, T(3.5)) - 15.9618719 * pow(x, T(4.0)) +
                  1.80122502 * pow(x, T(7.5));
    return Pressure<T>(critical_pressure * exp(sum / reduced));
}

template <class T>
Fluid<T> water(const Temperature<T>& temperature) {
    return {water_density(temperature), water_kinematic_viscosity(temperature)};
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Density<T> water_density(const Temperature<T>&);                                      \
    template DynamicViscosity<T> water_dynamic_viscosity(const Temperature<T>&);                   \
    template KinematicViscosity<T> water_kinematic_viscosity(const Temperature<T>&);               \
    template Pressure<T> water_vapour_pressure(const Temperature<T>&);                             \
    template Fluid<T> water(const Temperature<T>&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::hydraulics
