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

/// Whether a table tells how sure its quantities are; to draw that takes most of its time.
enum class Ranges : bool { none, drawn };

/// Take-off quantities, column by column as in slot_table, structure by structure.
struct TakeOffTable {
    std::vector<double> value; ///< [SI, columns x n] at likely dimensions; NaN where untold
    std::vector<double> low;   ///< [SI, columns x n] 5 % of draws lie below; empty without ranges
    std::vector<double> high;  ///< [SI, columns x n] 5 % of draws lie above; empty without ranges
    std::vector<Basis> basis;  ///< [-, columns x n] the least sure of what it rests on
    std::vector<takeoff::Verdict> verdict; ///< [-, n] whether it is washed as a bridge
};

/// Takes off a list of structures. A structure that is no bridge holds nothing to wash; only its
/// deck area is told.
///
/// @param structures [-, n] the records
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told how far the run is; may be empty
/// @param ranges [-] none for the values alone, some twenty times as fast
/// @return [SI, columns x n] the table
/// Range: any list. The range comes from 64 seeded draws of the uncertain dimensions.
/// Errors: UnknownNameError `schema.key` where a measured value has an unknown key; Interrupted
/// `estimate.stopped`.
/// Source: the rules of the take-off
/// Verified by: tests/cpp/estimate/test_take_off_table.cpp
TakeOffTable take_off_table(std::span<const Structure> structures, unsigned threads = 0,
                            const RunProgress& progress = {}, Ranges ranges = Ranges::drawn);

} // namespace scupper::estimate
