#pragma once
// What measuring some inputs of a structure tells of those that vary together with them. Internal
// to the part.

#include "scupper/estimate.hpp"
#include "scupper/random.hpp"

#include <cstddef>
#include <span>
#include <vector>

namespace scupper::simulate::detail {

/// An input that nobody measured and that varies together with some that were.
struct ToldInput {
    std::size_t place;
    FastQuantile quantile;
    std::vector<double> weights; ///< of the scores of the measured inputs, in their order
    double spread;               ///< of its score once they are known
};

/// What measured inputs tell, in normal scores: those that vary together are jointly normal, so a
/// measured score moves the others in proportion and leaves a spread that does not depend on it.
///
/// The correlation of whole scores at one structure is that of what is shared and what is its own
/// together: r (sqrt(s t) + sqrt((1 - s)(1 - t))).
/// Source: conditional distribution of the multivariate normal (T. W. Anderson, An Introduction to
/// Multivariate Statistical Analysis, section 2.5; from memory)
class Told {
  public:
    Told(const estimate::Resolved& resolved, std::vector<std::size_t> measured);

    const std::vector<ToldInput>& inputs() const { return inputs_; }
    /// Whether the measured inputs vary together among themselves.
    bool is_joint() const { return is_joint_; }
    /// Turns independent scores of the measured inputs into such that vary together.
    void mix(std::span<double> scores) const;

  private:
    void add(const estimate::Resolved& resolved, std::size_t place);

    std::vector<std::size_t> measured_;
    std::vector<double> weights_; ///< lower triangular, row by row
    std::vector<ToldInput> inputs_;
    bool is_joint_ = false;
};

/// The value expected of an input whose score is known up to a spread.
double expected_at(const FastQuantile& quantile, double score, double spread);

/// The score of an input that was told of, as far as it goes with measured scores.
double told_score(const ToldInput& input, std::span<const double> scores);

} // namespace scupper::simulate::detail
