#pragma once
// A distribution over a few values.

#include <string_view>
#include <vector>

namespace scupper {

/// Values with weights. The weights need not add to one.
class Discrete {
  public:
    /// The distribution over values that occur in proportion to weights.
    ///
    /// @param values [unit of the input, n] finite, in any order
    /// @param weights [-, n] finite, >= 0, not all zero
    /// @param path [text] where they stand, named by the error
    /// Errors: InputError `random.count` (none, or two lengths), `random.nan`, `random.weights`.
    Discrete(const std::vector<double>& values, const std::vector<double>& weights,
             std::string_view path);

    /// The weighted mean [unit of the input].
    double mean() const;
    /// The weighted standard deviation [unit of the input].
    double sd() const;

    /// The smallest value whose cumulated weight share reaches u.
    ///
    /// @param u [-] probability, 0 to 1
    /// @return [unit of the input]
    /// Range: all shares; u = 0 gives the smallest value.
    /// Errors: InputError `random.probability` where u is outside [0, 1] or NaN.
    /// Source: definition
    /// Verified by: tests/cpp/random/test_samples.cpp
    double quantile(double u) const;

    /// The weight share of values of at most x.
    ///
    /// @param x [unit of the input] any number
    /// @return [-] 0 to 1
    /// Range: all.
    /// Errors: none.
    /// Source: definition
    /// Verified by: tests/cpp/random/test_samples.cpp
    double cdf(double x) const;

  private:
    std::vector<double> values_;     // ascending, without those of weight zero
    std::vector<double> shares_;     // of the total weight
    std::vector<double> cumulative_; // ends at exactly 1
};

} // namespace scupper
