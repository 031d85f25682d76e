#include "catch.hpp"
#include "rows.hpp"
#include "scupper/error.hpp"
#include "scupper/random.hpp"

#include <cmath>
#include <vector>

using namespace scupper;

namespace {

/// Whether n points have each of 2^p by 2^q equal boxes the same number of times.
bool is_even(const std::vector<double>& x, const std::vector<double>& y, int p, int q) {
    std::vector<std::size_t> hits(std::size_t{1} << (p + q), 0);
    for (std::size_t i = 0; i < x.size(); ++i) {
        const auto column = static_cast<std::size_t>(std::ldexp(x[i], p));
        const auto row = static_cast<std::size_t>(std::ldexp(y[i], q));
        ++hits[(column << q) + row];
    }
    return hits == std::vector<std::size_t>(hits.size(), x.size() / hits.size());
}

std::vector<double> drawn(std::uint64_t seed, std::size_t dimension, std::size_t n) {
    std::vector<double> u(n);
    ScrambledSobol({seed, 1, dimension}, dimension, n).fill(0, u);
    return u;
}

/// The mean over scramblings of the squared error of a product's integral, which is 1.
double mean_square_error(std::size_t n) {
    constexpr std::size_t scramblings = 24;
    double squares = 0.0;
    for (std::uint64_t seed = 0; seed < scramblings; ++seed) {
        std::vector<double> product(n, 1.0);
        for (std::size_t d = 0; d < 4; ++d) {
            const std::vector<double> u = drawn(seed, d, n);
            for (std::size_t i = 0; i < n; ++i) {
                product[i] *= std::exp(u[i]) / (std::exp(1.0) - 1.0);
            }
        }
        double sum = 0.0;
        for (const double x : product) {
            sum += x - 1.0;
        }
        squares += std::pow(sum / static_cast<double>(n), 2) / scramblings;
    }
    return squares;
}

} // namespace

TEST_CASE("Points before scrambling are the published ones", "[random]") {
    for (const ReferenceRow& row : rows_of("sobol.csv", "sobol")) {
        const SobolCoordinate at(row.inputs.at("dimension").get<std::size_t>());
        INFO(row.id);
        CHECK(std::ldexp(at(row.inputs.at("index").get<std::uint64_t>()), -32) ==
              std::stod(row.value));
    }
}

// A (0, m, 2)-net in base 2 has one point in every elementary interval (Niederreiter 1987); nested
// scrambling keeps it (Owen 1995, proposition 2).
TEST_CASE("Scrambled points keep the net: one in every elementary interval", "[random]") {
    constexpr int m = 8;
    constexpr std::size_t n = std::size_t{1} << m;
    const std::vector<double> first = drawn(5, 0, n), second = drawn(5, 1, n);
    for (int p = 0; p <= m; ++p) {
        INFO(p);
        CHECK(is_even(first, second, p, m - p));
    }
    for (std::size_t d = 0; d < sobol_dimensions; ++d) {
        INFO(d);
        const std::vector<double> u = drawn(7, d, n);
        CHECK(is_even(u, u, m, 0));
    }
}

TEST_CASE("Every dimension differs from every other", "[random]") {
    constexpr std::size_t n = 1024;
    double worst = 0.0;
    for (std::size_t d = 1; d < 40; ++d) {
        const std::vector<double> x = drawn(3, d, n), y = drawn(3, d - 1, n);
        double product = 0.0;
        for (std::size_t i = 0; i < n; ++i) {
            product += 12.0 * (x[i] - 0.5) * (y[i] - 0.5) / n;
        }
        worst = std::max(worst, std::fabs(product));
    }
    CHECK(worst < 4.0 / std::sqrt(n)); // no further apart than independent draws
}

// Owen (1997): for smooth integrands the standard error falls as n^-1.5 up to a logarithm, that
// of plain draws as n^-0.5: from 64 to 1024 draws by nearly 64, not by 4.
TEST_CASE("Errors of a smooth integrand fall faster than those of plain draws", "[random]") {
    CHECK(std::sqrt(mean_square_error(64) / mean_square_error(1024)) > 16.0);
}

TEST_CASE("Each key scrambles anew, and the mean over scramblings is right", "[random]") {
    double sum = 0.0, squares = 0.0;
    constexpr int keys = 4000;
    for (std::uint64_t seed = 0; seed < keys; ++seed) {
        const double u = ScrambledSobol({seed, 2, 3}, 17, 16)(11);
        sum += u / keys;
        squares += u * u / keys;
    }
    CHECK(std::fabs(sum - 0.5) < 4.0 / std::sqrt(12.0 * keys)); // each point is uniform
    CHECK(std::fabs(squares - 1.0 / 3.0) < 4.0 * std::sqrt(4.0 / 45.0 / keys));
    CHECK(drawn(1, 4, 8) != drawn(2, 4, 8));
    CHECK(drawn(1, 4, 8) == drawn(1, 4, 8));
}

TEST_CASE("What has no Sobol' points is refused", "[random]") {
    CHECK_THROWS_AS(SobolCoordinate(sobol_dimensions), InputError);
    CHECK_THROWS_AS(ScrambledSobol({1, 2, 3}, 0, 1000), InputError);
    CHECK_THROWS_AS(ScrambledSobol({1, 2, 3}, 0, 0), InputError);
    const ScrambledSobol two({1, 2, 3}, 0, 2);
    CHECK_THROWS_AS(two(2), InputError);
    CHECK((ScrambledSobol({1, 2, 3}, 0, 1)(0) > 0.0));
    for (const double u : {two(0), two(1)}) {
        CHECK((u > 0.0 && u < 1.0));
    }
}
