#pragma once
// At which quantities the low bidder stops being low: exact, item by item and all together.

#include "scupper/bid/price_table.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace scupper::bid {

/// An exact quotient in lowest terms.
struct Fraction {
    std::int64_t top = 0;    ///< [-] above the line
    std::int64_t bottom = 1; ///< [-] below the line, > 0

    /// The nearest double [-].
    double value() const { return static_cast<double>(top) / static_cast<double>(bottom); }
};

/// A fraction as text: a decimal where it ends, else as "7/3".
///
/// @param fraction [-] in lowest terms
/// @return [text]
/// Range: any fraction.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/bid/test_crossover.cpp
std::string to_text(const Fraction& fraction);

/// The quantity of one item at which two bids come to the same, all others as on the form.
struct Crossover {
    std::size_t other; ///< [-] index of the bid that becomes low
    std::size_t item;  ///< [-] index
    Fraction quantity; ///< [unit] of the tie
    bool upward;       ///< [-] the other is low beyond it; else below it
    bool in_range;     ///< [-] whether the item's low to high reaches it
};

/// What all quantities together can do between two bids.
struct JointChange {
    std::size_t other; ///< [-] index of the other bid
    Decimal gap;       ///< [currency] other less low, at the form's quantities
    Decimal least_gap; ///< [currency] the same at the quantities that favour the other most
    std::vector<Decimal> worst;  ///< [unit, items] those quantities, within low to high
    std::optional<double> share; ///< [-] of the way there at which the two tie; none where never
};

/// What bids come to at other quantities, unrounded.
///
/// Formula: sum over base items of price x quantity
/// @param table [-] prices of bids
/// @param quantities [unit, items]
/// @return [currency, bids] nothing where a base item has no price
/// Range: any quantities.
/// Errors: InputError `bid.quantities` where there is not one an item; MoneyError `money.overflow`
/// Source: definition
/// Verified by: tests/cpp/bid/test_crossover.cpp
Amounts totals_at(const PriceTable& table, std::span<const Decimal> quantities);

/// The low bid at the form's quantities.
///
/// @param table [-] prices of bids
/// @return [-] index, the first where totals are equal; nothing without a complete bid
/// Range: any number of bids.
/// Errors: MoneyError `money.overflow`
/// Source: definition
/// Verified by: tests/cpp/bid/test_crossover.cpp
std::optional<std::size_t> low_bid(const PriceTable& table);

/// Every quantity of one item at which a bid stops being low against one other.
///
/// Formula: x = q + (other total - low total) / (low price - other price), totals unrounded
/// @param table [-] prices of bids
/// @param low [-] index of the bid that is low
/// @return [-, n] by other bid, then item; quantities below zero are left out
/// Range: base items with a low and a high that enclose the quantity, or both equal.
/// Errors: InputError `bid.range` where low and high do not enclose the quantity, `bid.price` where
/// the low bid lacks a price; MoneyError `money.overflow`
/// Source: definition of the tie
/// Verified by: tests/cpp/bid/test_crossover.cpp
std::vector<Crossover> crossovers(const PriceTable& table, std::size_t low);

/// What all quantities moving together within their ranges can do.
///
/// Formula: least gap = sum over base items of the lesser of (other price - low price) x low and x
/// high; share = gap / (gap - least gap), all quantities going the same share of their way
/// @param table [-] prices of bids
/// @param low [-] index of the bid that is low
/// @return [-, n] by other bid
/// Range: as `crossovers`.
/// Errors: as `crossovers`
/// Source: definition
/// Verified by: tests/cpp/bid/test_crossover.cpp
std::vector<JointChange> joint_changes(const PriceTable& table, std::size_t low);

} // namespace scupper::bid
