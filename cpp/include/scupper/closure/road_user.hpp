#pragma once
// What a closure costs those who drive past it. Values of time are inputs: an agency has its own.

#include "scupper/closure/queue.hpp"
#include "scupper/quantity.hpp"

namespace scupper::closure {

/// The value of an hour of a vehicle of mixed traffic.
///
/// Formula: value = (1 - trucks) car + trucks truck
/// @param car [currency/s] of a car with its people
/// @param truck [currency/s] of a truck with its driver and load
/// @param truck_share [-] share of trucks, 0 to 1
/// @return [currency/s] of one vehicle
/// Range: any.
/// Errors: InputError `closure.truck_share` where out of range
/// Source: definition
/// Verified by: tests/cpp/closure/test_road_user.cpp
template <class T>
AmountPerTime<T> time_value(const AmountPerTime<T>& car, const AmountPerTime<T>& truck,
                            const T& truck_share);

/// What lost time costs.
///
/// Formula: cost = vehicle-hours x value
/// @param delay [each s] vehicles times the time each loses
/// @param value [currency/s] of one vehicle
/// @return [currency] cost
/// Range: any.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/closure/test_road_user.cpp
template <class T>
Amount<T> delay_cost(const VehicleTime<T>& delay, const AmountPerTime<T>& value);

/// The time lost by driving slower past a closure, besides any queue.
///
/// Formula: delay = vehicles x length x (1 / slow - 1 / usual), not below 0
/// @param vehicles [each] that pass
/// @param length [m] of the stretch, >= 0
/// @param usual [m/s] speed without closure, > 0
/// @param slow [m/s] speed past it, > 0
/// @return [each s] lost by all
/// Range: any.
/// Errors: InputError `closure.vehicles`, `closure.length`, `closure.usual`, `closure.slow` where
/// out of range
/// Source: definition
/// Verified by: tests/cpp/closure/test_road_user.cpp
template <class T>
VehicleTime<T> slowing_delay(const Count<T>& vehicles, const Length<T>& length,
                             const Speed<T>& usual, const Speed<T>& slow);

/// The time lost by those who wait for their turn in a lane that both directions share.
///
/// Formula: delay = vehicles x (cycle - green)^2 / (2 cycle): who comes in green passes, who comes
/// in red waits for half of it on average
/// @param vehicles [each] of both directions
/// @param cycle [s] from a direction's green to its next, > 0
/// @param green [s] of a direction, > 0, <= cycle
/// @return [each s] lost by all
/// Range: demand well below capacity: the time a line takes to start is not counted.
/// Errors: InputError `closure.vehicles`, `closure.cycle`, `closure.green` where out of range
/// Source: uniform delay at a fixed signal, common practice
/// Verified by: tests/cpp/closure/test_road_user.cpp
template <class T>
VehicleTime<T> turn_delay(const Count<T>& vehicles, const Time<T>& cycle, const Time<T>& green);

/// What it costs to drive round a closed road.
///
/// Formula: cost = vehicles x detour x (value / speed + running cost)
/// @param vehicles [each] that would have passed
/// @param detour [m] how much longer the way is, >= 0
/// @param speed [m/s] on it, > 0
/// @param value [currency/s] of a vehicle's time
/// @param running [currency/m] of a vehicle
/// @return [currency] cost
/// Range: every vehicle takes the detour; the congestion of other roads is not seen.
/// Errors: InputError `closure.vehicles`, `closure.detour`, `closure.speed` where out of range
/// Source: definition
/// Verified by: tests/cpp/closure/test_road_user.cpp
template <class T>
Amount<T> detour_cost(const Count<T>& vehicles, const Length<T>& detour, const Speed<T>& speed,
                      const AmountPerTime<T>& value,
                      const Quantity<dim::money / dim::length, T>& running);

/// What an owner compares bids by who counts the days that the road is closed.
///
/// Formula: A + B = bid + days x road-user cost of a day
/// @param bid [currency] price of the work
/// @param time [s] that the bidder asks for
/// @param daily_cost [currency/s] road-user cost
/// @return [currency] the sum that is compared; not what is paid
/// Range: any.
/// Errors: none.
/// Source: cost-plus-time bidding, common practice
/// Verified by: tests/cpp/closure/test_road_user.cpp
template <class T>
Amount<T> bid_with_time(const Amount<T>& bid, const Time<T>& time,
                        const AmountPerTime<T>& daily_cost);

} // namespace scupper::closure
