#pragma once
// Bids beside each other: rank, spread, and item by item.

#include "scupper/bid/price_table.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace scupper::bid {

/// How far totals lie apart. What needs two of them is not there with one.
struct Spread {
    std::size_t number = 0;             ///< [-] totals that are known
    std::optional<Decimal> low;         ///< [currency] the least
    std::optional<Decimal> second;      ///< [currency] the next, equal where two are low
    std::optional<Decimal> high;        ///< [currency] the greatest
    std::optional<Decimal> left;        ///< [currency] left on the table: second less low
    std::optional<double> left_share;   ///< [-] the same over low
    std::optional<double> high_ratio;   ///< [-] high over low
    std::optional<double> second_ratio; ///< [-] second over low
    std::optional<double> mean;         ///< [currency] average
    std::optional<double> sd;           ///< [currency] sample standard deviation
};

/// How far the prices of one item lie apart.
struct ItemSpread {
    std::size_t number = 0;           ///< [-] bids that price it
    std::optional<Decimal> low;       ///< [currency per unit] the least
    std::optional<Decimal> median;    ///< [currency per unit] exact
    std::optional<Decimal> high;      ///< [currency per unit] the greatest
    std::optional<Decimal> deviation; ///< [currency per unit] median absolute deviation, exact
};

/// A price far from the others of its item.
struct Outlier {
    std::size_t bid;  ///< [-] index
    std::size_t item; ///< [-] index
    double score;     ///< [-] modified z-score, negative below the median
};

/// When a price counts as an outlier.
struct OutlierRule {
    double score = 3.5;     ///< [-] modified z-scores beyond it
    std::size_t fewest = 5; ///< [-] bids that must price the item
};

/// Bids beside each other.
struct Comparison {
    Amounts totals;                  ///< [currency, bids] base items
    std::vector<std::size_t> ranks;  ///< [-, bids] as `ranks`
    std::optional<Decimal> estimate; ///< [currency] the engineer's total
    Spread spread;                   ///< [-] of the totals
    std::vector<ItemSpread> items;   ///< [-, items]
    std::vector<Outlier> outliers;   ///< [-, n] by item, then bid
};

/// The rank of every total, 1 for the least.
///
/// Formula: 1 + number of totals that are less; equal ones share a rank
/// @param totals [currency, n]
/// @return [-, n] 0 where there is no total
/// Range: any number.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/bid/test_comparison.cpp
std::vector<std::size_t> ranks(std::span<const std::optional<Decimal>> totals);

/// How far totals lie apart.
///
/// Formula: left on the table = second - low; sd = sqrt(sum (x - mean)^2 / (n - 1))
/// @param totals [currency, n]
/// @return [-] shares only where the low total is above zero
/// Range: any number.
/// Errors: none.
/// Source: common practice; rows bids-034 and bids-037 of tests/reference/bid/bids.csv
/// Verified by: tests/cpp/bid/test_comparison.cpp
Spread spread_of(std::span<const std::optional<Decimal>> totals);

/// How many times another amount an amount is.
///
/// Formula: a / b
/// @param amount [currency] a
/// @param base [currency] b
/// @return [-] nothing where one is not known or the base is not above zero
/// Range: any amounts.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/bid/test_comparison.cpp
std::optional<double> ratio(const std::optional<Decimal>& amount,
                            const std::optional<Decimal>& base);

/// Everything about bids that needs no judgement.
///
/// Formula: modified z-score 0.6745 (x - median) / median absolute deviation; none where the
/// deviation is zero, that is, where more than half of the prices are one price
/// @param table [-] prices of bids
/// @param rule [-] when a price counts as an outlier
/// @return [-] ranks, spreads and outliers
/// Range: any number of bids and items.
/// Errors: InputError `bid.outlier` where a limit is not above zero; MoneyError `money.overflow`
/// Source: NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.17 (Iglewicz, Hoaglin 1993; from
/// memory)
/// Verified by: tests/cpp/bid/test_comparison.cpp
Comparison compare(const PriceTable& table, const OutlierRule& rule = {});

} // namespace scupper::bid
