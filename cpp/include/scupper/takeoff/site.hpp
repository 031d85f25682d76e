#pragma once
// What the record tells about the site: the weight posting of the bridge, and the road on it.

#include "scupper/structure.hpp"
#include "scupper/uncertain.hpp"

#include <cstdint>

namespace scupper::takeoff {

/// What the record says about the weight that a bridge carries.
enum class WeightSign : std::uint8_t {
    none,        ///< nothing that limits a weight
    posted,      ///< posted for load
    recommended, ///< a posting is recommended, the signs are not all there
    other,       ///< posted for something else: speed, number of vehicles on the bridge
    closed,      ///< closed to all traffic
};

/// What item 41 says about the weight that a bridge carries.
///
/// @param posting [-] code letter of item 41
/// @return [-] posted for P, recommended for B, other for R, closed for K; else none
/// Range: any letter.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995), item 41
/// Verified by: tests/cpp/takeoff/test_site.cpp
WeightSign weight_sign(char posting);

/// The greatest weight that the posting of a bridge allows, which no record tells.
///
/// @param structure [-] one record; its items 41 and 70 are read
/// @return [kg] low, likely, high, assumed; NaN where the bridge is not posted for load
/// Range: any record. The sign on the bridge governs.
/// Errors: none.
/// Source: rules `posting.limit` in `rules()`, each with its own
/// Verified by: tests/cpp/takeoff/test_site.cpp
Uncertain infer_posted_limit(const Structure& structure);

/// Whether the paint of a steel bridge is presumed to hold lead.
///
/// @param year_built [year] item 27; negative where it is not recorded
/// @return [-] true up to 1980, and where the year is not recorded
/// Range: any year. A test of the paint governs; new paint over old is still old.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/takeoff/test_site.cpp
bool may_hold_lead(int year_built);

/// How high the girders' underside stands above the ground or water.
///
/// @param structure [-] one record; its items 39, 54A and 54B are read
/// @return [m] low, likely, high with the rule they follow from
/// Range: any record. Water rises and falls; a survey governs.
/// Errors: none.
/// Source: rules `site.clearance.*` in `rules()`, each with its own
/// Verified by: tests/cpp/takeoff/test_site.cpp
Uncertain infer_clearance(const Structure& structure);

/// The road on a bridge, as far as a closure depends on it.
struct Road {
    Uncertain speed;          ///< [m/s] of the traffic
    Uncertain lane_width;     ///< [m]
    Uncertain shoulder_width; ///< [m] beside the right lane, on the bridge
};

/// The road on a bridge by functional class, lanes and roadway width.
///
/// @param structure [-] one record; its items 26, 28A and 51 are read
/// @return [SI unit of each] low, likely, high with the rule they follow from
/// Range: any record. The posted limit and the site govern.
/// Errors: none.
/// Source: rules `road.*` in `rules()`: common practice
/// Verified by: tests/cpp/takeoff/test_site.cpp
Road infer_road(const Structure& structure);

} // namespace scupper::takeoff
