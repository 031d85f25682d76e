#pragma once
// What a debris tank holds: full by volume or by weight, and lighter once its water has drained.

#include "scupper/debris/loads.hpp"

namespace scupper::debris {

/// What goes into a tank before it is full, or the truck at its legal weight.
///
/// Formula: V = min(room, payload / rho), m = V rho
/// @param truck [m3, kg] room of the tank, and what the truck may carry
/// @param density [kg/m3] rho, of what is loaded, > 0
/// @return [m3, kg] one load
/// Range: any.
/// Errors: InputError `debris.room`, `debris.payload`, `debris.density` where not above 0
/// Source: definition; common practice: ten cubic yards of wet sand are too heavy for most trucks
/// Verified by: tests/cpp/debris/test_tank.cpp
template <class T>
Bulk<T> tank_fill(const Bulk<T>& truck, const Density<T>& density);

/// The density above which a truck is at its legal weight before its tank is full.
///
/// Formula: rho = payload / room
/// @param truck [m3, kg] room of the tank, and what the truck may carry
/// @return [kg/m3] density at which both are reached together
/// Range: any.
/// Errors: InputError `debris.room`, `debris.payload` where not above 0
/// Source: definition
/// Verified by: tests/cpp/debris/test_tank.cpp
template <class T>
Density<T> balanced_density(const Bulk<T>& truck);

/// Whether a truck is at its legal weight before its tank is full.
///
/// Formula: rho room > payload
/// @param truck [m3, kg] room of the tank, and what the truck may carry
/// @param density [kg/m3] rho, of what is loaded, > 0
/// @return [-] true where weight governs, false where volume does
/// Range: any.
/// Errors: as `tank_fill`
/// Source: definition
/// Verified by: tests/cpp/debris/test_tank.cpp
bool weight_governs(const Bulk<>& truck, const Density<>& density);

/// What is left of a wet load once its free liquid has run off, for a landfill takes no free liquid.
///
/// Formula: V' = V (1 - f), m' = m - f V rho
/// @param load [m3, kg] the wet load
/// @param free_share [-] f, free liquid over the volume of the load, 0 to 1
/// @param water_density [kg/m3] rho, of the liquid, > 0
/// @return [m3, kg] the drained load
/// Range: liquid that stands free; what the pores hold stays.
/// Errors: InputError `debris.volume`, `debris.mass` where below 0, `debris.free_share` where not
/// from 0 to 1 or the liquid would weigh more than the load, `debris.density`
/// Source: definition; 40 CFR 258.28 (no bulk liquids in a municipal landfill), from memory
/// Verified by: tests/cpp/debris/test_tank.cpp
template <class T>
Bulk<T> decanted(const Bulk<T>& load, const T& free_share, const Density<T>& water_density);

/// How many loads a truck makes of debris; one that may carry nothing is refused.
///
/// Formula: as `loads`
/// @param debris [m3, kg] what is hauled, >= 0
/// @param truck [m3, kg] what the truck holds and may carry, > 0
/// @param shared [-] whether a load is filled up elsewhere, so that parts of one count
/// @return [each] loads, whole unless shared
/// Range: any.
/// Errors: InputError `debris.volume`, `debris.mass` where below 0, `debris.room`,
/// `debris.payload` where not above 0
/// Source: definition
/// Verified by: tests/cpp/debris/test_tank.cpp
Count<> truck_loads(const Bulk<>& debris, const Bulk<>& truck, bool shared);

} // namespace scupper::debris
