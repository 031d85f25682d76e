#pragma once
// Pay items from estimates: quantities with their range, unit prices built up from cost lines.

#include "scupper/bid/bid.hpp"
#include "scupper/bid/item_list.hpp"
#include "scupper/estimate.hpp"

#include <array>
#include <cstddef>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::bid {

/// How a contract pays.
enum class Contract {
    by_quantity,  ///< unit prices times measured quantities
    by_structure, ///< one lump price for each named structure
};

inline constexpr std::array<std::string_view, 2> contract_names{
    "by_quantity", "by_structure"}; ///< [text] by Contract

/// How items are made.
struct ItemSettings {
    Contract contract = Contract::by_quantity;  ///< [-] how it pays
    Options options{};                          ///< [text] by choice of the list
    int price_decimals = 2;                     ///< [-] of a unit price
    estimate::DrawSettings draws{.draws = 256}; ///< [-] what low and high come from
    unsigned threads = 0;                       ///< [-] 0 for as many as the machine has
};

/// A pay item with its price and what makes it.
struct PricedItem {
    PayItem item;         ///< [-] code, unit, quantity as stated with low and high
    std::string driver{}; ///< [text] figure it is counted by; empty: a lump sum
    double counted = 0.0; ///< [unit] quantity before it is rounded
    double direct = 0.0;  ///< [currency] of the cost lines it pays
    double spread = 0.0;  ///< [currency] its part of what is spread
    Decimal amount{};     ///< [currency] both, to the cent; items add up to the estimate
    Decimal unit_price{}; ///< [currency per unit] rounded
    Decimal extension{};  ///< [currency] unit price times quantity, to the cent
    Decimal difference{}; ///< [currency] extension less amount: what rounding the price does
    std::vector<estimate::PricedLine> lines; ///< [currency, n] the cost lines, all structures
    std::vector<double> quantities;          ///< [unit, n] by priced structure; empty: lump sum
};

/// The items of a contract. Every cost line of the estimates is in exactly one item or spread.
struct PayItems {
    Currency currency;                            ///< [text] of every amount
    std::shared_ptr<const estimate::Plan> plan{}; ///< [-] the job they were priced under
    std::vector<PricedItem> items{};              ///< [-, n] in the order of the list
    std::vector<estimate::PricedLine> spread{};   ///< [currency, n] the lines that were spread
    std::vector<std::string> unused{};            ///< [text, n] codes of the list with no work
    Decimal estimated{};    ///< [currency] price of the estimates, to the cent
    Decimal total{};        ///< [currency] sum of the extensions
    Decimal residue{};      ///< [currency] total less estimated
    std::string rounding{}; ///< [text] item that took what rounding leaves
};

/// The pay items of a programme.
///
/// A line of the cost belongs to the item whose cover names it most closely; what is spread goes
/// to the items in proportion to their own lines. Amounts are rounded once, by largest remainder,
/// so that they add up to the estimate; a unit price is the amount over the quantity as stated,
/// rounded; what that leaves goes into the list's `rounding` item where that is a lump sum and
/// stays positive, and is shown as `residue` otherwise. Low and high of a quantity are the
/// 5 % and 95 % quantiles of draws of all structures at once.
/// Formula: price = round(amount / quantity); extension = round(price x quantity)
/// @param programme [-] the structures priced
/// @param structures [-, n] the records it was priced from, in the same order
/// @param scheme [-] the item list, checked
/// @param settings [-] kind of contract, options, decimals, draws
/// @return [currency] the items
/// Range: at least one priced structure.
/// Errors: InputError `bid.left_over` naming the cost lines that no item takes, `bid.twice` naming
/// lines that two items take, `bid.no_quantity` where an item has cost and no quantity,
/// `bid.no_item`, `bid.dimension` where a driver is not counted in the item's unit, `bid.decimals`;
/// UnknownNameError `bid.option`, `schema.key` of a driver; Interrupted.
/// Source: common practice: indirect cost in proportion to direct cost
/// Verified by: tests/cpp/bid/test_pay_items.cpp
PayItems pay_items(const estimate::Programme& programme, std::span<const Structure> structures,
                   const ItemScheme& scheme, const ItemSettings& settings = {});

/// The items as a form to bid on.
///
/// @param items [-] priced items
/// @return [-] the same items without their prices
/// Range: any.
/// Errors: none.
/// Source: definition
ItemList form_of(const PayItems& items);

/// The items as a bid of the engineer's: quantities, unit prices, extensions, total.
///
/// @param items [-] priced items
/// @return [-] the bid, with no place in a file
/// Range: any.
/// Errors: none.
/// Source: definition
Bid engineer_of(const PayItems& items);

} // namespace scupper::bid
