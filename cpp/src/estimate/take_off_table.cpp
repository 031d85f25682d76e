#include "scupper/estimate/take_off_table.hpp"

#include "figure_keys.hpp"
#include "price_steps.hpp"
#include "scupper/estimate/draws.hpp"
#include "scupper/estimate/run.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace scupper::estimate {

namespace {

constexpr std::size_t columns = column_count();
constexpr std::size_t range_draws = 64;

/// The probabilities at which every structure's inputs are drawn for its range. One hypercube
/// serves all structures: a row's range must not depend on its neighbours, nor on the order.
class Probabilities {
  public:
    explicit Probabilities(const Plan& plan) : u_(plan.inputs.size() * range_draws) {
        for (std::size_t i = 0; i < plan.inputs.size(); ++i) {
            const DrawKey key{.seed = 1, .stream = hash_text("take-off"), .input = plan.hashes[i]};
            Sampler(Sampling::latin_hypercube, key, range_draws)
                .fill(0, std::span(u_).subspan(i * range_draws, range_draws));
        }
    }
    std::span<const double> of(std::size_t place) const {
        return std::span(u_).subspan(place * range_draws, range_draws);
    }

  private:
    std::vector<double> u_;
};

/// The value below which 5 % of draws lie, and that above which 5 % do.
std::pair<double, double> five_and_ninety_five(std::span<double> sample) {
    const auto [least, greatest] = std::minmax_element(sample.begin(), sample.end());
    if (*least == *greatest) {
        return {*least, *greatest};
    }
    std::sort(sample.begin(), sample.end());
    return {sorted_quantile(sample, 0.05), sorted_quantile(sample, 0.95)};
}

/// Takes off one structure after the other in memory of its own.
class Taker {
  public:
    Taker(const Plan& plan, const Probabilities& probabilities)
        : plan_(plan), probabilities_(probabilities), inputs_(plan.inputs.size() * range_draws),
          sample_(columns * range_draws) {}

    void row(const Structure& structure, std::size_t index, Ranges ranges, TakeOffTable& table) {
        resolve(structure, plan_, resolved_);
        table.verdict[index] = resolved_.verdict;
        const auto likely = quantities(resolved_.values.data());
        const std::size_t rows = table.verdict.size();
        for (Slot s = 0; s < columns; ++s) {
            const bool untold = resolved_.untold[s];
            table.value[s * rows + index] =
                untold ? std::numeric_limits<double>::quiet_NaN() : likely[s];
            table.basis[s * rows + index] = basis(s);
        }
        if (ranges == Ranges::drawn) {
            draw_ranges(likely, index, table);
        }
    }

  private:
    takeoff::Quantities<double> quantities(const double* values) const {
        return detail::quantities_of(resolved_.model, Inputs<double>(plan_.inputs, values));
    }

    void draw_ranges(const takeoff::Quantities<double>& likely, std::size_t index,
                     TakeOffTable& table) {
        draw();
        const std::size_t rows = table.verdict.size();
        for (Slot s = 0; s < columns; ++s) {
            const auto [low, high] =
                five_and_ninety_five({sample_.data() + s * range_draws, range_draws});
            // A likely value at the end of its range lies beyond the draws.
            table.low[s * rows + index] = std::min(low, likely[s]);
            table.high[s * rows + index] = std::max(high, likely[s]);
        }
    }

    void draw() {
        draw_inputs();
        const std::size_t n = plan_.inputs.size();
        for (std::size_t d = 0; d < range_draws; ++d) {
            const auto q = quantities(inputs_.data() + d * n);
            for (Slot s = 0; s < columns; ++s) {
                sample_[s * range_draws + d] = q[s];
            }
        }
    }

    void draw_inputs() {
        const std::size_t n = plan_.inputs.size();
        for (std::size_t d = 0; d < range_draws; ++d) {
            std::copy(resolved_.values.begin(), resolved_.values.end(), inputs_.begin() + d * n);
        }
        for (std::size_t i = 0; i < n; ++i) {
            const Uncertain& input = resolved_.uncertain[i];
            if (!detail::has_range(input)) {
                continue;
            }
            const FastQuantile quantile(input.guess);
            const auto u = probabilities_.of(i);
            for (std::size_t d = 0; d < range_draws; ++d) {
                inputs_[d * n + i] = quantile(u[d]);
            }
        }
    }

    Basis basis(Slot s) const {
        if (resolved_.untold[s]) {
            return Basis::assumed;
        }
        if (resolved_.model.given[s]) {
            return resolved_.uncertain[takeoff::dimension_count + s].basis;
        }
        Basis least = Basis::measured;
        for (std::size_t d = 0; d < takeoff::dimension_count; ++d) {
            if (takeoff::rests_on(s, d)) {
                least = std::max(least, resolved_.uncertain[d].basis);
            }
        }
        return least;
    }

    const Plan& plan_;
    const Probabilities& probabilities_;
    Resolved resolved_;
    std::vector<double> inputs_;
    std::vector<double> sample_;
};

} // namespace

TakeOffTable take_off_table(std::span<const Structure> structures, unsigned threads,
                            const RunProgress& progress, Ranges ranges) {
    const Plan plan = take_off_plan();
    const Probabilities probabilities(plan);
    TakeOffTable table;
    const std::size_t cells = structures.size() * columns;
    table.value.resize(cells);
    table.low.resize(ranges == Ranges::drawn ? cells : 0);
    table.high.resize(ranges == Ranges::drawn ? cells : 0);
    table.basis.resize(cells);
    table.verdict.resize(structures.size());
    const auto block = [&](std::size_t first, std::size_t last) {
        Taker taker(plan, probabilities);
        for (std::size_t i = first; i < last; ++i) {
            taker.row(structures[i], i, ranges, table);
        }
    };
    run_blocks(structures.size(), threads, block, progress);
    return table;
}

} // namespace scupper::estimate
