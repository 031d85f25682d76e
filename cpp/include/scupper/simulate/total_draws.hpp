#pragma once
// Totals of any figures of a programme in every draw.

#include "scupper/simulate/simulation.hpp"

#include <cstddef>
#include <span>
#include <vector>

namespace scupper::simulate {

/// The totals of some figures over the priced structures of a programme, in every draw of all
/// uncertain inputs of all of them at once.
///
/// In every draw the shared share of an input, such as a wage, is the same for all structures and
/// the rest is each one's own: the total spreads less than its structures, and more than if none
/// of it were shared. The draws are those of `simulate`.
/// Formula: sum over structures of the figure, draw by draw
/// @param programme [-] a programme
/// @param structures [-, n] the records it was priced from, in the same order
/// @param places [-, m] of the figures in the figure layout
/// @param settings [-] seed, draws, replicates, kind of sampling
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told structures done and all; may be empty
/// @return [SI unit of each figure, m x draws] by figure, draw by draw; NaN where a draw leaves a
/// structure without a number
/// Range: any programme. The same bits for any number of threads.
/// Errors: InputError `simulate.draws` where draws are no whole multiple of replicates or none;
/// Interrupted `estimate.stopped` where progress says so.
/// Source: own convention
/// Verified by: tests/cpp/simulate/test_total_draws.cpp
std::vector<std::vector<double>>
total_draws(const estimate::Programme& programme, std::span<const Structure> structures,
            std::span<const std::size_t> places, const SimulationSettings& settings,
            unsigned threads = 0, const estimate::RunProgress& progress = {});

/// The totals of all columns of a programme, sorted, for quantiles.
///
/// @param programme [-] a programme
/// @param structures [-, n] the records it was priced from, in the same order
/// @param settings [-] as of `total_draws`
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told structures done and all; may be empty
/// @return [SI unit of each figure, m x draws] by column, ascending; empty where a draw leaves a
/// structure without a number: a range of the other draws would hide what stops the work in these
/// Range: as of `total_draws`.
/// Errors: those of `total_draws`.
/// Source: own convention
/// Verified by: tests/cpp/simulate/test_total_draws.cpp
std::vector<std::vector<double>> total_samples(const estimate::Programme& programme,
                                               std::span<const Structure> structures,
                                               const SimulationSettings& settings,
                                               unsigned threads = 0,
                                               const estimate::RunProgress& progress = {});

} // namespace scupper::simulate
