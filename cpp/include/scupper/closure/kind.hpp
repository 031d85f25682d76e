#pragma once
// Which closure a road probably needs while a bridge is cleaned.
//
// A starting point only: the agency's traffic control plan and the manual it has adopted govern.

#include <string_view>

namespace scupper::closure {

/// How the road is narrowed or closed; the words are `closure_kind_names`, in this order.
enum class Kind {
    none,
    shoulder,
    one_lane_two_way,
    rural_lane,
    freeway_lane,
    two_freeway_lanes,
    full_closure,
    off_road
};

/// What the record tells about the road on the structure; a negative number is "not recorded".
struct Road {
    int lanes = -1;            ///< [-] lanes on the structure, item 28A
    int direction = -1;        ///< [-] code of item 102: 0 none, 1 one way, 2 two way, 3 one lane
    int functional_class = -1; ///< [-] code of item 26: 1, 11, 12 are freeways
};

/// The closure that common practice would set up for deck work on a road.
///
/// Formula: no lanes: none; one lane for both ways, or a ramp of one lane: full closure; up to two lanes two way: one
/// lane two way by flaggers; more lanes: one lane closed, of the freeway kind on freeways
/// @param road [-] what the record tells
/// @return [-] the kind of closure; one_lane_two_way where the record does not tell the lanes
/// Range: any codes.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/closure/test_kind.cpp
Kind kind_by_record(const Road& road);

/// The word for a kind of closure, as jobs, rate books and results write it.
///
/// @param kind [-] how the road is narrowed or closed
/// @return [text] one of `closure_kind_names`, "one_lane_two_way"
/// Range: every kind.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/closure/test_kind.cpp
std::string_view kind_name(Kind kind);

/// Whether a functional class is a freeway.
///
/// @param functional_class [-] code of item 26
/// @return [-] true for 01 (rural interstate), 11 (urban interstate), 12 (urban freeway)
/// Range: any code.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995), item 26
/// Verified by: tests/cpp/closure/test_kind.cpp
bool is_freeway(int functional_class);

/// Whether a kind of closure takes a lane, or the whole road, from the traffic.
///
/// @param kind [-] how the road is narrowed or closed
/// @return [-] false for none, shoulder and off_road
/// Range: every kind.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/closure/test_kind.cpp
bool takes_a_lane(Kind kind);

} // namespace scupper::closure
