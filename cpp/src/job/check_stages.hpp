#pragma once
// Stages and parties of a job. Internal to the job.

#include "scupper/job/job.hpp"

namespace scupper::detail {

/// Refuses stages without a party, names used twice, work and parties that do not exist.
void check_stages(const Job& job);

} // namespace scupper::detail
