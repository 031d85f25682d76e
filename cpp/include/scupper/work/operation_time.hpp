#pragma once
// The time and water of one operation on site.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::work {

/// The time on the clock that productive time takes.
///
/// Formula: t = t_productive / share
/// @param productive [s] productive time
/// @param productive_share [-] productive minutes in a clock hour / 60, > 0
/// @return [s] time on the clock, short breaks in it
/// Range: share in (0, 1].
/// Errors: none; a share of 0 gives infinity.
/// Source: common practice (the 45-minute hour)
/// Verified by: tests/cpp/work/test_operation_time.cpp
template <class T>
Time<T> clock_time(const Time<T>& productive, const T& productive_share);

/// The water a nozzle gives while an operation lasts.
///
/// Formula: V = Q t share
/// @param flow [m3/s] flow at the nozzle
/// @param productive [s] productive time
/// @param trigger_share [-] share of that time the trigger is open
/// @return [m3] water
/// Range: share in [0, 1].
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/work/test_operation_time.cpp
template <class T>
Volume<T> nozzle_water(const Flow<T>& flow, const Time<T>& productive, const T& trigger_share);

/// The time of one trip there and back with a stop.
///
/// Formula: t = 2 d / v + t_stop
/// @param distance [m] one way
/// @param speed [m/s] mean speed, > 0
/// @param stop [s] time at the far end
/// @return [s] time of a trip
/// Range: distance >= 0.
/// Errors: none; a speed of 0 gives infinity.
/// Source: definition
/// Verified by: tests/cpp/work/test_operation_time.cpp
template <class T>
Time<T> trip_time(const Length<T>& distance, const Speed<T>& speed, const Time<T>& stop);

/// How long the crew waits where vehicles take turns: while one is away the others keep the work
/// going.
///
/// Formula: t = t_away - (n - 1) t_work, not below 0
/// @param away [s] t_away, all trips of one vehicle alone
/// @param work [s] t_work, the work between these trips
/// @param vehicles [each] n, >= 1; with one the crew waits for every trip
/// @return [s] waiting on the clock
/// Range: away, work >= 0. Trips and work spread evenly.
/// Errors: none.
/// Source: common practice (vehicles in rotation)
/// Verified by: tests/cpp/work/test_operation_time.cpp
template <class T>
Time<T> waiting_time(const Time<T>& away, const Time<T>& work, const Count<T>& vehicles);

/// How often a tank is refilled.
///
/// Formula: n = V / tank, every load fetched, where the outing shares it; else
/// n = count_up(V / tank) - 1, the first load brought along, not below 0
/// @param water [m3] water used
/// @param tank [m3] usable tank volume, > 0
/// @param shared [-] whether structures of an outing share the loads
/// @return [each] refills
/// Range: water >= 0.
/// Errors: none; a tank of 0 gives infinity.
/// Source: definition
/// Verified by: tests/cpp/work/test_operation_time.cpp
template <class T>
Count<T> refills(const Volume<T>& water, const Volume<T>& tank, bool shared);

/// How much of the water is fetched rather than brought along.
///
/// Formula: V, where the outing shares the loads; else V - tank, not below 0
/// @param water [m3] V, water used
/// @param tank [m3] water that the truck brings along
/// @param shared [-] whether structures of an outing share the loads
/// @return [m3] water that is filled in while the crew is at the structure
/// Range: water >= 0.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/work/test_operation_time.cpp
template <class T>
Volume<T> water_fetched(const Volume<T>& water, const Volume<T>& tank, bool shared);

} // namespace scupper::work
