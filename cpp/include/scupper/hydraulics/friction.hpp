#pragma once
// What a flow loses in hoses, fittings and height, from first principles.

#include "scupper/hydraulics/water.hpp"
#include "scupper/quantity.hpp"

namespace scupper::hydraulics {

/// Below this Reynolds number [-] the flow is laminar; common practice, as in Moody (1944).
inline constexpr double laminar_limit = 2000.0;
/// Above this Reynolds number [-] the flow is turbulent; common practice, as in Moody (1944).
inline constexpr double turbulent_limit = 4000.0;
/// The roughest pipe that the chart of Moody (1944) covers: roughness over bore [-].
inline constexpr double roughest = 0.05;

/// How fast water runs in a full pipe.
///
/// Formula: V = Q / ((pi / 4) D^2)
/// @param flow [m3/s] volume flow
/// @param bore [m] inside diameter, > 0
/// @return [m/s] mean velocity
/// Range: full round pipes.
/// Errors: InputError `hydraulics.bore` where bore <= 0
/// Source: definition
/// Verified by: tests/cpp/hydraulics/test_friction.cpp
template <class T>
Speed<T> pipe_velocity(const Flow<T>& flow, const Length<T>& bore);

/// Which pressure the velocity in a pipe is worth.
///
/// Formula: p = rho V^2 / 2
/// @param flow [m3/s] volume flow
/// @param bore [m] inside diameter, > 0
/// @param density [kg/m3] of the liquid, > 0
/// @return [Pa] velocity pressure
/// Range: full round pipes.
/// Errors: InputError `hydraulics.bore`, `hydraulics.density` where out of range
/// Source: Bernoulli's equation
/// Verified by: tests/cpp/hydraulics/test_nozzle.cpp
template <class T>
Pressure<T> velocity_pressure(const Flow<T>& flow, const Length<T>& bore,
                              const Density<T>& density);

/// How inertia and viscosity compare in a pipe.
///
/// Formula: Re = V D / nu
/// @param flow [m3/s] volume flow, >= 0
/// @param bore [m] inside diameter, > 0
/// @param kinematic_viscosity [m2/s] of the liquid, > 0
/// @return [-] Reynolds number
/// Range: full round pipes.
/// Errors: InputError `hydraulics.flow`, `hydraulics.bore`, `hydraulics.kinematic_viscosity`
///         where out of range
/// Source: definition
/// Verified by: tests/cpp/hydraulics/test_friction.cpp
template <class T>
T reynolds(const Flow<T>& flow, const Length<T>& bore,
           const KinematicViscosity<T>& kinematic_viscosity);

/// The Darcy friction factor of a round pipe.
///
/// Formula: f = 64 / Re up to Re 2,000; from 4,000
///          1 / sqrt(f) = -2 log10(k / 3.7 + 2.51 / (Re sqrt(f))), solved to machine precision;
///          between them a straight line in Re, so that f and the loss are continuous and the
///          loss always grows with the flow
/// @param reynolds_number [-] Re, >= 0; at 0 the factor is infinite
/// @param relative_roughness [-] k, roughness over bore, 0 to 0.05
/// @return [-] Darcy friction factor (four times Fanning's)
/// Range: between Re 2,000 and 4,000 a flow may be either kind: the straight line is a bridge,
///        uncertain by up to half its value. Newton's steps on the concave Colebrook equation
///        cannot overshoot twice; six at most are taken, three suffice.
/// Errors: InputError `hydraulics.reynolds_number`, `hydraulics.relative_roughness`
///         where out of range
/// Source: C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133; Hagen-Poiseuille; the bridge is own
///         convention
/// Verified by: tests/cpp/hydraulics/test_friction.cpp
template <class T>
T friction_factor(const T& reynolds_number, const T& relative_roughness);

/// What a length of hose or pipe costs in pressure at a friction factor known otherwise, as from a
/// chart.
///
/// Formula: p = f (L / D) rho V^2 / 2
/// @param factor [-] f, Darcy's (four times Fanning's), >= 0
/// @param velocity [m/s] V, >= 0
/// @param bore [m] D, inside diameter, > 0
/// @param length [m] L, of the hose, >= 0
/// @param density [kg/m3] of the liquid, > 0
/// @return [Pa] pressure loss
/// Range: full round pipes.
/// Errors: InputError `hydraulics.factor`, `hydraulics.velocity`, `hydraulics.bore`,
///         `hydraulics.length`, `hydraulics.density` where out of range
/// Source: Darcy-Weisbach equation
/// Verified by: tests/cpp/hydraulics/test_friction.cpp
template <class T>
Pressure<T> factor_loss(const T& factor, const Speed<T>& velocity, const Length<T>& bore,
                        const Length<T>& length, const Density<T>& density);

/// What a length of hose or pipe costs in pressure.
///
/// Formula: p = f (L / D) rho V^2 / 2
/// @param flow [m3/s] volume flow, >= 0
/// @param bore [m] inside diameter, > 0
/// @param length [m] of the hose, >= 0
/// @param roughness [m] equivalent sand roughness of the wall, >= 0
/// @param fluid [-] density [kg/m3] and kinematic viscosity [m2/s]
/// @return [Pa] pressure loss
/// Range: full round pipes at their true bore under pressure; see friction_factor.
/// Errors: InputError as reynolds and friction_factor; `hydraulics.length`,
///         `hydraulics.density` where out of range
/// Source: Darcy-Weisbach equation
/// Verified by: tests/cpp/hydraulics/test_friction.cpp
template <class T>
Pressure<T> friction_loss(const Flow<T>& flow, const Length<T>& bore, const Length<T>& length,
                          const Length<T>& roughness, const Fluid<T>& fluid);

/// What fittings cost in pressure.
///
/// Formula: p = K rho V^2 / 2
/// @param flow [m3/s] volume flow
/// @param bore [m] inside diameter to which K refers, > 0
/// @param loss_coefficient [-] K, sum over the fittings, >= 0
/// @param density [kg/m3] of the liquid, > 0
/// @return [Pa] pressure loss
/// Range: full round pipes.
/// Errors: InputError `hydraulics.loss_coefficient`, `hydraulics.bore`, `hydraulics.density`
///         where out of range
/// Source: definition of K
/// Verified by: tests/cpp/hydraulics/test_friction.cpp
template <class T>
Pressure<T> minor_loss(const Flow<T>& flow, const Length<T>& bore, const T& loss_coefficient,
                       const Density<T>& density);

/// What a height costs in pressure.
///
/// Formula: p = rho g z, g = 9.80665 m/s2
/// @param rise [m] height gained, negative going down
/// @param density [kg/m3] of the liquid, > 0
/// @return [Pa] pressure, negative going down
/// Range: any.
/// Errors: InputError `hydraulics.density` where density <= 0
/// Source: hydrostatics; g of the 3rd CGPM (1901)
/// Verified by: tests/cpp/hydraulics/test_friction.cpp
template <class T>
Pressure<T> static_pressure(const Length<T>& rise, const Density<T>& density);

/// How high a pressure lifts water.
///
/// Formula: z = p / (rho g), g = 9.80665 m/s2
/// @param pressure [Pa] gauge pressure or pressure loss
/// @param density [kg/m3] of the liquid, > 0
/// @return [m] head
/// Range: any.
/// Errors: InputError `hydraulics.density` where density <= 0
/// Source: hydrostatics; g of the 3rd CGPM (1901)
/// Verified by: tests/cpp/hydraulics/test_friction.cpp
template <class T>
Length<T> head(const Pressure<T>& pressure, const Density<T>& density);

} // namespace scupper::hydraulics
