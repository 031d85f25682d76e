#pragma once
// What the atmosphere pushes into a pump that draws from below: altitude, temperature, lift.
//
// Drafting from a stream, pond or ditch needs the permission of whoever has charge of the water,
// and a screen; where it is drinking water's source, a backflow preventer besides.

#include "scupper/quantity.hpp"

namespace scupper::hydraulics {

/// How hard the air presses at an altitude.
///
/// Formula: p = 101325 Pa (1 - L h / T0)^(g M / (R L)), T0 = 288.15 K, L = 6.5 K/km,
///          M = 28.9644 kg/kmol, R = 8314.32 J/(kmol K)
/// @param altitude [m] above sea level (geopotential; 0.1 % less than geometric at 5 km)
/// @return [Pa] absolute pressure of the standard atmosphere; weather moves it by 3 %
/// Range: -500 to 11,000 m.
/// Errors: InputError `hydraulics.altitude` outside
/// Source: U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562), equation 33a, table 4
/// Verified by: tests/cpp/hydraulics/test_pump.cpp
template <class T>
Pressure<T> standard_atmosphere(const Length<T>& altitude);

/// How much head is left at a pump's inlet before the water boils there.
///
/// Formula: NPSHa = (p - pv) / (rho g) - lift - loss
/// @param surface_pressure [Pa] absolute, on the water drawn from
/// @param vapour_pressure [Pa] absolute, of the water at its temperature
/// @param suction_lift [m] pump inlet above the water, negative below
/// @param suction_loss [m] head lost in strainer and suction hose, >= 0
/// @param density [kg/m3] of the liquid, > 0
/// @return [m] net positive suction head available; below zero no water arrives
/// Range: any. The velocity head at the inlet is part of the pressure there and not subtracted.
/// Errors: InputError `hydraulics.suction_loss`, `hydraulics.density` where out of range
/// Source: definition, as in Crane TP-410, example 7-32
/// Verified by: tests/cpp/hydraulics/test_pump.cpp
template <class T>
Length<T> npsh_available(const Pressure<T>& surface_pressure, const Pressure<T>& vapour_pressure,
                         const Length<T>& suction_lift, const Length<T>& suction_loss,
                         const Density<T>& density);

/// How far above the water a pump may stand.
///
/// Formula: lift = (p - pv) / (rho g) - loss - NPSHr
/// @param surface_pressure [Pa] absolute, on the water drawn from
/// @param vapour_pressure [Pa] absolute, of the water at its temperature
/// @param suction_loss [m] head lost in strainer and suction hose, >= 0
/// @param npsh_required [m] by the pump's maker, at the flow, >= 0
/// @param density [kg/m3] of the liquid, > 0
/// @return [m] greatest lift; negative where the pump has to stand below the water
/// Range: any.
/// Errors: InputError `hydraulics.suction_loss`, `hydraulics.npsh_required`,
///         `hydraulics.density` where out of range
/// Source: npsh_available, solved for the lift
/// Verified by: tests/cpp/hydraulics/test_pump.cpp
template <class T>
Length<T> greatest_suction_lift(const Pressure<T>& surface_pressure,
                                const Pressure<T>& vapour_pressure, const Length<T>& suction_loss,
                                const Length<T>& npsh_required, const Density<T>& density);

} // namespace scupper::hydraulics
