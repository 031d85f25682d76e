#pragma once
// Decisions and whole numbers inside a formula, the same for double, Traced and quantities.
// Both arms of a choice are always evaluated, so that both can be shown.

#include "scupper/quantity.hpp"
#include "scupper/traced/traced.hpp"

#include <cmath>

namespace scupper {

/// The relative slack below which a quotient counts as whole, so that a change of unit never adds
/// a trip, a pass or a girder.
inline constexpr double count_slack = 1e-9;

/// One of two values by a condition, in place of an `if`, which no explanation could show. For
/// double, Traced and quantities.
///
/// Formula: if_true where the condition holds, else if_false
/// @param condition [-] a comparison of model numbers
/// @param if_true [any unit] the value where it holds
/// @param if_false [unit of if_true] the value where it does not
/// @return [unit of if_true] the value chosen; both arms stand in the recording
/// Range: any values; the arm not taken may be NaN or infinite.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/traced/test_traced.cpp
inline double choose(bool condition, double if_true, double if_false) {
    return condition ? if_true : if_false;
}

/// The lesser of two values, one step of an explanation. For double, Traced and quantities.
///
/// @param a [any unit] a value
/// @param b [unit of a] another
/// @return [unit of a] the lesser one; a where they are equal or either is NaN
/// Range: any values.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/traced/test_traced.cpp
inline double min_of(double a, double b) {
    return b < a ? b : a;
}

/// The greater of two values, one step of an explanation. For double, Traced and quantities.
///
/// @param a [any unit] a value
/// @param b [unit of a] another
/// @return [unit of a] the greater one; a where they are equal or either is NaN
/// Range: any values.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/traced/test_traced.cpp
inline double max_of(double a, double b) {
    return a < b ? b : a;
}
/// How many whole items hold x: 2.1 loads are 3 trips.
///
/// Formula: ceil(x (1 - 1e-9))
/// @param x [-] a quotient
/// @return [-] whole number
/// Range: any number; NaN gives NaN.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/traced/test_traced.cpp
inline double count_up(double x) {
    return std::ceil(x * (1.0 - count_slack));
}

Traced choose(const TracedCondition& condition, const Traced& if_true, const Traced& if_false);
Traced min_of(const Traced& a, const Traced& b);
Traced max_of(const Traced& a, const Traced& b);
Traced count_up(const Traced& x);

template <class C, Dimension D, class T>
Quantity<D, T> choose(const C& condition, const Quantity<D, T>& if_true,
                      const Quantity<D, T>& if_false) {
    return Quantity<D, T>(choose(condition, if_true.si(), if_false.si()));
}
template <Dimension D, class T>
Quantity<D, T> min_of(const Quantity<D, T>& a, const Quantity<D, T>& b) {
    return Quantity<D, T>(min_of(a.si(), b.si()));
}
template <Dimension D, class T>
Quantity<D, T> max_of(const Quantity<D, T>& a, const Quantity<D, T>& b) {
    return Quantity<D, T>(max_of(a.si(), b.si()));
}

} // namespace scupper
