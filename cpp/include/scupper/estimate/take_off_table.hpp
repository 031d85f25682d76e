#pragma once
// The take-off of many structures as a table: value, range and basis of every quantity.

#include "scupper/estimate/programme.hpp"
#include "scupper/schema.hpp"
#include "scupper/structure.hpp"
#include "scupper/takeoff.hpp"
#include "scupper/uncertain.hpp"

#include <cstddef>
#include <span>
#include <vector>

namespace scupper::estimate {

/// Take-off quantities, structure by structure, column by column as in slot_table.
struct TakeOffTable {
    std::vector<double> value; ///< [SI, n x columns] at likely dimensions; NaN where untold
    std::vector<double> low;   ///< [SI, n x columns] 5 % of draws lie below
    std::vector<double> high;  ///< [SI, n x columns] 5 % of draws lie above
    std::vector<Basis> basis;  ///< [-, n x columns] the least sure of what it rests on
    std::vector<takeoff::Verdict> verdict; ///< [-, n] whether it is washed as a bridge
};

/// Takes off a list of structures. A structure that is no bridge holds nothing to wash; only its
/// deck area is told.
///
/// @param structures [-, n] the records
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told how far the run is; may be empty
/// @return [SI, n x columns] the table
/// Range: any list. The range comes from 64 seeded draws of the uncertain dimensions.
/// Errors: UnknownNameError `schema.key` where a measured value has an unknown key; Interrupted
/// `estimate.stopped`.
/// Source: the rules of the take-off
/// Verified by: tests/cpp/estimate/test_take_off_table.cpp
TakeOffTable take_off_table(std::span<const Structure> structures, unsigned threads = 0,
                            const RunProgress& progress = {});

} // namespace scupper::estimate
