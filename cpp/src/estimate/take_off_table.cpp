#include "scupper/estimate/take_off_table.hpp"

#include <algorithm>
#include <limits>

#include "price_steps.hpp"
#include "scupper/estimate/draws.hpp"
#include "scupper/estimate/run.hpp"

namespace scupper::estimate {

namespace {

constexpr std::size_t columns = column_count();
constexpr std::size_t range_draws = 64;

/// Takes off one structure after the other in memory of its own.
class Taker {
  public:
    explicit Taker(const Plan& plan) : plan_(plan), values_(plan.inputs.size()) {
        sample_.resize(columns * range_draws);
    }

    void row(const Structure& structure, std::size_t index, TakeOffTable& table) {
        resolve(structure, plan_, resolved_);
        table.verdict[index] = resolved_.verdict;
        const auto likely = quantities(resolved_.values);
        draw();
        for (Slot s = 0; s < columns; ++s) {
            const std::size_t at = index * columns + s;
            const bool untold = resolved_.untold[s];
            table.value[at] = untold ? std::numeric_limits<double>::quiet_NaN() : likely[s];
            std::span<double> sample(sample_.data() + s * range_draws, range_draws);
            table.low[at] = sample_quantile(sample, 0.05);
            table.high[at] = sample_quantile(sample, 0.95);
            table.basis[at] = basis(s);
        }
    }

  private:
    takeoff::Quantities<double> quantities(const std::vector<double>& values) const {
        return detail::quantities_of(resolved_.model,
                                     Inputs<double>(plan_.inputs, values.data()));
    }

    void draw() {
        const InputDraws draws(resolved_, {.seed = 1, .draws = range_draws});
        for (std::size_t d = 0; d < range_draws; ++d) {
            draws.fill(d, values_);
            const auto q = quantities(values_);
            for (Slot s = 0; s < columns; ++s) {
                sample_[s * range_draws + d] = q[s];
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
    Resolved resolved_;
    std::vector<double> values_;
    std::vector<double> sample_;
};

} // namespace

TakeOffTable take_off_table(std::span<const Structure> structures, unsigned threads,
                            const RunProgress& progress) {
    const Plan plan = take_off_plan();
    TakeOffTable table;
    const std::size_t cells = structures.size() * columns;
    table.value.resize(cells);
    table.low.resize(cells);
    table.high.resize(cells);
    table.basis.resize(cells);
    table.verdict.resize(structures.size());
    const auto block = [&](std::size_t first, std::size_t last) {
        Taker taker(plan);
        for (std::size_t i = first; i < last; ++i) {
            taker.row(structures[i], i, table);
        }
    };
    run_blocks(structures.size(), threads, block, progress);
    return table;
}

} // namespace scupper::estimate
