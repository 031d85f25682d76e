#pragma once
// Friction by the trade's empirical formulas: Hazen-Williams and the hose coefficient.
// Their coefficients are plain numbers by convention, and inputs: publishers differ widely.

#include "scupper/quantity.hpp"

#include <array>
#include <string_view>

namespace scupper::hydraulics {

/// The forms of the Hazen-Williams formula in circulation, named by unit system, factor and power
/// of the bore. They differ by 0.3 to 1 %.
enum class HazenWilliamsForm {
    si_10_67_4_8704,   ///< h/L = 10.67 (Q/C)^1.852 / d^4.8704, m and m3/s
    us_1043_94_4_8655, ///< ft per 100 ft = 1043.94 (Q/C)^1.852 / d^4.8655, gpm and in
    us_4_52_4_87,      ///< psi/ft = 4.52 Q^1.85 / (C^1.85 d^4.87), gpm and in
    us_4_52_4_8655,    ///< psi/ft = 4.52 Q^1.852 / (C^1.852 d^4.8655), gpm and in
};

/// The names of the forms in the order of the enumeration [text, 4].
inline constexpr std::array<std::string_view, 4> hazen_williams_form_names{
    "si_10_67_4_8704", "us_1043_94_4_8655", "us_4_52_4_87", "us_4_52_4_8655"};

/// With which power of the flow a form's loss grows.
///
/// @param form [-] which published form
/// @return [-] 1.85 or 1.852
/// Range: any form.
/// Errors: none
/// Source: as hazen_williams_loss
/// Verified by: tests/cpp/hydraulics/test_trade_friction.cpp
double hazen_williams_power(HazenWilliamsForm form);

/// What a length of pipe costs in pressure by Hazen-Williams.
///
/// Formula: by form; heads become pressures with rho g h
/// @param form [-] which published form
/// @param flow [m3/s] volume flow, >= 0
/// @param bore [m] inside diameter, > 0
/// @param length [m] of the pipe, >= 0
/// @param coefficient [-] C, > 0; 100 for old steel, 150 for plastic
/// @param density [kg/m3] of the liquid, > 0; the two psi forms have water's built in
/// @return [Pa] pressure loss
/// Range: water near 60 degF, turbulent, bores from about 2 in; small hoses leave it.
/// Errors: InputError `hydraulics.flow`, `hydraulics.bore`, `hydraulics.length`,
///         `hydraulics.coefficient`, `hydraulics.density` where out of range
/// Source: G. S. Williams, A. Hazen, Hydraulic Tables (1905); the factors as reprinted in
///         pipe-makers' and sprinkler tables, see tests/reference/hydraulics/hazen_williams.csv
/// Verified by: tests/cpp/hydraulics/test_trade_friction.cpp
template <class T>
Pressure<T> hazen_williams_loss(HazenWilliamsForm form, const Flow<T>& flow, const Length<T>& bore,
                                const Length<T>& length, const T& coefficient,
                                const Density<T>& density);

/// What a length of hose costs in pressure by its hose coefficient.
///
/// Formula: p = C (Q / 100 gpm)^2 (L / 100 ft) psi
/// @param flow [m3/s] volume flow, >= 0
/// @param length [m] of the hose, >= 0
/// @param coefficient [-] C in psi per 100 ft at (100 gpm)^2, >= 0
/// @return [Pa] pressure loss
/// Range: near the flow at which the coefficient was measured: real hoses follow a power of
///        about 1.8, so that the formula is too low well below it and too high well above.
/// Errors: InputError `hydraulics.flow`, `hydraulics.length`, `hydraulics.coefficient`
///         where out of range
/// Source: common practice of the fire service
/// Verified by: tests/cpp/hydraulics/test_trade_friction.cpp
template <class T>
Pressure<T> hose_coefficient_loss(const Flow<T>& flow, const Length<T>& length,
                                  const T& coefficient);

} // namespace scupper::hydraulics
