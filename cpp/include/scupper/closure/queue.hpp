#pragma once
// Deterministic queuing: who cannot pass waits, in the order of coming.
//
// Arrivals and departures are straight lines within each stretch of time, so queue and delay are
// exact areas and distances between two lines. Peaks within a stretch, vehicles that turn away and
// the length of the queue itself are not seen.

#include "scupper/closure/capacity.hpp"
#include "scupper/quantity.hpp"

#include <optional>
#include <span>
#include <vector>

namespace scupper::closure {

/// Vehicles times the time each of them loses.
template <class T = double>
using VehicleTime = Quantity<dim::count * dim::time, T>;

/// A stretch of time with one demand and one capacity.
struct Period {
    Time<> length;          ///< [s] > 0
    TrafficFlow<> demand;   ///< [each/s] vehicles that come
    TrafficFlow<> capacity; ///< [each/s] vehicles that can pass
};

/// What one stretch of time leaves.
struct QueueStep {
    Time<> end;          ///< [s] of the stretch, from the start
    Count<> waiting;     ///< [each] at its end
    Count<> longest;     ///< [each] within it
    VehicleTime<> delay; ///< [each s] lost within it
};

/// A queue from its beginning on.
struct Queue {
    std::vector<QueueStep> steps;  ///< [-, n] one for each period
    Count<> longest;               ///< [each] greatest number waiting
    Time<> longest_at;             ///< [s] when
    VehicleTime<> delay;           ///< [each s] lost by all
    Time<> longest_delay;          ///< [s] of one vehicle; of those left, until the end
    Count<> arrived;               ///< [each] vehicles that came
    Count<> delayed;               ///< [each] of them that had to wait
    Count<> left;                  ///< [each] still waiting at the end
    std::optional<Time<>> cleared; ///< [s] when the last queue was gone; none where some are left
};

/// Runs a queue through periods of demand and capacity.
///
/// Formula: A(t) vehicles that came, D(t) that passed, D' = capacity while A > D, else the lesser
/// of demand and capacity; waiting = A - D; delay = area between A and D; the delay of a vehicle =
/// the time between them at its number
/// @param periods [s, each/s] one after the other
/// @return [each, s] the queue
/// Range: any number of periods; nobody waits before the first.
/// Errors: InputError `closure.period` where a length is not above 0, `closure.demand`,
/// `closure.capacity` where negative or no number
/// Source: definition of the deterministic (D/D/1) queue
/// Verified by: tests/cpp/closure/test_queue.cpp
Queue queue(std::span<const Period> periods);

/// How far a queue reaches back.
///
/// Formula: length = waiting x spacing / lanes
/// @param waiting [each] vehicles
/// @param spacing [m/each] road that a waiting vehicle takes, its gap in it, > 0
/// @param lanes [-] in which they wait side by side, >= 1
/// @return [m] length along the road
/// Range: any number.
/// Errors: InputError `closure.waiting`, `closure.spacing`, `closure.lanes` where out of range
/// Source: definition
/// Verified by: tests/cpp/closure/test_queue.cpp
template <class T>
Length<T> queue_length(const Count<T>& waiting,
                       const Quantity<dim::length / dim::count, T>& spacing, const T& lanes);

} // namespace scupper::closure
