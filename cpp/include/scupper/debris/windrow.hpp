#pragma once
// How wide and high loosened dirt lies, and what it leaves of the shoulder.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::debris {

/// What a windrow leans on.
enum class Lean {
    parapet, ///< one slope, the other side upright against a curb or parapet
    none,    ///< two slopes, in the open
};

/// A windrow across its length.
template <class T = double>
struct Windrow {
    Area<T> section;  ///< [m2] area of the cross-section
    Length<T> width;  ///< [m] on the deck
    Length<T> height; ///< [m] at its top
};

/// How wide and high a windrow lies.
///
/// Formula: A = V / L; against a parapet A = b h / 2 with h = b tan(phi): b = sqrt(2 A / tan(phi));
/// in the open A = b h / 2 with h = b tan(phi) / 2: b = 2 sqrt(A / tan(phi))
/// @param volume [m3] dirt in it, loose, >= 0
/// @param length [m] of the windrow, > 0
/// @param repose [rad] angle of repose, > 0 and < pi / 2
/// @param lean [-] against a parapet or in the open
/// @return [m2, m, m] cross-section, width, height
/// Range: a straight windrow of even section; flowing mud has no angle of repose.
/// Errors: InputError `debris.volume`, `debris.length`, `debris.repose` where out of range
/// Source: geometry of a triangle
/// Verified by: tests/cpp/debris/test_windrow.cpp
template <class T>
Windrow<T> windrow(const Volume<T>& volume, const Length<T>& length, const Angle<T>& repose,
                   Lean lean);

/// How much of a shoulder a windrow leaves clear.
///
/// Formula: c = s - b
/// @param shoulder [m] s, its width, >= 0
/// @param width [m] b, of the windrow, >= 0
/// @return [m] clear width; at or below 0 the shoulder is blocked, below 0 by that much of the lane
/// Range: any.
/// Errors: InputError `debris.shoulder`, `debris.width` where below 0 or not a number
/// Source: definition
/// Verified by: tests/cpp/debris/test_windrow.cpp
template <class T>
Length<T> clear_shoulder(const Length<T>& shoulder, const Length<T>& width);

/// Whether a windrow leaves nothing of a shoulder.
///
/// Formula: clear_shoulder <= 0
/// @param shoulder [m] its width, >= 0
/// @param width [m] of the windrow, >= 0
/// @return [-] true where nothing is left, or the windrow reaches into the lane
/// Range: any.
/// Errors: as `clear_shoulder`
/// Source: definition
/// Verified by: tests/cpp/debris/test_windrow.cpp
bool blocks_shoulder(const Length<>& shoulder, const Length<>& width);

} // namespace scupper::debris
