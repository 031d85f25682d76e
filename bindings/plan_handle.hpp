#pragma once
// A job made ready, as Python holds it.

#include "scupper/estimate.hpp"

#include <memory>

namespace scupper::python {

/// Shares a plan that nobody changes.
struct PlanHandle {
    std::shared_ptr<const estimate::Plan> plan;
};

} // namespace scupper::python
