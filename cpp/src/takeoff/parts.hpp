#pragma once
// The parts of a take-off, in the order in which they need each other.

#include "bill.hpp"

namespace scupper::takeoff::detail {

template <class T>
void take_off_deck(const Shape& shape, const Dimensions<T>& d, Bill<T>& bill);
template <class T>
void take_off_drains(const Dimensions<T>& d, Bill<T>& bill);
template <class T>
void take_off_girders(const Shape& shape, const Dimensions<T>& d, Bill<T>& bill);
template <class T>
void take_off_supports(const Shape& shape, const Dimensions<T>& d, Bill<T>& bill);

} // namespace scupper::takeoff::detail
