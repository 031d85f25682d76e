#pragma once
// Totals of any figures in the draws of a simulation: quantities, hours of one kind.

#include "scupper/simulate/simulation.hpp"

#include <cstddef>
#include <memory>
#include <span>
#include <vector>

namespace scupper::simulate {

/// Totals of figures over a list, draw by draw. Sums in fixed point: the order is of no account.
struct FigureDraws {
    std::vector<std::size_t> places; ///< [-, m] of the figure layout: the simulated figures, then
                                     ///< those asked for
    std::vector<estimate::FixedTotal> totals; ///< [SI, draws x m] of every draw
    std::size_t structures = 0;               ///< [-] in the totals
};

/// Totals of chosen figures in the very draws of `simulate`.
///
/// The same structures are in the totals as there, so that what is asked for stands beside the
/// simulated figures draw for draw; those have the bits of `simulate`.
/// @param structures [-, n] the records
/// @param plan [-] the job made ready
/// @param places [-, k] of the figure layout
/// @param settings [-] as of `simulate`
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told structures done and all; may be empty
/// @return [SI] totals by draw; the same bits for any number of threads
/// Range: as `simulate`, but `sobol_single`, whose points depend on which figures are followed.
/// Errors: those of `simulate`; InputError `simulate.sampling` of `sobol_single`,
/// `simulate.figure` where a figure asked for has no value in a draw that has a price.
/// Source: own convention
/// Verified by: tests/cpp/simulate/test_simulation.cpp
FigureDraws figure_draws(std::span<const Structure> structures, const estimate::Plan& plan,
                         std::span<const std::size_t> places, const SimulationSettings& settings,
                         unsigned threads = 0, const estimate::RunProgress& progress = {});

} // namespace scupper::simulate
