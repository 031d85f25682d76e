#pragma once
// The hours of every kind of equipment that a list takes.

#include "scupper/estimate.hpp"
#include "scupper/structure.hpp"

#include <span>
#include <vector>

namespace scupper::delivery {

/// The hours that each structure of a list takes of every kind of equipment, all pieces together.
///
/// Formula: number x paid time of the crew that has it, as hire is paid; 0 where it is not needed
/// @param structures [-, n] the records
/// @param plan [-] the job made ready
/// @param threads [-] how many; 0 for as many as the machine has
/// @return [s, kinds x n] by row of the job's equipment, then by structure; NaN where it has no price
/// Range: any list; dump runs after the shift are beside it.
/// Errors: those of `estimate::resolve`.
/// Source: definition
/// Verified by: tests/python/test_delivery_split.py
std::vector<std::vector<double>> equipment_times(std::span<const Structure> structures,
                                                 const estimate::Plan& plan, unsigned threads = 0);

} // namespace scupper::delivery
