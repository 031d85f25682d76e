#pragma once
// The area of a round bore.

#include "scupper/quantity.hpp"

#include <numbers>

namespace scupper::hydraulics::detail {

template <class T>
Area<T> circle(const Length<T>& bore) {
    return std::numbers::pi / 4.0 * (bore * bore);
}

} // namespace scupper::hydraulics::detail
