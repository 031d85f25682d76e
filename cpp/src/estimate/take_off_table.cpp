#include "scupper/estimate/take_off_table.hpp"

#include "figure_keys.hpp"
#include "price_steps.hpp"
#include "scupper/estimate/draws.hpp"
#include "scupper/estimate/run.hpp"

#include <algorithm>
#include <array>
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

using Bases = std::array<Basis, slot_table.size()>;

template <class Dimensions>
Bases bases_of(const Dimensions& dimensions) {
    std::array<Basis, takeoff::dimension_count> known;
    std::transform(dimensions.begin(), dimensions.begin() + known.size(), known.begin(),
                   [](const Uncertain& u) { return u.basis; });
    return takeoff::bases_of(known);
}

/// Takes off one structure after the other in memory of its own.
class Taker {
  public:
    Taker(const Plan& plan, const Probabilities& probabilities)
        : plan_(plan), probabilities_(probabilities), inputs_(plan.inputs.size() * range_draws),
          sample_(columns * range_draws) {}

    void row(const Structure& structure, std::size_t index, TakeOffTable& table) {
        resolve(structure, plan_, resolved_);
        table.verdict[index] = resolved_.verdict;
        const auto likely = quantities(resolved_.values.data());
        Bases bases = bases_of(resolved_.uncertain);
        for (Slot s = 0; s < columns; ++s) {
            if (resolved_.model.given[s]) {
                bases[s] = resolved_.uncertain[takeoff::dimension_count + s].basis;
            }
        }
        put(likely, bases, resolved_.untold, index, table);
        if (!table.low.empty()) {
            draw_ranges(likely, index, table);
        }
    }

    /// The same of a record to which nothing is added, and without ranges: nothing to resolve.
    static void plain_row(const Structure& structure, std::size_t index, TakeOffTable& table) {
        takeoff::Inferred inferred = takeoff::infer(structure);
        table.verdict[index] = inferred.verdict;
        std::array<double, takeoff::dimension_count> likely;
        std::transform(inferred.dimensions.begin(), inferred.dimensions.end(), likely.begin(),
                       [](const Uncertain& u) { return u.guess.likely; });
        const auto dimensions =
            takeoff::dimensions_from(std::span<const double, likely.size()>(likely));
        takeoff::Given<double> given;
        Bases bases = bases_of(inferred.dimensions);
        for (Slot s = 0; s < slot_table.size(); ++s) {
            if (!std::isnan(inferred.counted[s])) {
                given.set(s, inferred.counted[s]);
                bases[s] = Basis::recorded;
                inferred.untold[s] = false;
            }
        }
        put(takeoff::take_off(inferred.shape, dimensions, given), bases, inferred.untold, index,
            table);
    }

  private:
    static void put(const takeoff::Quantities<double>& likely, const Bases& bases,
                    const std::array<bool, slot_table.size()>& untold, std::size_t index,
                    TakeOffTable& table) {
        const std::size_t rows = table.verdict.size();
        for (Slot s = 0; s < columns; ++s) {
            table.value[s * rows + index] =
                untold[s] ? std::numeric_limits<double>::quiet_NaN() : likely[s];
            table.basis[s * rows + index] = untold[s] ? Basis::assumed : bases[s];
        }
    }

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
            if (ranges == Ranges::none && structures[i].given.empty()) {
                Taker::plain_row(structures[i], i, table);
            } else {
                taker.row(structures[i], i, table);
            }
        }
    };
    run_blocks(structures.size(), threads, block, progress);
    return table;
}

} // namespace scupper::estimate
