#pragma once
// An uncertain input as people state it: low, likely, high.

#include <string_view>

namespace scupper {

class Listed;

/// The distribution an uncertain input is drawn from.
enum class Family {
    fixed,      ///< one value
    uniform,    ///< equally likely between two limits
    triangular, ///< straight lines from the limits up to the likely value
    pert,       ///< beta distribution over the limits, mean (low + 4 likely + high) / 6
    normal,     ///< symmetrical, without limits
    lognormal,  ///< its logarithm is normal: positive, leans right
    discrete,   ///< some values with weights (class Listed)
    empirical   ///< a sample, interpolated (class Listed)
};

/// What low and high of a three-point guess mean.
enum class Meaning {
    limits, ///< nothing lies outside; of a normal or lognormal 0.1 % lies beyond either
    p10_p90 ///< one in ten lies below low, one in ten above high
};

namespace detail {

/// A three-point guess with its family's own parameters worked out.
struct Parameters {
    Family family; ///< fixed where the width is zero
    double a;      ///< lower limit; mean of a normal, mean of the logarithm of a lognormal
    double b;      ///< upper limit; standard deviation likewise
    double shape;  ///< (mode - lower limit) / (upper limit - lower limit) [-]
    const Listed* listed = nullptr; ///< of a discrete or empirical
};

} // namespace detail

/// Low, likely and high of an input, all three in the unit of that input.
///
/// Source: PERT: Malcolm, Roseboom, Clark, Fazar, Operations Research 7 (1959) 646-669,
///         DOI 10.1287/opre.7.5.646: mean (a + 4 m + b) / 6; as a beta distribution with
///         alpha = 1 + 4 (m - a) / (b - a) and beta = 6 - alpha.
/// A uniform has no likely value: any between low and high will do and is not used. A normal is
/// symmetrical and a lognormal has two parameters: their likely must be the middle, respectively
/// the geometric mean, of low and high (the median of either) within 1 % of the width.
/// With Meaning::limits, low and high of a normal or lognormal enclose the central 99.8 % (3.0902
/// standard deviations on either side). With Meaning::p10_p90 the limits of the other families
/// follow from low, likely and high and may be negative: look at limits().
struct ThreePoint {
    double low = 0.0;                  ///< [unit of the input]
    double likely = 0.0;               ///< [unit of the input] mode; see the family
    double high = 0.0;                 ///< [unit of the input]
    Family family = Family::pert;      ///< [-]
    Meaning meaning = Meaning::limits; ///< [-]
    const Listed* listed = nullptr;    ///< [-] of a discrete or empirical; outlives this

    /// The mean; of an input without width its value, to the bit.
    ///
    /// Formula: triangular (a + m + b) / 3; PERT (a + 4 m + b) / 6; lognormal exp(mu + sigma^2 / 2)
    /// @return [unit of the input]
    /// Range: a guess that passes check().
    /// Errors: none.
    /// Source: NIST/SEMATECH e-Handbook of Statistical Methods 1.3.6.6; Malcolm et al. 1959
    /// Verified by: tests/cpp/random/test_three_point.cpp
    double mean() const;

    /// The standard deviation.
    ///
    /// Formula: PERT (b - a) sqrt(alpha beta / 252); triangular (b - a) sqrt((1 - s + s^2) / 18)
    ///          with s = (m - a) / (b - a); lognormal mean sqrt(exp(sigma^2) - 1)
    /// @return [unit of the input] >= 0
    /// Range: a guess that passes check().
    /// Errors: none.
    /// Source: NIST/SEMATECH e-Handbook of Statistical Methods 1.3.6.6
    /// Verified by: tests/cpp/random/test_three_point.cpp
    double sd() const;

    /// The value below which a share u lies; of an input without width its value, to the bit.
    ///
    /// Formula: inverse of cdf()
    /// @param u [-] probability, 0 to 1
    /// @return [unit of the input] infinite at 0 or 1 for a normal, at 1 for a lognormal
    /// Range: a guess that passes check(); in many draws ask FastQuantile.
    /// Errors: InputError `random.probability` where u is outside [0, 1] or NaN.
    /// Source: definition
    /// Verified by: tests/cpp/random/test_three_point.cpp
    double quantile(double u) const;

    /// The probability of at most x.
    ///
    /// Formula: of PERT I_t(alpha, beta) at t = (x - a) / (b - a)
    /// @param x [unit of the input] any number
    /// @return [-] 0 to 1
    /// Range: a guess that passes check().
    /// Errors: none.
    /// Source: definition
    /// Verified by: tests/cpp/random/test_three_point.cpp
    double cdf(double x) const;

    /// The same distribution stated by its limits (Meaning::limits).
    ///
    /// Formula: the shape s solves (s - q10) / (q90 - q10) = (likely - low) / (high - low), where
    /// q10
    ///          and q90 are quantiles of shape s on [0, 1]; width = (high - low) / (q90 - q10)
    /// @return [unit of the input] quantile(0.1) = low and quantile(0.9) = high of this guess
    /// Range: a guess that passes check().
    /// Errors: none.
    /// Source: definition
    /// Verified by: tests/cpp/random/test_three_point.cpp
    ThreePoint limits() const;
};

/// Refuses a three-point guess that cannot be used.
///
/// @param point [unit of the input] the guess
/// @param path [text] where it stands, named by the error: "rates.labour.wage"
/// Range: every guess.
/// Errors: InputError `random.nan` (not finite), `random.order` (not low <= likely <= high),
///         `random.fixed` (fixed with a width), `random.positive` (lognormal with low <= 0),
///         `random.skew` (likely that the family cannot have), `random.family` (discrete or
///         empirical without listed values).
/// Source: definition
/// Verified by: tests/cpp/random/test_check.cpp
void check(const ThreePoint& point, std::string_view path);

/// The likely value that low and high of a family imply.
///
/// Formula: lognormal sqrt(low high), else (low + high) / 2
/// @param low [unit of the input]
/// @param high [unit of the input]
/// @param family [-] lognormal, or any other
/// @return [unit of the input]
/// Range: low <= high; positive for a lognormal.
/// Errors: none.
/// Source: definition: the median of a normal and of a lognormal
/// Verified by: tests/cpp/random/test_check.cpp
double implied_likely(double low, double high, Family family);

namespace detail {

Parameters parameters_of(const ThreePoint& point);
void check_probability(double u);

} // namespace detail

} // namespace scupper
