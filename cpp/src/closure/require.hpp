#pragma once
// Refuses values that cannot be right, NaN too. A Traced number passes: its formula has run with
// double before.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::closure::detail {

/// Throws InputError `closure.<name>` with what was found and what is allowed.
[[noreturn]] void refuse(const char* name, double found, const char* allowed);

/// Refuses what is not a finite number > 0.
void positive(const char* name, double value);
inline void positive(const char*, const Traced&) {}

/// Refuses what is not a finite number >= 0.
void not_negative(const char* name, double value);
inline void not_negative(const char*, const Traced&) {}

template <Dimension D, class T>
void positive(const char* name, const Quantity<D, T>& value) {
    positive(name, value.si());
}
template <Dimension D, class T>
void not_negative(const char* name, const Quantity<D, T>& value) {
    not_negative(name, value.si());
}

} // namespace scupper::closure::detail
