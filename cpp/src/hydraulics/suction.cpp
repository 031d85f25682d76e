#include "scupper/hydraulics/suction.hpp"

#include "require.hpp"
#include "scupper/hydraulics/friction.hpp"
#include "scupper/traced.hpp"

#include <cmath>

namespace scupper::hydraulics {
namespace {

constexpr double sea_level_temperature = 288.15; // kelvin
constexpr double lapse_rate = 0.0065;            // kelvin per metre
constexpr double air_molar_mass = 0.0289644;     // kg/mol
constexpr double gas_constant = 8.31432;         // J/(mol K), as in the 1976 standard
constexpr double lowest = -500.0;                // metre
constexpr double highest = 11000.0;              // metre

void require_altitude(double h) {
    detail::require(h < lowest || h > highest, "altitude", h, "-500 to 11,000 m");
}
void require_altitude(const Traced&) {}

} // namespace

template <class T>
Pressure<T> standard_atmosphere(const Length<T>& altitude) {
    using std::pow;
    require_altitude(altitude.si());
    constexpr double power =
        factor::standard_gravity * air_molar_mass / (gas_constant * lapse_rate);
    const T share = 1.0 - lapse_rate / sea_level_temperature * altitude.si();
    return Pressure<T>(101325.0 * pow(share, T(power)));
}

template <class T>
Length<T> npsh_available(const Pressure<T>& surface_pressure, const Pressure<T>& vapour_pressure,
                         const Length<T>& suction_lift, const Length<T>& suction_loss,
                         const Density<T>& density) {
    detail::not_negative("suction_loss", suction_loss);
    return head(surface_pressure - vapour_pressure, density) - suction_lift - suction_loss;
}

template <class T>
Length<T> greatest_suction_lift(const Pressure<T>& surface_pressure,
                                const Pressure<T>& vapour_pressure, const Length<T>& suction_loss,
                                const Length<T>& npsh_required, const Density<T>& density) {
    detail::not_negative("npsh_required", npsh_required);
    return npsh_available(surface_pressure, vapour_pressure, Length<T>(), suction_loss, density) -
           npsh_required;
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Pressure<T> standard_atmosphere(const Length<T>&);                                    \
    template Length<T> npsh_available(const Pressure<T>&, const Pressure<T>&, const Length<T>&,    \
                                      const Length<T>&, const Density<T>&);                        \
    template Length<T> greatest_suction_lift(const Pressure<T>&, const Pressure<T>&,               \
                                             const Length<T>&, const Length<T>&,                   \
                                             const Density<T>&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::hydraulics
