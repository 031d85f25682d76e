#pragma once
// What leaves a nozzle: flow, speed and the force that the person holding it feels.
//
// The velocity in the hose before the nozzle is neglected, as in the published tip tables; it
// adds (bore / hose bore)^4 of the tip pressure, 1 % at a ratio of 0.32.

#include "scupper/quantity.hpp"

namespace scupper::hydraulics {

/// How much water a nozzle lets through.
///
/// Formula: Q = c (pi / 4) D^2 sqrt(2 p / rho)
/// @param bore [m] inside diameter of the tip, > 0
/// @param pressure [Pa] gauge pressure at the tip, >= 0
/// @param discharge_coefficient [-] c, > 0; about 0.95 to 1 for a smooth bore
/// @param density [kg/m3] of the liquid, > 0
/// @return [m3/s] volume flow
/// Range: turbulent jets in air.
/// Errors: InputError `hydraulics.bore`, `hydraulics.pressure`,
///         `hydraulics.discharge_coefficient`, `hydraulics.density` where out of range
/// Source: Torricelli's law with a discharge coefficient; definition
/// Verified by: tests/cpp/hydraulics/test_nozzle.cpp
template <class T>
Flow<T> nozzle_flow(const Length<T>& bore, const Pressure<T>& pressure,
                    const T& discharge_coefficient, const Density<T>& density);

/// Which pressure drives a flow through a nozzle.
///
/// Formula: p = (rho / 2) (Q / (c (pi / 4) D^2))^2
/// @param bore [m] inside diameter of the tip, > 0
/// @param flow [m3/s] volume flow, >= 0
/// @param discharge_coefficient [-] c, > 0
/// @param density [kg/m3] of the liquid, > 0
/// @return [Pa] gauge pressure at the tip
/// Range: turbulent jets in air.
/// Errors: InputError `hydraulics.bore`, `hydraulics.flow`, `hydraulics.discharge_coefficient`,
///         `hydraulics.density` where out of range
/// Source: nozzle_flow, solved for the pressure
/// Verified by: tests/cpp/hydraulics/test_nozzle.cpp
template <class T>
Pressure<T> nozzle_pressure(const Length<T>& bore, const Flow<T>& flow,
                            const T& discharge_coefficient, const Density<T>& density);

/// How much a nozzle lets through that is known by its flow at a rating pressure.
///
/// Formula: Q = Qr sqrt(p / pr)
/// @param rated_flow [m3/s] flow at the rating pressure, > 0
/// @param rated_pressure [Pa] rating pressure, > 0
/// @param pressure [Pa] gauge pressure at the nozzle, >= 0
/// @return [m3/s] volume flow
/// Range: fixed orifices; not for nozzles that hold their pressure or their flow.
/// Errors: InputError `hydraulics.flow`, `hydraulics.rated_pressure`, `hydraulics.pressure`
///         where out of range
/// Source: nozzle_flow at two pressures; nozzle size numbers at 4,000 psi are common practice
/// Verified by: tests/cpp/hydraulics/test_nozzle.cpp
template <class T>
Flow<T> rated_nozzle_flow(const Flow<T>& rated_flow, const Pressure<T>& rated_pressure,
                          const Pressure<T>& pressure);

/// Which smooth bore lets through what a rated nozzle does, so that it can end a line.
///
/// Formula: D = sqrt(Qr / (c (pi / 4) sqrt(2 pr / rho)))
/// @param rated_flow [m3/s] flow at the rating pressure, > 0
/// @param rated_pressure [Pa] rating pressure, > 0
/// @param discharge_coefficient [-] c of the bore it is likened to, > 0
/// @param density [kg/m3] of the liquid, > 0
/// @return [m] inside diameter
/// Range: fixed orifices.
/// Errors: InputError `hydraulics.flow`, `hydraulics.rated_pressure`,
///         `hydraulics.discharge_coefficient`, `hydraulics.density` where out of range
/// Source: nozzle_flow, solved for the bore
/// Verified by: tests/cpp/hydraulics/test_nozzle.cpp
template <class T>
Length<T> equivalent_bore(const Flow<T>& rated_flow, const Pressure<T>& rated_pressure,
                          const T& discharge_coefficient, const Density<T>& density);

/// How fast the jet leaves the tip.
///
/// Formula: v = sqrt(2 p / rho)
/// @param pressure [Pa] gauge pressure at the tip, >= 0
/// @param density [kg/m3] of the liquid, > 0
/// @return [m/s] speed of the jet where it has contracted
/// Range: no loss inside the tip (velocity coefficient 1).
/// Errors: InputError `hydraulics.pressure`, `hydraulics.density` where out of range
/// Source: Torricelli's law
/// Verified by: tests/cpp/hydraulics/test_nozzle.cpp
template <class T>
Speed<T> jet_velocity(const Pressure<T>& pressure, const Density<T>& density);

/// How hard a jet of known flow pushes back on whoever holds the nozzle.
///
/// Formula: F = rho Q v, v = sqrt(2 p / rho)
/// @param flow [m3/s] volume flow, >= 0
/// @param pressure [Pa] gauge pressure at the tip, >= 0
/// @param density [kg/m3] of the liquid, > 0
/// @return [N] reaction along the jet; the force that parts a coupling is another, larger one
/// Range: jets along the axis; wide sprays push less. Published hold limits and the employer's
///        rules decide how many people hold a line, not this figure.
/// Errors: InputError `hydraulics.flow`, `hydraulics.pressure`, `hydraulics.density`
///         where out of range
/// Source: momentum balance
/// Verified by: tests/cpp/hydraulics/test_nozzle.cpp
template <class T>
Force<T> nozzle_reaction(const Flow<T>& flow, const Pressure<T>& pressure,
                         const Density<T>& density);

/// How hard a smooth bore pushes back, from its bore alone.
///
/// Formula: F = 2 c (pi / 4) D^2 p
/// @param bore [m] inside diameter of the tip, > 0
/// @param pressure [Pa] gauge pressure at the tip, >= 0
/// @param discharge_coefficient [-] c, > 0; 1 gives the usual table value
/// @return [N] reaction along the jet
/// Range: as nozzle_reaction, of which this is the flow of the bore; the density cancels.
/// Errors: InputError `hydraulics.bore`, `hydraulics.pressure`,
///         `hydraulics.discharge_coefficient` where out of range
/// Source: momentum balance
/// Verified by: tests/cpp/hydraulics/test_nozzle.cpp
template <class T>
Force<T> smooth_bore_reaction(const Length<T>& bore, const Pressure<T>& pressure,
                              const T& discharge_coefficient);

} // namespace scupper::hydraulics
