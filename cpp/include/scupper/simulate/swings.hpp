#pragma once
// What each uncertain input alone does to a figure of a list.

#include "scupper/simulate/simulation.hpp"

#include <cstddef>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace scupper::simulate {

/// How far a figure's total moves with one input, all others at the values that are priced.
struct Swing {
    std::string key, label;     ///< [text] key of the input schema; what people call it
    std::size_t place = 0;      ///< [-] of the input layout
    std::size_t structures = 0; ///< [-] at how many it is uncertain and moves the figure
    double at_low = 0.0;        ///< [SI unit of the figure] the input at its low level everywhere
    double at_high = 0.0;       ///< [SI unit of the figure] the input at its high level everywhere
    double width = 0.0;         ///< [SI unit of the figure] the difference, without sign
};

/// The place of a figure that a simulation follows.
///
/// @param name [text] what callers call it: "cost"
/// @return [-] place in simulated_figures
/// Range: any text.
/// Errors: UnknownNameError `simulate.figure` naming the figures there are.
/// Source: own convention
/// Verified by: tests/cpp/simulate/test_swings.cpp
std::size_t simulated_figure(std::string_view name);

/// The swings of a list.
struct Swings {
    std::size_t figure = 0;  ///< [-] place in simulated_figures
    double estimated = 0.0;  ///< [SI unit of the figure] of the priced structures
    double level = 0.0;      ///< [-] of the low values; high values are at 1 - level
    std::vector<Swing> rows; ///< [-, n] the widest first
};

/// Moves one uncertain input after the other from low to high, at all structures at once.
///
/// Moving an input everywhere at once is what happens to the shared part of its spread; what is each
/// structure's own partly cancels over a list, which a simulation counts and a swing does not.
/// Formula: sum over structures of f(x_i at its quantile of level, 1 - level; others as priced)
/// @param structures [-, n] the records
/// @param plan [-] the job made ready
/// @param level [-] probability of the low values, between 0 and 1/2
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told how far the run is; may be empty
/// @param figure [-] place in simulated_figures
/// @return [SI unit of the figure] one row an input that moves it; NaN where a structure then has
/// none
/// Range: any list; structures without a price do not count.
/// Errors: InputError `simulate.level` where the level is not between 0 and 1/2; Interrupted
/// `estimate.stopped` where progress says so; those of `resolve`.
/// Source: common practice
/// Verified by: tests/cpp/simulate/test_swings.cpp
Swings swings(std::span<const Structure> structures, std::shared_ptr<const estimate::Plan> plan,
              double level = 0.1, unsigned threads = 0, const estimate::RunProgress& progress = {},
              std::size_t figure = 0);

} // namespace scupper::simulate
