#pragma once
// Scrambled Sobol' points: draws that fill all inputs together evenly.

#include "scupper/random/key.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>

namespace scupper {

/// Dimensions of the Sobol' sequence that there are numbers for [-].
inline constexpr std::size_t sobol_dimensions = 400;

/// One coordinate of the Sobol' sequence, as 32 binary places after the point.
class SobolCoordinate {
  public:
    /// The coordinate of a dimension.
    ///
    /// @param dimension [-] from 0
    /// Errors: InputError `random.dimension` where there are no numbers for it.
    explicit SobolCoordinate(std::size_t dimension);

    /// The coordinate of a point.
    ///
    /// Formula: x = i_1 v_1 xor i_2 v_2 xor ..., i_k the binary places of the index from the last,
    ///          v_k = v_{k-s} xor v_{k-s} 2^-s xor a_1 v_{k-1} xor ... xor a_{s-1} v_{k-s+1}
    /// @param index [-] number of the point, in the order of the binary numbers, below 2^32
    /// @return [2^-32] 0 to 2^32 - 1; the first 2^m points have each of 2^m equal parts once
    /// Range: index < 2^32.
    /// Errors: none.
    /// Source: S. Joe, F. Y. Kuo, SIAM Journal on Scientific Computing 30 (2008) 2635-2654,
    ///         DOI 10.1137/070709359
    /// Verified by: tests/cpp/random/test_sobol.cpp
    std::uint32_t operator()(std::uint64_t index) const {
        std::uint32_t x = 0;
        for (std::size_t k = 0; index != 0; ++k, index >>= 1) {
            x ^= (index & 1) != 0 ? directions_[k] : 0;
        }
        return x;
    }

  private:
    std::array<std::uint32_t, 32> directions_{};
};

/// The draws of one input out of a scrambled Sobol' sequence. Inputs that share an order of draws
/// and differ in dimension fill their space together; each key scrambles anew.
class ScrambledSobol {
  public:
    /// The draws that belong to a key and a dimension.
    ///
    /// @param key [-] seed, stream and input: what the scrambling follows from
    /// @param dimension [-] from 0; another one for every input
    /// @param draws [-] n, a power of two up to 2^32
    /// Errors: InputError `random.count` where draws is no power of two, `random.dimension`.
    ScrambledSobol(const DrawKey& key, std::size_t dimension, std::uint64_t draws);

    /// The uniform number of a draw.
    ///
    /// Formula: Owen's nested uniform scrambling: every binary place of the coordinate is turned or
    ///          not as a hash of the key and all places before it says; places after the first
    ///          log2(n), where no two points agree, are those of a hash
    /// @param draw [-] 0 to n - 1
    /// @return [-] in the open interval (0, 1)
    /// Range: draw < n.
    /// Errors: InputError `random.draw` where draw >= n.
    /// Source: A. B. Owen, "Randomly permuted (t,m,s)-nets and (t,s)-sequences", Monte Carlo and
    ///         Quasi-Monte Carlo Methods in Scientific Computing (1995) 299-317,
    ///         DOI 10.1007/978-1-4612-2552-2_19
    /// Verified by: tests/cpp/random/test_sobol.cpp
    double operator()(std::uint64_t draw) const;

    /// The uniform numbers of consecutive draws, as operator() gives them.
    ///
    /// @param first [-] number of the first draw
    /// @param out [-, n] receives the numbers of draws first, first + 1, ...
    /// Range: as operator().
    /// Errors: InputError `random.draw` where it would be asked for a draw it does not have.
    /// Source: definition
    /// Verified by: tests/cpp/random/test_sobol.cpp
    void fill(std::uint64_t first, std::span<double> out) const;

  private:
    SobolCoordinate coordinate_;
    std::uint64_t root_;
    std::uint64_t draws_;
    int places_; ///< log2 of draws
};

} // namespace scupper
