#include "catch.hpp"
#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/simulate/indices.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <string>
#include <vector>

using namespace scupper;
using simulate::Factor;
using simulate::FactorIndices;
using simulate::SimulationSettings;

namespace {

const std::string risk = "simulate/risk";

double ishigami(std::span<const double> u) {
    const auto x = [&](std::size_t i) { return std::numbers::pi * (2.0 * u[i] - 1.0); };
    const double second = std::sin(x(1));
    return std::sin(x(0)) * (1.0 + 0.1 * std::pow(x(2), 4)) + 7.0 * second * second;
}

double g_function(std::span<const double> u) {
    constexpr std::array<double, 8> a{0.0, 1.0, 4.5, 9.0, 99.0, 99.0, 99.0, 99.0};
    double product = 1.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        product *= (std::fabs(4.0 * u[i] - 2.0) + a[i]) / (1.0 + a[i]);
    }
    return product;
}

std::vector<Factor> each(std::size_t inputs) {
    std::vector<Factor> factors;
    for (std::size_t i = 0; i < inputs; ++i) {
        factors.push_back({i});
    }
    return factors;
}

std::vector<FactorIndices> indices(const simulate::CubeFunction& f, std::size_t inputs,
                                   const std::vector<Factor>& factors,
                                   SimulationSettings settings = {.draws = 20000}) {
    return simulate::indices_of(simulate::run_factors(f, inputs, factors, settings),
                                settings.replicates);
}

double published(const std::string& quantity) {
    for (const reference::Row& row : reference::rows(risk)) {
        if (row.is(quantity)) {
            return std::stod(row.text("value"));
        }
    }
    throw std::runtime_error(quantity);
}

/// Compares every row of a function, "Ishigami S1" to "Ishigami ST3"; how many there were.
int compare_rows(const std::string& function, const std::vector<FactorIndices>& found) {
    int compared = 0;
    for (const reference::Row& row : reference::rows(risk)) {
        const std::string& quantity = row.text("quantity");
        const std::string index =
            row.starts(function + " S") ? quantity.substr(function.size() + 1) : "";
        const bool is_total = index.rfind("ST", 0) == 0;
        const std::string number =
            index.substr(std::min<std::size_t>(index.size(), is_total ? 2 : 1));
        if (number.size() != 1) {
            continue;
        }
        const FactorIndices& f = found.at(std::stoul(number) - 1);
        const double value = is_total ? f.total : f.first_order;
        const double error = is_total ? f.total_se : f.first_order_se;
        INFO(row.text("id") << " " << quantity);
        CHECK(std::fabs(value - std::stod(row.text("value"))) < 4.0 * error + 1e-9);
        CHECK(error < 0.02);
        ++compared;
    }
    return compared;
}

} // namespace

TEST_CASE("indices of the Ishigami function are those of its closed form") {
    const auto found = indices(ishigami, 3, each(3));
    CHECK(compare_rows("Ishigami", found) == 4);
}

TEST_CASE("indices of the g-function are those of its closed form") {
    const auto found = indices(g_function, 8, each(8));
    CHECK(compare_rows("Sobol g-function", found) == 11);
}

TEST_CASE("mean and variance of both samples are those of the Ishigami function") {
    const SimulationSettings settings{.draws = 20000};
    const auto runs = simulate::run_factors(ishigami, 3, {}, settings);
    std::vector<double> all = runs.first;
    all.insert(all.end(), runs.second.begin(), runs.second.end());
    const double n = static_cast<double>(all.size());
    const double mean = std::accumulate(all.begin(), all.end(), 0.0) / n;
    double variance = 0.0;
    for (const double x : all) {
        variance += (x - mean) * (x - mean) / n;
    }
    CHECK(mean == Approx(published("Ishigami mean")).epsilon(0.01));
    CHECK(variance == Approx(published("Ishigami variance")).epsilon(0.02));
}

