#pragma once
// How long a deck may be before it needs its first drain.

#include "scupper/quantity.hpp"

namespace scupper::takeoff {

/// The gutter of a deck: a shallow triangle between the cross slope and the curb.
struct Gutter {
    double roughness = 0.016; ///< [s/m^(1/3)] Manning's n; 0.013 in one state, 0.016 usual
    double cross_slope = 0.0; ///< [-] of the deck
    double fall = 0.0;        ///< [-] along the gutter
    Length<> spread;          ///< [m] width of water allowed
};

/// How much water a gutter carries at its spread.
///
/// Formula: Q = 0.376 / n Sx^(5/3) S^(1/2) T^(8/3), metre and second
/// @param gutter [-] n, Sx, S and T, each > 0
/// @return [m3/s] flow
/// Range: shallow triangular gutters; 0.376 is 0.56 in feet, rounded to 0.2 %.
/// Errors: InputError `takeoff.gutter` where one of them is not above 0
/// Source: FHWA HEC-21 (1993) ch. 4, equation 4 (form from memory, constant seen in a state guide)
/// Verified by: tests/cpp/takeoff/test_drainage.cpp
Flow<> gutter_flow(const Gutter& gutter);

/// How long a deck may be, from its high end, before it needs a drain.
///
/// Formula: L = Q / (C i W)
/// @param gutter [-] of the deck; Q is its `gutter_flow`
/// @param runoff [-] C, share of the rain that runs off, > 0 to 1
/// @param rain [m/s] i, intensity of the design storm, > 0
/// @param width [m] W, deck that drains to this gutter, > 0
/// @return [m] length without drains; shorter decks need none
/// Range: rational method, time of concentration neglected. Older decks have many more drains.
/// Errors: InputError `takeoff.gutter`, `takeoff.runoff`, `takeoff.rain`, `takeoff.width`
/// Source: FHWA HEC-21 (1993) ch. 8, inlet spacing (from memory)
/// Verified by: tests/cpp/takeoff/test_drainage.cpp
Length<> undrained_length(const Gutter& gutter, double runoff, const Speed<>& rain,
                          const Length<>& width);

} // namespace scupper::takeoff
