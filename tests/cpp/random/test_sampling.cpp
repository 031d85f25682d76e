#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/random.hpp"

#include <cmath>
#include <numeric>
#include <vector>

using namespace scupper;

namespace {

std::vector<double> drawn(Sampling sampling, const DrawKey& key, std::size_t n) {
    std::vector<double> u(n);
    Sampler(sampling, key, n).fill(0, u);
    return u;
}

double mean_of(const std::vector<double>& x) {
    return std::accumulate(x.begin(), x.end(), 0.0) / static_cast<double>(x.size());
}

double sd_of(const std::vector<double>& x) {
    const double centre = mean_of(x);
    double squares = 0.0;
    for (const double value : x) {
        squares += (value - centre) * (value - centre);
    }
    return std::sqrt(squares / static_cast<double>(x.size()));
}

double correlation(const std::vector<double>& x, const std::vector<double>& y) {
    double products = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        products += (x[i] - 0.5) * (y[i] - 0.5);
    }
    return products / static_cast<double>(x.size()) / (sd_of(x) * sd_of(y));
}

} // namespace

TEST_CASE("A Latin hypercube hits every stratum once", "[random]") {
    for (const std::size_t n : {1u, 2u, 7u, 100u, 4096u, 10007u}) {
        std::vector<int> hits(n, 0);
        for (const double u : drawn(Sampling::latin_hypercube, {1, 2, 3}, n)) {
            REQUIRE((u > 0.0 && u < 1.0));
            ++hits[static_cast<std::size_t>(u * static_cast<double>(n))];
        }
        INFO(n);
        CHECK(hits == std::vector<int>(n, 1));
    }
}

TEST_CASE("Filling, asking and the plain function give the same bits", "[random]") {
    const std::size_t n = GENERATE(101u, 700u);
    const DrawKey key{9, 8, 7};
    const Sampler plain(Sampling::plain, key, n);
    const Sampler stratified(Sampling::latin_hypercube, key, n);
    for (std::size_t first = 0; first < 4; ++first) {
        for (const std::size_t count : {0u, 1u, 2u, 4u, 97u}) {
            std::vector<double> p(count);
            std::vector<double> s(count);
            plain.fill(first, p);
            stratified.fill(first, s);
            for (std::size_t i = 0; i < count; ++i) {
                CHECK(p[i] == uniform(key, first + i));
                CHECK(p[i] == plain(first + i));
                CHECK(s[i] == latin_hypercube(key, first + i, n));
                CHECK(s[i] == stratified(first + i));
            }
        }
    }
}

TEST_CASE("Different inputs and structures are uncorrelated", "[random]") {
    constexpr std::size_t n = 1000;
    for (const Sampling sampling : {Sampling::plain, Sampling::latin_hypercube}) {
        std::vector<std::vector<double>> inputs;
        for (std::uint64_t i = 0; i < 20; ++i) {
            inputs.push_back(drawn(sampling, {1, 2, i}, n));
            inputs.push_back(drawn(sampling, {1, 100 + i, 3}, n));
        }
        double worst = 0.0;
        for (std::size_t i = 0; i < inputs.size(); ++i) {
            for (std::size_t j = 0; j < i; ++j) {
                worst = std::max(worst, std::fabs(correlation(inputs[i], inputs[j])));
            }
        }
        CHECK(worst < 4.5 / std::sqrt(n)); // 780 pairs: 4.5 standard errors have chance 0.5 %
    }
}

TEST_CASE("The mean and spread of draws are those of the distribution", "[random]") {
    constexpr std::size_t n = 20000;
    for (const Family family :
         {Family::uniform, Family::triangular, Family::pert, Family::normal}) {
        const ThreePoint point{2.0, 5.0, 8.0, family};
        const FastQuantile quantile(point);
        for (const Sampling sampling : {Sampling::plain, Sampling::latin_hypercube}) {
            auto x = drawn(sampling, {4, 5, 6}, n);
            for (double& value : x) {
                value = quantile(value);
            }
            // Strata take nearly all of the error of the mean away: a hundredth is ample.
            const double share = sampling == Sampling::plain ? 1.0 : 0.01;
            CHECK(std::fabs(mean_of(x) - point.mean()) < 4.0 * share * point.sd() / std::sqrt(n));
            CHECK(std::fabs(sd_of(x) / point.sd() - 1.0) < 4.0 / std::sqrt(2.0 * n));
        }
    }
}

TEST_CASE("A Latin hypercube refuses draws it does not have", "[random]") {
    const Sampler stratified(Sampling::latin_hypercube, {1, 2, 3}, 10);
    std::vector<double> u(11);
    CHECK_THROWS_AS(stratified(10), InputError);
    CHECK_THROWS_AS(stratified.fill(0, u), InputError);
    CHECK_THROWS_AS(latin_hypercube({1, 2, 3}, 0, 0), InputError);
    CHECK(Sampler(Sampling::plain, {1, 2, 3}, 10)(12345) == uniform({1, 2, 3}, 12345));
}
