#include "scupper/simulate/total_draws.hpp"

#include "drawing.hpp"
#include "require.hpp"
#include "tape.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <mutex>

namespace scupper::simulate {

namespace {

using estimate::FixedTotal;

/// Structures a thread takes at a time: few, for each takes long, but more than sums cost to add.
constexpr std::size_t structures_at_a_time = 16;

/// Sums over structures, figure after figure and draw by draw; none where one has no number.
class FigureSums {
  public:
    FigureSums(std::size_t figures, std::size_t draws)
        : draws_(draws), sums_(figures * draws), lost_(figures * draws, 0) {}

    void add(std::size_t figure, std::size_t draw, double part) {
        const std::size_t at = figure * draws_ + draw;
        if (std::isfinite(part)) {
            sums_[at].add(part);
        } else {
            lost_[at] = 1;
        }
    }
    void add(const FigureSums& other) {
        for (std::size_t i = 0; i < sums_.size(); ++i) {
            sums_[i].add(other.sums_[i]);
            lost_[i] = lost_[i] | other.lost_[i];
        }
    }
    std::vector<double> values(std::size_t figure) const {
        std::vector<double> values;
        for (std::size_t i = figure * draws_; i < (figure + 1) * draws_; ++i) {
            values.push_back(lost_[i] ? std::numeric_limits<double>::quiet_NaN()
                                      : sums_[i].value());
        }
        return values;
    }

  private:
    std::size_t draws_;
    std::vector<FixedTotal> sums_;
    std::vector<char> lost_;
};

/// Draws one structure after the other; one for each thread.
class FigureDrawer {
  public:
    FigureDrawer(const estimate::Plan& plan, std::span<const std::size_t> places,
                 const SimulationSettings& settings, const detail::SharedScores& shared)
        : plan_(plan), places_(places.begin(), places.end()), draws_(settings.draws), tape_(plan),
          drawing_(settings, shared), workspace_(plan), sums_(places_.size(), draws_) {}

    void add(const Structure& structure) {
        resolve(structure, plan_, resolved_);
        drawing_.take(resolved_, tape_.record(resolved_, places_));
        tape_.draw_over(drawing_.places(), drawing_.columns());
        for (std::size_t first = 0; first < draws_; first += detail::block_draws) {
            const std::size_t count = std::min(detail::block_draws, draws_ - first);
            drawing_.draw(first, count);
            if (drawing_.is_out_of_bounds(count)) {
                price_block(first, count);
            } else {
                run_block(first, count);
            }
        }
    }
    const FigureSums& sums() const { return sums_; }

  private:
    void run_block(std::size_t first, std::size_t count) {
        tape_.run(count);
        for (std::size_t f = 0; f < places_.size(); ++f) {
            const detail::Operand& figure = tape_.figure(f);
            for (std::size_t i = 0; i < count; ++i) {
                sums_.add(f, first + i, figure[i]);
            }
        }
    }
    /// Draw by draw: the price itself refuses what no calculator takes.
    void price_block(std::size_t first, std::size_t count) {
        values_ = resolved_.values;
        for (std::size_t i = 0; i < count; ++i) {
            drawing_.put(i, values_);
            price(resolved_.model, estimate::Inputs<double>(plan_.inputs, values_.data()),
                  workspace_);
            for (std::size_t f = 0; f < places_.size(); ++f) {
                sums_.add(f, first + i, workspace_.figures.at(places_[f]));
            }
        }
    }

    const estimate::Plan& plan_;
    std::vector<std::size_t> places_;
    std::size_t draws_;
    detail::Tape tape_;
    detail::Drawing drawing_;
    estimate::Resolved resolved_;
    estimate::Workspace<double> workspace_;
    std::vector<double> values_;
    FigureSums sums_;
};

} // namespace

std::vector<std::vector<double>> total_draws(const estimate::Programme& programme,
                                             std::span<const Structure> structures,
                                             std::span<const std::size_t> places,
                                             const SimulationSettings& settings, unsigned threads,
                                             const estimate::RunProgress& progress) {
    detail::require_whole_replicates(settings);
    const estimate::Plan& plan = *programme.plan;
    const detail::SharedScores shared(plan, settings);
    FigureSums sums(places.size(), settings.draws);
    std::mutex adding;
    const auto block = [&](std::size_t first, std::size_t last) {
        FigureDrawer drawer(plan, places, settings, shared);
        for (std::size_t i = first; i < last; ++i) {
            const std::size_t row = programme.priced[i];
            drawer.add(structures[row]);
        }
        const std::lock_guard lock(adding);
        sums.add(drawer.sums());
    };
    estimate::run_blocks(programme.priced.size(), threads, block, progress, structures_at_a_time);
    std::vector<std::vector<double>> totals;
    for (std::size_t f = 0; f < places.size(); ++f) {
        totals.push_back(sums.values(f));
    }
    return totals;
}

std::vector<std::vector<double>> total_samples(const estimate::Programme& programme,
                                               std::span<const Structure> structures,
                                               const SimulationSettings& settings, unsigned threads,
                                               const estimate::RunProgress& progress) {
    std::vector<std::size_t> places;
    for (const std::string& key : programme.keys) {
        places.push_back(estimate::figure_place_of(*programme.plan, key));
    }
    auto samples = total_draws(programme, structures, places, settings, threads, progress);
    for (std::vector<double>& sample : samples) {
        if (std::any_of(sample.begin(), sample.end(), [](double x) { return std::isnan(x); })) {
            sample.clear();
        }
        std::sort(sample.begin(), sample.end());
    }
    return samples;
}

} // namespace scupper::simulate
