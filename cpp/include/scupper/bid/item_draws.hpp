#pragma once
// Quantities of pay items in the draws of a simulation: what a chance about bids comes from.

#include "scupper/bid/pay_items.hpp"
#include "scupper/bid/reversal.hpp"
#include "scupper/simulate/simulation.hpp"

#include <span>

namespace scupper::bid {

/// The quantity of every item in every draw of a simulation.
///
/// The draws are those of the simulation: where a deck turns out dirtier, the tons that are hauled
/// and the hours of the price rise in one draw. A lump sum is 1 in all of them.
/// Formula: sum of the item's figure over the structures, in the item's unit
/// @param items [-] priced items
/// @param structures [-, n] the records that the items and the simulation were made of
/// @param simulation [-] under the job of the items
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told structures done and all; may be empty
/// @return [unit, draws x items] before they are rounded as a form states them
/// Range: as `simulate::figure_draws`. A structure that the simulation left out is not counted.
/// Errors: InputError `bid.simulation` where the totals of the draws are not those of the
/// simulation, that is, of other structures or another job; those of `simulate::figure_draws`
/// Source: definition
/// Verified by: tests/cpp/bid/test_reversal.cpp
QuantityDraws item_draws(const PayItems& items, std::span<const Structure> structures,
                         const simulate::Simulation& simulation, unsigned threads = 0,
                         const estimate::RunProgress& progress = {});

} // namespace scupper::bid
