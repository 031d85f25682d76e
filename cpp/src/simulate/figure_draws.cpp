#include "scupper/simulate/figure_draws.hpp"

#include "require.hpp"
#include "scupper/error.hpp"
#include "worker.hpp"

#include <mutex>
#include <utility>

namespace scupper::simulate {

namespace {

FigureDraws empty(std::vector<std::size_t> places, std::size_t draws) {
    FigureDraws sums;
    sums.totals.resize(draws * places.size());
    sums.places = std::move(places);
    return sums;
}

/// Adds a structure that was drawn, where it is in the totals of the simulation.
void add_structure(const detail::FigureDrawer& drawer, const std::string& id, FigureDraws& sums) {
    const std::size_t draws = sums.totals.size() / sums.places.size();
    if (drawer.lost_draws(0, figure_count) > 0) {
        return;
    }
    if (drawer.lost_draws(figure_count, drawer.figures()) > 0) {
        throw InputError({"simulate.figure", id, "no value in some draw",
                          "figures that every priced structure has"});
    }
    for (std::size_t f = 0; f < drawer.figures(); ++f) {
        for (std::size_t d = 0; d < draws; ++d) {
            sums.totals[d * sums.places.size() + f].add(drawer.drawn(f)[d]);
        }
    }
    ++sums.structures;
}

void add_up(FigureDraws& all, const FigureDraws& part) {
    for (std::size_t i = 0; i < all.totals.size(); ++i) {
        all.totals[i].add(part.totals[i]);
    }
    all.structures += part.structures;
}

} // namespace

FigureDraws figure_draws(std::span<const Structure> structures, const estimate::Plan& plan,
                         std::span<const std::size_t> places, const SimulationSettings& settings,
                         unsigned threads, const estimate::RunProgress& progress) {
    detail::require_whole_replicates(settings);
    if (settings.sampling == Sampling::sobol_single) {
        throw InputError(
            {"simulate.sampling", "sampling", "sobol_single", "plain, latin_hypercube or sobol"});
    }
    detail::require_sobol(settings, structures.size());
    const detail::SharedScores shared(plan, settings);
    std::vector<std::size_t> followed = detail::simulated_places(plan);
    followed.insert(followed.end(), places.begin(), places.end());
    FigureDraws all = empty(std::move(followed), settings.draws);
    std::mutex adding;
    const auto block = [&](std::size_t first, std::size_t last) {
        detail::FigureDrawer drawer(plan, settings, shared, all.places);
        FigureDraws part = empty(all.places, settings.draws);
        for (std::size_t i = first; i < last; ++i) {
            if (drawer.take(structures[i]) == estimate::Outcome::priced) {
                drawer.draw();
                add_structure(drawer, structures[i].id, part);
            }
        }
        const std::lock_guard lock(adding);
        add_up(all, part);
    };
    estimate::run_blocks(structures.size(), threads, block, progress, detail::block_structures);
    return all;
}

} // namespace scupper::simulate
