#pragma once
// A blower, its hose and the dirt at the end of it: how much air flows, and whether the dirt comes.

#include "scupper/hydraulics/conveying.hpp"
#include "scupper/quantity.hpp"

#include <array>
#include <string_view>

namespace scupper::hydraulics {

/// A blower that moves the same volume at its inlet until its relief valve opens.
struct Blower {
    Flow<> flow;              ///< [m3/s] at the pressure of its inlet, > 0
    Pressure<> relief_vacuum; ///< [Pa] below the atmosphere at which the relief valve opens, > 0
};

/// The hose of a vacuum truck.
struct VacuumHose {
    Length<> bore;           ///< [m] inside diameter, > 0
    Length<> length;         ///< [m] >= 0
    Length<> lift;           ///< [m] blower above the end of the hose; negative below
    Length<> roughness;      ///< [m] of the wall, >= 0
    double minor_loss = 0.0; ///< [-] sum of K of entry, bends and nozzle
};

/// The air around.
struct Ambient {
    Pressure<> pressure;       ///< [Pa] absolute, > 0
    Temperature<> temperature; ///< [K] > 0
};

/// The dirt at the end of the hose.
struct LooseDirt {
    Length<> size;           ///< [m] diameter of the grains that matter, > 0
    Density<> density;       ///< [kg/m3] of the grains, not of the heap
    MassFlow rate;           ///< [kg/s] collected while the hose is in the dirt, > 0
    Speed<> transport_least; ///< [m/s] least air speed by a published table; 0 for none
};

/// What air flows through a vacuum hose without dirt.
struct AirFlow {
    Pressure<> vacuum;      ///< [Pa] at the blower, below the atmosphere
    Speed<> end_velocity;   ///< [m/s] at the end of the hose, where it is least
    Speed<> inlet_velocity; ///< [m/s] before the blower, where the air is thinnest
    Flow<> free_flow;       ///< [m3/s] at the pressure and temperature of the air around
    bool relief_open;       ///< [-] true where the relief valve holds the vacuum
};

/// What keeps dirt from coming.
enum class Hinders {
    nothing,   ///< it comes
    vacuum,    ///< weight and acceleration of the dirt take more vacuum than the blower has
    pick_up,   ///< the air at the end does not lift the grains
    saltation, ///< grains settle in the level hose
    fall_back, ///< grains fall back in the rise
    transport  ///< slower than a published least speed
};

/// The words of Hinders, in its order [text, 6].
inline constexpr std::array<std::string_view, 6> hinders_names{
    "nothing", "vacuum", "pick_up", "saltation", "fall_back", "transport"};

/// Whether dirt comes through a vacuum hose, and what it would take.
struct PickUp {
    AirFlow air;                ///< [-] as without dirt
    Pressure<> dirt_vacuum;     ///< [Pa] what the dirt takes besides the air
    Speed<> pick_up_velocity;   ///< [m/s] needed at the end of the hose
    Speed<> saltation_velocity; ///< [m/s] needed along level hose
    Speed<> rise_velocity;      ///< [m/s] needed in a rise: twice the terminal velocity; 0 without
    Length<> water_lift;        ///< [m] how high the relief vacuum holds a column of water
    double margin = 0.0;        ///< [-] air speed at the end over the greatest speed needed
    Hinders hinders = Hinders::nothing; ///< the first thing that keeps the dirt from coming
};

/// How much air a blower draws through a hose.
///
/// Formula: pa^2 - p^2 = (f L / D + K + 1 + 2 ln(pa / p)) G^2 R T, the 1 for its acceleration,
///          G = (Q / A) p / (R T);
///          with the relief valve open p is known and G is sought
/// @param blower [-] volume flow [m3/s] and relief vacuum [Pa]
/// @param hose [-] bore, length, lift, roughness [m] and K
/// @param ambient [-] pressure [Pa] and temperature [K] of the air around
/// @return [-] vacuum at the blower, air speeds and free flow
/// Range: isothermal flow of an ideal gas below half the speed of sound; the weight of the air in
///        the lift does not count. The left side falls and the right side grows with p (and with
///        G), so that there is one answer, kept in a bracket.
/// Errors: InputError `hydraulics.<field>` for a value out of range
/// Source: isothermal flow in a pipe, e.g. textbooks of gas dynamics (from memory)
/// Verified by: tests/cpp/hydraulics/test_vacuum.cpp
AirFlow vacuum_air_flow(const Blower& blower, const VacuumHose& hose, const Ambient& ambient);

/// Whether dirt comes through a vacuum hose.
///
/// Formula: vacuum of the dirt p = M v / A + M g z / (A v), v air speed at the end
/// @param blower [-] volume flow [m3/s] and relief vacuum [Pa]
/// @param hose [-] bore, length, lift, roughness [m] and K
/// @param ambient [-] pressure [Pa] and temperature [K] of the air around
/// @param dirt [-] size [m], grain density [kg/m3], rate [kg/s], least transport speed [m/s]
/// @return [-] speeds needed and there, and what keeps the dirt from coming
/// Range: thin suspensions: the dirt moves as fast as the air and does not slow it. Water in the
///        dirt is not counted but as its mass. The rate that a crew reaches is common practice.
/// Errors: as vacuum_air_flow, terminal_velocity, saltation_velocity, pick_up_velocity
/// Source: momentum and weight of the solids as in textbooks of pneumatic conveying (from memory);
///         rising air at twice the terminal velocity: common practice
/// Verified by: tests/cpp/hydraulics/test_vacuum.cpp
PickUp vacuum_pick_up(const Blower& blower, const VacuumHose& hose, const Ambient& ambient,
                      const LooseDirt& dirt);

} // namespace scupper::hydraulics
