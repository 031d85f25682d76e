#pragma once
// What running equipment costs an hour: fuel, lubrication, tyres, repair, wear parts, standby.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::cost {

/// Volume of fuel for an energy delivered at full load.
template <class T = double>
using FuelUse = Quantity<dim::volume / dim::energy, T>;

/// Fuel of an hour.
///
/// Formula: W u l p
/// @param power [W] W, rated power of the engine, >= 0
/// @param fuel_use [m3/J] u, fuel for an energy at full load, >= 0; 0.04 gal/hp/h of diesel
/// @param load [-] l, share of the full load on the average, 0 to 1
/// @param price [currency/m3] p, price of the fuel, >= 0
/// @return [currency/s] fuel
/// Range: any.
/// Errors: InputError `cost.power`, `cost.fuel_use`, `cost.load`, `cost.fuel_price`
/// Source: construction equipment textbooks, from memory
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
AmountPerTime<T> fuel(const Power<T>& power, const FuelUse<T>& fuel_use, const T& load,
                      const AmountPerVolume<T>& price);

/// A fuel cost brought to another price of fuel.
///
/// Formula: F p_new / p_base
/// @param fuel [currency/s] F, fuel of an hour at the old price; lubricants go with it
/// @param price [currency/m3] p_new, price of the fuel now, >= 0
/// @param base [currency/m3] p_base, price on which the fuel cost rests, > 0
/// @return [currency/s] fuel at the new price
/// Range: any.
/// Errors: InputError `cost.fuel_price`, `cost.base` where out of range
/// Source: USACE EP 1110-1-8, paragraph 3-9
/// Verified by: tests/cpp/cost/test_operating.cpp
template <class T>
AmountPerTime<T> updated_fuel(const AmountPerTime<T>& fuel, const AmountPerVolume<T>& price,
                              const AmountPerVolume<T>& base);

/// Tyres of an hour: wear and repair.
///
/// Formula: C (1 + r) / L
/// @param set [currency] C, price of a set, >= 0
/// @param life [s] L, hours that a set lasts, > 0
/// @param repair [-] r, repair over wear, >= 0
/// @return [currency/s] tyres
/// Range: any.
/// Errors: InputError `cost.set`, `cost.life`, `cost.repair` where out of range
/// Source: construction equipment textbooks, from memory
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
AmountPerTime<T> tyres(const Amount<T>& set, const Time<T>& life, const T& repair);

/// Repair of an hour as a share of straight-line depreciation.
///
/// Formula: r D
/// @param depreciation [currency/s] D, straight-line depreciation of an hour, >= 0
/// @param repair [-] r, repair over depreciation, >= 0
/// @return [currency/s] repair
/// Range: any.
/// Errors: InputError `cost.depreciation`, `cost.repair` where below 0
/// Source: construction equipment textbooks, from memory
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
AmountPerTime<T> repair(const AmountPerTime<T>& depreciation, const T& repair);

/// What an hour of equipment costs that works only a part of the hours it is charged.
///
/// Formula: O + u R
/// @param ownership [currency/s] O, for every hour charged, >= 0
/// @param operating [currency/s] R, for every hour it works, >= 0
/// @param utilisation [-] u, working hours over charged hours, 0 to 1
/// @return [currency/s] rate of a charged hour
/// Range: any.
/// Errors: InputError `cost.ownership`, `cost.operating`, `cost.utilisation` where out of range
/// Source: definition
/// Verified by: tests/cpp/cost/test_operating.cpp
template <class T>
AmountPerTime<T> equipment_hour(const AmountPerTime<T>& ownership,
                                const AmountPerTime<T>& operating, const T& utilisation);

/// What equipment costs an hour in which it waits on site.
///
/// Formula: s O
/// @param ownership [currency/s] O, of an hour, >= 0
/// @param share [-] s, of it that is paid, 0 to 1; owners' contracts allow about half
/// @return [currency/s] standby rate
/// Range: any.
/// Errors: InputError `cost.ownership`, `cost.share` where out of range
/// Source: common practice; federal disaster schedules pay no standby
/// Verified by: tests/cpp/cost/test_operating.cpp
template <class T>
AmountPerTime<T> standby(const AmountPerTime<T>& ownership, const T& share);

} // namespace scupper::cost
