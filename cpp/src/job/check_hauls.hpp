#pragma once
// Haul trucks of a job. Internal to the job.

#include "scupper/job/job.hpp"

namespace scupper::detail {

/// Refuses names used twice, components that do not exist, and dirt that no truck carries.
void check_hauls(const Job& job);

} // namespace scupper::detail
