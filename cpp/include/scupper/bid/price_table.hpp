#pragma once
// The prices of all bids, item by item: what is compared.

#include "scupper/bid/checking.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace scupper::bid {

/// One value an item or one a bid; none where it is not known.
using Amounts = std::vector<std::optional<Decimal>>;

/// Prices of bids on one form. What a bid does not price is not there.
struct PriceTable {
    ItemList form;                    ///< [-] items and their quantities
    std::vector<std::string> bidders; ///< [text, bids]
    Amounts prices;                   ///< [currency per unit, bids x items] bid by bid
    Amounts estimate;                 ///< [currency per unit, items] the engineer's; may be empty

    /// The number of items [-].
    std::size_t items() const { return form.items.size(); }
    /// The prices of one bid.
    ///
    /// @param bid [-] index, below the number of bidders
    /// @return [currency per unit, items]
    /// Range: bids of the table.
    /// Errors: none.
    /// Source: definition
    std::span<const std::optional<Decimal>> of(std::size_t bid) const {
        return {prices.data() + bid * items(), items()};
    }
};

/// The table of bids that were checked.
///
/// @param form [-] items of the contract
/// @param bids [-, n] checked on that form
/// @param estimate [-] the engineer's, checked on that form; null where there is none
/// @return [-] their governing prices
/// Range: any number of bids.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/bid/test_comparison.cpp
PriceTable price_table(const ItemList& form, std::span<const CheckedBid> bids,
                       const CheckedBid* estimate);

/// What the base items of some prices come to.
///
/// Formula: sum of round(price x quantity), halves away from zero
/// @param form [-] items of the contract
/// @param prices [currency per unit, items]
/// @return [currency] nothing where a base item has no price
/// Range: any number of items.
/// Errors: MoneyError `money.overflow`
/// Source: common practice in bid tabulation
/// Verified by: tests/cpp/bid/test_comparison.cpp
std::optional<Decimal> base_total(const ItemList& form,
                                  std::span<const std::optional<Decimal>> prices);

/// What the base items come to, bid by bid.
///
/// Formula: as `base_total`
/// @param table [-] prices of bids
/// @return [currency, bids]
/// Range: any number of bids.
/// Errors: MoneyError `money.overflow`
/// Source: as `base_total`
/// Verified by: tests/cpp/bid/test_comparison.cpp
Amounts base_totals(const PriceTable& table);

} // namespace scupper::bid
