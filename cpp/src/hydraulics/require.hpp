#pragma once
// Refuses values that cannot be right. NaN passes, and so does every Traced number: its formula
// has run with double before.

#include "scupper/error.hpp"
#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

#include <string>

namespace scupper::hydraulics::detail {

/// Throws InputError `hydraulics.<name>` with what was found and what is allowed.
[[noreturn]] void refuse(const std::string& name, const std::string& path, double found,
                         const std::string& allowed);

inline void require(bool wrong, const char* name, double found, const char* allowed) {
    if (wrong) {
        refuse(name, name, found, allowed);
    }
}

inline void positive(const char* name, double value) {
    require(value <= 0.0, name, value, "> 0");
}
inline void positive(const char*, const Traced&) {}
inline void not_negative(const char* name, double value) {
    require(value < 0.0, name, value, ">= 0");
}
inline void not_negative(const char*, const Traced&) {}

template <Dimension D, class T>
void positive(const char* name, const Quantity<D, T>& value) {
    positive(name, value.si());
}
template <Dimension D, class T>
void not_negative(const char* name, const Quantity<D, T>& value) {
    not_negative(name, value.si());
}

} // namespace scupper::hydraulics::detail
