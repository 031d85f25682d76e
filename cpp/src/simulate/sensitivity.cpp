#include "scupper/simulate/sensitivity.hpp"

#include "exchanging.hpp"
#include "require.hpp"
#include "sample.hpp"
#include "scupper/simulate/swings.hpp"

#include <algorithm>
#include <limits>
#include <mutex>

namespace scupper::simulate {

namespace {

using detail::ExchangedTotals;
using detail::Exchanger;
using detail::Part;

constexpr double screening_level = 0.1;

/// The seed of the second sample, which has nothing to do with the first.
SimulationSettings second_of(SimulationSettings settings) {
    settings.seed = combine(settings.seed, hash_text("second sample"));
    return settings;
}

/// Runs all structures and says how each took part.
ExchangedTotals run(std::span<const Structure> structures, const estimate::Plan& plan,
                    const SensitivitySettings& settings, const std::vector<Factor>& factors,
                    std::vector<Part>& parts, unsigned threads,
                    const estimate::RunProgress& progress) {
    const SimulationSettings second = second_of(settings.draws);
    const detail::SharedScores first_shared(plan, settings.draws);
    const detail::SharedScores second_shared(plan, second);
    ExchangedTotals totals(factors.size(), settings.draws.draws);
    std::mutex adding;
    const auto block = [&](std::size_t begin, std::size_t end) {
        Exchanger exchanger(plan, settings.figure, factors, settings.draws, first_shared, second,
                            second_shared);
        for (std::size_t i = begin; i < end; ++i) {
            parts[i] = exchanger.run(structures[i]);
        }
        const std::lock_guard lock(adding);
        totals.add(exchanger.totals());
    };
    estimate::run_blocks(structures.size(), threads, block, progress, detail::block_structures);
    return totals;
}

void put_moments(const FactorRuns& runs, Sensitivity& result) {
    std::vector<double> all = runs.first;
    all.insert(all.end(), runs.second.begin(), runs.second.end());
    result.mean = detail::mean_of_draws(all);
    result.sd = detail::sd_of_draws(all);
}

void sort_rows(std::vector<FactorRow>& rows) {
    std::stable_sort(rows.begin(), rows.end(), [](const FactorRow& a, const FactorRow& b) {
        return a.others != b.others ? b.others : a.indices.total > b.indices.total;
    });
}

} // namespace

Sensitivity sensitivity(std::span<const Structure> structures,
                        std::shared_ptr<const estimate::Plan> plan,
                        const SensitivitySettings& settings, unsigned threads,
                        const estimate::RunProgress& progress) {
    detail::require_whole_replicates(settings.draws);
    const Swings moved = swings(structures, plan, screening_level, threads, {}, settings.figure);
    detail::Factors factors = detail::factors_of(moved, *plan, settings);
    std::vector<Part> parts(structures.size());
    const ExchangedTotals totals =
        run(structures, *plan, settings, factors.places, parts, threads, progress);
    Sensitivity result{settings.figure, 0.0, 0.0, std::move(factors.rows), {}};
    const FactorRuns runs = totals.runs();
    put_moments(runs, result);
    const std::vector<FactorIndices> indices = indices_of(runs, settings.draws.replicates);
    for (std::size_t k = 0; k < result.rows.size(); ++k) {
        FactorRow& row = result.rows[k];
        row.indices = indices[k];
        row.rank_correlation = row.keys.size() == 1 ? rank_correlation(totals.inputs(k), runs.first)
                                                    : std::numeric_limits<double>::quiet_NaN();
    }
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (parts[i] == Part::left_out) {
            result.left_out.push_back(i);
        }
    }
    sort_rows(result.rows);
    return result;
}

} // namespace scupper::simulate
