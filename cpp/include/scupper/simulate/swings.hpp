#pragma once
// What each uncertain input alone does to the cost of a list.

#include "scupper/estimate.hpp"

#include <cstddef>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace scupper::simulate {

/// How far the total cost moves with one input, all others at the values that are priced.
struct Swing {
    std::string key, label;     ///< [text] key of the input schema; what people call it
    std::size_t structures = 0; ///< [-] at how many it is uncertain and moves the cost
    double cost_at_low = 0.0;   ///< [currency] of the list, the input at its low level everywhere
    double cost_at_high = 0.0;  ///< [currency] of the list, the input at its high level everywhere
    double width = 0.0;         ///< [currency] the difference, without sign
};

/// The swings of a list.
struct Swings {
    double cost = 0.0;       ///< [currency] of the priced structures, as estimated
    double level = 0.0;      ///< [-] of the low values; high values are at 1 - level
    std::vector<Swing> rows; ///< [-, n] the widest first
};

/// Moves one uncertain input after the other from low to high, at all structures at once.
///
/// Moving an input everywhere at once is what happens to the shared part of its spread; what is each
/// structure's own partly cancels over a list, which a simulation counts and a swing does not.
/// Formula: sum over structures of c(x_i at its quantile of level, 1 - level; others as priced)
/// @param structures [-, n] the records
/// @param plan [-] the job made ready
/// @param level [-] probability of the low values, between 0 and 1/2
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told how far the run is; may be empty
/// @return [currency] one row an input that moves the cost; NaN where a structure then has no price
/// Range: any list; structures without a price do not count.
/// Errors: InputError `simulate.level` where the level is not between 0 and 1/2; Interrupted
/// `estimate.stopped` where progress says so; those of `resolve`.
/// Source: common practice
/// Verified by: tests/cpp/simulate/test_swings.cpp
Swings swings(std::span<const Structure> structures, std::shared_ptr<const estimate::Plan> plan,
              double level = 0.1, unsigned threads = 0, const estimate::RunProgress& progress = {});

} // namespace scupper::simulate
