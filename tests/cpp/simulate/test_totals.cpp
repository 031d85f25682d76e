#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/random.hpp"
#include "scupper/simulate.hpp"

#include <cmath>
#include <limits>
#include <vector>

using namespace scupper;
using simulate::DrawnTotal;
using simulate::Simulation;

namespace {

/// Totals of a normal variable, drawn as replicates of a plain or Latin hypercube sample.
Simulation normal_totals(double mean, double sd, std::size_t draws, std::size_t replicates,
                         Sampling sampling, std::uint64_t seed) {
    Simulation s;
    s.settings = {.seed = seed, .draws = draws, .replicates = replicates};
    s.estimated.resize(simulate::figure_count);
    s.estimated[0].add(mean);
    s.totals.resize(draws * simulate::figure_count);
    const std::size_t size = draws / replicates;
    for (std::size_t d = 0; d < draws; ++d) {
        const Sampler sampler(sampling, {seed, d / size, 1}, size);
        const double x = mean + sd * normal_quantile(sampler(d % size));
        s.totals[d * simulate::figure_count].add(x);
    }
    return s;
}

DrawnTotal of_draws(const std::vector<double>& draws, std::size_t replicates) {
    Simulation s;
    s.settings = {.draws = draws.size(), .replicates = replicates};
    s.estimated.resize(simulate::figure_count);
    s.estimated[0].add(2.0);
    s.totals.resize(draws.size() * simulate::figure_count);
    for (std::size_t d = 0; d < draws.size(); ++d) {
        s.totals[d * simulate::figure_count].add(draws[d]);
    }
    return DrawnTotal(s, 0);
}

} // namespace

TEST_CASE("moments, quantiles and chances of a handful of draws by hand") {
    const DrawnTotal total = of_draws({4, 1, 3, 2, 8, 6}, 2);
    CHECK(total.mean().value == 4.0);
    CHECK(total.sd().value == Approx(std::sqrt(34.0 / 5.0)));
    CHECK(total.quantile(0.5).value == 3.5);
    CHECK(total.chance_above(4.0).value == Approx(2.0 / 6.0));
    CHECK(total.contingency(0.5).value == 1.5);
    // Replicates {4, 1, 3} and {2, 8, 6}: means 8/3 and 16/3.
    CHECK(total.mean().standard_error == Approx(8.0 / 3.0 / 2.0));
    CHECK(total.chance_above(4.0).standard_error == Approx(2.0 / 3.0 / 2.0));
}

TEST_CASE("a budget that holds in four of five cases, and what it takes beyond the estimate") {
    // 0.8416212 standard deviations: tables of the normal distribution
    const auto s = normal_totals(100000, 15000, 20000, 10, Sampling::latin_hypercube, 1);
    const DrawnTotal total(s, 0);
    CHECK(total.contingency(0.8).value == Approx(15000 * 0.8416212).epsilon(0.01));
    CHECK(total.chance_above(100000 + 15000 * 0.8416212).value == Approx(0.2).margin(0.003));
    CHECK(total.mean().value == Approx(100000).epsilon(1e-4));
    CHECK(total.sd().value == Approx(15000).epsilon(0.01));
}

TEST_CASE("standard errors cover the truth as often as they state, over repeated seeds") {
    // With ten replicates the mean lies within 2.262 standard errors in 95 of 100 runs (Student's
    // t, nine degrees of freedom, two-sided 5 %: tables).
    for (const Sampling sampling : {Sampling::plain, Sampling::latin_hypercube}) {
        int covered = 0, p80_covered = 0, p95_covered = 0;
        for (std::uint64_t seed = 1; seed <= 400; ++seed) {
            const DrawnTotal total(normal_totals(50, 10, 1000, 10, sampling, seed), 0);
            const auto covers = [&](const simulate::Estimated& found, double truth) {
                return std::fabs(found.value - truth) <= total.half_width(found, 0.95);
            };
            covered += covers(total.mean(), 50.0);
            p80_covered += covers(total.quantile(0.8), 58.416212);
            p95_covered += covers(total.quantile(0.95), 66.448536); // tables of the normal
        }
        for (const int number : {covered, p80_covered, p95_covered}) {
            CHECK(number >= 366); // 380 expected; three standard deviations are 13
            CHECK(number <= 393);
        }
    }
}

TEST_CASE("a hypercube needs far fewer draws than a plain sample for the mean") {
    const auto error = [](Sampling sampling) {
        double sum = 0;
        for (std::uint64_t seed = 1; seed <= 50; ++seed) {
            const double m =
                DrawnTotal(normal_totals(0, 1, 100, 1, sampling, seed), 0).mean().value;
            sum += m * m;
        }
        return std::sqrt(sum / 50);
    };
    CHECK(error(Sampling::latin_hypercube) < 0.1 * error(Sampling::plain));
}

TEST_CASE("levels and limits that make no sense are refused, and one replicate has no error") {
    const DrawnTotal total = of_draws({1, 2, 3}, 1);
    CHECK_THROWS_AS(total.quantile(1.5), InputError);
    CHECK_THROWS_AS(total.quantile(std::nan("")), InputError);
    CHECK_THROWS_AS(total.chance_above(std::nan("")), InputError);
    CHECK(std::isnan(total.mean().standard_error));
    CHECK(std::isnan(total.half_width(total.mean(), 0.95)));
    CHECK_THROWS_AS(total.half_width(total.mean(), 1.0), InputError);
    CHECK(total.quantile(0.0).value == 1.0);
    CHECK(total.quantile(1.0).value == 3.0);
}
