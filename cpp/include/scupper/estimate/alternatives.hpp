#pragma once
// Which method? Ways to clean a deck, means of access to the underside and closures, side by side at
// one structure: what each takes, whether it can be done there, and which one a person's weights
// recommend.

#include "scupper/estimate/estimate.hpp"

#include <array>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace scupper::estimate {

/// What each criterion counts, by place in criterion_names.
using Criteria = std::array<double, criterion_names.size()>;

/// How much each criterion counts where nobody says: half the cost, a quarter the dirt left, the rest
/// the closure by its hours and by what it costs those who drive past or round.
inline constexpr Criteria usual_weights{0.5, 0.0, 0.0, 0.0, 0.125, 0.25, 0.125};

/// An alternative made ready, or why it has no price whatever the structure.
struct PlannedAlternative {
    Alternative alternative;          ///< [-] what it changes
    std::shared_ptr<const Plan> plan; ///< [-] the job with it; null where it cannot be made ready
    std::shared_ptr<const Plan> otherwise; ///< [-] the job as it stands
    std::string reason;                    ///< [text] why there is no plan
    bool current = false;                  ///< [-] the job works so as it stands
    bool in_scope = false;                 ///< [-] the job has work that its question is about
    std::vector<std::pair<Condition, std::string>> needs; ///< [text, n] each must hold, or why not
    std::vector<std::pair<Condition, std::string>> forbids; ///< [text, n] none may hold, or why not
};

/// One alternative at one structure.
struct AlternativeRow {
    std::size_t alternative;          ///< [-] index among the planned ones
    bool feasible = true;             ///< [-] nothing known speaks against it
    std::vector<std::string> reasons; ///< [text, n] why it cannot be done
    std::vector<std::string> doubts;  ///< [text, n] what to look at on site, what it does not reach
    std::string no_price;             ///< [text] why it has no price; empty where it has one
    Criteria amount;                  ///< [SI unit of each] NaN without a price
    double shifts;                    ///< [-] crew-shifts; NaN without a price
    double left_low, left_high;       ///< [-] share of the dirt left, with most and least removed
    double left_mass;                 ///< [kg] of dirt left; NaN without a price
    std::vector<std::string> not_figured; ///< [text, n] what no record or job tells of road users
    double score;             ///< [-] weighted, the mean of the feasible ones is 1; or NaN
    bool recommended = false; ///< [-] the best feasible one with a price
    std::string why;          ///< [text] of the recommended one: against the next
};

/// Makes every alternative of a job ready.
///
/// @param job [-] the job
/// @return [-, n] in the order of the job; one that cannot be priced says why
/// Range: a job that can be made ready itself.
/// Errors: those of `make_plan` for the job as it stands.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_alternatives.cpp
std::vector<PlannedAlternative> plan_alternatives(const Job& job);

/// The share of dirt that passes leave.
///
/// Formula: (1 - removed)^passes
/// @param removed [-] share that one pass takes away, 0 to 1
/// @param passes [each] how often it goes over, >= 0
/// @return [-] share left
/// Range: every pass takes the same share of what it finds.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/estimate/test_alternatives.cpp
double share_left(double removed, double passes);

/// All alternatives at one structure. None is left out: one that cannot be done, or has no price,
/// says why.
///
/// Formula: score = sum over criteria of weight / sum of weights x amount / mean of the amounts of
/// the feasible ones with a price and the same question; the least is recommended, of equal ones the
/// first. A criterion of which nobody has any, or that cannot be figured for one of them, counts
/// nothing.
/// @param structure [-] the record
/// @param alternatives [-, n] made ready
/// @param weights [-] by criterion, each at least 0, one above
/// @return [-, n] one row for each, in the same order
/// Range: any structure. Whether it can be done rests on the record; the site governs.
/// Errors: InputError `alternatives.weights` where a weight is below 0, no number, or all are 0;
/// those of `resolve`.
/// Source: own convention; each alternative names its own
/// Verified by: tests/cpp/estimate/test_alternatives.cpp
std::vector<AlternativeRow> compare_alternatives(const Structure& structure,
                                                 std::span<const PlannedAlternative> alternatives,
                                                 const Criteria& weights = usual_weights);

} // namespace scupper::estimate
