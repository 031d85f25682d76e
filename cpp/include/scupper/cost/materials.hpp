#pragma once
// Water and disposal, mobilization by distance, escalation.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::cost {

/// Money for a distance.
template <class T = double>
using AmountPerLength = Quantity<dim::money / dim::length, T>;

/// Water from a main or hydrant: a permit or meter fee, and the volume.
///
/// Formula: F + V p
/// @param volume [m3] V, drawn, >= 0
/// @param price [currency/m3] p, >= 0
/// @param fee [currency] F, permit, meter, backflow preventer for the work, >= 0
/// @return [currency] amount
/// Range: any; without a fee it is water bought.
/// Errors: InputError `cost.volume`, `cost.price`, `cost.fee` where below 0
/// Source: common practice
/// Verified by: tests/cpp/cost/test_materials.cpp
template <class T>
Amount<T> hydrant_water(const Volume<T>& volume, const AmountPerVolume<T>& price,
                        const Amount<T>& fee);

/// Water that is hauled: whole truckloads, each with its trip, and the volume.
///
/// Formula: V p + count_up(V / B) t r
/// @param volume [m3] V, used, >= 0
/// @param price [currency/m3] p, >= 0
/// @param tank [m3] B, what a truck brings, > 0
/// @param trip [s] t, of a truck there and back with filling, >= 0
/// @param rate [currency/s] r, truck with driver, >= 0
/// @return [currency] amount
/// Range: any.
/// Errors: InputError `cost.volume`, `cost.price`, `cost.tank`, `cost.trip`, `cost.rate`
/// Source: common practice
/// Verified by: tests/cpp/cost/test_materials.cpp
template <class T>
Amount<T> hauled_water(const Volume<T>& volume, const AmountPerVolume<T>& price,
                       const Volume<T>& tank, const Time<T>& trip, const AmountPerTime<T>& rate);

/// Disposal by mass with a least charge, as a landfill weighs it.
///
/// Formula: max(m p, least)
/// @param mass [kg] m, dumped, >= 0
/// @param price [currency/kg] p, >= 0
/// @param least [currency] minimum charge, >= 0; none for nothing dumped
/// @return [currency] amount
/// Range: any.
/// Errors: InputError `cost.mass`, `cost.price`, `cost.least` where below 0
/// Source: common practice
/// Verified by: tests/cpp/cost/test_materials.cpp
template <class T>
Amount<T> disposal_by_mass(const Mass<T>& mass, const AmountPerMass<T>& price,
                           const Amount<T>& least);

/// Disposal by the load.
///
/// Formula: count_up(n) c
/// @param loads [each] n, >= 0
/// @param charge [currency] c, for each load, >= 0
/// @return [currency] amount
/// Range: any; a load begun is a load.
/// Errors: InputError `cost.loads`, `cost.charge` where below 0
/// Source: common practice
/// Verified by: tests/cpp/cost/test_materials.cpp
template <class T>
Amount<T> disposal_by_load(const Count<T>& loads, const Amount<T>& charge);

/// Bringing equipment and taking it back.
///
/// Formula: n (2 d k + F)
/// @param pieces [each] n, that have to be hauled, >= 0
/// @param distance [m] d, one way, >= 0
/// @param price [currency/m] k, of hauling for a distance, >= 0
/// @param fixed [currency] F, loading, permit, set-up of each, >= 0
/// @return [currency] amount for coming and going
/// Range: any.
/// Errors: InputError `cost.pieces`, `cost.distance`, `cost.price`, `cost.fixed` where below 0
/// Source: common practice
/// Verified by: tests/cpp/cost/test_materials.cpp
template <class T>
Amount<T> mobilization(const Count<T>& pieces, const Length<T>& distance,
                       const AmountPerLength<T>& price, const Amount<T>& fixed);

/// A price of its day brought to the midpoint of the work.
///
/// Formula: A (1 + f)^(s + w / 2)
/// @param amount [currency] A, at prices of the day of the estimate
/// @param inflation [-] f, of prices a year; may be below 0
/// @param start [s] s, from the day of the prices to the first day of work, >= 0
/// @param length [s] w, from the first day of work to the last, >= 0
/// @return [currency] amount at prices of the midpoint
/// Range: a year is 365 days.
/// Errors: InputError `cost.inflation`, `cost.start`, `cost.length` where out of range
/// Source: common practice: escalation to the midpoint of construction
/// Verified by: tests/cpp/cost/test_materials.cpp
template <class T>
Amount<T> escalated(const Amount<T>& amount, const T& inflation, const Time<T>& start,
                    const Time<T>& length);

} // namespace scupper::cost
