#pragma once
// Hours and quantities into money.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::cost {

/// What people or equipment cost for a time.
///
/// Formula: amount = n rate t
/// @param time [s] paid time of each
/// @param pieces [each] how many
/// @param rate [currency/s] cost of one for a time
/// @return [currency] amount, unrounded
/// Range: any.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/cost/test_hire.cpp
template <class T>
Amount<T> hire(const Time<T>& time, const Count<T>& pieces, const AmountPerTime<T>& rate);

} // namespace scupper::cost
