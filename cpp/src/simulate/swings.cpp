#include "scupper/simulate/swings.hpp"

#include "scupper/error.hpp"
#include "scupper/estimate/fixed_total.hpp"
#include "scupper/estimate/moved_total.hpp"
#include "scupper/random.hpp"
#include "tape.hpp"

#include <algorithm>
#include <cmath>
#include <mutex>

namespace scupper::simulate {

namespace {

/// The figure of some structures and what moves it.
struct Sum {
    explicit Sum(std::size_t inputs) : moved(inputs) {}
    estimate::FixedTotal figure;
    std::vector<estimate::MovedTotal> moved; ///< by input place

    void add(const Sum& other) {
        figure.add(other.figure);
        for (std::size_t i = 0; i < moved.size(); ++i) {
            moved[i].add(other.moved[i]);
        }
    }
};

/// Moves the inputs of one structure after the other.
class Mover {
  public:
    Mover(const estimate::Plan& plan, double level, std::size_t figure)
        : plan_(plan), level_(level),
          figure_(estimate::figure_place_of(plan, simulated_figures.at(figure).key)), tape_(plan),
          workspace_(plan), sum_(plan.inputs.size()) {}

    void move(const Structure& structure) {
        resolve(structure, plan_, resolved_);
        const double figure = figure_at_values();
        if (outcome_of(resolved_, workspace_.figures.values(), plan_) !=
            estimate::Outcome::priced) {
            return;
        }
        sum_.figure.add(figure);
        const std::vector<char>& moves = tape_.record(resolved_, {figure_});
        for (std::size_t i = 0; i < moves.size(); ++i) {
            const Uncertain& input = resolved_.uncertain[i];
            if (moves[i] && !std::isnan(input.guess.likely) && !is_certain(input)) {
                const FastQuantile quantile(input.guess);
                sum_.moved[i].add(figure_with(i, quantile(level_)) - figure,
                                  figure_with(i, quantile(1.0 - level_)) - figure);
            }
        }
    }
    const Sum& sum() const { return sum_; }

  private:
    double figure_at_values() {
        price(resolved_.model, estimate::Inputs<double>(plan_.inputs, resolved_.values.data()),
              workspace_);
        return workspace_.figures.at(figure_);
    }
    double figure_with(std::size_t place, double value) {
        std::swap(resolved_.values[place], value);
        const double figure = figure_at_values();
        std::swap(resolved_.values[place], value);
        return figure;
    }

    const estimate::Plan& plan_;
    double level_;
    std::size_t figure_;
    detail::Tape tape_;
    estimate::Workspace<double> workspace_;
    estimate::Resolved resolved_;
    Sum sum_;
};

Swing swing_of(const LayoutField& field, std::size_t place, const estimate::MovedTotal& moved,
               double figure) {
    const double low = moved.low(figure);
    const double high = moved.high(figure);
    return {field.key, field.label, place, moved.structures, low, high, std::fabs(high - low)};
}

bool is_wider(const Swing& a, const Swing& b) {
    return estimate::moves_more(a.width, b.width);
}

} // namespace

std::size_t simulated_figure(std::string_view name) {
    const auto* found =
        std::find_if(simulated_figures.begin(), simulated_figures.end(),
                     [&](const SimulatedFigure& figure) { return figure.name == name; });
    if (found == simulated_figures.end()) {
        std::string words;
        for (const SimulatedFigure& figure : simulated_figures) {
            words += (words.empty() ? "" : ", ") + std::string(figure.name);
        }
        throw UnknownNameError(
            {"simulate.figure", "figure", "\"" + std::string(name) + "\"", words});
    }
    return static_cast<std::size_t>(found - simulated_figures.begin());
}

Swings swings(std::span<const Structure> structures, std::shared_ptr<const estimate::Plan> plan,
              double level, unsigned threads, const estimate::RunProgress& progress,
              std::size_t figure) {
    if (!(level > 0.0 && level < 0.5)) {
        throw InputError({"simulate.level", "level", std::to_string(level), "between 0 and 0.5"});
    }
    Sum sum(plan->inputs.size());
    std::mutex adding;
    const auto block = [&](std::size_t first, std::size_t last) {
        Mover mover(*plan, level, figure);
        for (std::size_t i = first; i < last; ++i) {
            mover.move(structures[i]);
        }
        const std::lock_guard lock(adding);
        sum.add(mover.sum());
    };
    estimate::run_blocks(structures.size(), threads, block, progress);
    Swings result{figure, sum.figure.value(), level, {}};
    for (std::size_t i = 0; i < sum.moved.size(); ++i) {
        if (sum.moved[i].structures > 0) {
            result.rows.push_back(
                swing_of(plan->inputs.fields()[i], i, sum.moved[i], result.estimated));
        }
    }
    std::stable_sort(result.rows.begin(), result.rows.end(), is_wider);
    return result;
}

} // namespace scupper::simulate
