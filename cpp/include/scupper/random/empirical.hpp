#pragma once
// A distribution given by a sample.

#include <string_view>
#include <vector>

namespace scupper {

/// A sample, interpolated linearly between its sorted values. Mean and standard deviation are
/// those of the interpolated distribution, which draws follow; the plain average of the sample
/// differs a little, by the weight of its two ends.
class Empirical {
  public:
    /// The distribution a sample stands for.
    ///
    /// @param sample [unit of the input, n] finite, in any order, at least one
    /// @param path [text] where it stands, named by the error
    /// Errors: InputError `random.count` (none), `random.nan`.
    Empirical(std::vector<double> sample, std::string_view path);

    /// The mean of the interpolated distribution [unit of the input].
    double mean() const;
    /// The standard deviation of the interpolated distribution [unit of the input].
    double sd() const;

    /// The interpolated quantile.
    ///
    /// Formula: x[h], h = (n - 1) u, straight between neighbours of the sorted sample
    /// @param u [-] probability, 0 to 1
    /// @return [unit of the input]
    /// Range: never outside the sample.
    /// Errors: InputError `random.probability` where u is outside [0, 1] or NaN.
    /// Source: Hyndman, Fan, The American Statistician 50 (1996) 361-365,
    ///         DOI 10.1080/00031305.1996.10473566, definition 7
    /// Verified by: tests/cpp/random/test_samples.cpp
    double quantile(double u) const;

    /// The probability of at most x: the inverse of quantile.
    ///
    /// @param x [unit of the input] any number
    /// @return [-] 0 to 1
    /// Range: all.
    /// Errors: none.
    /// Source: definition
    /// Verified by: tests/cpp/random/test_samples.cpp
    double cdf(double x) const;

  private:
    std::vector<double> sorted_;
};

} // namespace scupper
