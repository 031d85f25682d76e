#pragma once
// Tables that turn a draw into a value in a few operations. Internal to the part.

#include "scupper/random.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <numbers>
#include <span>

namespace scupper::simulate::detail {

/// A cubic on [0, 1] in a cell of a table.
struct Cubic {
    double c0, c1, c2, c3;

    double operator()(double t) const { return c0 + t * (c1 + t * (c2 + t * c3)); }
};

/// The cubic through two values with given slopes, each per width of the cell.
inline Cubic hermite(double from, double to, double slope_from, double slope_to) {
    const double rise = to - from;
    return {from, slope_from, 3.0 * rise - 2.0 * slope_from - slope_to,
            slope_from + slope_to - 2.0 * rise};
}

/// The normal score of a uniform, within 2e-6: an eighth of an octave a cell, exact beyond 2^-20.
class ScoreOfUniform {
  public:
    static const ScoreOfUniform& instance() {
        static const ScoreOfUniform table;
        return table;
    }

    double operator()(double u) const {
        return is_in_table(u) ? interpolated(u) : normal_quantile(u);
    }

    /// Turns uniforms into their scores, each times a weight.
    void each(double weight, std::span<double> uniforms) const;

  private:
    static bool is_in_table(double u) { return std::min(u, 1.0 - u) >= least; }
    double interpolated(double u) const {
        const auto bits = std::bit_cast<std::uint64_t>(std::max(std::min(u, 1.0 - u), least));
        const double t = number_of(bits & cell_mask) * (1.0 / (cell_mask + 1));
        const double z = cells_[(bits >> dropped_bits) - first_cell](t);
        return u < 0.5 ? z : -z;
    }
    /// A count below 2^52 as a number, which every processor does to several at a time.
    static double number_of(std::uint64_t count) {
        constexpr double bias = 0x1p52;
        return std::bit_cast<double>(count | std::bit_cast<std::uint64_t>(bias)) - bias;
    }
    ScoreOfUniform() {
        for (std::size_t i = 0; i < cells_.size(); ++i) {
            const double from = tail_at(i);
            const double to = tail_at(i + 1);
            const double z = normal_quantile(from);
            const double next = normal_quantile(to);
            cells_[i] = hermite(z, next, (to - from) / density(z), (to - from) / density(next));
        }
    }
    static double density(double z) {
        return std::numbers::inv_sqrtpi / std::numbers::sqrt2 * std::exp(-0.5 * z * z);
    }
    static double tail_at(std::size_t cell) {
        return std::bit_cast<double>((first_cell + cell) << dropped_bits);
    }

    static constexpr double least = 0x1p-20;
    static constexpr int dropped_bits = 49;
    static constexpr std::uint64_t cell_mask = (std::uint64_t{1} << dropped_bits) - 1;
    static constexpr std::uint64_t first_cell = std::bit_cast<std::uint64_t>(least) >> dropped_bits;
    std::array<Cubic, 19 * 8 + 1> cells_{}; ///< up to and with u = 1/2
};

/// The probability of a score, where every quantile is finite.
inline double inner_probability(double score) {
    return std::clamp(normal_cdf(score), 0x1p-53, 1.0 - 0x1p-53);
}

/// The value of an input by its normal score, within 1e-5 of its spread and never beyond its ends.
class ValueOfScore {
  public:
    explicit ValueOfScore(const ThreePoint& guess) {
        const FastQuantile quantile(guess);
        std::array<double, cells + 1> at{};
        for (std::size_t i = 0; i <= cells; ++i) {
            at[i] = quantile(inner_probability(score_at(i)));
        }
        for (std::size_t i = 0; i < cells; ++i) {
            cells_[i] = hermite(at[i], at[i + 1], slope(at, i), slope(at, i + 1));
        }
        least_ = at.front();
        greatest_ = at.back();
    }

    double operator()(double score) const {
        const double position =
            std::clamp((score + reach) * per_score, 0.0, static_cast<double>(cells));
        const int cell = std::min(static_cast<int>(position), static_cast<int>(cells) - 1);
        const double value = cells_[static_cast<std::size_t>(cell)](position - cell);
        return std::clamp(value, least_, greatest_);
    }

    /// Turns scores into values.
    void each(std::span<double> scores) const;

    double least() const { return least_; }
    double greatest() const { return greatest_; }

  private:
    static constexpr double reach = 8.25; ///< the score of a uniform is never farther from 0
    static constexpr double per_score = 8.0;
    static constexpr std::size_t cells = 132;

    static double score_at(std::size_t i) { return static_cast<double>(i) / per_score - reach; }
    /// By differences of the fourth order, which the outermost nodes have no neighbours for.
    static double slope(const std::array<double, cells + 1>& at, std::size_t i) {
        if (i < 2 || i + 2 > cells) {
            const std::size_t below = i == 0 ? 0 : i - 1;
            const std::size_t above = std::min(i + 1, cells);
            return (at[above] - at[below]) / static_cast<double>(above - below);
        }
        return (8.0 * (at[i + 1] - at[i - 1]) - (at[i + 2] - at[i - 2])) / 12.0;
    }

    std::array<Cubic, cells> cells_{};
    double least_;
    double greatest_;
};

} // namespace scupper::simulate::detail
