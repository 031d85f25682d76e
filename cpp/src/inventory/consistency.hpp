#pragma once
// Values that cannot all be right together.

#include "columns.hpp"
#include "scupper/structure.hpp"

#include <functional>
#include <string_view>

namespace scupper::inventory::detail {

/// A structure, and who is told what does not fit in it.
struct Judge {
    const Structure& structure;
    bool has_approaches; ///< whether kind and type of approach spans were asked for
    std::function<void(Column, std::string_view)> doubt;
};

/// Tells of values that contradict each other; they are kept.
void check_consistency(const Judge& judge);

} // namespace scupper::inventory::detail
