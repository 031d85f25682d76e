#pragma once
// What a day that a bidder asks for costs those who drive past: from the closures of estimates.

#include "scupper/estimate/road_users.hpp"
#include "scupper/money.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace scupper::bid {

/// Road-user cost of a day on which a road is closed, and what it rests on.
struct DailyCost {
    Decimal amount;                    ///< [currency per day] to the minor unit
    std::size_t structures = 0;        ///< [-] with a closure
    Count<> closures;                  ///< [each] of all of them
    double days = 0.0;                 ///< [day] of work that they are spread over
    Time<> closed;                     ///< [s] that a closure stands, on average
    Amount<> total;                    ///< [currency] of all closures
    std::size_t earliest = 0;          ///< [-] hour at which the earliest closure begins
    std::size_t latest = 0;            ///< [-] hour at which the latest closure begins
    std::vector<std::string> sources;  ///< [text] values of time and of a detour, and whose
    std::vector<std::string> cautions; ///< [text] what the figures rest on
};

/// The road-user cost of a day of closures.
///
/// At one structure a closure stands once a day. A crew that goes from structure to structure may
/// close two in a day: then the days are those of its work.
/// Formula: amount = round(sum of total / days)
/// @param users [-, n] the traffic past the closures of each structure
/// @param currency [text] of the amount
/// @param days [day] of work under all closures; nothing for one a closure
/// @return [currency per day] with what it rests on
/// Range: structures without a closure count nothing.
/// Errors: InputError `bid.daily_cost` where there is no closure, or where a total cannot be
/// figured, naming what is missing, or where the days are not above 0; MoneyError `money.overflow`
/// Source: road-user cost of the estimates; definition of a mean
/// Verified by: tests/cpp/bid/test_award.cpp
DailyCost daily_cost(std::span<const estimate::RoadUsers> users, const Currency& currency,
                     std::optional<double> days = std::nullopt);

} // namespace scupper::bid
