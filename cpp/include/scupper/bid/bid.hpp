#pragma once
// Bids as they were read: plain data, with the place each figure stood at. Nothing is corrected.

#include "scupper/bid/pay_item.hpp"
#include "scupper/money.hpp"

#include <optional>
#include <string>
#include <vector>

namespace scupper::bid {

/// Where something stands in a file that was read.
struct Place {
    std::string file{};  ///< [text] name of the file; empty for what a program made
    std::string sheet{}; ///< [text] name of the sheet; empty for text files
    int line = 0;        ///< [-] row or line from 1; 0 where it has none
};

/// What a bidder wrote beside one item. What was left blank, or could not be read, has no value.
struct BidLine {
    std::string code;                        ///< [text] of the item, as on the form
    std::optional<Decimal> quantity{};       ///< [unit] as it stands on this bidder's form
    std::optional<Decimal> unit_price{};     ///< [currency per unit] in figures
    std::optional<Decimal> extension{};      ///< [currency] quantity times unit price, as written
    std::string words{};                     ///< [text] the unit price in words; empty without them
    std::optional<Decimal> price_in_words{}; ///< [currency per unit] what the words say
    Place place{};                           ///< [-] where it stands
};

/// A bid as read. Lines stand in the order of the file; an item may be missing or stand twice.
struct Bid {
    std::string bidder;               ///< [text] who bids
    std::vector<BidLine> lines;       ///< [-, n] by item
    std::optional<Decimal> total{};   ///< [currency] total as written; none where the form has none
    std::optional<Decimal> days{};    ///< [day] time bid, for cost plus time
    std::vector<std::string> notes{}; ///< [text, n] whatever else the bidder wrote
};

/// The items that everybody bids on, in the order of the form.
struct ItemList {
    Currency currency;          ///< [text] of every price
    std::vector<PayItem> items; ///< [-, n] no two codes alike
};

/// Bids for one contract.
struct BidSet {
    ItemList form;                    ///< [-] what is bid on
    std::vector<Bid> bids;            ///< [-, n] one a bidder
    std::optional<Bid> engineer = {}; ///< [-] the engineer's estimate in the same form
};

} // namespace scupper::bid
