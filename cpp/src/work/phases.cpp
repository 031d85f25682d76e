#include "scupper/work/phases.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <string>

namespace scupper::work {

std::vector<Length<>> washed_widths(const Length<>& roadway, std::span<const Length<>> open) {
    std::vector<Length<>> washed;
    double left = roadway.si();
    for (const Length<>& width : open) {
        if (!(width.si() >= 0.0) || !(roadway.si() >= 0.0)) {
            throw InputError(
                {"work.phases", "open", std::to_string(width.si()) + " m", "widths of 0 or more"});
        }
        washed.emplace_back(std::min(width.si(), left));
        left -= washed.back().si();
    }
    if (left > 1e-9 * roadway.si()) {
        throw InputError({"work.phases", "open",
                          std::to_string(left) + " m of the roadway in no phase",
                          "phases that together reach from curb to curb"});
    }
    return washed;
}

} // namespace scupper::work
