#pragma once
// A structure priced again with a recording. Internal to the estimate.

#include "scupper/estimate/estimate.hpp"

#include <vector>

namespace scupper::estimate::detail {

/// The recording of one price, with the inputs it started from.
struct Recorded {
    explicit Recorded(const Estimate& estimate);
    Recorded(const Recorded&) = delete;
    Recorded& operator=(const Recorded&) = delete;

    /// The step of a figure; one that follows from no input at all becomes a constant.
    Step figure(std::size_t place);

    const Estimate* estimate;
    Recording recording;
    std::vector<Traced> inputs; // by place of the input layout
    Workspace<Traced> workspace;
};

} // namespace scupper::estimate::detail
