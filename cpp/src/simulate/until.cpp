#include "scupper/error.hpp"
#include "scupper/simulate/totals.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace scupper::simulate {

namespace {

constexpr std::size_t least_replicates = 4;

/// How many replicates should do, if errors fall with the root of their number; at least one more.
std::size_t next_replicates(std::size_t done, double error, double limit) {
    const double ratio = error / limit;
    const double wished = std::ceil(static_cast<double>(done) * ratio * ratio);
    return std::max(done + 1, static_cast<std::size_t>(std::min(wished, 1e9)));
}

} // namespace

Simulation simulate_until(std::span<const Structure> structures,
                          std::shared_ptr<const estimate::Plan> plan,
                          const SimulationSettings& settings, double relative_error,
                          unsigned threads, const estimate::RunProgress& progress) {
    if (!(relative_error > 0.0)) {
        throw InputError({"simulate.relative_error", "relative_error",
                          std::to_string(relative_error), "above 0"});
    }
    SimulationSettings round = settings;
    round.replicates = std::min(least_replicates, settings.replicates);
    while (round.replicates < settings.replicates) {
        round.draws = settings.draws / settings.replicates * round.replicates;
        Simulation found = simulate(structures, plan, round, threads, progress);
        const Estimated mean = DrawnTotal(found, 0).mean();
        const double error = mean.standard_error / std::fabs(mean.value);
        if (!(error > relative_error)) {
            return found;
        }
        round.replicates =
            std::min(settings.replicates, next_replicates(round.replicates, error, relative_error));
    }
    return simulate(structures, std::move(plan), settings, threads, progress);
}

} // namespace scupper::simulate
