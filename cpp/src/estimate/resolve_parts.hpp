#pragma once
// Steps of resolving a structure. Internal to the estimate.

#include "scupper/estimate/resolve.hpp"

namespace scupper::estimate::detail {

/// Marks the operations that are refused because no wash water may run.
void refuse_wash_water(const Plan& plan, Resolved& resolved);

} // namespace scupper::estimate::detail
