#pragma once
// Nozzles side by side on one bar, and nozzles that have worn.

#include "scupper/hydraulics/line.hpp"
#include "scupper/quantity.hpp"

#include <vector>

namespace scupper::hydraulics {

/// The one nozzle that lets through what all nozzles of a bar do, so that a bar can end a line.
///
/// Formula: D = sqrt(sum D_i^2), c = sum c_i D_i^2 / D^2
/// @param nozzles [-, n] bore [m] > 0 and discharge coefficient > 0 of each
/// @return [-] a nozzle with their whole opening and their mean coefficient
/// Range: nozzles at one pressure: the bar is wide enough that its own loss does not count.
/// Errors: InputError `hydraulics.nozzles` where there is none, `hydraulics.bore`,
///         `hydraulics.discharge_coefficient` where out of range
/// Source: nozzle_flow summed
/// Verified by: tests/cpp/hydraulics/test_nozzle_bar.cpp
template <class T>
Nozzle<T> bar_as_nozzle(const std::vector<Nozzle<T>>& nozzles);

/// How much all nozzles of a bar let through.
///
/// Formula: Q = sum c_i (pi / 4) D_i^2 sqrt(2 p / rho)
/// @param nozzles [-, n] bore [m] > 0 and discharge coefficient > 0 of each
/// @param pressure [Pa] gauge pressure in the bar, >= 0
/// @param density [kg/m3] of the liquid, > 0
/// @return [m3/s] volume flow of the bar
/// Range: as bar_as_nozzle.
/// Errors: as bar_as_nozzle; InputError `hydraulics.pressure`, `hydraulics.density`
/// Source: nozzle_flow summed
/// Verified by: tests/cpp/hydraulics/test_nozzle_bar.cpp
template <class T>
Flow<T> bar_flow(const std::vector<Nozzle<T>>& nozzles, const Pressure<T>& pressure,
                 const Density<T>& density);

/// Which pressure drives a flow through a bar.
///
/// Formula: p = (rho / 2) (Q / sum c_i (pi / 4) D_i^2)^2
/// @param nozzles [-, n] bore [m] > 0 and discharge coefficient > 0 of each
/// @param flow [m3/s] volume flow of the bar, >= 0
/// @param density [kg/m3] of the liquid, > 0
/// @return [Pa] gauge pressure in the bar
/// Range: as bar_as_nozzle.
/// Errors: as bar_as_nozzle; InputError `hydraulics.flow`, `hydraulics.density`
/// Source: bar_flow, solved for the pressure
/// Verified by: tests/cpp/hydraulics/test_nozzle_bar.cpp
template <class T>
Pressure<T> bar_pressure(const std::vector<Nozzle<T>>& nozzles, const Flow<T>& flow,
                         const Density<T>& density);

/// The bore of a nozzle that has worn.
///
/// Formula: D = D0 (1 + w)
/// @param bore [m] D0, when it was new, > 0
/// @param wear [-] w, share by which the bore has grown, >= 0: 0.05 lets 10 % more water through at
/// the same pressure
/// @return [m] inside diameter
/// Range: wear that keeps the discharge coefficient; a ragged edge changes it.
/// Errors: InputError `hydraulics.bore`, `hydraulics.wear` where out of range
/// Source: definition
/// Verified by: tests/cpp/hydraulics/test_nozzle_bar.cpp
template <class T>
Length<T> worn_bore(const Length<T>& bore, const T& wear);

/// How far a nozzle has worn, from what it lets through.
///
/// Formula: w = sqrt(Q / Q0) - 1
/// @param flow [m3/s] Q, measured, > 0
/// @param new_flow [m3/s] Q0, of a new nozzle at the same pressure, > 0
/// @return [-] share by which the bore has grown; negative: partly plugged
/// Range: flows at one pressure.
/// Errors: InputError `hydraulics.flow` where one of them is not above 0
/// Source: nozzle_flow at one pressure
/// Verified by: tests/cpp/hydraulics/test_nozzle_bar.cpp
template <class T>
T nozzle_wear(const Flow<T>& flow, const Flow<T>& new_flow);

} // namespace scupper::hydraulics
