#pragma once
// Rates learned from a log of finished jobs: old against new, how sure, and why or why not.

#include "scupper/simulate/job_log.hpp"

#include <memory>
#include <string>
#include <vector>

namespace scupper::simulate {

/// How rates are learned.
struct LearningSettings {
    Whose whose{};              ///< [-] whose rates are asked for
    std::size_t least_jobs = 5; ///< [-] observations of whom it is asked for; fewer teach nothing
    double least_gain = 2.0;    ///< [jobs] that the log must be worth for the level
    double outlier_limit = 3.5; ///< [-] modified z-score beyond which a job lies far out
    bool leave_out_outliers = false; ///< [-] true: they do not count; they are reported either way
    PriorSettings prior{};           ///< [-] what is believed where a rate does not say it
};

/// What was learned of one input, or of what several have in common.
struct LearnedRate {
    std::string key;             ///< [text] of the input; "pace" or "debris" for a common factor
    std::string label;           ///< [text] what people call it
    Dimension dimension{};       ///< of its values; none of a factor
    Uncertain before{};          ///< [SI unit of `dimension`] as the job has it
    Uncertain after{};           ///< [SI unit of `dimension`] the same as before where not learned
    bool learned = false;        ///< [-] whether the log was enough
    std::string reason;          ///< [text] on what it rests, or why the old value stays
    Pooled pooled;               ///< [-] level and spread of the logarithm
    std::vector<Observed> jobs;  ///< [-, n] the observations
    std::vector<std::string> of; ///< [text, n] keys that a common factor changes

    /// Half of the jobs lie below it [SI unit of `dimension`].
    double level() const;
    /// A quantile of the level: how sure the rate is.
    ///
    /// Formula: exp of `Pooled::level_quantile`
    /// @param u [-] probability, between 0 and 1
    /// @return [SI unit of `dimension`] the value below which the level lies with probability u
    /// Range: as `student_quantile`.
    /// Errors: as `student_quantile`.
    /// Source: definition
    /// Verified by: tests/cpp/simulate/test_learning.cpp
    double level_quantile(double u) const;
    /// A quantile of the next job.
    ///
    /// Formula: exp of `Pooled::job_quantile`
    /// @param u [-] probability, between 0 and 1
    /// @return [SI unit of `dimension`] the value below which the next job lies with probability u
    /// Range: as `student_quantile`.
    /// Errors: as `student_quantile`.
    /// Source: definition
    /// Verified by: tests/cpp/simulate/test_learning.cpp
    double job_quantile(double u) const;
};

/// What a log taught.
struct Learned {
    std::shared_ptr<const estimate::Plan> plan; ///< [-] the job whose rates they were
    std::string name;                           ///< [text] of the log
    std::string first, last;                    ///< [text] earliest and latest date of the log
    std::size_t lines = 0;                      ///< [-] rows of the log
    std::size_t used = 0;                       ///< [-] rows that say something
    std::vector<LogRow> log;                    ///< [-, n] rows that could be read
    std::vector<LogFault> faults;               ///< [-, n] of reading and of use, by line
    std::vector<LearnedRate> rates; ///< [-, n] in the order of the inputs, common factors last
};

/// Learns the rates of a job from a log.
///
/// Each value is log-normal from job to job. What the job says is believed beforehand; the log is
/// pooled from crew over agency. A value keeps its old range where whom it is asked for did fewer
/// than `least_jobs`, or where the log is worth less than `least_gain` jobs for its level.
/// Formula: `observe`, then `pooled`, then `restated`
/// @param log [-] finished jobs
/// @param plan [-] the job made ready
/// @param inventory [-] the structures the log names
/// @param settings [-] for whom, and what is enough
/// @return [-] a row for every input of which the log says anything
/// Range: any log.
/// Errors: InputError `learning.settings` for settings that are out of range; those of `observe`.
/// Source: the parts it calls
/// Verified by: tests/cpp/simulate/test_learning.cpp
Learned learn(const JobLog& log, std::shared_ptr<const estimate::Plan> plan,
              const inventory::Inventory& inventory, const LearningSettings& settings = {});

/// What was learned as a rate book to lay over the job.
///
/// @param learned [-] what a log taught
/// @return [-] the values that were learned, each with the jobs it rests on as its source; a common
/// factor changes every value it stands for
/// Range: any; a book without values where nothing was learned.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/simulate/test_learning.cpp
RateBook rates_of(const Learned& learned);

} // namespace scupper::simulate
