#include "scupper/simulate/survey_list.hpp"

#include "narrowing.hpp"
#include "picking.hpp"
#include "scupper/error.hpp"
#include "strata.hpp"

#include <algorithm>
#include <cmath>
#include <mutex>
#include <utility>

namespace scupper::simulate {

namespace {

using detail::SharedTotals;
using estimate::FixedTotal;

constexpr std::size_t least_draws = 16;

/// The cost of everything that is priced, draw by draw.
using DrawnCosts = std::vector<FixedTotal>;

void require_draws(const SurveySettings& settings) {
    if (settings.draws.draws < least_draws) {
        throw InputError({"survey.draws", "draws", std::to_string(settings.draws.draws),
                          "at least " + std::to_string(least_draws)});
    }
}

/// Where a structure stands: not priced, priced, or left without a price by a draw.
enum class Standing : char { unpriced, listed, left_out };

/// What is found out structure by structure, whichever thread does it.
class Search {
  public:
    Search(std::span<const Structure> structures, const estimate::Plan& plan,
           const SurveySettings& settings)
        : structures_(structures), plan_(plan), settings_(settings), visits_(structures.size()),
          standing_(structures.size(), Standing::unpriced), costs_(settings.draws.draws) {}

    void search(std::size_t first, std::size_t last) {
        Surveyor surveyor(plan_, settings_);
        estimate::Workspace<double> workspace(plan_);
        estimate::Resolved resolved;
        DrawnCosts costs(costs_.size());
        SharedTotals shared;
        for (std::size_t i = first; i < last; ++i) {
            resolve(structures_[i], plan_, resolved);
            standing_[i] = draw(resolved, workspace, costs);
            if (standing_[i] == Standing::listed) {
                visits_[i] = surveyor.visit_to(resolved);
                visits_[i].index = i;
                shared.add(surveyor.shared());
            }
        }
        const std::lock_guard lock(adding_);
        for (std::size_t d = 0; d < costs.size(); ++d) {
            costs_[d].add(costs[d]);
        }
        shared_.add(shared);
    }

    const SharedTotals& shared() const { return shared_; }

    std::vector<double> costs() const {
        std::vector<double> values;
        for (const FixedTotal& total : costs_) {
            values.push_back(total.value());
        }
        return values;
    }

    std::vector<std::size_t> left_out() const {
        std::vector<std::size_t> positions;
        for (std::size_t i = 0; i < standing_.size(); ++i) {
            if (standing_[i] == Standing::left_out) {
                positions.push_back(i);
            }
        }
        return positions;
    }

    /// The visits that tell anything, by the names of their structures.
    std::vector<Visit> visits() {
        std::vector<std::pair<std::string, std::size_t>> order;
        for (std::size_t i = 0; i < visits_.size(); ++i) {
            if (!visits_[i].measurements.empty()) {
                order.emplace_back(structure_key(structures_[i]), i);
            }
        }
        std::sort(order.begin(), order.end());
        std::vector<Visit> visits;
        for (const auto& [key, i] : order) {
            visits.push_back(std::move(visits_[i]));
        }
        return visits;
    }

  private:
    Standing draw(const estimate::Resolved& resolved, estimate::Workspace<double>& workspace,
                  DrawnCosts& costs) const {
        price(resolved.model, estimate::Inputs<double>(plan_.inputs, resolved.values.data()),
              workspace);
        if (outcome_of(resolved, workspace.figures.values(), plan_) != estimate::Outcome::priced) {
            return Standing::unpriced;
        }
        const std::size_t place = estimate::figure_place_of(plan_, "cost.total");
        const std::vector<double> drawn =
            estimate::draw_group({&resolved, 1}, settings_.draws, {&place, 1});
        if (!std::all_of(drawn.begin(), drawn.end(), [](double x) { return std::isfinite(x); })) {
            return Standing::left_out;
        }
        for (std::size_t d = 0; d < drawn.size(); ++d) {
            costs[d].add(drawn[d]);
        }
        return Standing::listed;
    }

    std::span<const Structure> structures_;
    const estimate::Plan& plan_;
    const SurveySettings& settings_;
    std::vector<Visit> visits_;
    std::vector<Standing> standing_;
    DrawnCosts costs_;
    SharedTotals shared_;
    std::mutex adding_;
};

} // namespace

double range_without(double range, double removed, double variance) {
    if (!(variance > removed)) {
        return 0.0;
    }
    return range * std::sqrt(1.0 - removed / variance);
}

SurveyList survey_list(std::span<const Structure> structures,
                       std::shared_ptr<const estimate::Plan> plan, const SurveySettings& settings,
                       unsigned threads, const estimate::RunProgress& progress) {
    require_draws(settings);
    Search search(structures, *plan, settings);
    estimate::run_blocks(
        structures.size(), threads,
        [&](std::size_t first, std::size_t last) { search.search(first, last); }, progress);
    SurveyList list;
    list.plan = std::move(plan);
    const std::vector<double> drawn = search.costs();
    std::vector<double> costs = drawn;
    for (const double cost : costs) {
        list.mean += cost / static_cast<double>(costs.size());
    }
    list.variance = detail::variance_of(costs);
    std::sort(costs.begin(), costs.end());
    list.low = estimate::sorted_quantile(costs, 0.05);
    list.high = estimate::sorted_quantile(costs, 0.95);
    list.visits = search.visits();
    list.left_out = search.left_out();
    detail::pick(settings.visits, search.shared(), list);
    detail::put_narrowing(structures, settings.draws, drawn, threads, list);
    return list;
}

} // namespace scupper::simulate
