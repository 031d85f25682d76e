#pragma once
// What a sample of finished jobs says of a value that was believed before: conjugate updating of a
// log-normal value, pooled from crews over agencies to the operation.

#include "scupper/uncertain.hpp"

#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace scupper::simulate {

/// What is believed of the logarithm of a value: its level and its spread from job to job.
///
/// level | variance ~ N(mean, variance / weight), variance ~ scaled inverse chi-squared(freedom,
/// scale): the normal-inverse-gamma family with shape freedom / 2 and rate freedom scale / 2.
struct Belief {
    double mean = 0.0;    ///< [-] of the level, a logarithm
    double weight = 1.0;  ///< [jobs] how many jobs the belief about the level is worth
    double freedom = 4.0; ///< [-] degrees of freedom of the spread, > 2
    double scale = 0.0;   ///< [-] of the variance; its mean is freedom scale / (freedom - 2)

    /// The variance from job to job that is to be expected.
    ///
    /// Formula: freedom scale / (freedom - 2)
    /// @return [-] of the logarithm
    /// Range: freedom > 2.
    /// Errors: none.
    /// Source: A. Gelman et al., Bayesian Data Analysis, 3rd edition (2013), table A.1 (from memory)
    /// Verified by: tests/cpp/simulate/test_learning.cpp
    double variance() const { return freedom * scale / (freedom - 2.0); }
};

/// What a sample says, before anything is believed.
struct Evidence {
    std::size_t jobs = 0; ///< [-] observations behind it
    double weight = 0.0; ///< [jobs] precision of its mean: jobs, if they tell nothing of each other
    double mean = 0.0;   ///< [-] of the logarithms
    double squares = 0.0; ///< [-] sum of squares about that mean
};

/// The evidence of logarithms that are all of one kind.
///
/// Formula: n, n, sum y / n, sum (y - mean)^2
/// @param logs [-, n] the logarithms
/// @return [-] the evidence; none of an empty list
/// Range: finite logarithms.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/simulate/test_learning.cpp
Evidence evidence_of(std::span<const double> logs);

/// A belief after evidence.
///
/// Formula: k' = k + w; m' = (k m + w y) / k'; f' = f + n;
///          f' s' = f s + S + k w / k' (y - m)^2
/// @param belief [-] before
/// @param evidence [-] what was seen
/// @return [-] after; the same belief where nothing was seen
/// Range: weight and freedom above 0.
/// Errors: none.
/// Source: A. Gelman et al., Bayesian Data Analysis, 3rd edition (2013), section 3.3 (from memory)
/// Verified by: tests/cpp/simulate/test_learning.cpp
Belief updated(const Belief& belief, const Evidence& evidence);

/// How much is believed beforehand, where a rate does not say it.
struct PriorSettings {
    double freedom = 6.0;     ///< [-] of the spread from job to job: worth so many jobs
    double level_share = 0.5; ///< [-] of the variance that is the level's, where a rate says none
    double unstated_spread = 0.3;   ///< [-] coefficient of variation of a rate without a range
    double between_crews = 0.25;    ///< [-] variance between crews to that between jobs, beforehand
    double between_agencies = 0.25; ///< [-] variance between agencies likewise
    double between_freedom = 2.0;   ///< [-] how many more crews, or agencies, that is worth
};

/// What an uncertain value says of its own logarithm.
///
/// Formula: variance of the logarithm v = ln(1 + (sd / mean)^2), mean ln(mean) - v / 2; what the
/// value shares among structures is the level's, v q; the rest goes from job to job
/// @param value [SI unit of its field] low, likely, high and the share q common to all
/// @param settings [-] what counts where the value says no range or no share
/// @return [-] the belief, whose mean and variance for one job are those of the value
/// Range: positive values.
/// Errors: InputError `learning.value` where mean or spread are not positive and finite.
/// Source: moments of the log-normal distribution, NIST/SEMATECH e-Handbook 1.3.6.6.9
/// Verified by: tests/cpp/simulate/test_learning.cpp
Belief belief_of(const Uncertain& value, const PriorSettings& settings = {});

/// The observation of one job.
struct Observed {
    double log = 0.0;     ///< [-] natural logarithm of the value that was seen
    std::string crew;     ///< [text] who did it; empty where the log does not say
    std::string agency;   ///< [text] for whom; empty where the log does not say
    std::size_t row = 0;  ///< [-] position in the log
    bool counted = true;  ///< [-] false where it lies far out and such are left out
    bool far_out = false; ///< [-] beyond the limit for outliers

    /// The value that was seen [SI unit of its field].
    double value() const;
};

