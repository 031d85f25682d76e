#pragma once
// What a job says of sites, paces, surroundings and alternatives. Internal to the job.

#include "scupper/job/job.hpp"

namespace scupper::detail {

/// Refuses a condition that is no word of the vocabulary.
void check_conditions(const std::vector<std::string>& when, const std::string& path);
/// Refuses words that are not known, names used twice, limits the wrong way round.
void check_site(const Job& job);

} // namespace scupper::detail
