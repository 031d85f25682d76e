#include "catch.hpp"
#include "scupper/random.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

using namespace scupper;

namespace {

std::vector<double> ranks_of(const std::vector<double>& x) {
    std::vector<std::size_t> order(x.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](auto a, auto b) { return x[a] < x[b]; });
    std::vector<double> ranks(x.size());
    for (std::size_t k = 0; k < order.size(); ++k) {
        ranks[order[k]] = static_cast<double>(k);
    }
    return ranks;
}

/// Spearman's rank correlation of a sample without ties.
double spearman(const std::vector<double>& x, const std::vector<double>& y) {
    const std::vector<double> a = ranks_of(x), b = ranks_of(y);
    const auto n = static_cast<double>(x.size());
    double squares = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        squares += (a[i] - b[i]) * (a[i] - b[i]);
    }
    return 1.0 - 6.0 * squares / (n * (n * n - 1.0));
}

} // namespace

TEST_CASE("Normal scores of a wished correlation have the wished rank correlation", "[random]") {
    constexpr std::size_t n = 40000;
    for (const double rank : {-0.9, -0.3, 0.0, 0.6, 0.95}) {
        const double r = normal_correlation(rank);
        CHECK(rank_correlation(r) == Approx(rank).margin(1e-14));
        const auto weights = score_weights(std::vector<double>{1.0, r, r, 1.0}, 2);
        REQUIRE(weights);
        std::vector<double> x(n), y(n);
        for (std::size_t i = 0; i < n; ++i) {
            x[i] = normal_quantile(uniform({1, 2, 3}, i));
            y[i] = (*weights)[2] * x[i] + (*weights)[3] * normal_quantile(uniform({1, 2, 4}, i));
        }
        // The standard error of a rank correlation is about (1 - rank^2) / sqrt(n), at most 1.1 of it.
        CHECK(std::fabs(spearman(x, y) - rank) <
              4.0 * 1.1 * (1.0 - rank * rank) / std::sqrt(double{n}) + 1e-4);
    }
    CHECK(normal_correlation(1.0) == Approx(1.0));
    CHECK(normal_correlation(-1.0) == Approx(-1.0));
    CHECK(normal_correlation(0.5) == Approx(0.5176380902050415)); // 2 sin(15 degrees)
}

TEST_CASE("Weights times their transpose are the matrix", "[random]") {
    const std::vector<double> matrix{1.0, 0.5, 0.2, 0.5, 1.0, -0.3, 0.2, -0.3, 1.0};
    const auto l = score_weights(matrix, 3);
    REQUIRE(l);
    for (std::size_t i = 0; i < 3; ++i) {
        for (std::size_t j = 0; j < 3; ++j) {
            double sum = 0.0;
            for (std::size_t k = 0; k < 3; ++k) {
                sum += (*l)[i * 3 + k] * (*l)[j * 3 + k];
            }
            CHECK(sum == Approx(matrix[i * 3 + j]).margin(1e-15));
        }
    }
    CHECK(score_weights({}, 0));
    CHECK(possible_share(matrix, 3) == 1.0);
}

TEST_CASE("What cannot be had together shrinks to the limit and no further", "[random]") {
    // Three inputs, each pair at -0.8: eigenvalues 1.8, 1.8 and 1 - 2 x 0.8, so part of it must go:
    // 1 - 2 x 0.8 s = 0 at s = 0.625.
    const std::vector<double> matrix{1.0, -0.8, -0.8, -0.8, 1.0, -0.8, -0.8, -0.8, 1.0};
    CHECK_FALSE(score_weights(matrix, 3));
    CHECK(possible_share(matrix, 3) == Approx(0.625).margin(1e-8));
}
