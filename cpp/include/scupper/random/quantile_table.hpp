#pragma once
// PERT quantiles on [0, 1] by interpolation in one immutable table for every shape.

#include <algorithm>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace scupper {

/// The interpolation table of PERT quantiles.
///
/// By the symmetry Q(s, u) = 1 - Q(1 - s, 1 - u) shapes of 0 to 1/2 are enough: 129 of them, evenly
/// spaced. Each holds the distance x(v) from either end at which the tail probability is v, for v
/// from 2^-20 to 1/2, with eight nodes an octave (so the bits of v are the index and no logarithm
/// is taken). Between nodes runs the cubic through values and slopes, between shapes a straight
/// line: both keep the quantile rising. 318 kB, built in some 10 ms when first asked for.
class PertTable {
  public:
    /// The one table [-], built at the first call (safe from several threads).
    static const PertTable& instance();

    static constexpr double tail = 0x1p-20;     ///< [-] below it and above 1 - tail: exact
    static constexpr double error_bound = 1e-5; ///< [-] of high - low, for every shape and u

    /// The PERT quantile on [0, 1], interpolated. In the header because draws ask for it.
    ///
    /// Formula: as beta_quantile(u, 1 + 4 shape, 5 - 4 shape)
    /// @param shape [-] (mode - low) / (high - low), 0 to 1; not checked
    /// @param u [-] probability, 0 to 1
    /// @return [-] within 1e-5 of the exact quantile (measured: 4e-6), rising with u
    /// Range: below tail and above 1 - tail by beta_quantile, held at the value where the table ends.
    /// Errors: InputError `random.probability` where u is outside [0, 1] or NaN.
    /// Source: definition over NIST DLMF 8.17
    /// Verified by: tests/cpp/random/test_quantile_table.cpp
    double quantile(double shape, double u) const {
        const double v = std::min(u, 1.0 - u);
        if (!(v >= tail)) {
            return beyond(shape, u);
        }
        const bool upper = u > 0.5;
        const bool mirrored = shape > 0.5;
        const double x = distance(mirrored ? 1.0 - shape : shape, upper != mirrored, v);
        return upper ? 1.0 - x : x;
    }

    /// Memory the table takes [byte].
    std::size_t bytes() const noexcept { return nodes_.size() * sizeof(Node); }

  private:
    struct Node {
        float x;     ///< distance from the end of the range
        float slope; ///< dx/dv
    };

    static constexpr int octaves = 19;
    static constexpr int bits_per_octave = 3;
    static constexpr int mantissa_bits = 52;
    static constexpr int dropped_bits = mantissa_bits - bits_per_octave;
    static constexpr std::size_t cells = std::size_t{octaves} << bits_per_octave;
    static constexpr std::size_t stride = cells + 2; // v = 1/2 looks one node further
    static constexpr std::size_t shapes = 129;

    PertTable();
    void fill_side(Node* side, double alpha, double beta);
    double beyond(double shape, double u) const;

    /// Nodes of one shape from its lower (false) or upper (true) end.
    static constexpr std::size_t offset(std::size_t shape, bool from_upper) {
        return (2 * shape + (from_upper ? 1 : 0)) * stride;
    }

    double distance(double shape, bool from_upper, double v) const {
        const double position = shape * 2.0 * (shapes - 1);
        const std::size_t row = std::min(static_cast<std::size_t>(position), shapes - 2);
        const double weight = position - static_cast<double>(row);

        const auto bits = std::bit_cast<std::uint64_t>(v);
        const std::size_t cell = (bits >> dropped_bits) - first_cell;
        const double t = static_cast<double>(bits & cell_mask) * (1.0 / (cell_mask + 1));
        const double width = std::bit_cast<double>((bits & octave_mask) - cell_exponent);

        const Node* p = nodes_.data() + offset(row, from_upper) + cell;
        const Node* q = p + 2 * stride;
        const auto mix = [weight](float a, float b) {
            return static_cast<double>(a) + weight * (static_cast<double>(b) - a);
        };
        const double x0 = mix(p[0].x, q[0].x);
        const double rise = mix(p[1].x, q[1].x) - x0;
        const double m0 = mix(p[0].slope, q[0].slope) * width;
        const double m1 = mix(p[1].slope, q[1].slope) * width;
        return x0 + t * (m0 + t * ((3.0 * rise - 2.0 * m0 - m1) + t * (m0 + m1 - 2.0 * rise)));
    }

    static constexpr std::uint64_t cell_mask = (std::uint64_t{1} << dropped_bits) - 1;
    static constexpr std::uint64_t octave_mask = ~((std::uint64_t{1} << mantissa_bits) - 1);
    static constexpr std::uint64_t cell_exponent = std::uint64_t{bits_per_octave} << mantissa_bits;
    static constexpr std::uint64_t first_cell = std::bit_cast<std::uint64_t>(tail) >> dropped_bits;

    std::vector<Node> nodes_;
};

} // namespace scupper
