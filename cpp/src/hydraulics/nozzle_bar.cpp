#include "scupper/hydraulics/nozzle_bar.hpp"

#include "require.hpp"
#include "scupper/hydraulics/nozzle.hpp"
#include "scupper/traced.hpp"

#include <cmath>

namespace scupper::hydraulics {

using detail::not_negative;
using detail::positive;

template <class T>
Nozzle<T> bar_as_nozzle(const std::vector<Nozzle<T>>& nozzles) {
    detail::require(nozzles.empty(), "nozzles", 0.0, "at least one nozzle");
    Area<T> squares;
    Area<T> effective;
    for (const Nozzle<T>& nozzle : nozzles) {
        positive("bore", nozzle.bore);
        positive("discharge_coefficient", nozzle.discharge_coefficient);
        const Area<T> square = nozzle.bore * nozzle.bore;
        squares += square;
        effective += nozzle.discharge_coefficient * square;
    }
    return {sqrt(squares), effective / squares};
}

template <class T>
Flow<T> bar_flow(const std::vector<Nozzle<T>>& nozzles, const Pressure<T>& pressure,
                 const Density<T>& density) {
    const Nozzle<T> one = bar_as_nozzle(nozzles);
    return nozzle_flow(one.bore, pressure, one.discharge_coefficient, density);
}

template <class T>
Pressure<T> bar_pressure(const std::vector<Nozzle<T>>& nozzles, const Flow<T>& flow,
                         const Density<T>& density) {
    const Nozzle<T> one = bar_as_nozzle(nozzles);
    return nozzle_pressure(one.bore, flow, one.discharge_coefficient, density);
}

template <class T>
Length<T> worn_bore(const Length<T>& bore, const T& wear) {
    positive("bore", bore);
    not_negative("wear", wear);
    return bore * (T(1.0) + wear);
}

template <class T>
T nozzle_wear(const Flow<T>& flow, const Flow<T>& new_flow) {
    using std::sqrt;
    positive("flow", flow);
    positive("flow", new_flow);
    return sqrt(flow / new_flow) - T(1.0);
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Nozzle<T> bar_as_nozzle(const std::vector<Nozzle<T>>&);                               \
    template Flow<T> bar_flow(const std::vector<Nozzle<T>>&, const Pressure<T>&,                   \
                              const Density<T>&);                                                  \
    template Pressure<T> bar_pressure(const std::vector<Nozzle<T>>&, const Flow<T>&,               \
                                      const Density<T>&);                                          \
    template Length<T> worn_bore(const Length<T>&, const T&);                                      \
    template T nozzle_wear(const Flow<T>&, const Flow<T>&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::hydraulics
