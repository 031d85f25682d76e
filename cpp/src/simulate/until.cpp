#include "require.hpp"
#include "scupper/error.hpp"
#include "scupper/simulate/totals.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace scupper::simulate {

namespace {

constexpr std::size_t least_replicates = 4;

void require_limit(double relative_error) {
    if (!(relative_error > 0.0)) {
        throw InputError({"simulate.relative_error", "relative_error",
                          std::to_string(relative_error), "above 0"});
    }
}

SimulationSettings with_replicates(SimulationSettings most, std::size_t replicates) {
    most.draws = most.draws / most.replicates * replicates;
    most.replicates = replicates;
    return most;
}

/// How many replicates should do, if errors fall with the root of their number; at least one more.
std::size_t next_replicates(std::size_t done, double error, double limit) {
    const double ratio = error / limit;
    const double wished = std::ceil(static_cast<double>(done) * ratio * ratio);
    return std::max(done + 1, static_cast<std::size_t>(std::min(wished, 1e9)));
}

} // namespace

SimulationSettings first_round(const SimulationSettings& most) {
    detail::require_whole_replicates(most);
    return with_replicates(most, std::min(least_replicates, most.replicates));
}

SimulationSettings next_round(const Simulation& found, const SimulationSettings& most,
                              double relative_error) {
    require_limit(relative_error);
    if (found.settings.replicates >= most.replicates) {
        return found.settings;
    }
    const Estimated mean = DrawnTotal(found, 0).mean();
    const double error = mean.standard_error / std::fabs(mean.value);
    if (!(error > relative_error)) {
        return found.settings;
    }
    return with_replicates(
        most, std::min(most.replicates,
                       next_replicates(found.settings.replicates, error, relative_error)));
}

Simulation simulate_until(std::span<const Structure> structures,
                          std::shared_ptr<const estimate::Plan> plan,
                          const SimulationSettings& settings, double relative_error,
                          unsigned threads, const estimate::RunProgress& progress) {
    require_limit(relative_error);
    SimulationSettings round = first_round(settings);
    while (true) {
        Simulation found = simulate(structures, plan, round, threads, progress);
        round = next_round(found, settings, relative_error);
        if (round == found.settings) {
            return found;
        }
    }
}

} // namespace scupper::simulate
