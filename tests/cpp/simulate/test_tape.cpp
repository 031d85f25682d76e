#include "catch.hpp"
#include "estimate/structures.hpp"
#include "score_table.hpp"
#include "tape.hpp"

#include <cmath>
#include <numeric>
#include <vector>

using namespace scupper;
using namespace made_up;
using simulate::detail::block_draws;
using simulate::detail::Tape;

namespace {

/// Every input with a range in a column of its own, at draws from one end of it to the other.
struct Columns {
    explicit Columns(const estimate::Resolved& resolved) {
        for (std::size_t i = 0; i < resolved.uncertain.size(); ++i) {
            const Uncertain& input = resolved.uncertain[i];
            if (std::isnan(input.guess.likely) || is_certain(input)) {
                continue;
            }
            const FastQuantile quantile(input.guess);
            std::vector<double> column;
            for (std::size_t d = 0; d < block_draws; ++d) { // each input in another order
                const std::size_t rank = (d * (2 * places.size() + 1) + 5 * i) % block_draws;
                column.push_back(quantile((static_cast<double>(rank) + 0.5) / block_draws));
            }
            places.push_back(i);
            values.push_back(column);
        }
        for (const auto& column : values) {
            columns.push_back(column.data());
        }
    }
    std::vector<std::size_t> places;
    std::vector<std::vector<double>> values;
    std::vector<const double*> columns;
};

std::vector<std::size_t> all_figures(const estimate::Plan& plan) {
    std::vector<std::size_t> all(plan.figures.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return all;
}

bool same(double a, double b) {
    return a == b || (std::isnan(a) && std::isnan(b));
}

void check_tape(const Structure& structure, const Job& job) {
    const auto plan = estimate::make_plan(job);
    estimate::Resolved resolved;
    resolve(structure, *plan, resolved);
    Tape tape(*plan);
    tape.record(resolved, all_figures(*plan));
    const Columns drawn(resolved);
    tape.draw_over(drawn.places, drawn.columns);
    tape.run(block_draws);
    estimate::Workspace<double> workspace(*plan);
    std::vector<double> values = resolved.values;
    std::size_t moved = 0;
    for (std::size_t d = 0; d < block_draws; ++d) {
        for (std::size_t k = 0; k < drawn.places.size(); ++k) {
            values[drawn.places[k]] = drawn.values[k][d];
        }
        price(resolved.model, estimate::Inputs<double>(plan->inputs, values.data()), workspace);
        for (std::size_t f = 0; f < plan->figures.size(); ++f) {
            CAPTURE(structure.id, d, plan->figures.fields()[f].key);
            moved += tape.figure(f).column != nullptr ? 1 : 0;
            if (!same(tape.figure(f)[d], workspace.figures.at(f))) {
                FAIL("other bits: " << tape.figure(f)[d] << ", " << workspace.figures.at(f));
            }
        }
    }
    CHECK(moved > 20 * block_draws);
}

} // namespace

TEST_CASE(
    "a recorded price run over draws gives every figure as the price itself does, to the bit") {
    for (const Structure& s : {creek_bridge(), overpass(), counted_overpass()}) {
        check_tape(s, json::demo_job());
    }
}

TEST_CASE("only what moves a figure is needed") {
    const auto plan = demo_plan();
    estimate::Resolved resolved;
    resolve(overpass(), *plan, resolved);
    Tape tape(*plan);
    const auto place = estimate::figure_place_of(*plan, "water.volume");
    const auto& moves = tape.record(resolved, {place});
    CHECK(moves[*plan->inputs.find("water.temperature")]);
    CHECK_FALSE(moves[*plan->inputs.find("price.water")]);
}

TEST_CASE("tables of scores and values stay within their bounds and rise") {
    const auto& score = simulate::detail::ScoreOfUniform::instance();
    double largest = 0.0;
    double before = -9.0;
    for (int i = 1; i < 20000; ++i) {
        const double u = i * 5e-5;
        largest = std::max(largest, std::fabs(score(u) - normal_quantile(u)));
        CHECK(score(u) > before);
        before = score(u);
    }
    CHECK(largest < 2e-6);
    CHECK(score(1e-9) == normal_quantile(1e-9));
    CHECK(score(0.5) == 0.0);
    for (const double likely : {2.0, 2.1, 3.0, 5.9, 6.0}) {
        const ThreePoint guess{2.0, likely, 6.0};
        const simulate::detail::ValueOfScore value(guess);
        double last = 2.0;
        double farthest = 0.0;
        for (int i = -900; i <= 900; ++i) {
            const double z = 0.01 * i;
            CHECK(value(z) >= last);
            last = value(z);
            if (std::fabs(z) < 7.0) { // beyond, a uniform near 1 has too few digits to compare
                farthest = std::max(farthest, std::fabs(last - guess.quantile(normal_cdf(z))));
            }
        }
        CAPTURE(likely);
        CHECK(farthest < 1e-5 * 4.0);
        CHECK(last <= 6.0);
    }
}
