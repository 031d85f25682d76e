#pragma once
// From direct cost to price: what a contract adds, one on top of the other.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::cost {

/// Shares that a contract adds, each to the sum of all before it.
template <class T>
struct Margins {
    T overhead;     ///< [-] office, supervision, small tools; on the direct cost
    T profit;       ///< [-] on direct cost and overhead
    T bond;         ///< [-] on all before
    T mobilization; ///< [-] on all before
    T contingency;  ///< [-] on all before
};

/// The amounts; they add up to the price.
template <class T>
struct MarginAmounts {
    Amount<T> overhead;     ///< [currency]
    Amount<T> profit;       ///< [currency]
    Amount<T> bond;         ///< [currency]
    Amount<T> mobilization; ///< [currency]
    Amount<T> contingency;  ///< [currency]
    Amount<T> price;        ///< [currency] direct cost and all margins
};

/// What the margins on a direct cost come to.
///
/// Formula: each margin = its share x (direct cost + margins before it)
/// @param direct [currency] direct cost
/// @param margins [-] shares
/// @return [currency] every margin and the price
/// Range: any; shares are zero for work in-house at direct cost.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/cost/test_margins.cpp
template <class T>
MarginAmounts<T> add_margins(const Amount<T>& direct, const Margins<T>& margins);

} // namespace scupper::cost
