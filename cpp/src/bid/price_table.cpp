#include "scupper/bid/price_table.hpp"

namespace scupper::bid {

PriceTable price_table(const ItemList& form, std::span<const CheckedBid> bids,
                       const CheckedBid* estimate) {
    PriceTable table{form, {}, {}, {}};
    table.prices.reserve(bids.size() * form.items.size());
    for (const CheckedBid& bid : bids) {
        table.bidders.push_back(bid.bidder);
        for (const CheckedLine& line : bid.lines) {
            table.prices.push_back(line.price);
        }
    }
    if (estimate != nullptr) {
        for (const CheckedLine& line : estimate->lines) {
            table.estimate.push_back(line.price);
        }
    }
    return table;
}

std::optional<Decimal> base_total(const ItemList& form,
                                  std::span<const std::optional<Decimal>> prices) {
    Decimal total;
    for (std::size_t i = 0; i < prices.size(); ++i) {
        const PayItem& item = form.items[i];
        if (item.kind != ItemKind::base) {
            continue;
        }
        if (!prices[i]) {
            return std::nullopt;
        }
        total = total + extension(Money(*prices[i], form.currency), item.quantity).amount();
    }
    return total;
}

Amounts base_totals(const PriceTable& table) {
    Amounts totals;
    totals.reserve(table.bidders.size());
    for (std::size_t bid = 0; bid < table.bidders.size(); ++bid) {
        totals.push_back(base_total(table.form, table.of(bid)));
    }
    return totals;
}

} // namespace scupper::bid
