#pragma once
// Draws of the inputs: what a range of a result comes from. Every draw runs the price itself.

#include "scupper/estimate/price.hpp"
#include "scupper/random.hpp"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace scupper::estimate {

/// How inputs are drawn.
struct DrawSettings {
    std::uint64_t seed = 1;                        ///< [-] same seed, same draws
    std::size_t draws = 512;                       ///< [-] how many
    Sampling sampling = Sampling::latin_hypercube; ///< [-] how draws fill the unit interval
};

/// Two independent uniforms into one, of which a share of the spread is the shared one's.
///
/// Formula: u = Phi(sqrt(s) z(shared) + sqrt(1 - s) z(own))
/// @param shared [-] what all structures have in common, in (0, 1)
/// @param own [-] the structure's own, in (0, 1)
/// @param shared_share [-] s, share of the variance, 0 to 1
/// @return [-] a uniform in (0, 1)
/// Range: s = 0 and s = 1 to the rounding of the normal distribution.
/// Errors: none.
/// Source: definition of the Gaussian copula
/// Verified by: tests/cpp/estimate/test_draws.cpp
double blend(double shared, double own, double shared_share);

/// Draws the uncertain inputs of one structure. What a draw gives follows from the seed, the
/// structure, the input and the number of the draw alone, whatever the order or the thread. Inputs
/// that vary together give up some of the even spread of their own draws.
class InputDraws {
  public:
    /// Makes the draws of a structure ready.
    ///
    /// @param resolved [-] the structure; must outlive this
    /// @param settings [-] seed, number of draws, kind of sampling
    /// Range: at least one draw.
    /// Errors: none.
    /// Source: own convention
    InputDraws(const Resolved& resolved, const DrawSettings& settings);

    /// Writes the inputs of one draw; inputs without spread keep their value to the bit.
    ///
    /// @param draw [-] number of the draw, from 0
    /// @param values [SI unit of each, n] by place of the input layout
    /// Range: draw < settings.draws, values as long as the layout.
    /// Errors: none.
    /// Source: own convention
    /// Verified by: tests/cpp/estimate/test_draws.cpp
    void fill(std::size_t draw, std::span<double> values) const;

    /// What an input of a draw is a quantile of.
    ///
    /// @param draw [-] number of the draw, from 0
    /// @param place [-] of an input that has a spread, in the input layout
    /// @return [-] probability, in (0, 1)
    /// Range: draw < settings.draws.
    /// Errors: InputError `estimate.draws` where the input has no spread.
    /// Source: own convention
    /// Verified by: tests/cpp/simulate/test_survey_list.cpp
    double uniform(std::size_t draw, std::size_t place) const;

    /// How many inputs have a spread [-].
    std::size_t uncertain_count() const { return inputs_.size(); }

  private:
    struct Term {
        double weight; ///< of its score
        Sampler own;
        Sampler shared;
    };
    struct Drawn {
        std::size_t place;
        FastQuantile quantile;
        double shared_share;
        std::vector<Term> terms; ///< more than one where inputs vary together
        double uniform(std::size_t draw, Sampler Term::*part) const;
        double uniform(std::size_t draw) const; ///< of what is shared and its own, put together
    };
    std::vector<Drawn> inputs_;
    const Resolved* resolved_;
};

/// Figures of every draw of a group of structures that share an outing.
///
/// @param group [-, n] structures of one outing, made ready under one plan
/// @param settings [-] seed, number of draws, kind of sampling
/// @param places [-, m] places of the figure layout to keep
/// @return [SI unit of each figure, n x draws x m] structure by structure, draw by draw
/// Range: washable structures of one plan.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_draws.cpp
std::vector<double> draw_group(std::span<const Resolved> group, const DrawSettings& settings,
                               std::span<const std::size_t> places);

/// Where a quantile stands among the n sorted values of a sample.
///
/// Values are taken to stand in the middle of n equal parts, as those of a Latin hypercube do on
/// average: positions at u (n - 1) put its quantiles too near the middle, by more than its error.
/// Formula: u n - 1/2, cut to 0 to n - 1
/// @param u [-] probability
/// @param n [-] size of the sample, at least 1
/// @return [-] position from 0
/// Range: 0 <= u <= 1.
/// Errors: none.
/// Source: R. J. Hyndman, Y. Fan, The American Statistician 50 (1996) 361, definition 5
/// Verified by: tests/cpp/simulate/test_totals.cpp
double quantile_position(double u, std::size_t n);

/// A quantile of a sample by linear interpolation between order statistics.
///
/// Formula: x at `quantile_position` of the sorted sample
/// @param sample [any unit, n] the draws; sorted in place
/// @param u [-] probability, 0 to 1
/// @return [unit of the sample] the quantile; NaN of an empty sample
/// Range: 0 <= u <= 1.
/// Errors: none.
/// Source: R. J. Hyndman, Y. Fan, The American Statistician 50 (1996) 361, definition 5
/// Verified by: tests/cpp/estimate/test_draws.cpp
double sample_quantile(std::span<double> sample, double u);

/// The same of a sample that is sorted already.
///
/// Formula: x at `quantile_position` of the sample
/// @param sorted [any unit, n] the draws, ascending
/// @param u [-] probability, 0 to 1
/// @return [unit of the sample] the quantile; NaN of an empty sample
/// Range: 0 <= u <= 1.
/// Errors: none.
/// Source: R. J. Hyndman, Y. Fan, The American Statistician 50 (1996) 361, definition 5
/// Verified by: tests/cpp/estimate/test_draws.cpp
double sorted_quantile(std::span<const double> sorted, double u);

/// How far a quantile of other draws would probably lie from that of these: its standard error.
///
/// Formula: (x at u + s - x at u - s) / 2 with s = sqrt(u (1 - u) / n), positions cut to 0 to 1
/// @param sorted [any unit, n] the draws, ascending
/// @param u [-] probability, 0 to 1
/// @return [unit of the sample] the error; NaN of an empty sample
/// Range: 0 <= u <= 1; of stratified draws, which scatter less, it is an upper limit.
/// Errors: none.
/// Source: H. A. David, H. N. Nagaraja, Order Statistics, 3rd ed. (2003), section 7.1: the rank of a
/// quantile is binomial (definition); from memory
/// Verified by: tests/cpp/estimate/test_draws.cpp
double quantile_error(std::span<const double> sorted, double u);

} // namespace scupper::estimate
