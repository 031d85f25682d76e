#pragma once
// The traffic past the closures of a structure that has been priced. Internal to the estimate.

#include "scupper/estimate/price.hpp"
#include "scupper/estimate/road_users.hpp"

namespace scupper::estimate::detail {

/// What its closures do to traffic; nothing where no stage has one.
RoadUsers users_past(const Structure& structure, const Resolved& resolved,
                     const Workspace<double>& workspace);

} // namespace scupper::estimate::detail
