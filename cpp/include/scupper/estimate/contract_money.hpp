#pragma once
// What the terms of a contract do beside the price: payments in time, quantities that vary.

#include "scupper/cost/contract.hpp"
#include "scupper/estimate/estimate.hpp"
#include "scupper/estimate/outings.hpp"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace scupper::estimate {

/// Money earned and paid period by period.
struct Payments {
    std::optional<Date> first; ///< the first day of the first period; none without a calendar
    Time<> interval;           ///< [s] of a period, by the job's terms
    cost::CashFlow flow;       ///< [currency] earned, kept back, paid, outstanding by period
};

/// The payments for one structure: its price earned evenly over its days of work.
///
/// Formula: earned on a day = total / shifts; retainage by the job's terms, its release the first
/// period after `retainage_release`; interest of a period = (1 + i)^(period / year) - 1
/// @param estimate [-] an estimate
/// @return [currency, n] by period; the cost of the money held is `flow.waiting_cost`
/// Range: any estimate. Beside the price: nothing of it is in any figure. Without a day of asking
/// the shifts follow each other, as many a week as the calendar has days of work.
/// Errors: those of `schedule` and `cost::retainage`; InputError `estimate.periods` for more than
/// 10,000 periods
/// Source: definition; payment by the month is common practice
/// Verified by: tests/cpp/estimate/test_contract_money.cpp
Payments cash_flow(const Estimate& estimate);

/// The payments for a list of structures: the price earned with the paid hours of its shifts.
///
/// Formula: earned in a shift = price x its paid hours / all paid hours; the rest as above
/// @param plan [-] the outings
/// @return [currency, n] by period
/// Range: at least one outing.
/// Errors: those of `cost::retainage`; InputError `estimate.periods`
/// Source: definition
/// Verified by: tests/cpp/estimate/test_contract_money.cpp
Payments cash_flow(const OutingPlan& plan);

/// What is paid where quantities come out otherwise than planned.
struct VariedPrice {
    std::string component;   ///< [text] one of component_names
    Slot slot = 0;           ///< [-] the quantity it is paid by
    double share = 0.0;      ///< [-] quantity as built over the planned one
    double quantity = 0.0;   ///< [SI unit of the slot] planned
    double unit_price = 0.0; ///< [currency over the SI unit] of the contract
    double planned = 0.0;    ///< [currency] at the planned quantity
    double paid = 0.0;       ///< [currency] at the varied quantity
    double price = 0.0;      ///< [currency] of the structure, the other components as planned
};

/// The price where one component's quantity comes out as a share of the planned one, for each.
///
/// Formula: `cost::varied_payment` with the unit price of `unit_costs`, the limit of the job's terms,
/// and price_over and price_under times the unit price beyond it; without a limit, in proportion
/// @param estimate [-] an estimate
/// @param shares [-, m] quantities over the planned ones, each >= 0
/// @return [currency, n x m] component by component
/// Range: components with a quantity and a unit price. Beside the price: nothing of it is in any
/// figure.
/// Errors: InputError `cost.quantity` where a share is below 0
/// Source: 23 CFR 635.109(a)(3) (from memory)
/// Verified by: tests/cpp/estimate/test_contract_money.cpp
std::vector<VariedPrice> quantity_variation(const Estimate& estimate,
                                            std::span<const double> shares);

} // namespace scupper::estimate
