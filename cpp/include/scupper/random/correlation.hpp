#pragma once
// Inputs that vary together: from rank correlations to weights of independent normal scores.

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace scupper {

/// The correlation of normal scores that gives a rank correlation of what follows from them.
///
/// Formula: r = 2 sin(pi rank / 6)
/// @param rank [-] Spearman's rank correlation, -1 to 1
/// @return [-] product-moment correlation of the normal scores, -1 to 1
/// Range: a Gaussian copula, whatever the margins as long as they are continuous.
/// Errors: none.
/// Source: K. Pearson, On further methods of determining correlation, Drapers' Company Research
///         Memoirs, Biometric Series IV (1907) (from memory); derived again in the test
/// Verified by: tests/cpp/random/test_correlation.cpp
double normal_correlation(double rank);

/// The rank correlation that correlated normal scores have.
///
/// Formula: rank = 6 asin(r / 2) / pi
/// @param normal [-] product-moment correlation of the scores, -1 to 1
/// @return [-] Spearman's rank correlation
/// Range: as `normal_correlation`, whose inverse it is.
/// Errors: none.
/// Source: as `normal_correlation`
/// Verified by: tests/cpp/random/test_correlation.cpp
double rank_correlation(double normal);

/// The weights that make correlated scores out of independent ones.
///
/// Formula: L with L L' = R, lower triangular (Cholesky)
/// @param matrix [-, n x n] R, symmetric, ones on the diagonal, row by row
/// @param n [-] number of rows
/// @return [-, n x n] L, row by row; nothing where R is not positive definite
/// Range: n x n numbers; the smallest pivot must exceed 1e-10.
/// Errors: none.
/// Source: G. H. Golub, C. F. Van Loan,
///         Matrix Computations, section 4.2 (from memory)
/// Verified by: tests/cpp/random/test_correlation.cpp
std::optional<std::vector<double>> score_weights(std::span<const double> matrix, std::size_t n);

/// How much of wished correlations can be had together.
///
/// Formula: the greatest s in [0, 1] with I + s (R - I) positive definite, by bisection
/// @param matrix [-, n x n] R as of `score_weights`
/// @param n [-] number of rows
/// @return [-] s to about 1e-9; 1 where R itself will do
/// Range: any symmetric matrix with ones on the diagonal.
/// Errors: none.
/// Source: definition: eigenvalues of I + s (R - I) fall from 1 in straight lines
/// Verified by: tests/cpp/random/test_correlation.cpp
double possible_share(std::span<const double> matrix, std::size_t n);

} // namespace scupper
