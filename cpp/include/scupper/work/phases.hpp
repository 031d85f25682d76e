#pragma once
// A roadway washed in phases, while traffic runs beside.

#include "scupper/quantity.hpp"

#include <span>
#include <vector>

namespace scupper::work {

/// How much of a roadway is washed in each phase: what a phase has open, less what the phases
/// before have washed. Where phases overlap, the overlap is washed once.
///
/// Formula: washed[k] = min(open[k], roadway - washed[1] - ... - washed[k - 1])
/// @param roadway [m] width, curb to curb, >= 0
/// @param open [m, n] width closed to traffic in each phase, from one side and then the other
/// @return [m, n] width washed in each phase; they add up to the roadway
/// Range: phases that together reach from curb to curb.
/// Errors: InputError `work.phases` where a width is negative or the phases leave a strip unwashed
/// Source: definition
/// Verified by: tests/cpp/work/test_phases.cpp
std::vector<Length<>> washed_widths(const Length<>& roadway, std::span<const Length<>> open);

} // namespace scupper::work
