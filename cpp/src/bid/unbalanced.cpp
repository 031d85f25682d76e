#include "scupper/bid/unbalanced.hpp"

#include "scupper/cost/interest.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::bid {

namespace {

void check(const UnbalanceLimits& l) {
    const bool ordered = 0.0 < l.token && l.token <= l.below && l.below < 1.0 && 1.0 < l.above;
    if (!ordered || !(l.weight >= 0.0) || !(l.early >= 0.0)) {
        throw InputError({"bid.limits", "limits",
                          "token " + std::to_string(l.token) + ", below " +
                              std::to_string(l.below) + ", above " + std::to_string(l.above),
                          "0 < token <= below < 1 < above; weight and early 0 or more"});
    }
}

void check_reference(const PriceTable& table, const Amounts& reference) {
    if (reference.size() != table.items()) {
        throw InputError({"bid.reference", "reference",
                          std::to_string(reference.size()) + " prices",
                          std::to_string(table.items()) + ", one an item"});
    }
}

/// Quantities and reference prices of base items as doubles; 0 where an item takes no part.
struct Reference {
    std::vector<double> quantity;
    std::vector<double> price;

    Reference(const PriceTable& table, const Amounts& reference) {
        for (std::size_t i = 0; i < table.items(); ++i) {
            const PayItem& item = table.form.items[i];
            const bool counts =
                item.kind == ItemKind::base && reference[i] && *reference[i] > Decimal();
            quantity.push_back(to_double(item.quantity));
            price.push_back(counts ? to_double(*reference[i]) : 0.0);
        }
    }
    double amount(std::size_t i) const { return quantity[i] * price[i]; }
};

/// The flags of one bid.
void flag(const PriceTable& table, std::size_t bid, const Reference& reference,
          const UnbalanceLimits& limits, std::vector<UnbalancedItem>& out) {
    const auto prices = table.of(bid);
    double bid_total = 0.0;
    double reference_total = 0.0;
    for (std::size_t i = 0; i < prices.size(); ++i) {
        if (prices[i] && reference.price[i] > 0.0) {
            bid_total += to_double(*prices[i]) * reference.quantity[i];
            reference_total += reference.amount(i);
        }
    }
    if (!(bid_total > 0.0) || !(reference_total > 0.0)) {
        return;
    }
    const double level = bid_total / reference_total;
    for (std::size_t i = 0; i < prices.size(); ++i) {
        if (!prices[i] || reference.price[i] <= 0.0) {
            continue;
        }
        const double price = to_double(*prices[i]);
        const double ratio = price / reference.price[i];
        const double relative = ratio / level;
        const double weight = std::max(price * reference.quantity[i] / bid_total,
                                       reference.amount(i) / reference_total);
        const bool weighs = weight >= limits.weight;
        if (relative <= limits.token) {
            out.push_back({bid, i, Unbalance::token, ratio, relative, weight});
        } else if (weighs && relative >= limits.above) {
            out.push_back({bid, i, Unbalance::above, ratio, relative, weight});
        } else if (weighs && relative <= limits.below) {
            out.push_back({bid, i, Unbalance::below, ratio, relative, weight});
        }
    }
}

void check(const PaymentSchedule& schedule, std::size_t items) {
    bool fits = schedule.periods > 0 && schedule.shares.size() == items * schedule.periods;
    for (std::size_t i = 0; fits && i < items; ++i) {
        double sum = 0.0;
        for (std::size_t k = 0; k < schedule.periods; ++k) {
            const double share = schedule.shares[i * schedule.periods + k];
            fits = fits && share >= 0.0;
            sum += share;
        }
        fits = fits && std::abs(sum - 1.0) < 1e-9;
    }
    if (!fits) {
        throw InputError({"bid.schedule", "schedule", "shares that do not fit",
                          "for each of " + std::to_string(items) +
                              " items shares by period, 0 or more, that sum to one"});
    }
}

/// Adds the payments of an item by period.
void pay(double amount, std::size_t item, const PaymentSchedule& schedule,
         std::vector<double>& payments) {
    for (std::size_t k = 0; k < schedule.periods; ++k) {
        payments[k] += amount * schedule.shares[item * schedule.periods + k];
    }
}

double present_worth(const std::vector<double>& payments, double interest) {
    double worth = 0.0;
    for (std::size_t k = 0; k < payments.size(); ++k) {
        worth += payments[k] * cost::present_worth_factor(interest, static_cast<double>(k + 1));
    }
    return worth;
}

std::vector<double> cumulated(const std::vector<double>& payments, double total) {
    std::vector<double> shares;
    double sum = 0.0;
    for (const double payment : payments) {
        sum += payment;
        shares.push_back(sum / total);
    }
    return shares;
}

} // namespace

std::vector<UnbalancedItem> unbalanced_items(const PriceTable& table, const Amounts& reference,
                                             const UnbalanceLimits& limits) {
    check(limits);
    check_reference(table, reference);
    const Reference known(table, reference);
    std::vector<UnbalancedItem> flags;
    for (std::size_t bid = 0; bid < table.bidders.size(); ++bid) {
        flag(table, bid, known, limits, flags);
    }
    return flags;
}

EarlyPayment early_payment(const PriceTable& table, std::size_t bid, const Amounts& reference,
                           const PaymentSchedule& schedule, const UnbalanceLimits& limits) {
    check(limits);
    check_reference(table, reference);
    check(schedule, table.items());
    const Reference known(table, reference);
    const std::optional<Decimal> total = base_total(table.form, table.of(bid));
    double reference_total = 0.0;
    for (std::size_t i = 0; i < table.items(); ++i) {
        reference_total += known.amount(i);
    }
    if (!total || *total <= Decimal() || !(reference_total > 0.0)) {
        throw InputError({"bid.price", table.bidders[bid], "no total above zero to spread",
                          "a price for every base item, and a reference"});
    }
    const double sum = to_double(*total);
    std::vector<double> paid(schedule.periods);
    std::vector<double> balanced(schedule.periods);
    for (std::size_t i = 0; i < table.items(); ++i) {
        if (table.form.items[i].kind == ItemKind::base) {
            pay(to_double(*table.of(bid)[i]) * known.quantity[i], i, schedule, paid);
            pay(sum * known.amount(i) / reference_total, i, schedule, balanced);
        }
    }
    const double as_bid = present_worth(paid, schedule.interest);
    const double even = present_worth(balanced, schedule.interest);
    const double gain = as_bid - even;
    return {as_bid,
            even,
            gain,
            gain / sum,
            gain / sum > limits.early,
            cumulated(paid, sum),
            cumulated(balanced, sum)};
}

} // namespace scupper::bid
