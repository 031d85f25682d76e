#pragma once
// What the closure of an estimate does to those who drive past: when it may stand, queue, delay,
// cost. It stands beside the price and is no part of it.

#include "scupper/closure.hpp"
#include "scupper/estimate/estimate.hpp"

#include <array>
#include <string>
#include <vector>

namespace scupper::estimate {

/// The traffic past the closures of one structure. With several stages the figures of one closure are
/// those of the first that has one, and the total is the sum over all of them.
struct RoadUsers {
    std::string stage; ///< [text] name of the stage; empty where there is one
    closure::Kind kind = closure::Kind::none; ///< [-] how the road is closed
    bool known = false;                       ///< [-] whether anybody tells how many vehicles pass
    closure::TrafficDay day;                  ///< [each/s] of the busier direction
    std::array<std::size_t, closure::hours_a_day> permitted{}; ///< [-] hours from each hour on
    closure::HourSpan window{0, 0};     ///< [-] longest permitted in the part of day that is worked
    std::size_t start = 0;              ///< [-] hour at which a closure begins
    Time<> closed;                      ///< [s] that one closure stands
    Count<> closures;                   ///< [each] of the visit
    closure::Queue queue;               ///< [each, s] of one closure, busier direction
    Length<> queue_length;              ///< [m] of the longest queue
    closure::VehicleTime<> queue_delay; ///< [each s] of one closure, all directions it holds up
    closure::VehicleTime<> slow_delay;  ///< [each s] lost by slower driving and by taking turns
    AmountPerTime<> time_value;         ///< [currency/s] of one vehicle; NaN where none is given
    Amount<> per_closure;               ///< [currency] of one closure
    Amount<> total;                     ///< [currency] of all closures of the visit
    AmountPerTime<> per_hour;           ///< [currency/s] while it stands, on average
    std::vector<std::string> sources;   ///< [text] values of time and of a detour, and whose
    std::vector<std::string> cautions;  ///< [text] what it rests on
    std::vector<std::string> not_figured; ///< [text] what no record or job tells; it is warned of
    std::vector<RoadUsers> stages;        ///< [-, n] each stage with a closure, with its own total
};

/// What the closure of an estimate does to traffic, at the values that are priced.
///
/// Formula: demand by `closure::hourly_demand`, capacity by the job's method or by flaggers, queue
/// by `closure::queue`, slower driving along tapers, buffer and work space, a detour where the road
/// is closed in full; cost = lost time x its value + running cost of a detour
/// @param estimate [-] an estimate
/// @return [each, s, currency] windows, queue, delay and cost
/// Range: one closure after the other, those of a stage all alike. The direction that is closed
/// counts as the busier one all day. A total is NaN where one stage's cannot be figured.
/// Errors: those of `closure::work_zone_capacity`
/// Source: the formulas it calls
/// Verified by: tests/cpp/estimate/test_road_users.cpp
RoadUsers road_users(const Estimate& estimate);

/// The people of one kind at one step of a closure.
struct ClosureEffort {
    std::string step;                        ///< "closure_set_up"
    std::string people;                      ///< [text] name of the people
    Count<> number;                          ///< [each] of them
    Time<> time;                             ///< [s] of each, all closures of the visit
    Quantity<dim::count * dim::time> labour; ///< [each s] together
};

/// What setting up, changing sides and removing the closures takes, by people.
///
/// Formula: labour = number x time
/// @param estimate [-] an estimate
/// @return [each, s, n] a row for each step and kind of people
/// Range: any estimate; none without a closure.
/// Errors: none.
/// Source: as `price`
/// Verified by: tests/cpp/estimate/test_road_users.cpp
std::vector<ClosureEffort> closure_effort(const Estimate& estimate);

} // namespace scupper::estimate
