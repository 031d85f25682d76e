#pragma once
// Refuses values that cannot be right, NaN among them. Every Traced number passes: its formula has
// run with double before.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

#include <string_view>

namespace scupper::cost::detail {

/// Throws InputError `cost.<name>` with what was found and what is allowed.
[[noreturn]] void refuse(std::string_view name, double found, std::string_view allowed);

inline void require(bool right, std::string_view name, double found, std::string_view allowed) {
    if (!right) {
        refuse(name, found, allowed);
    }
}

/// A number that is plain, or of a quantity in SI; Traced numbers are not looked at.
inline void positive(std::string_view name, double value) {
    require(value > 0.0, name, value, "> 0");
}
inline void not_negative(std::string_view name, double value) {
    require(value >= 0.0, name, value, ">= 0");
}
inline void share(std::string_view name, double value) {
    require(value >= 0.0 && value <= 1.0, name, value, "0 to 1");
}
inline void at_least_one(std::string_view name, double value) {
    require(value >= 1.0, name, value, ">= 1");
}
/// A rate of interest or inflation; it may be below 0, as published real rates have been.
inline void rate(std::string_view name, double value) {
    require(value > -1.0 && value < 10.0, name, value, "above -1 (-100 %), below 10");
}
inline void positive(std::string_view, const Traced&) {}
inline void not_negative(std::string_view, const Traced&) {}
inline void share(std::string_view, const Traced&) {}
inline void at_least_one(std::string_view, const Traced&) {}
inline void rate(std::string_view, const Traced&) {}

template <Dimension D, class T>
void positive(std::string_view name, const Quantity<D, T>& value) {
    positive(name, value.si());
}
template <Dimension D, class T>
void not_negative(std::string_view name, const Quantity<D, T>& value) {
    not_negative(name, value.si());
}

} // namespace scupper::cost::detail
