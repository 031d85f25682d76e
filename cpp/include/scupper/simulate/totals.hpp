#pragma once
// What the draws of a programme's total say: moments, quantiles, chances, contingency.

#include "scupper/simulate/simulation.hpp"

#include <cstddef>
#include <vector>

namespace scupper::simulate {

/// A figure of a simulation, and how far it may be off because draws are finite in number.
struct Estimated {
    double value = 0.0;          ///< [unit of the figure]
    double standard_error = 0.0; ///< [unit of the figure] NaN where there is a single replicate
};

/// The draws of one figure's total.
class DrawnTotal {
  public:
    /// The totals of a simulation's draws.
    ///
    /// @param simulation [-] a finished run
    /// @param figure [-] place in simulated_figures
    /// Errors: none.
    DrawnTotal(const Simulation& simulation, std::size_t figure);

    /// The mean over the draws.
    ///
    /// Formula: sum / n; standard error: sd of the replicates' means / sqrt(r)
    /// @return [SI unit of the figure] with its standard error
    /// Range: at least one draw.
    /// Errors: none.
    /// Source: McKay, Beckman, Conover, Technometrics 21 (1979) 239-245; replicates: A. B. Owen,
    ///         Journal of the Royal Statistical Society B 54 (1992) 541-551 (from memory)
    /// Verified by: tests/cpp/simulate/test_totals.cpp
    Estimated mean() const;
    /// The standard deviation over the draws.
    ///
    /// Formula: sqrt(sum (x - mean)^2 / (n - 1)); standard error as of the mean
    /// @return [SI unit of the figure] with its standard error
    /// Range: at least one draw; NaN of a single one.
    /// Errors: none.
    /// Source: definition
    /// Verified by: tests/cpp/simulate/test_totals.cpp
    Estimated sd() const;
    /// The total below which a share of the draws lies.
    ///
    /// @param level [-] probability, 0 to 1
    /// @return [SI unit of the figure] with its standard error
    /// Range: at least one draw.
    /// Errors: InputError `simulate.level` where the level is outside [0, 1] or NaN.
    /// Source: R. J. Hyndman, Y. Fan, The American Statistician 50 (1996) 361, definition 5
    /// Verified by: tests/cpp/simulate/test_totals.cpp
    Estimated quantile(double level) const;
    /// The chance that the total is above a limit: a budget, the hours of a season.
    ///
    /// @param limit [SI unit of the figure] the limit
    /// @return [-] share of draws above it, with its standard error
    /// Range: any finite limit.
    /// Errors: InputError `simulate.limit` where the limit is NaN.
    /// Source: definition
    /// Verified by: tests/cpp/simulate/test_totals.cpp
    Estimated chance_above(double limit) const;
    /// What has to be set aside beyond the estimate for a chosen confidence.
    ///
    /// Formula: quantile(level) - estimate
    /// @param level [-] confidence that the total is not exceeded, 0 to 1
    /// @return [SI unit of the figure] with its standard error; negative where the estimate is
    /// already safer than that
    /// Range: as `quantile`.
    /// Errors: those of `quantile`.
    /// Source: common practice
    /// Verified by: tests/cpp/simulate/test_totals.cpp
    Estimated contingency(double level) const;
    /// How far to either side of an estimated value its true value may lie.
    ///
    /// A standard error from r replicates is itself uncertain: two of them cover 95 % only where r
    /// is large, of ten replicates 92 %.
    /// Formula: t se, t of Student's distribution with r - 1 degrees of freedom
    /// @param found [unit of the figure] what one of the functions above gave
    /// @param confidence [-] that the interval covers the true value, at least 0 and below 1
    /// @return [unit of the figure] half the width of the interval; NaN of a single replicate
    /// Range: up to 340 replicates; of more, t is that of 340.
    /// Errors: InputError `simulate.confidence` where the confidence is not at least 0 and below 1.
    /// Source: NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.2
    /// Verified by: tests/cpp/simulate/test_totals.cpp
    double half_width(const Estimated& found, double confidence) const;
    /// The total as estimated [SI unit of the figure].
    double estimated() const { return estimated_; }
    /// The totals in the order of the draws [SI unit of the figure, n].
    const std::vector<double>& draws() const { return draws_; }

  private:
    template <class Statistic>
    Estimated over_replicates(const Statistic& statistic) const;

    double estimated_;
    std::size_t replicates_;
    std::vector<double> draws_;         ///< replicate after replicate
    std::vector<double> sorted_;        ///< all of them
    std::vector<double> sorted_within_; ///< each replicate in itself
};

} // namespace scupper::simulate
