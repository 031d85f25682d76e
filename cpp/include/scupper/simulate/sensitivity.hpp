#pragma once
// Which uncertain inputs matter to a figure of a list: indices, and rank correlation.

#include "scupper/simulate/indices.hpp"
#include "scupper/simulate/simulation.hpp"

#include <cstddef>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace scupper::simulate {

/// How a sensitivity is found.
struct SensitivitySettings {
    std::size_t figure = 0; ///< [-] place in simulated_figures
    std::size_t top = 12;   ///< [-] factors by themselves, the widest swings; all others are one
    SimulationSettings draws{.draws = 2000};          ///< [-] of each of the two samples
    std::vector<std::vector<std::string>> together{}; ///< [text, n] input keys that are one factor:
                                                      ///< those that vary together; inputs that the
                                                      ///< job correlates are one in any case
};

/// One factor: an input at all structures, or several that are taken together.
struct FactorRow {
    std::vector<std::string> keys{}; ///< [text, n] of the input schema
    std::string label{};             ///< [text] what people call it
    bool others = false;             ///< [-] whether these are all beyond the widest swings
    FactorIndices indices{};         ///< [-] of the figure's total
    double rank_correlation = 0.0;   ///< [-] of the input, summed over structures, with the figure;
                                     ///< NaN where the factor is more than one input
};

/// What matters to a figure of a list.
struct Sensitivity {
    std::size_t figure = 0;        ///< [-] place in simulated_figures
    double mean = 0.0;             ///< [SI unit of the figure] over both samples
    double sd = 0.0;               ///< [SI unit of the figure] over both samples
    std::vector<FactorRow> rows{}; ///< [-, n] the greatest total index first, others last
    std::vector<std::size_t>
        left_out{}; ///< [-, n] positions: some draw leaves them without a figure
};

/// First-order and total indices of a figure's total by uncertain input.
///
/// What structures share of an input and what is each one's own are one factor, at all structures.
/// The first sample is that of `simulate` with the same settings. Inputs that cannot move the figure
/// are in no factor; those beyond the widest swings are one together, so that nothing is lost.
/// Inputs that vary together have no indices of their own and belong in one factor.
/// @param structures [-, n] the records
/// @param plan [-] the job made ready
/// @param settings [-] figure, draws, factors
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told structures done and all; may be empty
/// @return [-] one row a factor; the same bits for any number of threads and order of structures
/// Range: any list. Each structure is priced draws x (2 + factors) times; memory grows with draws x
/// factors, not with structures.
/// Errors: InputError `simulate.draws` where draws are no whole multiple of replicates or none;
/// UnknownNameError `schema.key` for a key in `together` that the job has not, InputError
/// `simulate.together` where it stands there twice; Interrupted `estimate.stopped` where progress says so; those of `resolve`.
/// Source: as of the indices; grouped: A. Saltelli et al., Global Sensitivity Analysis (2008), ch. 4
/// (from memory)
/// Verified by: tests/cpp/simulate/test_sensitivity.cpp
Sensitivity sensitivity(std::span<const Structure> structures,
                        std::shared_ptr<const estimate::Plan> plan,
                        const SensitivitySettings& settings, unsigned threads = 0,
                        const estimate::RunProgress& progress = {});

} // namespace scupper::simulate
