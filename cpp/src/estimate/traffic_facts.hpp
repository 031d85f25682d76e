#pragma once
// The traffic on a structure's road, and what gets past its closure. Internal to the estimate.

#include "scupper/closure.hpp"
#include "scupper/estimate/resolve.hpp"
#include "scupper/takeoff.hpp"

#include <optional>

namespace scupper::estimate::detail {

/// The road on a structure: what the job or a survey gives, the rest by the record.
takeoff::Road road_of(const Structure& structure, const Resolved& resolved);
/// Where, and how, the road is narrowed by one kind of closure, at likely values.
closure::Site site_of(const Structure& structure, const Resolved& resolved, closure::Kind kind);

/// The traffic of a day past a closure, by the busier direction.
struct TrafficFacts {
    closure::TrafficDay day;     ///< [each/s] of the busier direction
    double other_direction;      ///< [-] demand of the other direction over that of the busier
    double truck_share;          ///< [-] share of trucks
    int lanes;                   ///< [-] of the direction, before
    Length<> shared_lane;        ///< [m] between flaggers; 0 without
    Time<> cycle, green;         ///< [s] of flaggers
    bool lanes_missing = false;  ///< [-] the record has fewer lanes than the closure takes
    bool trucks_assumed = false; ///< [-] no record tells the share of trucks
};

/// The traffic past a kind of closure; none where no record or job tells how many vehicles pass.
std::optional<TrafficFacts> traffic_facts(const Structure& structure, const Resolved& resolved,
                                          closure::Kind kind);
/// What the job lets traffic suffer, as vehicles and time; infinite where it says nothing.
closure::QueueLimits queue_limits(const Resolved& resolved, int lanes);
/// Whether the job limits queue or delay.
bool limits_traffic(const Resolved& resolved);
/// Whether traffic queues at a kind of closure: a detour takes it elsewhere, a shoulder none.
bool queues_at(closure::Kind kind);
/// The part of the day in which the job works.
closure::HourSpan part_of_day(const Job& job);

} // namespace scupper::estimate::detail
