#pragma once
// How much a haul truck may carry, and how many loads that makes.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::debris {

/// Dirt, or dirt and the water picked up with it.
template <class T = double>
struct Bulk {
    Volume<T> volume{T(0.0)}; ///< [m3]
    Mass<T> mass{T(0.0)};     ///< [kg]
};

/// How much debris a truck may carry: fresh water left aboard shares its legal weight.
///
/// Formula: m = gross limit - empty mass - V density
/// @param gross_limit [kg] legal weight, loaded
/// @param empty_mass [kg] weight, empty
/// @param water_aboard [m3] fresh water left aboard when dumping
/// @param water_density [kg/m3] of that water
/// @return [kg] payload; not positive where the truck may carry nothing
/// Range: any.
/// Errors: none; the estimate refuses a payload that is not positive.
/// Source: common practice (62,000 lb gross, 42,000 lb empty, 5,000 lb of water: 15,000 lb)
/// Verified by: tests/cpp/debris/test_loads.cpp
template <class T>
Mass<T> payload(const Mass<T>& gross_limit, const Mass<T>& empty_mass,
                const Volume<T>& water_aboard, const Density<T>& water_density);

/// Debris with water that was picked up with it; the water adds its volume and its mass.
///
/// Formula: V = V_debris + V_water, m = m_debris + V_water density
/// @param debris [m3, kg] debris
/// @param water [m3] water picked up
/// @param water_density [kg/m3] of that water
/// @return [m3, kg] both together
/// Range: any.
/// Errors: none.
/// Source: definition; the water is not taken to fill the pores of the dirt
/// Verified by: tests/cpp/debris/test_loads.cpp
template <class T>
Bulk<T> with_water(const Bulk<T>& debris, const Volume<T>& water, const Density<T>& water_density);

/// How many truck loads debris makes: weight or volume governs, whichever makes more.
///
/// Formula: n = max(m / payload, V / room); counted up where a load is not shared with others
/// @param debris [m3, kg] what is hauled
/// @param truck [m3, kg] what the truck holds and may carry
/// @param shared [-] whether structures of an outing fill a load together
/// @return [each] loads, whole unless shared
/// Range: debris >= 0.
/// Errors: none; a payload that is not positive gives NaN, no room gives infinity.
/// Source: definition
/// Verified by: tests/cpp/debris/test_loads.cpp
template <class T>
Count<T> loads(const Bulk<T>& debris, const Bulk<T>& truck, bool shared);

} // namespace scupper::debris
