#pragma once
// What is wrong with a line, found without building text, since every solve asks.

#include "scupper/hydraulics/line.hpp"

#include <optional>

namespace scupper::hydraulics::detail {

/// The first value of a line that cannot be right.
struct LineFault {
    const char* name;    ///< last part of the error id
    const char* field;   ///< path inside the line, or inside the segment
    double found;        ///< in SI units
    const char* allowed; ///< what would be right
    int segment = -1;    ///< index of the segment, or -1
};

std::optional<LineFault> fault_of(const Segment<double>& segment);
std::optional<LineFault> fault_of(const Line<double>& line);

} // namespace scupper::hydraulics::detail
