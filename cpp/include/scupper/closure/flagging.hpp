#pragma once
// Two directions that share one lane by flaggers or signals: green time, trucks, demand.

#include "scupper/closure/capacity.hpp"
#include "scupper/quantity.hpp"

#include <string_view>

namespace scupper::closure {

/// How steep the road is, as far as trucks mind.
enum class Terrain { level, rolling };

/// The terrain that a word names.
///
/// @param word [text] "level" or "rolling"
/// @return [-] the terrain
/// Range: any text.
/// Errors: UnknownNameError `closure.terrain` with the nearest word
/// Source: own convention
/// Verified by: tests/cpp/closure/test_flagging.cpp
Terrain terrain_by_name(std::string_view word);

/// The green of each direction that delays traffic least.
///
/// Formula: 0.0375 s for each ft of the lane that is shared, not below 20 s and not above 60 s
/// @param length [m] between the two places where traffic waits, >= 0
/// @return [s] green
/// Range: any length; outside 530 to 1,600 ft the limits hold.
/// Errors: InputError `closure.length` where negative
/// Source: Highway Capacity Manual, 7th edition, chapter 26, appendix B, example
/// Verified by: tests/cpp/closure/test_flagging.cpp
template <class T>
Time<T> optimal_green(const Length<T>& length);

/// How many passenger cars a truck stands for on a two-lane road.
///
/// Formula: by table from 100 to 900 vehicles an hour, linear in between
/// @param flow [each/s] vehicles of the direction, >= 0
/// @param terrain [-] level or rolling
/// @return [-] passenger cars
/// Range: any flow; the ends of the table hold beyond it.
/// Errors: InputError `closure.flow` where negative
/// Source: Highway Capacity Manual, 7th edition, exhibit 26-B4; 700 and 800 from memory
/// Verified by: tests/cpp/closure/test_flagging.cpp
double truck_equivalent(const TrafficFlow<>& flow, Terrain terrain);

/// How many passenger cars a recreational vehicle stands for on a two-lane road.
///
/// Formula: 1.0 level, 1.1 rolling
/// @param terrain [-] level or rolling
/// @return [-] passenger cars
/// Range: any terrain.
/// Errors: none.
/// Source: Highway Capacity Manual, 7th edition, exhibit 26-B4
/// Verified by: tests/cpp/closure/test_flagging.cpp
double recreational_equivalent(Terrain terrain);

/// The demand that a lane has to serve, in passenger cars and at the peak of the hour.
///
/// Formula: v = V / (PHF f_g f_HV)
/// @param demand [each/s] V, vehicles of the hour, >= 0
/// @param peak_factor [-] PHF, mean flow to that of the peak quarter, > 0, <= 1
/// @param grade_factor [-] f_g, > 0
/// @param heavy_factor [-] f_HV of `heavy_vehicle_factor`, > 0, <= 1
/// @return [each/s] passenger cars
/// Range: two-lane roads.
/// Errors: InputError `closure.demand`, `closure.peak_factor`, `closure.grade_factor`,
/// `closure.heavy_factor` where out of range
/// Source: Highway Capacity Manual, 7th edition, chapter 26, appendix B, step 1
/// Verified by: tests/cpp/closure/test_flagging.cpp
template <class T>
TrafficFlow<T> passenger_car_demand(const TrafficFlow<T>& demand, const T& peak_factor,
                                    const T& grade_factor, const T& heavy_factor);

/// The speed at which vehicles pass the shared lane, where nothing else holds them back.
///
/// Formula: the limit less 2.4 mph, not below 5 mph
/// @param limit [m/s] posted in the work zone, > 0
/// @return [m/s] speed
/// Range: two-lane roads; lane beside the work. Flaggers who lead traffic by a pilot car set it.
/// Errors: InputError `closure.limit` where out of range
/// Source: Highway Capacity Manual, 7th edition, chapter 26, appendix B, step 2; the floor: own
/// convention
/// Verified by: tests/cpp/closure/test_flagging.cpp
template <class T>
Speed<T> one_lane_speed(const Speed<T>& limit);

} // namespace scupper::closure
