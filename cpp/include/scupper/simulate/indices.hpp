#pragma once
// Which share of a result's variance goes with which input: Sobol' indices of any function.

#include "scupper/simulate/simulation.hpp"

#include <cstddef>
#include <functional>
#include <span>
#include <vector>

namespace scupper::simulate {

/// A function of a point in the unit cube.
using CubeFunction = std::function<double(std::span<const double>)>;

/// Places of the inputs that a factor is made of: they are exchanged together.
using Factor = std::vector<std::size_t>;

/// A function at two independent samples, and at the first with one factor after the other
/// exchanged for the second's.
struct FactorRuns {
    std::vector<double> first;                  ///< [unit of the result, draws] sample A
    std::vector<double> second;                 ///< [unit of the result, draws] sample B
    std::vector<std::vector<double>> exchanged; ///< [unit of the result, factors x draws] of A
};

/// What one factor does to the variance of a result.
struct FactorIndices {
    double first_order = 0.0;    ///< [-] share of the variance that goes once it is known
    double first_order_se = 0.0; ///< [-] its standard error; NaN where there is a single replicate
    double total = 0.0;          ///< [-] share that stays where everything else is known: above
                                 ///< `first_order` by what the factor does together with others
    double total_se = 0.0;       ///< [-] its standard error; NaN where there is a single replicate
};

/// Runs a function over two samples and exchanges one factor after the other.
///
/// @param function [-] of as many inputs as there are
/// @param inputs [-] how many
/// @param factors [-, n] places of the inputs of each; an input in none stays with sample A
/// @param settings [-] draws of each sample, replicates, seed, kind of sampling
/// @return [unit of the result] draws x (2 + factors) values
/// Range: places below `inputs`.
/// Errors: InputError `simulate.draws` where draws are no whole multiple of replicates or none;
/// `simulate.factor` where a place is not below `inputs`.
/// Source: A. Saltelli et al., Computer Physics Communications 181 (2010) 259-270, section 3 (from
/// memory)
/// Verified by: tests/cpp/simulate/test_indices.cpp
FactorRuns run_factors(const CubeFunction& function, std::size_t inputs,
                       std::span<const Factor> factors, const SimulationSettings& settings);

/// The share of the variance that goes with a factor alone.
///
/// Formula: mean (f(B) - m) (f(AB) - f(A)) / V, with m and V the mean and variance over A and B
/// @param first [any unit, n] f(A)
/// @param second [any unit, n] f(B)
/// @param exchanged [any unit, n] f(AB), the factor of A exchanged for that of B
/// @return [-] the index; 0 where nothing varies. A small sample may give less than 0
/// Range: samples of one length, at least one draw.
/// Errors: InputError `simulate.runs` where lengths differ or are 0.
/// Source: A. Saltelli et al., Computer Physics Communications 181 (2010) 259-270, table 2 (b)
/// (from memory)
/// Verified by: tests/cpp/simulate/test_indices.cpp, tests/python/test_sensitivity.py
double first_order_index(std::span<const double> first, std::span<const double> second,
                         std::span<const double> exchanged);

/// The share of the variance that a factor has a part in, alone or together with others.
///
/// Formula: mean (f(A) - f(AB))^2 / (2 V), with V the variance over A and B
/// @param first [any unit, n] f(A)
/// @param second [any unit, n] f(B)
/// @param exchanged [any unit, n] f(AB), the factor of A exchanged for that of B
/// @return [-] the index, not below 0; 0 where nothing varies
/// Range: samples of one length, at least one draw.
/// Errors: InputError `simulate.runs` where lengths differ or are 0.
/// Source: M. J. W. Jansen, Computer Physics Communications 117 (1999) 35-43 (from memory)
/// Verified by: tests/cpp/simulate/test_indices.cpp, tests/python/test_sensitivity.py
double total_index(std::span<const double> first, std::span<const double> second,
                   std::span<const double> exchanged);

/// Both indices of every factor, with standard errors.
///
/// Formula: indices over all draws; standard error: sd of the replicates' indices / sqrt(r)
/// @param runs [any unit] replicate after replicate
/// @param replicates [-] r, independent samples that the draws are made of
/// @return [-, factors] in the order of the factors
/// Range: draws that are a whole multiple of replicates.
/// Errors: InputError `simulate.runs` where lengths differ, are 0 or no multiple of replicates.
/// Source: as of the indices
/// Verified by: tests/cpp/simulate/test_indices.cpp
std::vector<FactorIndices> indices_of(const FactorRuns& runs, std::size_t replicates);

/// Spearman's rank correlation of two samples.
///
/// Formula: Pearson's correlation of the ranks; equal values have the mean of their ranks
/// @param x [any unit, n] one sample
/// @param y [any unit, n] the other
/// @return [-] -1 to 1; 0 where one of them does not vary
/// Range: samples of one length without NaN.
/// Errors: InputError `simulate.runs` where lengths differ or are 0.
/// Source: M. G. Kendall, Rank Correlation Methods (1970), ch. 1 to 3 (from memory)
/// Verified by: tests/cpp/simulate/test_indices.cpp
double rank_correlation(std::span<const double> x, std::span<const double> y);

} // namespace scupper::simulate
