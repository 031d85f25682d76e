#include "outline.hpp"

namespace scupper::detail {

namespace {

/// Takes those steps that no earlier entry has, in the order in which they are read.
std::vector<std::size_t> taken(const std::vector<std::size_t>& steps, std::size_t level,
                               std::vector<OutlineEntry>& outline,
                               std::vector<std::size_t>& queue) {
    std::vector<std::size_t> own;
    for (const std::size_t step : steps) {
        if (outline[step].level == every_level) {
            outline[step].level = level;
            own.push_back(step);
            queue.push_back(step);
        }
    }
    return own;
}

std::size_t counted(const std::vector<std::size_t>& parts,
                    const std::vector<OutlineEntry>& outline) {
    std::size_t sum = 0;
    for (const std::size_t part : parts) {
        sum += 1 + outline[part].below;
    }
    return sum;
}

} // namespace

std::vector<OutlineEntry> outline_of(const Derivation& derivation) {
    std::vector<OutlineEntry> outline(derivation.steps.size());
    std::vector<std::size_t> queue;
    if (!outline.empty()) {
        outline[0].level = 0;
        queue.push_back(0);
    }
    for (std::size_t next = 0; next < queue.size(); ++next) {
        const std::size_t step = queue[next];
        const DerivedStep& s = derivation.steps[step];
        const std::size_t level = outline[step].level + 1;
        outline[step].parts = taken(s.parts, level, outline, queue);
        for (std::size_t arm = 0; arm < 2; ++arm) {
            outline[step].arm_parts[arm] = taken(s.arm_parts[arm], level, outline, queue);
        }
    }
    for (std::size_t i = queue.size(); i-- > 0;) { // what stands beneath comes later in the queue
        OutlineEntry& entry = outline[queue[i]];
        entry.below = counted(entry.parts, outline) + counted(entry.arm_parts[0], outline) +
                      counted(entry.arm_parts[1], outline);
    }
    return outline;
}

} // namespace scupper::detail
