#pragma once
// What settings of draws must be. Internal to the part.

#include "scupper/error.hpp"
#include "scupper/simulate/simulation.hpp"
#include "shared_scores.hpp"

#include <bit>
#include <string>

namespace scupper::simulate::detail {

inline void require_whole_replicates(const SimulationSettings& settings) {
    if (settings.draws == 0 || settings.replicates == 0 ||
        settings.draws % settings.replicates != 0) {
        throw InputError(
            {"simulate.draws", "draws", std::to_string(settings.draws),
             "a whole multiple of " + std::to_string(settings.replicates) + " replicates"});
    }
}

/// Sobol' points come in powers of two; one structure alone is one structure.
inline void require_sobol(const SimulationSettings& settings, std::size_t structures) {
    const std::size_t size = settings.draws / settings.replicates;
    if (is_sobol(settings.sampling) && !std::has_single_bit(size)) {
        const std::size_t below = std::bit_floor(size) * settings.replicates;
        throw InputError({"simulate.draws", "draws",
                          std::to_string(settings.draws) + ", " + std::to_string(size) +
                              " in each of " + std::to_string(settings.replicates) +
                              " replicates of Sobol' points",
                          std::to_string(below) + " or " + std::to_string(2 * below) +
                              ": a power of two in each replicate"});
    }
    if (settings.sampling == Sampling::sobol_single && structures > 1) {
        throw InputError({"simulate.sampling", "sampling",
                          "sobol_single with " + std::to_string(structures) + " structures",
                          "one structure, or sobol"});
    }
}

} // namespace scupper::simulate::detail