/// Marks what lies far from the others of its crew.
///
/// Formula: |y - median| / (1.4826 median |y - median|) > limit; by crew where it has five jobs or
/// more, else over all
/// @param jobs [-, n] the observations; `far_out` is written
/// @param limit [-] in standard deviations of a normal sample
/// Range: fewer than five observations mark none, and so do observations half of which are equal.
/// Errors: none.
/// Source: B. Iglewicz, D. Hoaglin, How to detect and handle outliers (1993), modified z-scores with
/// the limit 3.5; NIST/SEMATECH e-Handbook 1.3.5.17
/// Verified by: tests/cpp/simulate/test_learning.cpp
void mark_outliers(std::span<Observed> jobs, double limit = 3.5);

/// Whose value is asked for.
struct Whose {
    std::string crew;   ///< [text] a crew; empty: any crew
    std::string agency; ///< [text] an agency; empty: any agency
};

/// What is known of a value after pooling.
struct Pooled {
    Belief level;                  ///< [-] of the operation, over all crews and agencies
    double mean = 0.0;             ///< [-] logarithm, for whom it was asked
    double factor = 0.0;           ///< [-] variance of that level, to that from job to job
    double gain = 0.0;             ///< [jobs] how many jobs the log is worth for the level
    double share = 0.0;            ///< [-] of the log in the level; the rest was believed
    double between_crews = 0.0;    ///< [-] variance between crews to that between jobs; 0 for one
    double between_agencies = 0.0; ///< [-] likewise
    std::size_t jobs = 0;          ///< [-] observations that count
    std::size_t own_jobs = 0;      ///< [-] those of whom it was asked for
    std::size_t crews = 0;         ///< [-] crews among them
    std::size_t agencies = 0;      ///< [-] agencies among them

    /// Standard deviation of the level [-].
    double level_sd() const;
    /// Standard deviation of the next job's logarithm: level and spread together [-].
    double job_sd() const;
    /// A quantile of the level: how sure the rate is.
    ///
    /// @param u [-] probability, between 0 and 1
    /// @return [-] logarithm
    /// Range: as `student_quantile`.
    /// Errors: as `student_quantile`.
    /// Source: Gelman et al. (2013), section 3.3: the marginal of the level is Student's (from memory)
    /// Verified by: tests/cpp/simulate/test_learning.cpp
    double level_quantile(double u) const;
    /// A quantile of the next job: what it may take.
    ///
    /// @param u [-] probability, between 0 and 1
    /// @return [-] logarithm
    /// Range: as `student_quantile`.
    /// Errors: as `student_quantile`.
    /// Source: Gelman et al. (2013), section 3.3: the predictive distribution is Student's (from memory)
    /// Verified by: tests/cpp/simulate/test_learning.cpp
    double job_quantile(double u) const;
};

/// Pools observations from crew over agency to the operation, and back to whom it is asked for.
///
/// A crew's level lies about its agency's, an agency's about the operation's, with variances in a
/// ratio to that between jobs; given the ratios the update is exact. The ratios are those of the log
/// shrunk towards what was believed; where a log has one crew, or one agency, its ratio is 0. What the
/// log is worth is judged at the operation's level, or at that of a crew or agency that is named.
/// Formula: mean of a group with variance factor r + 1 / w, w its weight; weights 1 / factor add up
/// @param belief [-] before the log
/// @param jobs [-, n] the observations
/// @param whose [-] for whom: a named crew's level, an agency's, or that of any crew to come
/// @param settings [-] what is believed of the ratios
/// @return [-] what is known after; what was believed where there are none
/// Range: any; a crew or agency that the log does not have is one to come.
/// Errors: none.
/// Source: Gelman et al. (2013), sections 3.3 and 5.4 (from memory); ratios by the method of moments
/// of R. DerSimonian, N. Laird, Controlled Clinical Trials 7 (1986) 177-188 (from memory)
/// Verified by: tests/cpp/simulate/test_learning.cpp
Pooled pooled(const Belief& belief, std::span<const Observed> jobs, const Whose& whose = {},
              const PriorSettings& settings = {});

/// An uncertain value with the mean and the spread of what was learned, stated as the old one was.
///
/// Formula: c low^p, c likely^p, c high^p with p and c such that mean and standard deviation are
/// those of the log-normal value exp(N(mean, sd^2))
/// @param old [SI unit of its field] the value as stated; family and meaning are kept
/// @param log_mean [-] mean of the logarithm
/// @param log_sd [-] its standard deviation
/// @return [SI unit of its field] the new value; log-normal with P10 and P90 where the old one had no
/// range, is normal or log-normal, or cannot be so wide or so narrow
/// Range: an old value that `belief_of` takes.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/simulate/test_learning.cpp
ThreePoint restated(const ThreePoint& old, double log_mean, double log_sd);

} // namespace scupper::simulate
