#pragma once
// How much narrower visits make P10 to P90, by draws. Internal to the part.

#include "scupper/simulate/survey_list.hpp"

#include <span>
#include <vector>

namespace scupper::simulate::detail {

/// Puts beside each visit of a list what the draws say: for each of 16 outcomes of all its
/// measurements the total is drawn anew with them certain.
void put_narrowing(std::span<const Structure> structures, const estimate::DrawSettings& settings,
                   std::span<const double> costs, unsigned threads, SurveyList& list);

} // namespace scupper::simulate::detail
