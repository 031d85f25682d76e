#include "require.hpp"

#include <cstdio>

namespace scupper::hydraulics::detail {

void refuse(const std::string& name, const std::string& path, double found,
            const std::string& allowed) {
    char text[32];
    std::snprintf(text, sizeof text, "%.9g", found);
    throw InputError(ErrorFacts{"hydraulics." + name, path, text, allowed});
}

} // namespace scupper::hydraulics::detail
