#pragma once
// The estimate of one structure: figures, cost lines, ranges, assumptions, explanations.

#include "scupper/estimate/draws.hpp"
#include "scupper/estimate/plan.hpp"
#include "scupper/estimate/resolve.hpp"
#include "scupper/structure.hpp"
#include "scupper/traced.hpp"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::estimate {

/// Why a structure has no price, or that it has one.
enum class Outcome : std::uint8_t {
    priced,
    not_washable, ///< the verdict of the take-off says why
    no_flow,      ///< no water reaches the nozzle
    no_work_time, ///< travel, briefing and meal take the whole shift
    no_payload,   ///< a haul truck may carry nothing
    posting,      ///< the weight posting of the bridge; the model says how
    no_window,    ///< traffic leaves no hours in which the road may be closed
    no_room,      ///< the road leaves no room for the closure
    no_number,    ///< the total is not a number for another reason
};

/// One line of the cost.
struct PricedLine {
    std::string component, operation, resource; ///< [text] what is washed, how, and with what
    double amount;                              ///< [currency]
};

/// A figure with the range that draws give it.
struct RangedFigure {
    std::string key; ///< [text] key of the figure schema
    double value;    ///< [SI unit of the figure] as estimated
    double low;      ///< [SI unit of the figure] 5 % of the draws lie below
    double middle;   ///< [SI unit of the figure] half of the draws lie below
    double high;     ///< [SI unit of the figure] 5 % of the draws lie above
};

/// One guess and what it is worth.
struct Assumption {
    std::string key, label; ///< [text] key of the input schema; what people call it
    Uncertain value;        ///< [SI unit of the field]
    Dimension dimension;    ///< of the value
    double total_at_low;    ///< [currency] total cost with this input at its low value
    double total_at_high;   ///< [currency] total cost with this input at its high value
    double worth;           ///< [currency] the difference, without sign
};

/// A quantity that no record can tell, and what is assumed instead.
struct Untold {
    Slot slot;              ///< [-] place in `slot_table`
    double low, used, high; ///< [SI unit of the slot] 5 % of draws, as priced, 95 % of draws
    double worth;           ///< [currency] how far the total moves between low and high
};

/// One structure priced under one job.
struct Estimate {
    std::shared_ptr<const Plan> plan; ///< [-] the job it was priced under
    Structure structure;              ///< [-] the record it was priced from
    Resolved resolved;                ///< its model refers to `plan`
    std::vector<double> figures;      ///< [SI unit of each] by place of the figure layout

    /// One figure.
    ///
    /// @param key [text] "cost.total", "operation[deck_hand_line].time", "drain_count", "water"
    /// @return [SI unit of the figure] its value
    /// Range: keys that `figure_place_of` knows.
    /// Errors: UnknownNameError `schema.key` naming the nearest known key.
    /// Source: own convention
    double figure(std::string_view key) const;
};

/// Whether a structure has a price, and if not, why.
///
/// @param resolved [-] the structure made ready
/// @param figures [SI unit of each, n] its figures
/// @param plan [-] the plan
/// @return [-] priced, or the reason
/// Range: any.
/// Errors: none.
/// Source: own convention
Outcome outcome_of(const Resolved& resolved, const std::vector<double>& figures, const Plan& plan);

/// Why a structure has no price, in words for the list of unpriced structures and the error.
///
/// @param outcome [-] from `outcome_of`
/// @param resolved [-] the structure made ready; its verdict and posting say more
/// @return [text] one sentence, the same for the same reason; "priced" where there is a price
/// Range: every outcome.
/// Errors: none.
/// Source: own convention
std::string outcome_reason(Outcome outcome, const Resolved& resolved);

/// The place of a figure by its key or by the short names people use.
///
/// @param plan [-] the plan
/// @param key [text] a full key; a quantity slot; an operation (its time); "water" (its volume)
/// @return [-] index into the figures
/// Range: any text.
/// Errors: UnknownNameError `schema.key` naming the nearest known key.
/// Source: own convention
std::size_t figure_place_of(const Plan& plan, std::string_view key);

/// Prices one structure, in an outing of its own group.
///
/// @param structure [-] the record
/// @param plan [-] the job made ready
/// @return [-] the estimate
/// Range: any structure.
/// Errors: InputError `estimate.unpriced` with the reason where it cannot be priced; those of
/// `resolve`.
/// Source: the parts it calls
/// Verified by: tests/cpp/estimate/test_estimate.cpp
Estimate estimate(const Structure& structure, std::shared_ptr<const Plan> plan);

/// The cost lines that are not zero; they add up to the total.
///
/// @param estimate [-] an estimate
/// @return [currency, n] component, operation, resource, amount
/// Range: any estimate.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_estimate.cpp
std::vector<PricedLine> cost_lines(const Estimate& estimate);

/// How a figure came about, down to the inputs, by pricing the structure again with a recording.
///
/// @param estimate [-] an estimate
/// @param key [text] as for `figure_place_of`
/// @return [-] the derivation; its value is the figure, to the bit
/// Range: any figure.
/// Errors: UnknownNameError `schema.key` naming the nearest known key.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_explain.cpp
Derivation explain(const Estimate& estimate, std::string_view key);

/// The ranges of the main figures, from draws of all uncertain inputs.
///
/// @param estimate [-] an estimate
/// @param settings [-] seed, number of draws, kind of sampling
/// @return [SI unit of each figure, n] 5 %, 50 % and 95 % beside the value
/// Range: at least one draw.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_draws.cpp
std::vector<RangedFigure> ranges(const Estimate& estimate, const DrawSettings& settings);

/// The uncertain inputs by what they are worth: the total at low and at high, one at a time.
///
/// @param estimate [-] an estimate
/// @return [currency, n] the dearest first; inputs that move nothing are left out
/// Range: any estimate.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_estimate.cpp
std::vector<Assumption> assumptions(const Estimate& estimate);

/// The quantities no record can tell, with the range of draws and how the price moves over it.
///
/// @param estimate [-] an estimate
/// @return [-, n] in the order of the slots; quantities that move no money are left out
/// Range: any estimate.
/// Errors: none.
/// Source: own convention
std::vector<Untold> untold_quantities(const Estimate& estimate);

/// The operations that would be part of the work and are not, because no wash water may run.
///
/// @param estimate [-] an estimate
/// @return [text, n] their names in the order of the job; empty unless the job's wash water is
/// "none"
/// Range: any estimate.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_wash_water.cpp
std::vector<std::string> refused_operations(const Estimate& estimate);

/// What the weight posting of this structure does to the work, in numbers.
///
/// @param estimate [-] an estimate
/// @return [text, n] one sentence for each; none where the bridge has no weight limit
/// Range: any estimate. The sign on the bridge governs.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995), item 41; the limit names its own
/// Verified by: tests/cpp/estimate/test_posting.cpp
std::vector<std::string> posting_warnings(const Estimate& estimate);

/// What the crew must mind at this structure, by what its closure and its surroundings trigger.
///
/// @param estimate [-] an estimate
/// @return [-, n] the cautions that apply, in the order of the job
/// Range: any estimate. They are the usual ones, not a safety plan: local codes and licensed
/// practice govern.
/// Errors: none.
/// Source: each caution names its own
/// Verified by: tests/cpp/estimate/test_cautions.cpp
std::vector<Caution> cautions(const Estimate& estimate);

} // namespace scupper::estimate
