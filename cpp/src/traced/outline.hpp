#pragma once
// Where each step of an explanation stands: once, as near to the figure as it is used.

#include "scupper/traced/derivation.hpp"

#include <cstddef>
#include <vector>

namespace scupper::detail {

/// A step as an entry of an outline.
struct OutlineEntry {
    std::size_t level = every_level;       ///< below the figure
    std::vector<std::size_t> parts;        ///< entries that stand beneath it
    std::vector<std::size_t> arm_parts[2]; ///< of a choice: beneath either arm
    std::size_t below = 0;                 ///< entries at any level beneath it
};

/// The outline of a derivation, by place of the step.
std::vector<OutlineEntry> outline_of(const Derivation& derivation);

} // namespace scupper::detail
