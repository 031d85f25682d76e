#include "scupper/random/correlation.hpp"

#include <cmath>
#include <numbers>

namespace scupper {

namespace {

constexpr double least_pivot = 1e-10;

double dot(const std::vector<double>& l, std::size_t n, std::size_t i, std::size_t j) {
    double sum = 0.0;
    for (std::size_t k = 0; k < j; ++k) {
        sum += l[i * n + k] * l[j * n + k];
    }
    return sum;
}

std::vector<double> scaled(std::span<const double> matrix, std::size_t n, double share) {
    std::vector<double> result(matrix.begin(), matrix.end());
    for (std::size_t i = 0; i < result.size(); ++i) {
        result[i] *= i % (n + 1) == 0 ? 1.0 : share;
    }
    return result;
}

} // namespace

double normal_correlation(double rank) {
    return 2.0 * std::sin(std::numbers::pi * rank / 6.0);
}

double rank_correlation(double normal) {
    return 6.0 * std::asin(normal / 2.0) / std::numbers::pi;
}

std::optional<std::vector<double>> score_weights(std::span<const double> matrix, std::size_t n) {
    std::vector<double> l(n * n, 0.0);
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            l[i * n + j] = (matrix[i * n + j] - dot(l, n, i, j)) / l[j * n + j];
        }
        const double pivot = matrix[i * n + i] - dot(l, n, i, i);
        if (!(pivot > least_pivot)) {
            return std::nullopt;
        }
        l[i * n + i] = std::sqrt(pivot);
    }
    return l;
}

double possible_share(std::span<const double> matrix, std::size_t n) {
    if (score_weights(matrix, n)) {
        return 1.0;
    }
    double possible = 0.0;
    for (double step = 0.5; step > 1e-10; step *= 0.5) {
        if (score_weights(scaled(matrix, n, possible + step), n)) {
            possible += step;
        }
    }
    return possible;
}

} // namespace scupper
