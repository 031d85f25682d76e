#pragma once
// Which few measurements, at which structures, would narrow the cost of a programme most.

#include "scupper/estimate.hpp"
#include "scupper/simulate/measurable.hpp"

#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace scupper::simulate {

/// One thing to count or measure at a structure.
struct Measurement {
    std::size_t place = 0;                      ///< [-] of the input that it makes certain
    std::string key{};                          ///< [text] input key it is written down as
    std::string words{};                        ///< [text] what to do: "count the drains"
    Dimension dimension{};                      ///< of low, likely and high
    double low = 0.0, likely = 0.0, high = 0.0; ///< [SI unit of `dimension`] what is believed now
    Basis basis = Basis::assumed;               ///< [-] how that came to be known
    double variance = 0.0;        ///< [currency2] of this structure's cost, that goes with it
    std::vector<double> shared{}; ///< [currency, 16 or 0] expected cost less its mean, by strata of
                                  ///< what structures share of the input
    double narrows = 0.0;         ///< [currency] of the programme's range, this alone
};

/// Everything worth measuring in one visit to a structure.
struct Visit {
    std::size_t index = 0;                 ///< [-] position among the structures
    std::vector<Measurement> measurements; ///< [-, n] the one that narrows most first
    double variance = 0.0;                 ///< [currency2] of this structure's cost, that goes
    double narrows = 0.0;                  ///< [currency] of the programme's range, this alone
    double range_left = 0.0;       ///< [currency] P5 to P95 after this visit and all before it
    double narrows_by_draws = 0.0; ///< [currency] of P10 to P90, this visit alone; NaN where what
                                   ///< it may find leaves the structure without a price
    double left_by_draws = 0.0;    ///< [currency] P10 to P90 after this visit and all before it
};

/// How a survey list is made.
struct SurveySettings {
    std::size_t visits = 20;   ///< [-] structures on the list
    double least_share = 0.02; ///< [-] of what a visit takes away; what brings less is left out
    estimate::DrawSettings draws{}; ///< [-] of all structures and of each visit
};

/// A survey list.
struct SurveyList {
    std::shared_ptr<const estimate::Plan> plan; ///< [-] the job it was made under
    double mean = 0.0;                 ///< [currency] of the programme's cost over the draws
    double low = 0.0, high = 0.0;      ///< [currency] 5 % and 95 % of the draws lie below
    double variance = 0.0;             ///< [currency2] of the programme's cost over the draws
    double middle_range = 0.0;         ///< [currency] from 10 % to 90 % of the draws
    std::vector<Visit> visits;         ///< [-, n] the one that narrows most first
    std::vector<std::size_t> left_out; ///< [-, n] positions: a draw leaves them without a price
};

/// What of a range is left once a part of the variance is gone.
///
/// Formula: R sqrt(1 - v / V), not below 0
/// @param range [currency] R, from P5 to P95
/// @param removed [currency2] v, variance that goes
/// @param variance [currency2] V, variance behind the range
/// @return [currency] from P5 to P95; 0 where there is no variance
/// Range: a distribution whose shape stays while it narrows.
/// Errors: none.
/// Source: definition of a scale family
/// Verified by: tests/cpp/simulate/test_survey_list.cpp
double range_without(double range, double removed, double variance);

/// Finds out what a visit to a structure would tell. Holds what is the same for all structures of a
/// plan; one for each thread.
class Surveyor {
  public:
    /// Makes ready what does not depend on the structure.
    ///
    /// @param plan [-] the job made ready; must outlive this
    /// @param settings [-] which measurements are too small to list, draws of a visit
    /// Errors: none.
    Surveyor(const estimate::Plan& plan, const SurveySettings& settings);

    /// What can be measured at one structure, and the variance of its cost that goes with it.
    ///
    /// A measurement alone: the expected cost given its true value, the other inputs at their
    /// means, over 16 equally probable values. That is the conditional expectation wherever the
    /// cost is linear in each input alone; ceilings (trips, passes) make the difference. The visit:
    /// the same with all its measurements drawn together, so what they do to each other counts.
    /// Inputs that the job correlates with a measured one are where they are to be expected with it.
    /// Formula: v = Var(E[c | x])
    /// @param resolved [-] the structure made ready
    /// @return [-] the visit; no measurement where nothing measurable moves the cost
    /// Range: a priced structure. 16 values miss some 5 % of the variance of an input with a long
    /// tail; with n draws the visit's has a relative standard error of about sqrt((k - 1) / n), k
    /// its kurtosis.
    /// Errors: none.
    /// Source: A. Saltelli et al., Global Sensitivity Analysis (2008), ch. 4, first-order and
    /// closed indices (from memory)
    /// Verified by: tests/cpp/simulate/test_survey_list.cpp
    Visit visit_to(const estimate::Resolved& resolved);
    /// What of the last visit's structure varies together with others: input place and `shared` of
    /// every measurable input, those too small to list among them [currency].
    const std::vector<std::pair<std::size_t, std::vector<double>>>& shared() const {
        return shared_;
    }

  private:
    struct Candidate;
    double cost_at_values(const estimate::Resolved& resolved);
    double cost_with(const estimate::Resolved& resolved, std::size_t place, double value);
    void describe(const estimate::Resolved& resolved, Measurement& m);
    std::optional<Candidate> candidate(const estimate::Resolved& resolved, std::size_t place);
    double variance_together(const estimate::Resolved& resolved,
                             std::span<const Candidate> measured);

    std::vector<double> cost_by_shared(const estimate::Resolved& resolved, std::size_t place);

    const estimate::Plan& plan_;
    SurveySettings settings_;
    std::vector<const Measurable*> measurable_; ///< by input place; null: not to be measured
    std::vector<double> values_;                ///< [SI] by input place
    estimate::Workspace<double> workspace_;
    std::vector<std::pair<std::size_t, std::vector<double>>> shared_; ///< of the last structure
    std::size_t total_; ///< place of the cost among the figures
};

/// The few visits that would narrow the cost of a programme most.
///
/// A visit makes certain what it measures at its own structure and nothing elsewhere: other
/// structures keep what they share of an input's spread. So it takes away the variance of its
/// structure's cost and what that cost varies together with the others. Visits are picked one by
/// one, each the best after those before it. Beside that each has the width of P10 to P90 to be
/// expected by draws, which takes no shape for granted: for 16 outcomes of its measurements all
/// structures are drawn with them certain, and the widths averaged. What the job correlates with a
/// measured input moves with it at its own structure and keeps what spread is then left; elsewhere
/// it stays as drawn.
/// Formula: v = Var(E[c | x]) + 2 sum over shared inputs of Cov(E[c | w], sum over the others of
/// E[c' | w]); range after k visits = R sqrt(1 - (v1 + ... + vk) / V);
/// by draws E[P90 - P10 of the total given x]
/// @param structures [-, n] the records
/// @param plan [-] the job made ready
/// @param settings [-] length of the list, draws
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told how far the run is; may be empty
/// @return [-] the list; the same bits for any number of threads and the same visits for any order
/// of structures
/// Range: any list; structures without a price are not on it.
/// Errors: InputError `survey.draws` for less than 16 draws; Interrupted `estimate.stopped` where
/// progress says so; those of `resolve`.
/// Source: law of total variance; what is shared is taken input by input, without correlations
/// Verified by: tests/cpp/simulate/test_survey_list.cpp
SurveyList survey_list(std::span<const Structure> structures,
                       std::shared_ptr<const estimate::Plan> plan, const SurveySettings& settings,
                       unsigned threads = 0, const estimate::RunProgress& progress = {});

} // namespace scupper::simulate
