#pragma once
// Whether an alternative can be done at a structure. Internal to the estimate.

#include "scupper/estimate/alternatives.hpp"
#include "scupper/estimate/price.hpp"

namespace scupper::estimate::detail {

/// Fills feasible, reasons and doubts of a row.
void judge(const Structure& structure, const Resolved& resolved, const PlannedAlternative& planned,
           AlternativeRow& row);
/// Adds what the alternative does not reach at the structure, whose quantities are priced.
void note_misses(const Workspace<double>& workspace, const Resolved& resolved,
                 const PlannedAlternative& planned, AlternativeRow& row);

} // namespace scupper::estimate::detail
