#pragma once
// A name as people read it.

#include <algorithm>
#include <string>

namespace scupper::estimate {

/// With blanks for underscores.
inline std::string spaced(std::string name) {
    std::replace(name.begin(), name.end(), '_', ' ');
    return name;
}

} // namespace scupper::estimate
