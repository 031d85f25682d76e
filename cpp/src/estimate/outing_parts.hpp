#pragma once
// Steps of planning outings. Internal to the estimate.

#include "scupper/estimate/outings.hpp"

namespace scupper::estimate::detail {

/// Structures that have a price, by position among all; empty where one has none.
using Priced = std::vector<std::optional<Estimate>>;

/// Structures that are served together, in the order of the way.
struct Together {
    std::string name;
    std::vector<std::size_t> members;
    bool one_closure = false;
};

/// Every priced structure in exactly one group.
std::vector<Together> put_together(const Priced& priced, std::span<const Structure> structures,
                                   const OutingRules& rules);

/// Every priced structure by itself.
std::vector<Together> each_alone(const Priced& priced);

/// The sites of a group in one stage, with the way between them.
std::vector<work::Site> sites_of(const Priced& priced, const Together& group, std::size_t stage,
                                 const OutingRules& rules);

/// The outings of groups, stage after stage, with their shifts.
std::vector<Outing> lay_out(const Priced& priced, const std::vector<Together>& groups,
                            const OutingRules& rules);

/// Puts the shifts on days of the calendar, one after the other.
void put_days(const Priced& priced, const OutingRules& rules, std::vector<Outing>& outings);

/// Finds the overtime of every shift, by the day and over the weeks.
void put_overtime(const Plan& plan, const OutingRules& rules, std::vector<Outing>& outings);

/// Puts hours and cost of people and equipment to every outing.
void put_cost(const Priced& priced, const OutingRules& rules, std::vector<Outing>& outings);

/// The sum over outings.
OutingCost total_of(const std::vector<Outing>& outings);

} // namespace scupper::estimate::detail
