#include "scupper/bid/crossover.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace scupper::bid {

namespace {

/// A base item as crossovers need it: a quantity and how far it may go.
struct Varied {
    std::size_t place;
    Decimal quantity;
    Decimal low;
    Decimal high;
};

std::vector<Varied> varied_items(const ItemList& form) {
    std::vector<Varied> out;
    for (std::size_t i = 0; i < form.items.size(); ++i) {
        const PayItem& item = form.items[i];
        if (item.kind != ItemKind::base) {
            continue;
        }
        const bool certain = item.low == item.high;
        if (!certain && (item.low > item.quantity || item.high < item.quantity)) {
            throw InputError({"bid.range", "items[" + item.code + "]",
                              to_text(item.low) + " to " + to_text(item.high),
                              "a range that encloses the quantity " + to_text(item.quantity)});
        }
        out.push_back({i, item.quantity, certain ? item.quantity : item.low,
                       certain ? item.quantity : item.high});
    }
    return out;
}

/// One pair of bids: by how much the other's price exceeds the low one's, and the gap in all.
struct Pair {
    std::vector<Decimal> differences;
    Decimal gap;
};

std::optional<Pair> pair_of(const PriceTable& table, const std::vector<Varied>& items,
                            std::size_t low, std::size_t other) {
    Pair pair;
    for (const Varied& item : items) {
        const auto& mine = table.of(low)[item.place];
        const auto& theirs = table.of(other)[item.place];
        if (!mine) {
            throw InputError({"bid.price", table.bidders[low], "no price of an item",
                              "a low bid with every base item priced"});
        }
        if (!theirs) {
            return std::nullopt;
        }
        pair.differences.push_back(*theirs - *mine);
        pair.gap = pair.gap + pair.differences.back() * item.quantity;
    }
    return pair;
}

Fraction quotient(const Decimal& top, const Decimal& bottom) {
    // Products by one bring both to whole numbers of the same scale, checked for overflow.
    const Decimal zero(0, std::max(top.scale(), bottom.scale()));
    std::int64_t a = (top + zero).coefficient();
    std::int64_t b = (bottom + zero).coefficient();
    const std::int64_t divisor = std::gcd(a, b);
    a /= divisor;
    b /= divisor;
    return b < 0 ? Fraction{-a, -b} : Fraction{a, b};
}

/// Calls a function for every other bid that prices all base items.
template <class Use>
void for_each_other(const PriceTable& table, const std::vector<Varied>& items, std::size_t low,
                    Use use) {
    for (std::size_t other = 0; other < table.bidders.size(); ++other) {
        if (other != low) {
            if (const auto pair = pair_of(table, items, low, other)) {
                use(other, *pair);
            }
        }
    }
}

} // namespace

std::string to_text(const Fraction& fraction) {
    std::int64_t rest = fraction.bottom;
    int twos = 0;
    int fives = 0;
    for (; rest % 2 == 0; rest /= 2) {
        ++twos;
    }
    for (; rest % 5 == 0; rest /= 5) {
        ++fives;
    }
    const int decimals = std::max(twos, fives);
    if (rest == 1 && decimals <= 9) {
        const std::int64_t ten_to =
            std::stoll("1" + std::string(static_cast<std::size_t>(decimals), '0'));
        const std::int64_t factor = ten_to / fraction.bottom;
        if (std::abs(fraction.top) < 9'000'000'000'000'000'000 / factor) {
            return to_text(Decimal(fraction.top * factor, decimals));
        }
    }
    return std::to_string(fraction.top) + "/" + std::to_string(fraction.bottom);
}

Amounts totals_at(const PriceTable& table, std::span<const Decimal> quantities) {
    if (quantities.size() != table.items()) {
        throw InputError({"bid.quantities", "quantities", std::to_string(quantities.size()),
                          std::to_string(table.items()) + ", one an item"});
    }
    Amounts totals(table.bidders.size());
    for (std::size_t bid = 0; bid < totals.size(); ++bid) {
        std::optional<Decimal> total = Decimal();
        for (std::size_t i = 0; i < quantities.size() && total; ++i) {
            if (table.form.items[i].kind == ItemKind::base) {
                const auto& price = table.of(bid)[i];
                total = price ? std::optional(*total + *price * quantities[i]) : std::nullopt;
            }
        }
        totals[bid] = total;
    }
    return totals;
}

std::optional<std::size_t> low_bid(const PriceTable& table) {
    const Amounts totals = base_totals(table);
    std::optional<std::size_t> low;
    for (std::size_t bid = 0; bid < totals.size(); ++bid) {
        if (totals[bid] && (!low || *totals[bid] < *totals[*low])) {
            low = bid;
        }
    }
    return low;
}

std::vector<Crossover> crossovers(const PriceTable& table, std::size_t low) {
    const std::vector<Varied> items = varied_items(table.form);
    std::vector<Crossover> out;
    for_each_other(table, items, low, [&](std::size_t other, const Pair& pair) {
        for (std::size_t k = 0; k < items.size(); ++k) {
            const Decimal& difference = pair.differences[k];
            if (difference == Decimal()) {
                continue;
            }
            const Decimal change = -pair.gap; // difference x (tie - quantity)
            const Fraction tie = quotient(items[k].quantity * difference + change, difference);
            if (tie.top < 0) {
                continue;
            }
            const bool upward = difference < Decimal();
            const Decimal& end = upward ? items[k].high : items[k].low;
            const bool reached = pair.gap + difference * (end - items[k].quantity) <= Decimal();
            out.push_back({other, items[k].place, tie, upward, reached});
        }
    });
    return out;
}

std::vector<JointChange> joint_changes(const PriceTable& table, std::size_t low) {
    const std::vector<Varied> items = varied_items(table.form);
    std::vector<JointChange> out;
    for_each_other(table, items, low, [&](std::size_t other, const Pair& pair) {
        JointChange joint{other, pair.gap, pair.gap, {}, std::nullopt};
        for (const PayItem& item : table.form.items) {
            joint.worst.push_back(item.quantity);
        }
        for (std::size_t k = 0; k < items.size(); ++k) {
            const Varied& item = items[k];
            const Decimal& end = pair.differences[k] < Decimal() ? item.high : item.low;
            joint.worst[item.place] = end;
            joint.least_gap = joint.least_gap + pair.differences[k] * (end - item.quantity);
        }
        if (joint.least_gap <= Decimal() && joint.least_gap < joint.gap) {
            joint.share = to_double(joint.gap) / to_double(joint.gap - joint.least_gap);
        }
        out.push_back(std::move(joint));
    });
    return out;
}

} // namespace scupper::bid
