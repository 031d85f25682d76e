#pragma once
// Constants with their unit, for tests, defaults and embedding programs: 100.0_psi, 1.5_in.

#include "scupper/quantity/factors.hpp"
#include "scupper/quantity/kinds.hpp"

namespace scupper::literals {

#define SCUPPER_LITERAL(suffix, kind, factor_to_si)                                                \
    constexpr kind<double> operator""_##suffix(long double v) {                                    \
        return kind<double>(static_cast<double>(v) * (factor_to_si));                              \
    }                                                                                              \
    constexpr kind<double> operator""_##suffix(unsigned long long v) {                             \
        return kind<double>(static_cast<double>(v) * (factor_to_si));                              \
    }

SCUPPER_LITERAL(m, Length, 1.0)
SCUPPER_LITERAL(mm, Length, 1e-3)
SCUPPER_LITERAL(in, Length, factor::inch)
SCUPPER_LITERAL(ft, Length, factor::foot)
SCUPPER_LITERAL(mi, Length, factor::mile)
SCUPPER_LITERAL(m2, Area, 1.0)
SCUPPER_LITERAL(ft2, Area, factor::foot* factor::foot)
SCUPPER_LITERAL(m3, Volume, 1.0)
SCUPPER_LITERAL(ft3, Volume, factor::foot* factor::foot* factor::foot)
SCUPPER_LITERAL(yd3, Volume, factor::yard* factor::yard* factor::yard)
SCUPPER_LITERAL(gal, Volume, factor::us_gallon)
SCUPPER_LITERAL(L, Volume, factor::litre)
SCUPPER_LITERAL(kg, Mass, 1.0)
SCUPPER_LITERAL(lb, Mass, factor::pound)
SCUPPER_LITERAL(short_ton, Mass, factor::short_ton)
SCUPPER_LITERAL(s, Time, 1.0)
SCUPPER_LITERAL(min, Time, factor::minute)
SCUPPER_LITERAL(h, Time, factor::hour)
SCUPPER_LITERAL(mps, Speed, 1.0)
SCUPPER_LITERAL(mph, Speed, factor::mile / factor::hour)
SCUPPER_LITERAL(m3ps, Flow, 1.0)
SCUPPER_LITERAL(gpm, Flow, factor::us_gallon / factor::minute)
SCUPPER_LITERAL(N, Force, 1.0)
SCUPPER_LITERAL(lbf, Force, factor::pound_force)
SCUPPER_LITERAL(Pa, Pressure, 1.0)
SCUPPER_LITERAL(kPa, Pressure, 1e3)
SCUPPER_LITERAL(bar, Pressure, factor::bar)
SCUPPER_LITERAL(psi, Pressure, factor::psi)
SCUPPER_LITERAL(W, Power, 1.0)
SCUPPER_LITERAL(hp, Power, factor::horsepower)
SCUPPER_LITERAL(kg_per_m3, Density, 1.0)
SCUPPER_LITERAL(lb_per_ft3, Density, factor::pound / (factor::foot * factor::foot * factor::foot))
SCUPPER_LITERAL(rad, Angle, 1.0)
SCUPPER_LITERAL(deg, Angle, factor::degree)
SCUPPER_LITERAL(each, Count, 1.0)
SCUPPER_LITERAL(K, TemperatureDifference, 1.0)

#undef SCUPPER_LITERAL

/// An absolute temperature given in degrees Celsius.
constexpr Temperature<double> operator""_degC(long double v) {
    return Temperature<double>(static_cast<double>(v) + factor::celsius_zero);
}
constexpr Temperature<double> operator""_degC(unsigned long long v) {
    return operator""_degC(static_cast<long double>(v));
}
/// An absolute temperature given in degrees Fahrenheit.
constexpr Temperature<double> operator""_degF(long double v) {
    return Temperature<double>((static_cast<double>(v) + factor::fahrenheit_zero) *
                               factor::fahrenheit_step);
}
constexpr Temperature<double> operator""_degF(unsigned long long v) {
    return operator""_degF(static_cast<long double>(v));
}

} // namespace scupper::literals
