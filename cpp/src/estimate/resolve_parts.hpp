#pragma once
// Steps of resolving a structure. Internal to the estimate.

#include "scupper/estimate/resolve.hpp"

namespace scupper::estimate::detail {

/// Marks the operations that are refused because no wash water may run.
void refuse_wash_water(const Plan& plan, Resolved& resolved);

/// People and pieces that the closure's lay-out counts, where nobody says how many.
void put_counts(const Structure& structure, Resolved& resolved);
/// The hours in which the road may be closed, where the job limits queue or delay.
void put_window(const Structure& structure, Resolved& resolved);

} // namespace scupper::estimate::detail
