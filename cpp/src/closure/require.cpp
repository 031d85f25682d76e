#include "require.hpp"

#include "scupper/error.hpp"

#include <cmath>
#include <cstdio>
#include <string>

namespace scupper::closure::detail {

void refuse(const char* name, double found, const char* allowed) {
    char text[32];
    std::snprintf(text, sizeof text, "%.9g", found);
    throw InputError(ErrorFacts{std::string("closure.") + name, name, text, allowed});
}

void positive(const char* name, double value) {
    if (!(std::isfinite(value) && value > 0.0)) {
        refuse(name, value, "> 0");
    }
}

void not_negative(const char* name, double value) {
    if (!(std::isfinite(value) && value >= 0.0)) {
        refuse(name, value, ">= 0");
    }
}

} // namespace scupper::closure::detail
