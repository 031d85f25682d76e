#pragma once
// Finds what to mind about a solved lay.

#include "scupper/hydraulics/lay_solution.hpp"

#include <vector>

namespace scupper::hydraulics::detail {

/// `pump` is that of the lay with the pressure that was solved for.
std::vector<LayWarning> warnings_of(const HoseLay& lay, const Pump& pump,
                                    const LaySolution& solution);

} // namespace scupper::hydraulics::detail
