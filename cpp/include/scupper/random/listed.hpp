#pragma once
// An input stated by the values it takes: some with weights, or a sample.

#include "scupper/random/discrete.hpp"
#include "scupper/random/empirical.hpp"
#include "scupper/random/three_point.hpp"

#include <string_view>
#include <variant>
#include <vector>

namespace scupper {

/// A distribution that is no three-point guess, with what it was stated by.
class Listed {
  public:
    /// Values that occur in proportion to weights.
    ///
    /// @param values [unit of the input, n] finite, in any order
    /// @param weights [-, n] finite, >= 0, not all zero
    /// @param path [text] where they stand, named by the error
    /// Errors: those of `Discrete`.
    Listed(std::vector<double> values, std::vector<double> weights, std::string_view path);
    /// A sample, interpolated between its values.
    ///
    /// @param sample [unit of the input, n] finite, in any order, at least one
    /// @param path [text] where it stands, named by the error
    /// Errors: those of `Empirical`.
    Listed(std::vector<double> sample, std::string_view path);

    /// Family::discrete or Family::empirical [-].
    Family family() const { return weights_.empty() ? Family::empirical : Family::discrete; }
    /// The values as they were stated [unit of the input, n].
    const std::vector<double>& values() const { return values_; }
    /// The weights as they were stated; none of a sample [-, n].
    const std::vector<double>& weights() const { return weights_; }

    /// The mean [unit of the input].
    double mean() const;
    /// The standard deviation [unit of the input].
    double sd() const;

    /// The value below which a share u lies.
    ///
    /// @param u [-] probability, 0 to 1
    /// @return [unit of the input]
    /// Range: all shares.
    /// Errors: InputError `random.probability` where u is outside [0, 1] or NaN.
    /// Source: definition, of `Discrete` or `Empirical`
    /// Verified by: tests/cpp/random/test_samples.cpp
    double quantile(double u) const;

    /// The probability of at most x.
    ///
    /// @param x [unit of the input] any number
    /// @return [-] 0 to 1
    /// Range: all.
    /// Errors: none.
    /// Source: definition, of `Discrete` or `Empirical`
    /// Verified by: tests/cpp/random/test_samples.cpp
    double cdf(double x) const;

    /// The distribution as inputs have it.
    ///
    /// Formula: low and high are the least and the greatest value that occur; likely is the one of
    /// the greatest weight (the least of several), or the median of a sample
    /// @return [unit of the input] it points here: this must outlive it
    /// Range: all.
    /// Errors: none.
    /// Source: own convention
    /// Verified by: tests/cpp/random/test_samples.cpp
    ThreePoint guess() const;

  private:
    std::vector<double> values_;
    std::vector<double> weights_;
    std::variant<Discrete, Empirical> distribution_;
};

} // namespace scupper