TEST_CASE("inputs that are exchanged together have the indices of their group") {
    const std::vector<Factor> factors{{0, 2}, {1}, {0, 1, 2}};
    const auto found = indices(ishigami, 3, factors);
    // closed first-order index of {1, 3}: S1 + S3 + S13; of all inputs: 1
    const double group =
        published("Ishigami S1") + published("Ishigami S3") + published("Ishigami S13");
    CHECK(found[0].first_order == Approx(group).margin(4.0 * found[0].first_order_se));
    CHECK(found[0].total == Approx(group).margin(4.0 * found[0].total_se));
    CHECK(found[1].total == Approx(published("Ishigami ST2")).margin(4.0 * found[1].total_se));
    CHECK(found[2].first_order == Approx(1.0).margin(4.0 * found[2].first_order_se));
}

TEST_CASE("standard errors are what indices differ by from seed to seed") {
    std::vector<double> values, errors;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const auto found = indices(ishigami, 3, each(3), {.seed = seed, .draws = 1000});
        values.push_back(found[0].total);
        errors.push_back(found[0].total_se);
    }
    const auto mean = [](const std::vector<double>& v) {
        return std::accumulate(v.begin(), v.end(), 0.0) / static_cast<double>(v.size());
    };
    double variance = 0.0;
    for (const double x : values) {
        variance += (x - mean(values)) * (x - mean(values)) / 39.0;
    }
    CHECK(mean(errors) == Approx(std::sqrt(variance)).epsilon(0.35));
    CHECK(mean(values) == Approx(published("Ishigami ST1")).margin(0.02));
}

TEST_CASE("without variance indices are nothing, and what an input does not do is exactly 0") {
    const auto flat = indices([](std::span<const double>) { return 5.0; }, 2, each(2));
    CHECK(flat[0].first_order == 0.0);
    CHECK(flat[1].total == 0.0);
    const auto one = indices([](std::span<const double> u) { return u[0]; }, 2, each(2));
    CHECK(one[1].first_order == 0.0);
    CHECK(one[1].total == 0.0);
    CHECK(one[0].total == Approx(1.0).margin(0.02));
}

TEST_CASE("rank correlation is that of ranks, equal values sharing theirs") {
    const std::vector<double> x{1.0, 2.0, 3.0, 4.0, 5.0};
    const std::vector<double> cubes{1.0, 8.0, 27.0, 64.0, 125.0};
    const std::vector<double> falling{5.0, 4.0, 3.0, 2.0, 1.0};
    CHECK(simulate::rank_correlation(x, cubes) == Approx(1.0));
    CHECK(simulate::rank_correlation(x, falling) == Approx(-1.0));
    CHECK(simulate::rank_correlation(x, std::vector<double>(5, 2.0)) == 0.0);
    // 1 - 6 sum d^2 / (n (n^2 - 1)) with d = 1, 1, 1, 1, 0: 0.8 (definition, without ties)
    const std::vector<double> paired{2.0, 1.0, 4.0, 3.0, 5.0};
    CHECK(simulate::rank_correlation(x, paired) == Approx(0.8));
    // ranks 0.5, 0.5, 2, 3, 4 against 0 to 4: 9.5 / sqrt(9.5 * 10)
    const std::vector<double> tied{1.0, 1.0, 2.0, 3.0, 4.0};
    CHECK(simulate::rank_correlation(x, tied) == Approx(9.5 / std::sqrt(95.0)));
}

TEST_CASE("runs that cannot be are refused") {
    CHECK_THROWS_AS(indices(ishigami, 3, each(3), {.draws = 1001}), InputError);
    CHECK_THROWS_AS(indices(ishigami, 3, each(4)), InputError);
    CHECK_THROWS_AS(simulate::rank_correlation({}, {}), InputError);
    const std::vector<double> two{1.0, 2.0}, three{1.0, 2.0, 3.0};
    CHECK_THROWS_AS(simulate::first_order_index(two, three, two), InputError);
    CHECK_THROWS_AS(simulate::total_index(two, two, three), InputError);
    CHECK_THROWS_AS(simulate::indices_of({two, two, {two}}, 3), InputError);
    const auto single = simulate::indices_of({two, two, {two}}, 1);
    CHECK(std::isnan(single[0].total_se));
}
