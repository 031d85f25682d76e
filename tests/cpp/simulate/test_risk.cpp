#include "catch.hpp"
#include "reference.hpp"
#include "scupper/simulate.hpp"

#include <cmath>
#include <set>
#include <string>

using namespace scupper;

namespace {

ThreePoint guess_of(const reference::Row& row, Family family) {
    return {.low = row["a"], .likely = row["m"], .high = row["b"], .family = family};
}

/// What the engine says of a row, or NaN where there is no formula here for it.
double answer(const reference::Row& row) {
    const std::string& quantity = row.text("quantity");
    if (quantity == "triangular mean") {
        return guess_of(row, Family::triangular).mean();
    }
    if (quantity == "triangular sd") {
        return guess_of(row, Family::triangular).sd();
    }
    if (quantity.starts_with("triangular P")) {
        return guess_of(row, Family::triangular)
            .quantile(std::stod(quantity.substr(quantity.find('P') + 1)) / 100.0);
    }
    if (quantity == "PERT mean") {
        return guess_of(row, Family::pert).mean();
    }
    if (quantity == "PERT sd, exact beta (lambda 4)") {
        return guess_of(row, Family::pert).sd();
    }
    if (quantity == "standard normal quantile") {
        return normal_quantile(row["p"]);
    }
    if (quantity == "P80 contingency, normal") {
        const double half = normal_quantile(0.9) * row["sd"];
        const ThreePoint guess{row["mean"] - half, row["mean"], row["mean"] + half, Family::normal,
                               Meaning::p10_p90};
        return guess.quantile(0.8) - row["base"];
    }
    if (quantity == "P80 of lognormal") {
        const double factor = std::exp(normal_quantile(0.9) * row["sigma_ln"]);
        const ThreePoint guess{row["median"] / factor, row["median"], row["median"] * factor,
                               Family::lognormal, Meaning::p10_p90};
        return guess.quantile(0.8);
    }
    return std::nan("");
}

/// The variance over seeds of the mean of n stratified uniforms.
double variance_of_mean(std::size_t n) {
    constexpr int seeds = 4000;
    double squares = 0.0;
    for (std::uint64_t seed = 0; seed < seeds; ++seed) {
        const Sampler sampler(Sampling::latin_hypercube, {seed, 1, 2}, n);
        double sum = 0.0;
        for (std::size_t d = 0; d < n; ++d) {
            sum += sampler(d) - 0.5;
        }
        squares += std::pow(sum / static_cast<double>(n), 2) / seeds;
    }
    return squares;
}

} // namespace

TEST_CASE("moments and quantiles of the families are those that were worked out elsewhere") {
    int met = 0;
    std::set<std::string> others;
    for (const reference::Row& row : reference::rows("simulate/risk")) {
        const double found = answer(row);
        if (std::isnan(found)) {
            others.insert(row.text("quantity"));
            continue;
        }
        INFO(row.text("id"));
        CHECK(found == Approx(std::stod(row.text("value"))).epsilon(1e-7).margin(1e-12));
        ++met;
    }
    CHECK(met == 27);
    // (b - a) / 6 is the spread of another distribution than the one that is drawn: the exact beta
    // is, whose rows are met.
    CHECK(others.contains("PERT sd, classic"));
}

// The variance of a squared-sum estimate over 4000 seeds has a relative standard error of about
// sqrt(2 / 4000), 2.2 %.
TEST_CASE("a hypercube's mean varies as little as its formula says") {
    int met = 0;
    for (const reference::Row& row : reference::rows("simulate/risk")) {
        if (row.is("variance of LHS mean of U(0,1)")) {
            INFO(row.text("id"));
            CHECK(variance_of_mean(static_cast<std::size_t>(row["n"])) ==
                  Approx(std::stod(row.text("value"))).epsilon(0.09));
            ++met;
        }
    }
    CHECK(met == 2);
}
