#pragma once
// Terms of a contract that move money in time or change it afterwards; none of them is in the price.

#include "scupper/job/calendar.hpp"
#include "scupper/quantity.hpp"

#include <optional>

namespace scupper {

/// Terms of a contract beside the price.
struct Terms {
    std::optional<Date> rates_of;          ///< the day whose prices the rates are
    std::optional<Date> midpoint;          ///< the day halfway through the work
    Time<> payment_interval;               ///< [s] between two payments
    double retainage = 0.0;                ///< [-] share kept back of every payment
    double retainage_limit = 1.0;          ///< [-] most that is kept back, over the contract
    Time<> retainage_release;              ///< [s] from the last day of work to the release
    double interest = 0.0;                 ///< [-] of the money held, a year
    std::optional<double> variation_limit; ///< [-] change of a quantity that changes no price
    double price_over = 1.0;               ///< [-] price above the limit, over the contract's
    double price_under = 1.0;              ///< [-] price below the limit, over the contract's

    Terms();
};

} // namespace scupper
