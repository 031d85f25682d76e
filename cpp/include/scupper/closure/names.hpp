#pragma once
// The words in which people name closures, tapers, road classes and editions. Case, blanks and
// punctuation do not matter: "Urban (low speed)" is urban_low_speed.

#include "scupper/closure/kind.hpp"
#include "scupper/closure/signs.hpp"
#include "scupper/closure/taper.hpp"

#include <string_view>

namespace scupper::closure {

/// The kind of closure that a word names.
///
/// @param word [text] one of `closure_kind_names`
/// @return [-] the kind
/// Range: any text.
/// Errors: UnknownNameError `closure.kind` with the nearest word
/// Source: own convention
/// Verified by: tests/cpp/closure/test_names.cpp
Kind kind_by_name(std::string_view word);

/// The kind of taper that a word names.
///
/// @param word [text] "merging", "shifting", "shoulder", "one_lane_two_way" or "downstream"
/// @return [-] the kind
/// Range: any text.
/// Errors: UnknownNameError `closure.taper_kind` with the nearest word
/// Source: own convention
/// Verified by: tests/cpp/closure/test_names.cpp
TaperKind taper_kind_by_name(std::string_view word);

/// The edition of the manual that a year names.
///
/// @param word [text] "2009" or "2023", also "manual_2009" and "manual_2023"
/// @return [-] the edition
/// Range: any text.
/// Errors: UnknownNameError `closure.edition` with the nearest word
/// Source: own convention
/// Verified by: tests/cpp/closure/test_names.cpp
Edition edition_by_name(std::string_view word);

/// The road class that a word or a line of a printed table names.
///
/// @param word [text] one of `road_class_names`, "expressway/freeway", or a state class:
///   "urban 25 mph or less", "urban over 25 to 40 mph", "urban over 40 mph", "urban 30 mph",
///   "urban 35 mph", "urban 40 mph", "urban 45 mph", "urban 50 mph or more"
/// @return [-] the class
/// Range: any text.
/// Errors: UnknownNameError `closure.road_class` with the nearest word
/// Source: own convention; the tables named at `sign_spacing`
/// Verified by: tests/cpp/closure/test_names.cpp
RoadClass road_class_by_name(std::string_view word);

} // namespace scupper::closure
