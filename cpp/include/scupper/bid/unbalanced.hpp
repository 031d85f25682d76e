#pragma once
// Bids whose prices do not follow the work: item by item, and early payment. A flag is a question,
// not a verdict; the agency decides by its own rules.

#include "scupper/bid/comparison.hpp"

#include <array>
#include <cstddef>
#include <string_view>
#include <vector>

namespace scupper::bid {

/// What a flag says.
enum class Unbalance {
    above, ///< an item of weight far above what the rest of the bid is priced at
    below, ///< an item of weight far below it
    token, ///< an item at next to nothing
    early, ///< payment earlier than a balanced bid would be paid
};

/// A flag in plain words.
struct UnbalanceRow {
    std::string_view name;  ///< [text] word for programs and tables
    std::string_view means; ///< [text] what it says
    std::string_view ask;   ///< [text] what the owner may ask
};

inline constexpr std::array<UnbalanceRow, 4> unbalance_table{{
    {"above", "The item is priced far above the level of the rest of this bid.",
     "The owner may ask how the price is made up, and look again at the quantity of the form."},
    {"below", "The item is priced far below the level of the rest of this bid.",
     "The owner may ask whether its cost stands in another item, and which."},
    {"token", "The item is priced at next to nothing.",
     "The owner may ask where its cost stands; alone, without another price raised, it is no "
     "fault."},
    {"early", "More is paid early than in a balanced bid of the same total.",
     "The owner may ask for the schedule of work, and for payment of preparation by progress."},
}}; ///< by Unbalance

/// From where a price is flagged. Common practice differs; these are starting points.
struct UnbalanceLimits {
    double above = 1.5;   ///< [-] times the level of the bid, and over
    double below = 0.5;   ///< [-] times the level of the bid, and under
    double token = 0.05;  ///< [-] times the level of the bid, and under
    double weight = 0.02; ///< [-] share of the total from which above and below count
    double early = 0.005; ///< [-] share of the total that early payment is worth
};

/// A price that was flagged.
struct UnbalancedItem {
    std::size_t bid;  ///< [-] index
    std::size_t item; ///< [-] index
    Unbalance kind;   ///< [-] what it says
    double ratio;     ///< [-] price over the reference
    double relative;  ///< [-] the same over the level of the bid
    double weight;    ///< [-] share of the bid's total, or of the reference's, where that is more
};

/// When the items of a contract are paid.
struct PaymentSchedule {
    std::size_t periods = 0;    ///< [-] number of equal periods
    std::vector<double> shares; ///< [-, items x periods] of each item; each item's sum to one
    double interest = 0.0;      ///< [-] rate a period
};

/// What early payment is worth.
struct EarlyPayment {
    double as_bid;                ///< [currency] present worth of the payments
    double balanced;              ///< [currency] the same for the total spread as the reference is
    double gain;                  ///< [currency] difference
    double gain_share;            ///< [-] the same over the total
    bool early;                   ///< [-] whether that is beyond the limit
    std::vector<double> paid;     ///< [-, periods] share of the total paid by the end of a period
    std::vector<double> expected; ///< [-, periods] the same of the balanced spread
};

/// Items whose price does not follow the rest of its bid.
///
/// A bid that is dear or cheap throughout is not unbalanced: an item's ratio is held against the
/// bid's own level, so that no flag changes where every price changes by one factor.
/// Formula: ratio = price / reference; level = sum of price x quantity / sum of reference x
/// quantity, over base items; relative = ratio / level
/// @param table [-] prices of bids
/// @param reference [currency per unit, items] the engineer's prices, or medians
/// @param limits [-] from where a price is flagged
/// @return [-, n] by bid, then item; items without a reference above zero are passed over
/// Range: base items.
/// Errors: InputError `bid.limits` where limits are not above zero in the order token, below, 1,
/// above; `bid.reference` where the reference has not one value an item
/// Source: 23 CFR 635.102: items that do not carry actual cost plus a proportionate share of profit
/// and overhead; limits: common practice
/// Verified by: tests/cpp/bid/test_unbalanced.cpp
std::vector<UnbalancedItem> unbalanced_items(const PriceTable& table, const Amounts& reference,
                                             const UnbalanceLimits& limits = {});

/// What a bid gains by being paid earlier than a balanced one.
///
/// Formula: present worth = sum over items and periods of amount x share (1 + i)^-period; balanced:
/// the bid's total spread over the items as the reference is
/// @param table [-] prices of bids
/// @param bid [-] index
/// @param reference [currency per unit, items] the engineer's prices, or medians
/// @param schedule [-] when the items are paid
/// @param limits [-] from which share it is flagged
/// @return [-] payments are at the end of periods
/// Range: base items, each priced and with a reference.
/// Errors: InputError `bid.schedule` where it does not fit or an item's shares do not sum to one,
/// `bid.reference`, `bid.price` where a price or the total is missing, `bid.limits`;
/// `cost.interest`
/// Source: definition; factors as `cost::present_worth_factor`
/// Verified by: tests/cpp/bid/test_unbalanced.cpp
EarlyPayment early_payment(const PriceTable& table, std::size_t bid, const Amounts& reference,
                           const PaymentSchedule& schedule, const UnbalanceLimits& limits = {});

} // namespace scupper::bid
