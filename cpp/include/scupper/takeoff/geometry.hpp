#pragma once
// Surfaces and lengths that the take-off is made of.

#include "scupper/quantity.hpp"

namespace scupper::takeoff {

/// How long a line across the deck is where the supports are skewed.
///
/// Formula: W / cos(skew)
/// @param width [m] square to the roadway, >= 0
/// @param skew [rad] between a support and the square line, 0 to below pi / 2
/// @return [m] length along the skew
/// Range: grows without limit towards a right angle; inferred skews end at 75 degrees.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995) item 49, example
/// Verified by: tests/cpp/takeoff/test_geometry.cpp
template <class T>
Length<T> skew_length(const Length<T>& width, const Angle<T>& skew);

/// How much surface a girder shows for each unit of its length.
///
/// Formula: 2 d f + n b
/// @param depth [m] d, >= 0
/// @param face_factor [-] f, surface of one side over its outline
/// @param flange_faces [-] n, faces of flange width: 3 for an I below a deck, 1 for a box or stem
/// @param flange_width [m] b, >= 0
/// @return [m2/m] exposed girth; the face beneath the deck is not part of it
/// Range: square corners, webs of no thickness (1 % too much for rolled shapes).
/// Errors: none.
/// Source: geometry
/// Verified by: tests/cpp/takeoff/test_geometry.cpp
template <class T>
Length<T> girder_girth(const Length<T>& depth, const T& face_factor, int flange_faces,
                       const Length<T>& flange_width);

/// How much surface the sides and ends of a cap or a pier wall show.
///
/// Formula: 2 (L + w) h
/// @param length [m] L, >= 0
/// @param width [m] w, >= 0
/// @param height [m] h, >= 0
/// @return [m2] all four upright faces; neither the top nor the soffit
/// Range: rectangular in plan.
/// Errors: none.
/// Source: geometry
/// Verified by: tests/cpp/takeoff/test_geometry.cpp
template <class T>
Area<T> upright_surface(const Length<T>& length, const Length<T>& width, const Length<T>& height);

/// How much of a footing's top lies open around what stands on it.
///
/// Formula: (L + 2 p) (w + 2 p) - L w = 2 p (L + w + 2 p)
/// @param length [m] L, of the wall or column, >= 0
/// @param width [m] w, of the wall or column, >= 0
/// @param projection [m] p, of the footing beyond it on every side, >= 0
/// @return [m2] the ledge on which dirt lies
/// Range: rectangular in plan; a round column is taken as square.
/// Errors: none.
/// Source: geometry
/// Verified by: tests/cpp/takeoff/test_geometry.cpp
template <class T>
Area<T> ledge_surface(const Length<T>& length, const Length<T>& width, const Length<T>& projection);

/// How much surface a round column shows.
///
/// Formula: pi D h
/// @param diameter [m] D, >= 0
/// @param height [m] h, >= 0
/// @return [m2] its side
/// Range: round columns; square ones have 4 / pi of it.
/// Errors: none.
/// Source: geometry
/// Verified by: tests/cpp/takeoff/test_geometry.cpp
template <class T>
Area<T> column_surface(const Length<T>& diameter, const Length<T>& height);

/// How many girder ends one line has at deck joints: one at an abutment, two at a pier.
///
/// Formula: min(j, 2) + 2 max(j - 2, 0)
/// @param joints [-] j, deck joints, >= 0; the first two stand at the abutments
/// @return [-] ends of one girder line
/// Range: a drawn count need not be whole.
/// Errors: none.
/// Source: geometry
/// Verified by: tests/cpp/takeoff/test_geometry.cpp
template <class T>
Count<T> ends_at_joints(const Count<T>& joints);

} // namespace scupper::takeoff
