#pragma once
// Bids made for tests.

#include "scupper/bid.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace made {

using namespace scupper;
using namespace scupper::bid;

inline Decimal number(std::string_view text) {
    return parse_decimal(text, "test");
}

inline PayItem item(std::string code, std::string unit, std::string_view quantity) {
    return {std::move(code),  "made for a test", std::move(unit),
            number(quantity), number(quantity),  number(quantity)};
}

/// A bid with the extensions and the total of its prices.
inline Bid honest(const ItemList& form, std::string bidder,
                  const std::vector<std::string>& prices) {
    Bid bid;
    bid.bidder = std::move(bidder);
    Decimal total;
    for (std::size_t i = 0; i < prices.size(); ++i) {
        BidLine line;
        line.code = form.items[i].code;
        line.quantity = form.items[i].quantity;
        line.unit_price = number(prices[i]);
        line.extension = extension(Money(*line.unit_price, form.currency), *line.quantity).amount();
        if (form.items[i].kind == ItemKind::base) {
            total = total + *line.extension;
        }
        bid.lines.push_back(line);
    }
    bid.total = total;
    return bid;
}

inline ItemList form_of(std::vector<PayItem> items) {
    return {parse_currency("USD", "test"), std::move(items)};
}

} // namespace made
