#include "require.hpp"

#include "scupper/error.hpp"

#include <cstdio>
#include <string>

namespace scupper::cost::detail {

void refuse(std::string_view name, double found, std::string_view allowed) {
    char text[32];
    std::snprintf(text, sizeof text, "%.9g", found);
    throw InputError(ErrorFacts{"cost." + std::string(name), std::string(name),
                                std::string(text) + " (SI)", std::string(allowed)});
}

} // namespace scupper::cost::detail
