#pragma once
// Which air speed it takes to pick up dirt and to carry it through a hose.
//
// The correlations come from dry grains of one size in straight pipes; bridge dirt is a wet mixture
// in a bent hose. They tell whether a lay is far from possible, not how much is collected in an
// hour: that rate is common practice.

#include "scupper/quantity.hpp"

#include <array>
#include <string_view>

namespace scupper::hydraulics {

/// How much mass passes in a time.
using MassFlow = Quantity<dim::mass / dim::time>;

/// How heavy dry air is.
///
/// Formula: rho = p / (R T), R = 287.05287 J/(kg K)
/// @param pressure [Pa] absolute, > 0
/// @param temperature [K] > 0
/// @return [kg/m3] density
/// Range: air as an ideal gas, near atmospheric pressure and below.
/// Errors: InputError `hydraulics.air_pressure`, `hydraulics.air_temperature` where out of range
/// Source: ideal gas; R of the U.S. Standard Atmosphere, 1976
/// Verified by: tests/cpp/hydraulics/test_conveying.cpp
Density<> air_density(const Pressure<>& pressure, const Temperature<>& temperature);

/// How viscous air is.
///
/// Formula: mu = 1.458e-6 T^1.5 / (T + 110.4)
/// @param temperature [K] > 0
/// @return [Pa s] dynamic viscosity
/// Range: 100 to 1,900 K.
/// Errors: InputError `hydraulics.air_temperature` where out of range
/// Source: Sutherland's law, U.S. Standard Atmosphere, 1976, equation 51
/// Verified by: tests/cpp/hydraulics/test_conveying.cpp
DynamicViscosity<> air_viscosity(const Temperature<>& temperature);

/// How fast a grain falls in still air, which rising air must exceed to carry it.
///
/// Formula: (pi / 6) d^3 (rho_s - rho) g = Cd (pi / 8) d^2 rho v^2,
///          Cd = 24 / Re (1 + 0.1806 Re^0.6459) + 0.4251 / (1 + 6880.95 / Re)
/// @param size [m] d, diameter of the grain, > 0
/// @param grain_density [kg/m3] rho_s, of the solid itself, above the air's
/// @param density [kg/m3] rho, of the air, > 0
/// @param viscosity [Pa s] of the air, > 0
/// @return [m/s] terminal velocity
/// Range: spheres, Re below 260,000; leaves and flakes fall more slowly. The weight grows with the
///        drag without a gap, so that there is one answer, found by halving a bracket.
/// Errors: InputError `hydraulics.size`, `hydraulics.grain_density`, `hydraulics.density`,
///         `hydraulics.viscosity` where out of range
/// Source: A. Haider, O. Levenspiel, Powder Technology 58 (1989) 63, for spheres, as printed in the
///         documentation of the fluids library
/// Verified by: tests/cpp/hydraulics/test_conveying.cpp, tests/python/test_vacuum.py
Speed<> terminal_velocity(const Length<>& size, const Density<>& grain_density,
                          const Density<>& density, const DynamicViscosity<>& viscosity);

/// Below which air speed solids settle in a level hose.
///
/// Formula: V = (4 M 10^a g^(b / 2) D^(b / 2 - 2) / (pi rho))^(1 / (b + 1)),
///          a = 1440 d + 1.96, b = 1100 d + 2.5, d in m
/// @param solids [kg/s] M, mass of solids carried, > 0
/// @param size [m] d, diameter of the grains, > 0
/// @param density [kg/m3] rho, of the air, > 0
/// @param bore [m] D, inside diameter of the hose, > 0
/// @return [m/s] saltation velocity
/// Range: grains to a few millimetres; the exponents run away above.
/// Errors: InputError `hydraulics.solids`, `hydraulics.size`, `hydraulics.density`,
///         `hydraulics.bore` where out of range
/// Source: F. Rizk (1973), as printed in the documentation of the fluids library after M. Rhodes,
///         Introduction to Particle Technology
/// Verified by: tests/cpp/hydraulics/test_conveying.cpp
Speed<> saltation_velocity(const MassFlow& solids, const Length<>& size, const Density<>& density,
                           const Length<>& bore);

/// Which air speed lifts grains from a resting layer.
///
/// Formula: U / sqrt(g d) = 0.0428 Re^0.175 (D / d)^0.25 (rho_s / rho)^0.75, Re = rho U d / mu,
///          solved for U
/// @param size [m] d, diameter of the grains, > 0
/// @param grain_density [kg/m3] rho_s, of the solid itself, > 0
/// @param density [kg/m3] rho, of the air, > 0
/// @param viscosity [Pa s] mu, of the air, > 0
/// @param bore [m] D, inside diameter of the hose, > 0
/// @return [m/s] pick-up velocity
/// Range: coarse dry grains, Re about 25 to 5,000; wet dirt sticks and takes more.
/// Errors: InputError `hydraulics.size`, `hydraulics.grain_density`, `hydraulics.density`,
///         `hydraulics.viscosity`, `hydraulics.bore` where out of range
/// Source: F. J. Cabrejos, G. E. Klinzing, Powder Technology 79 (1994) 173; constants from memory
/// Verified by: tests/cpp/hydraulics/test_conveying.cpp
Speed<> pick_up_velocity(const Length<>& size, const Density<>& grain_density,
                         const Density<>& density, const DynamicViscosity<>& viscosity,
                         const Length<>& bore);

/// Air speeds that are published as least for carrying a kind of dust through a duct.
struct TransportVelocity {
    std::string_view dust;   ///< [text] kind of dust
    double low;              ///< [m/s] the least published
    double high;             ///< [m/s] the greatest published
    std::string_view source; ///< [text] tables, edition
};

/// Published least air speeds by kind of dust; bridge dirt is heavy or moist.
inline constexpr std::array<TransportVelocity, 5> transport_velocities{{
    {"very_fine_light", 12.0, 15.24, "ACGIH Industrial Ventilation (2009); duct makers' table"},
    {"dry_powder", 15.24, 20.32, "ACGIH Industrial Ventilation (2009); duct makers' table"},
    {"general", 17.78, 20.32, "duct makers' table"},
    {"heavy", 20.32, 23.0, "ACGIH Industrial Ventilation (2009); duct makers' table"},
    {"heavy_or_moist", 23.0, 23.0, "ACGIH Industrial Ventilation (2009): 23 m/s and up"},
}};

/// The least air speeds published for a kind of dust.
///
/// @param dust [text] one of the kinds in `transport_velocities`
/// @return [-] the row, in m/s
/// Range: ducts; a hose that is handled wants the higher value.
/// Errors: UnknownNameError `hydraulics.dust` naming the nearest
/// Source: the row's
/// Verified by: tests/cpp/hydraulics/test_conveying.cpp
const TransportVelocity& transport_velocity(std::string_view dust);

} // namespace scupper::hydraulics
