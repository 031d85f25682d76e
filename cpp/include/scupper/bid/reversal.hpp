#pragma once
// How likely it is that the bid that is low on paper is not low at the end.

#include "scupper/bid/price_table.hpp"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace scupper::bid {

/// Quantities of a contract, draw by draw.
struct QuantityDraws {
    std::size_t items = 0;      ///< [-] of the form
    std::vector<double> values; ///< [unit, draws x items]

    /// The number of draws [-].
    std::size_t draws() const { return items == 0 ? 0 : values.size() / items; }
};

/// What draws of the quantities say about bids.
struct Reversal {
    std::size_t low = 0;            ///< [-] index of the bid that is low on the form's quantities
    std::size_t draws = 0;          ///< [-] number
    double chance = 0.0;            ///< [-] share of draws in which another bid is below it
    double error = 0.0;             ///< [-] standard error of the chance
    double regret = 0.0;            ///< [currency] mean of what the low bid costs over the least
    std::vector<double> lowest;     ///< [-, bids] share of draws in which a bid is the least
    std::vector<double> mean_total; ///< [currency, bids] NaN for a bid that lacks a price
};

/// Quantities drawn from the ranges of the form.
///
/// Formula: PERT from low, quantity, high at u = Phi(sqrt(s) z + sqrt(1 - s) z_item)
/// @param form [-] items with their ranges; equal low and high mean a certain quantity
/// @param draws [-] number, draws x items up to 100,000,000
/// @param seed [-] of the draws
/// @param shared [-] s, 0 to 1: share of the spread that all items have in common
/// @return [unit, draws x items]
/// Range: low <= quantity <= high.
/// Errors: InputError `bid.draws`, `bid.shared`; `random.order` where a range does not enclose the
/// quantity
/// Source: PERT as `ThreePoint`; one common factor: common practice
/// Verified by: tests/cpp/bid/test_reversal.cpp
QuantityDraws draw_quantities(const ItemList& form, std::size_t draws, std::uint64_t seed,
                              double shared = 0.0);

/// The chance that the as-bid low is not the low at the end.
///
/// Formula: chance p = draws with another total below the low bid's, over draws; error
/// sqrt(p (1 - p) / n); totals in double precision over base items
/// @param table [-] prices of bids
/// @param quantities [unit, draws x items] drawn here, or by a simulation of the work
/// @return [-] a tie leaves the low bid low
/// Range: at least one complete bid; independent draws for the error.
/// Errors: InputError `bid.price` without a complete bid, `bid.draws` where the draws do not fit or
/// are not finite
/// Source: definition; standard error of a binomial share
/// Verified by: tests/cpp/bid/test_reversal.cpp
Reversal reversal(const PriceTable& table, const QuantityDraws& quantities);

} // namespace scupper::bid
