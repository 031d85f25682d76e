#pragma once
// How far apart the advance warning signs stand.

#include "scupper/quantity.hpp"

namespace scupper::closure {

/// The edition of the manual that the agency has adopted.
enum class Edition {
    manual_2009, ///< 2009 edition with revisions; state figures: California 2014
    manual_2023  ///< 11th edition; state figures: California 2026
};

/// Road classes of the sign spacing tables. The first four are national, in both editions, and are
/// `road_class_names` in that order; the agency draws the line between low and high speed. The
/// others are how a state splits its urban streets.
enum class RoadClass {
    urban_low_speed,
    urban_high_speed,
    rural,
    freeway,             ///< and expressway
    urban_25_or_less,    ///< state, both editions
    urban_over_25_to_40, ///< state, 2009 edition
    urban_over_40,       ///< state, 2009 edition
    urban_30,            ///< state, 2023 edition, as all below
    urban_35,
    urban_40,
    urban_45,
    urban_50_or_more
};

/// Distances of the three advance warning signs; a driver passes C first.
struct SignSpacing {
    Length<> a; ///< [m] from the sign nearest the work to the start of the first taper
    Length<> b; ///< [m] from the second sign to the nearest
    Length<> c; ///< [m] from the first sign that a driver meets to the second
};

/// Which state class an urban street belongs to.
///
/// Formula: the class of the edition that holds the speed; a speed between two is of the faster
/// @param speed [m/s] of the traffic, > 0
/// @param edition [-] of the manual
/// @return [-] the class
/// Range: any positive speed.
/// Errors: InputError `closure.speed` where out of range
/// Source: California Manual on Uniform Traffic Control Devices, 2014, table 6H-3; 2026, 6B-1
/// Verified by: tests/cpp/closure/test_signs.cpp
RoadClass urban_class(const Speed<>& speed, Edition edition);

/// How far apart the advance warning signs stand at least.
///
/// Formula: by table. A class that the edition does not know takes the spacing that its fastest
/// traffic has there: "urban over 40 mph" of 2009 is 350 ft in 2023, "urban 30 mph" of 2023 is the
/// 250 ft of "over 25 to 40 mph" in 2009
/// @param road [-] road class
/// @param edition [-] of the manual
/// @return [m] A, B and C
/// Range: guidance, to be adjusted to the site. The national figures are the same in both editions.
/// Errors: none.
/// Source: Manual on Uniform Traffic Control Devices, 2009 edition, table 6C-1, and 11th edition,
///         table 6B-1 (from memory; they agree with the state tables); state classes: California
///         2014, table 6H-3, and 2026, table 6B-1
/// Verified by: tests/cpp/closure/test_signs.cpp
SignSpacing sign_spacing(RoadClass road, Edition edition);

/// How far before the first taper a driver meets the first sign.
///
/// Formula: A + B + C
/// @param spacing [m] of the three signs
/// @return [m] length of the advance warning area
/// Range: any spacing.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/closure/test_signs.cpp
Length<> advance_warning_length(const SignSpacing& spacing);

} // namespace scupper::closure
