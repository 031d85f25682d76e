#pragma once
// What a road carries while lanes are closed, by several published methods.

#include "scupper/closure/capacity.hpp"
#include "scupper/quantity.hpp"

#include <string_view>

namespace scupper::closure {

/// By what the capacity of a lane closure is judged; the words are `capacity_method_names`, in this
/// order.
enum class CapacityMethod { hcm_2000, hcm_2010, hcm_7, missouri_2011, north_carolina_1996 };

/// A lane closure as the methods see it.
struct LaneClosure {
    int lanes = 2;                 ///< [-] of the direction, before
    int open = 1;                  ///< [-] of the direction, during
    bool barrier = false;          ///< [-] concrete barrier; else cones, drums
    bool rural = true;             ///< [-] area; else urban
    bool night = false;            ///< [-] dark; else daylight
    Length<> clearance;            ///< [m] open lane's edge to the devices
    double truck_share = 0.0;      ///< [-] share of trucks
    double truck_equivalent = 1.5; ///< [-] cars that a truck stands for
    TrafficFlow<> intensity;       ///< [each/s] for the intensity of the work, each lane; hcm_2000
};

/// The method that a word names.
///
/// @param word [text] one of `capacity_method_names`
/// @return [-] the method
/// Range: any text.
/// Errors: UnknownNameError `closure.capacity_method` with the nearest word
/// Source: own convention
/// Verified by: tests/cpp/closure/test_work_zone.cpp
CapacityMethod capacity_method_by_name(std::string_view word);

/// How severe a lane closure is: the fewer lanes stay open, the more.
///
/// Formula: LCSI = 1 / (open / lanes x open)
/// @param lanes [-] of the direction, before, >= 1
/// @param open [-] of the direction, during, 1 to lanes
/// @return [-] lane closure severity index
/// Range: any whole numbers.
/// Errors: InputError `closure.lanes`, `closure.open` where out of range
/// Source: Highway Capacity Manual, 7th edition, equation 10-7
/// Verified by: tests/cpp/closure/test_work_zone.cpp
double closure_severity(int lanes, int open);

/// What a lane discharges from the queue of a freeway work zone, in passenger cars.
///
/// Formula: QDR = 2,093 - 154 LCSI - 194 f_Br - 179 f_AT + 9 f_LAT - 59 f_DN, each lane and hour;
/// f_Br 1 without concrete barrier, f_AT 1 in rural areas, f_LAT in ft, f_DN 1 by night
/// @param closure [-] lanes, barrier, area, clearance, light
/// @return [each/s] passenger cars, each open lane
/// Range: freeways; 0 to 12 ft of lateral clearance.
/// Errors: those of `closure_severity`; InputError `closure.clearance` where out of range
/// Source: Highway Capacity Manual, 7th edition, equation 10-8
/// Verified by: tests/cpp/closure/test_work_zone.cpp
TrafficFlow<> queue_discharge(const LaneClosure& closure);

/// What a lane of a work zone carries before its traffic breaks down.
///
/// Formula: c = QDR / (1 - drop)
/// @param discharge [each/s] from the queue, >= 0
/// @param drop [-] by which the discharge falls short of it, 0 <= drop < 1
/// @return [each/s] capacity
/// Range: a drop of 0.134 is the default of work zones, 0.07 elsewhere.
/// Errors: InputError `closure.discharge`, `closure.drop` where out of range
/// Source: Highway Capacity Manual, 7th edition, equation 10-9
/// Verified by: tests/cpp/closure/test_work_zone.cpp
template <class T>
TrafficFlow<T> capacity_before_queue(const TrafficFlow<T>& discharge, const T& drop);

/// The share by which trucks thin a flow of passenger cars.
///
/// Formula: f_HV = 1 / (1 + P (E - 1))
/// @param share [-] P, share of trucks, 0 to 1
/// @param equivalent [-] E, passenger cars that a truck stands for, >= 1
/// @return [-] vehicles for each passenger car
/// Range: any.
/// Errors: InputError `closure.truck_share`, `closure.truck_equivalent` where out of range
/// Source: Highway Capacity Manual (all editions)
/// Verified by: tests/cpp/closure/test_work_zone.cpp
template <class T>
T heavy_vehicle_factor(const T& share, const T& equivalent);

/// What all open lanes of a closure carry together, by a named method.
///
/// Formula: hcm_2000 (1,600 + intensity) f_HV; hcm_2010 by lanes before and during: 2 to 1 1,400,
/// 3 to 1 and 3 to 2 1,450, 4 to 1 1,350, 4 to 2 1,450, 4 to 3 1,500 vehicles; hcm_7 f_HV times the
/// queue discharge; missouri_2011 1,199 f_HV; north_carolina_1996 1,200 vehicles rural, 1,500
/// urban: each open lane and hour
/// @param closure [-] lanes, trucks, area, light
/// @param method [-] whose figures
/// @return [each/s] vehicles, all open lanes
/// Range: freeways; more than four lanes count as four in hcm_2010. On other roads a starting point.
/// Errors: those of `closure_severity`; InputError `closure.open` where no lane is closed and the
/// method knows closures alone
/// Source: Highway Capacity Manual 2000, as quoted in TPF-5(081); 2010, exhibit 10-14 (4 to 1, 2 and
/// 3 from memory); 7th edition, equation 10-8; Missouri Work Zone Capacity, TPF-5(081), 2011;
/// Transportation Research Record 1529 (1996)
/// Verified by: tests/cpp/closure/test_work_zone.cpp
TrafficFlow<> work_zone_capacity(const LaneClosure& closure, CapacityMethod method);

/// The speed of free traffic past a freeway work zone.
///
/// Formula: FFS = 9.95 + 33.49 f_Sr + 0.53 SL - 5.60 LCSI - 3.84 f_Br - 1.71 f_DN - 8.7 TRD in mph,
/// f_Sr the limit before over the limit in the zone, SL the latter, TRD ramps a mile
/// @param closure [-] lanes, barrier, light
/// @param limit [m/s] posted before the zone, > 0
/// @param zone_limit [m/s] posted in the zone, > 0
/// @param ramps [each/m] ramps along the road within three miles each way, >= 0
/// @return [m/s] speed, not above the limit before the zone
/// Range: freeways; f_Sr from 1 to 1.2, and held there.
/// Errors: those of `closure_severity`; InputError `closure.limit`, `closure.zone_limit`,
/// `closure.ramps` where out of range
/// Source: Highway Capacity Manual, 7th edition, equation 10-10
/// Verified by: tests/cpp/closure/test_work_zone.cpp
Speed<> work_zone_speed(const LaneClosure& closure, const Speed<>& limit, const Speed<>& zone_limit,
                        const Quantity<dim::count / dim::length>& ramps);

} // namespace scupper::closure
