#pragma once
// Liquid water at atmospheric pressure, 0 to 50 degC.

#include "scupper/quantity.hpp"

namespace scupper::hydraulics {

/// What a flow formula needs to know of its liquid.
template <class T = double>
struct Fluid {
    Density<T> density;                        ///< [kg/m3]
    KinematicViscosity<T> kinematic_viscosity; ///< [m2/s]
};

/// How heavy water is.
///
/// Formula: rho = (999.83952 + 16.945176 t - 7.9870401e-3 t^2 - 46.170461e-6 t^3
///                 + 105.56302e-9 t^4 - 280.54253e-12 t^5) / (1 + 16.87985e-3 t), t in degC
/// @param temperature [K] of the water
/// @return [kg/m3] density
/// Range: 0 to 50 degC, 1 atm; air-free water. Within 0.01 % of IAPWS-95.
/// Errors: InputError `hydraulics.temperature` outside 0 to 50 degC
/// Source: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97-105, equation for air-free water at 1 atm
/// Verified by: tests/cpp/hydraulics/test_water.cpp
template <class T>
Density<T> water_density(const Temperature<T>& temperature);

/// How viscous water is.
///
/// Formula: mu = 1e-6 sum a_i (T / 300 K)^b_i
/// @param temperature [K] of the water
/// @return [Pa s] dynamic viscosity
/// Range: 0 to 50 degC, 0.1 MPa. Within 0.01 % of the IAPWS 2008 viscosity.
/// Errors: InputError `hydraulics.temperature` outside 0 to 50 degC
/// Source: IAPWS SR6-08 (2011), Properties of Liquid Water at 0.1 MPa, equation 7
/// Verified by: tests/cpp/hydraulics/test_water.cpp
template <class T>
DynamicViscosity<T> water_dynamic_viscosity(const Temperature<T>& temperature);

/// How fast momentum spreads in water.
///
/// Formula: nu = mu / rho
/// @param temperature [K] of the water
/// @return [m2/s] kinematic viscosity
/// Range: 0 to 50 degC, atmospheric pressure.
/// Errors: InputError `hydraulics.temperature` outside 0 to 50 degC
/// Source: definition
/// Verified by: tests/cpp/hydraulics/test_water.cpp
template <class T>
KinematicViscosity<T> water_kinematic_viscosity(const Temperature<T>& temperature);

/// The pressure at which water boils, which limits how high a pump can lift by suction.
///
/// Formula: ln(p / pc) = Tc / T (a1 x + a2 x^1.5 + a3 x^3 + a4 x^3.5 + a5 x^4 + a6 x^7.5),
///          x = 1 - T / Tc
/// @param temperature [K] of the water
/// @return [Pa] absolute saturation pressure
/// Range: 0 to 50 degC. Within 0.01 % of IAPWS-95.
/// Errors: InputError `hydraulics.temperature` outside 0 to 50 degC
/// Source: W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783 (IAPWS SR1-86(1992))
/// Verified by: tests/cpp/hydraulics/test_water.cpp
template <class T>
Pressure<T> water_vapour_pressure(const Temperature<T>& temperature);

/// Water as a fluid for the flow formulas.
///
/// @param temperature [K] of the water
/// @return [-] its density [kg/m3] and kinematic viscosity [m2/s]
/// Range: 0 to 50 degC, atmospheric pressure; 10 MPa would change density by 0.5 % and
/// viscosity by 1 %.
/// Errors: InputError `hydraulics.temperature` outside 0 to 50 degC
/// Source: water_density, water_kinematic_viscosity
template <class T>
Fluid<T> water(const Temperature<T>& temperature);

} // namespace scupper::hydraulics
