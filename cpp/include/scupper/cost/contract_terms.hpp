#pragma once
// Terms of a contract that cost money: charges for closed lanes, damages for finishing late.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::cost {

/// What an owner charges for the time that lanes are closed.
///
/// Formula: amount = time x charge
/// @param time [s] that lanes are closed
/// @param charge [currency/s] of the contract
/// @return [currency] amount
/// Range: any; a contract may charge by lane or by the hour of the day, then take its mean.
/// Errors: none.
/// Source: lane rental, common practice
/// Verified by: tests/cpp/cost/test_contract_terms.cpp
template <class T>
Amount<T> occupancy(const Time<T>& time, const AmountPerTime<T>& charge);

/// What liquidated damages come to on average.
///
/// Formula: amount = chance x time late x damages
/// @param chance [-] of finishing late, 0 to 1
/// @param late [s] how late on average, if late
/// @param damages [currency/s] of the contract
/// @return [currency] expected cost
/// Range: any.
/// Errors: none.
/// Source: definition of the expected value
/// Verified by: tests/cpp/cost/test_contract_terms.cpp
template <class T>
Amount<T> expected_damages(const T& chance, const Time<T>& late, const AmountPerTime<T>& damages);

} // namespace scupper::cost
