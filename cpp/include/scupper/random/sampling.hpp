#pragma once
// Plain and Latin hypercube sampling over keyed draws.

#include "scupper/random/key.hpp"
#include "scupper/random/permutation.hpp"

#include <algorithm>
#include <cstdint>
#include <span>

namespace scupper {

/// How the draws of an input fill the unit interval.
enum class Sampling {
    plain,           ///< each draw on its own
    latin_hypercube, ///< n draws hit each of n equal strata once
    sobol,           ///< what structures share by scrambled Sobol' points, the rest as strata
    sobol_single     ///< of one structure alone: everything by scrambled Sobol' points
};

namespace detail {

/// The number u of the way through a stratum of n. stratum + u may round up into the next stratum:
/// it stops at the number just below.
inline double in_stratum(double stratum, double u, double n) {
    return std::min(stratum + u, (stratum + 1.0) * (1.0 - 0x1p-53)) / n;
}

} // namespace detail

/// The draws of one input of one structure, prepared once and asked for each draw.
class Sampler {
  public:
    /// The sampler that belongs to a key.
    ///
    /// @param sampling [-] plain, else Latin hypercube: Sobol' points need all inputs together
    /// @param key [-] seed, stream and input
    /// @param draws [-] n, how many draws the run takes, 1 to 2^32; plain draws do not depend on it
    /// Errors: InputError `random.count` where draws is 0 or above 2^32.
    Sampler(Sampling sampling, const DrawKey& key, std::uint64_t draws)
        : permutation_(key, draws), seed_(key.seed), place_(combine(key.stream, key.input)),
          sampling_(sampling) {}

    /// The uniform number of a draw. In the header because it is called for every draw.
    ///
    /// Formula: plain: u = uniform(key, draw); Latin hypercube: (pi(draw) + u) / n
    /// @param draw [-] 0 to n - 1
    /// @return [-] in the open interval (0, 1)
    /// Range: within a stratum the number has 53 - log2(n) bits.
    /// Errors: InputError `random.draw` where a Latin hypercube is asked for draw >= n.
    /// Source: McKay, Beckman, Conover, Technometrics 21 (1979) 239-245, DOI 10.2307/1268522
    /// Verified by: tests/cpp/random/test_sampling.cpp
    double operator()(std::uint64_t draw) const {
        return placed(detail::uniform(seed_, place_, draw), draw);
    }

    /// The uniform numbers of consecutive draws, as operator() gives them, in a quarter of the time.
    ///
    /// @param first [-] number of the first draw
    /// @param out [-, n] receives the numbers of draws first, first + 1, ...
    /// Range: as operator().
    /// Errors: InputError `random.draw` where a Latin hypercube would be asked for draw >= n.
    /// Source: definition
    /// Verified by: tests/cpp/random/test_sampling.cpp
    void fill(std::uint64_t first, std::span<double> out) const;

  private:
    double placed(double u, std::uint64_t draw) const {
        return sampling_ == Sampling::plain ? u : stratified(u, draw);
    }

    double stratified(double u, std::uint64_t draw) const {
        if (draw >= permutation_.size()) {
            refuse(draw);
        }
        return detail::in_stratum(static_cast<double>(permutation_(draw)), u,
                                  static_cast<double>(permutation_.size()));
    }

    [[noreturn]] void refuse(std::uint64_t draw) const;

    Permutation permutation_;
    std::uint64_t seed_;
    std::uint64_t place_;
    Sampling sampling_;
};

/// The stratified uniform number of one draw out of n; a Sampler gives the same and is faster.
///
/// Formula: (pi(draw) + u) / n, with pi the keyed permutation of 0 .. n-1 and u = uniform(key,
/// draw)
/// @param key [-] seed, stream and input
/// @param draw [-] 0 to n - 1
/// @param draws [-] n, 1 to 2^32
/// @return [-] in the open interval (0, 1); the n draws of a key hit every stratum once
/// Range: within a stratum the number has 53 - log2(n) bits.
/// Errors: InputError `random.count` where n is 0 or above 2^32, `random.draw` where draw >= n.
/// Source: McKay, Beckman, Conover, Technometrics 21 (1979) 239-245, DOI 10.2307/1268522
/// Verified by: tests/cpp/random/test_sampling.cpp
double latin_hypercube(const DrawKey& key, std::uint64_t draw, std::uint64_t draws);

} // namespace scupper
