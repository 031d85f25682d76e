#pragma once
// What the weight posting of a bridge does to the work. Internal to the estimate.

#include "scupper/estimate/resolve.hpp"

#include <string>

namespace scupper::estimate::detail {

/// Enters the limit that a posted bridge's record leaves to be assumed, unless the job gives one.
void put_posted_limit(const Structure& structure, Resolved& resolved);
/// Weighs the loaded water truck against the limit and decides what is done.
void decide_posting(const Structure& structure, Resolved& resolved);
/// A bar on the truck cannot work from the approach.
void require_hose(Model& model);
/// Whether a structure has no price for its posting.
bool stops_work(Posting posting);
/// Why a structure has no price for its posting, with the weights.
std::string posting_reason(const Resolved& resolved);

} // namespace scupper::estimate::detail
