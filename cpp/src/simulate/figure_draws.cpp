#include "scupper/simulate/figure_draws.hpp"

#include "drawing.hpp"
#include "require.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <cmath>
#include <mutex>

namespace scupper::simulate {

namespace {

std::vector<std::size_t> with_simulated(const estimate::Plan& plan,
                                        std::span<const std::size_t> asked) {
    std::vector<std::size_t> places;
    for (const SimulatedFigure& figure : simulated_figures) {
        places.push_back(estimate::figure_place_of(plan, figure.key));
    }
    places.insert(places.end(), asked.begin(), asked.end());
    return places;
}

/// Draws one structure after the other and sums its figures; one for each thread.
class FigureDrawer {
  public:
    FigureDrawer(const estimate::Plan& plan, const SimulationSettings& settings,
                 const detail::SharedScores& shared, const std::vector<std::size_t>& places)
        : plan_(plan), draws_(settings.draws), places_(places), tape_(plan),
          drawing_(settings, shared), workspace_(plan), drawn_(settings.draws * places.size()),
          sums_{places, std::vector<estimate::FixedTotal>(places.size()),
                std::vector<estimate::FixedTotal>(drawn_.size())} {}

    void draw(const Structure& structure) {
        resolve(structure, plan_, resolved_);
        price_at(resolved_.values);
        if (outcome_of(resolved_, workspace_.figures.values(), plan_) !=
            estimate::Outcome::priced) {
            return;
        }
        std::vector<double> estimated;
        for (const std::size_t place : places_) {
            estimated.push_back(workspace_.figures.at(place));
        }
        draw_all();
        if (!has(0, figure_count)) {
            return; // in no total of the simulation either
        }
        if (!has(figure_count, places_.size())) {
            throw InputError({"simulate.figure", structure.id, "no value in some draw",
                              "figures that every priced structure has"});
        }
        add(estimated);
    }
    const FigureDraws& sums() const { return sums_; }

  private:
    void price_at(const std::vector<double>& values) {
        price(resolved_.model, estimate::Inputs<double>(plan_.inputs, values.data()), workspace_);
    }
    double& at(std::size_t draw, std::size_t figure) {
        return drawn_[draw * places_.size() + figure];
    }

    void draw_all() {
        drawing_.take(resolved_, tape_.record(resolved_, places_));
        tape_.draw_over(drawing_.places(), drawing_.columns());
        for (std::size_t first = 0; first < draws_; first += detail::block_draws) {
            const std::size_t count = std::min(detail::block_draws, draws_ - first);
            drawing_.draw(first, count);
            if (drawing_.is_out_of_bounds(count)) {
                price_block(first, count);
                continue;
            }
            tape_.run(count);
            for (std::size_t f = 0; f < places_.size(); ++f) {
                for (std::size_t i = 0; i < count; ++i) {
                    at(first + i, f) = tape_.figure(f)[i];
                }
            }
        }
    }
    /// Draw by draw: the price itself refuses what no calculator takes.
    void price_block(std::size_t first, std::size_t count) {
        values_ = resolved_.values;
        for (std::size_t i = 0; i < count; ++i) {
            drawing_.put(i, values_);
            price_at(values_);
            for (std::size_t f = 0; f < places_.size(); ++f) {
                at(first + i, f) = workspace_.figures.at(places_[f]);
            }
        }
    }
    /// Whether all draws have a value of the figures from `first` to before `last`.
    bool has(std::size_t first, std::size_t last) {
        for (std::size_t d = 0; d < draws_; ++d) {
            for (std::size_t f = first; f < last; ++f) {
                if (!std::isfinite(at(d, f))) {
                    return false;
                }
            }
        }
        return true;
    }
    void add(const std::vector<double>& estimated) {
        for (std::size_t f = 0; f < places_.size(); ++f) {
            sums_.estimated[f].add(estimated[f]);
        }
        for (std::size_t i = 0; i < drawn_.size(); ++i) {
            sums_.totals[i].add(drawn_[i]);
        }
        ++sums_.structures;
    }

    const estimate::Plan& plan_;
    std::size_t draws_;
    const std::vector<std::size_t>& places_;
    detail::Tape tape_;
    detail::Drawing drawing_;
    estimate::Resolved resolved_;
    estimate::Workspace<double> workspace_;
    std::vector<double> values_; ///< inputs of the draw at hand
    std::vector<double> drawn_;  ///< draw by draw, figure by figure
    FigureDraws sums_;
};

void add_up(FigureDraws& all, const FigureDraws& part) {
    for (std::size_t f = 0; f < all.estimated.size(); ++f) {
        all.estimated[f].add(part.estimated[f]);
    }
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
    FigureDraws all{with_simulated(plan, places), {}, {}};
    all.estimated.resize(all.places.size());
    all.totals.resize(settings.draws * all.places.size());
    std::mutex adding;
    const auto block = [&](std::size_t first, std::size_t last) {
        FigureDrawer drawer(plan, settings, shared, all.places);
        for (std::size_t i = first; i < last; ++i) {
            drawer.draw(structures[i]);
        }
        const std::lock_guard lock(adding);
        add_up(all, drawer.sums());
    };
    estimate::run_blocks(structures.size(), threads, block, progress, detail::block_structures);
    return all;
}

} // namespace scupper::simulate
