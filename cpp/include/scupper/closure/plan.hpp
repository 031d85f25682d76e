#pragma once
// A first lay-out of a closure, from the first advance sign to the downstream taper.
//
// A starting point for time and material only. The agency's traffic control plan, the manual it
// has adopted and the judgment of a trained person govern.

#include "scupper/closure/devices.hpp"
#include "scupper/closure/kind.hpp"
#include "scupper/closure/signs.hpp"
#include "scupper/quantity.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace scupper::closure {

/// What every plan says before anything else.
inline constexpr std::string_view plan_caution =
    "A starting point for time and material only: the agency's traffic control plan and the manual "
    "it has adopted govern; a trained person adapts both to the site.";

/// Where, and how, a road is narrowed.
struct Site {
    Speed<> speed;                            ///< [m/s] of the traffic, > 0
    Kind kind = Kind::one_lane_two_way;       ///< [-] how the road is narrowed or closed
    RoadClass road = RoadClass::rural;        ///< [-] class of sign spacing
    Length<> lane_width{12.0 * factor::foot}; ///< [m] > 0
    Length<> shoulder_width;                  ///< [m] paved shoulder on the closed side, >= 0
    Length<> work_length;                     ///< [m] work space along the road, >= 0
    int lanes_closed = 0;                     ///< [-] 0: as many as the kind says
    Edition edition = Edition::manual_2023;   ///< [-] of the manual
    bool divided = false;                     ///< [-] by a median; freeway kinds always are
    double downgrade = 0.0;                   ///< [-] fall over run in the direction of travel
    int lanes = 0;        ///< [-] of the road in the picture; 0: those closed and one more
    Length<> set_back;    ///< [m] road's edge to the work, of kind off_road, >= 0
    bool at_curb = false; ///< [-] the set-back is measured from the face of a curb
};

/// One stretch of a closure in the direction of the traffic that loses its lane.
struct Element {
    std::string_view name; ///< "merging_taper"
    Length<> start;        ///< [m] from the first advance sign
    Length<> length;       ///< [m] along the road
    Count<> devices;       ///< [each] channelizing devices, one shared with the stretch before
};

/// What a closure consists of.
struct Plan {
    Kind kind = Kind::none;        ///< [-] how the road is narrowed or closed
    Site site;                     ///< [m, m/s, -] what it was laid out for
    std::vector<Element> elements; ///< in the order in which a driver meets them
    Length<> length;               ///< [m] first advance sign to end of downstream taper
    Length<> opposite_approach;    ///< [m] advance warning for the other direction, or 0
    Length<> taper;                ///< [m] tapers before the work space, together
    Length<> buffer;               ///< [m] between the last of them and the work space
    int advance_signs = 0;   ///< [-] three an approach, on both sides if divided; off the road one
    Count<> devices;         ///< [each] sum over the elements
    int arrow_boards = 0;    ///< [-]
    int shadow_vehicles = 0; ///< [-] with truck-mounted attenuator
    int flaggers = 0;        ///< [-] on duty at a time
    std::vector<std::string> cautions; ///< `plan_caution`, then what this plan leaves open
};

/// Lays out a closure in its usual order and counts what stands on the road.
///
/// Formula: advance warning C, B, A; where lanes are left by merging, a shoulder taper if the paved
/// shoulder is 8 ft wide or more, then a merging taper for each lane with 2 L between two of them;
/// buffer; work space; downstream taper. A shoulder closure has its taper only, a one-lane two-way
/// closure the short one, a full closure none; work off the road has one sign, or none where
/// `advance_warning_may_be_omitted`
/// @param site [m, m/s, -] where, and how
/// @return [m, each, -] elements, counts and cautions; a closure of kind none is empty
/// Range: stationary daytime work on a straight road, without ramps, crossings, footways. Not
///        counted: end-of-work and speed limit signs, barricades, detours, lights, message signs.
/// Errors: InputError `closure.speed`, `closure.lane_width`, `closure.shoulder_width`,
///         `closure.work_length`, `closure.lanes_closed`, `closure.lanes`, `closure.set_back`,
///         `closure.downgrade` where out of range
/// Source: Manual on Uniform Traffic Control Devices, 2009 edition, chapters 6C, 6F and 6H; 11th,
///         6B, 6K and 6P; the 2 L between merging tapers from memory of figure 6H-37
/// Verified by: tests/cpp/closure/test_plan.cpp
Plan plan(const Site& site);

/// Whether work off the road needs no advance warning.
///
/// Formula: more than 2 ft behind a curb, or 15 ft and more from the edge of the road
/// @param set_back [m] road's edge, or face of the curb, to the work, >= 0
/// @param at_curb [-] whether it is measured from a curb
/// @return [-] true where the signs may be left out
/// Range: work that neither vehicles nor people of the crew leave towards the road.
/// Errors: InputError `closure.set_back` where negative
/// Source: California edition 2026 of the Manual on Uniform Traffic Control Devices, 6B.04; the
/// 15 ft: notes for figure 6H-1 (2009; from memory)
/// Verified by: tests/cpp/closure/test_plan.cpp
bool advance_warning_may_be_omitted(const Length<>& set_back, bool at_curb);

/// The order in which a closure is taken away: against the traffic, the first sign last.
///
/// Formula: the elements reversed
/// @param plan [-] a lay-out
/// @return [m, each] its elements, last one first
/// Range: any plan.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/closure/test_plan.cpp
std::vector<Element> removal_order(const Plan& plan);

} // namespace scupper::closure
