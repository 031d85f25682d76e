#pragma once
// How far one input moves the total of a list, and which of two moves it more.

#include "scupper/estimate/fixed_total.hpp"

#include <cmath>
#include <cstddef>
#include <limits>

namespace scupper::estimate {

/// What an input at its low and at its high changes in the total of the structures it moves.
struct MovedTotal {
    std::size_t structures = 0; ///< [-] at how many it moves the total
    FixedTotal at_low, at_high; ///< [currency] changes of the total
    bool is_known = true;       ///< [-] false where a structure then has no price

    /// Counts a structure.
    ///
    /// @param low [currency] change of its price with the input at its low
    /// @param high [currency] change with it at its high
    /// Range: NaN where it then has no price.
    /// Errors: none.
    /// Source: own convention
    /// Verified by: tests/cpp/simulate/test_swings.cpp
    void add(double low, double high) {
        ++structures;
        if (std::isfinite(low) && std::isfinite(high)) {
            at_low.add(low);
            at_high.add(high);
        } else {
            is_known = false;
        }
    }
    /// Counts the structures of another part of the list.
    ///
    /// @param part [-] of the same input
    /// Range: any part.
    /// Errors: none.
    /// Source: own convention
    /// Verified by: tests/cpp/simulate/test_swings.cpp
    void add(const MovedTotal& part) {
        structures += part.structures;
        at_low.add(part.at_low);
        at_high.add(part.at_high);
        is_known = is_known && part.is_known;
    }
    /// The total with the input at its low.
    ///
    /// @param total [currency] as estimated
    /// @return [currency] NaN where a structure then has no price
    /// Range: any total.
    /// Errors: none.
    /// Source: definition
    double low(double total) const { return known(total + at_low.value()); }
    /// The total with the input at its high.
    ///
    /// @param total [currency] as estimated
    /// @return [currency] NaN where a structure then has no price
    /// Range: any total.
    /// Errors: none.
    /// Source: definition
    double high(double total) const { return known(total + at_high.value()); }

  private:
    double known(double value) const {
        return is_known ? value : std::numeric_limits<double>::quiet_NaN();
    }
};

/// The order of what moves a total: the widest first, before it what has no number, since it may
/// move anything.
///
/// @param a [currency] width, or NaN
/// @param b [currency] width, or NaN
/// @return [-] whether a stands before b
/// Range: any numbers.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/simulate/test_swings.cpp
inline bool moves_more(double a, double b) {
    if (std::isnan(a) || std::isnan(b)) {
        return std::isnan(a) && !std::isnan(b);
    }
    return a > b;
}

} // namespace scupper::estimate
