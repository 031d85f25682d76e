#pragma once
// What settings of draws must be. Internal to the part.

#include "scupper/error.hpp"
#include "scupper/simulate/simulation.hpp"

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

} // namespace scupper::simulate::detail
