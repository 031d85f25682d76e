#pragma once
// The normal and the beta distribution function and their inverses.

#include <array>
#include <cmath>
#include <cstddef>
#include <limits>

namespace scupper {

namespace detail {

template <std::size_t N>
constexpr double polynomial(double x, const std::array<double, N>& coefficients) {
    double sum = 0.0;
    for (std::size_t i = N; i-- > 0;) {
        sum = sum * x + coefficients[i];
    }
    return sum;
}

/// Coefficients of Wichura 1988, AS 241, routine PPND16: centre, shoulder and far tail.
struct InverseNormal {
    using Coefficients = std::array<double, 8>;
    static constexpr Coefficients centre_top = {3.3871328727963666080e0, 1.3314166789178437745e2,
                                                1.9715909503065514427e3, 1.3731693765509461125e4,
                                                4.5921953931549871457e4, 6.7265770927008700853e4,
                                                3.3430575583588128105e4, 2.5090809287301226727e3};
    static constexpr Coefficients centre_bottom = {1.0,
                                                   4.2313330701600911252e1,
                                                   6.8718700749205790830e2,
                                                   5.3941960214247511077e3,
                                                   2.1213794301586595867e4,
                                                   3.9307895800092710610e4,
                                                   2.8729085735721942674e4,
                                                   5.2264952788528545610e3};
    static constexpr Coefficients shoulder_top = {
        1.42343711074968357734e0,  4.63033784615654529590e0, 5.76949722146069140550e0,
        3.64784832476320460504e0,  1.27045825245236838258e0, 2.41780725177450611770e-1,
        2.27238449892691845833e-2, 7.74545014278341407640e-4};
    static constexpr Coefficients shoulder_bottom = {1.0,
                                                     2.05319162663775882187e0,
                                                     1.67638483018380384940e0,
                                                     6.89767334985100004550e-1,
                                                     1.48103976427480074590e-1,
                                                     1.51986665636164571966e-2,
                                                     5.47593808499534494600e-4,
                                                     1.05075007164441684324e-9};
    static constexpr Coefficients tail_top = {6.65790464350110377720e0,  5.46378491116411436990e0,
                                              1.78482653991729133580e0,  2.96560571828504891230e-1,
                                              2.65321895265761230930e-2, 1.24266094738807843860e-3,
                                              2.71155556874348757815e-5, 2.01033439929228813265e-7};
    static constexpr Coefficients tail_bottom = {1.0,
                                                 5.99832206555887937690e-1,
                                                 1.36929880922735805310e-1,
                                                 1.48753612908506148525e-2,
                                                 7.86869131145613259100e-4,
                                                 1.84631831751005468180e-5,
                                                 1.42151175831644588870e-7,
                                                 2.04426310338993978564e-15};
};

/// The quantile of a tail probability of at most 0.075, without its sign.
inline double normal_tail_quantile(double tail) {
    using N = InverseNormal;
    if (tail == 0.0) {
        return std::numeric_limits<double>::infinity();
    }
    const double r = std::sqrt(-std::log(tail));
    return r <= 5.0 ? polynomial(r - 1.6, N::shoulder_top) / polynomial(r - 1.6, N::shoulder_bottom)
                    : polynomial(r - 5.0, N::tail_top) / polynomial(r - 5.0, N::tail_bottom);
}

} // namespace detail

/// The probability that a standard normal variable is at most z.
///
/// Formula: Phi(z) = erfc(-z / sqrt(2)) / 2
/// @param z [-] any number
/// @return [-] 0 to 1
/// Range: all; relative accuracy is kept in the lower tail.
/// Errors: none.
/// Source: NIST Digital Library of Mathematical Functions, 7.18(i), 7.2.2
/// Verified by: tests/cpp/random/test_special.cpp
double normal_cdf(double z);

/// The standard normal quantile.
///
/// Formula: rational approximations about the centre and in sqrt(-ln tail)
/// In the header because it is called for every normal draw.
/// @param u [-] probability, 0 to 1
/// @return [-] z with Phi(z) = u; -infinity at 0, infinity at 1, NaN outside [0, 1]
/// Range: relative accuracy about 1e-16 of the method.
/// Errors: none.
/// Source: Wichura, "Algorithm AS 241: The percentage points of the normal distribution", Applied
///         Statistics 37 (1988) 477-484, DOI 10.2307/2347330, routine PPND16
/// Verified by: tests/cpp/random/test_special.cpp
inline double normal_quantile(double u) {
    using N = detail::InverseNormal;
    const double q = u - 0.5;
    if (std::fabs(q) <= 0.425) {
        const double r = 0.180625 - q * q;
        return q * detail::polynomial(r, N::centre_top) / detail::polynomial(r, N::centre_bottom);
    }
    return q < 0.0 ? -detail::normal_tail_quantile(u) : detail::normal_tail_quantile(1.0 - u);
}

/// The regularised incomplete beta function: the distribution function of a beta variable.
///
/// Formula: I_x(alpha, beta), by its continued fraction, taken at the side where it converges fast
/// @param x [-] 0 to 1; below 0 counts as 0, above 1 as 1
/// @param alpha [-] first shape, > 0
/// @param beta [-] second shape, > 0, alpha + beta <= 170
/// @return [-] 0 to 1
/// Range: relative accuracy about 1e-14 in the lower tail.
/// Errors: InputError `random.shape` where a shape is out of range.
/// Source: NIST Digital Library of Mathematical Functions, 8.17.22 and 8.17.4
/// Verified by: tests/cpp/random/test_special.cpp
double beta_cdf(double x, double alpha, double beta);

/// The quantile of a beta variable: the inverse of beta_cdf.
///
/// Formula: Newton's method kept inside a bracket
/// @param u [-] probability, 0 to 1
/// @param alpha [-] first shape, > 0
/// @param beta [-] second shape, > 0, alpha + beta <= 170
/// @return [-] x with I_x(alpha, beta) = u, to about 1e-14
/// Range: shapes of about 0.1 and above; below, x may be under the smallest number.
/// Errors: InputError `random.shape`, `random.probability` where u is outside [0, 1] or NaN.
/// Source: definition over NIST DLMF 8.17
/// Verified by: tests/cpp/random/test_special.cpp
double beta_quantile(double u, double alpha, double beta);

/// A quantile of Student's distribution.
///
/// Formula: |t| = sqrt(f (1 - x) / x), x the quantile of a beta variable (f / 2, 1 / 2); above 339
/// degrees of freedom by the expansion about the normal quantile
/// @param u [-] probability, between 0 and 1
/// @param freedom [-] degrees of freedom, > 0
/// @return [-] the value below which a share u lies
/// Range: 1e-8 and better; exact up to 339 degrees.
/// Errors: InputError `random.probability` where u is not between 0 and 1.
/// Source: NIST/SEMATECH e-Handbook of Statistical Methods 1.3.6.7.2 (table); NIST Digital Library of Mathematical Functions 8.17; M. Abramowitz, I. Stegun, Handbook
/// of Mathematical Functions (1964), 26.7.1 and 26.7.5 (from memory)
/// Verified by: tests/cpp/random/test_special.cpp
double student_quantile(double u, double freedom);

} // namespace scupper
