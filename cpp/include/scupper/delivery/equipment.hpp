#pragma once
// Equipment that would have to be bought: yearly cost, when to replace it, worth of flows of money.

#include "scupper/quantity.hpp"

#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace scupper::delivery {

/// Equipment as a buyer looks at it.
struct Purchase {
    double price = 0.0;     ///< [currency] bought for
    double loses = 0.0;     ///< [-] of its value at a year's beginning, every year
    double operating = 0.0; ///< [currency] operating and repair in the first year
    double growth = 0.0;    ///< [currency] by which that grows every year
    double interest = 0.0;  ///< [-] a year, real where costs are of today; may be below 0
};

/// What equipment is sold for.
///
/// Formula: P (1 - d)^n
/// @param purchase [-] price and what it loses a year
/// @param years [-] n, age, >= 0
/// @return [currency] salvage
/// Range: any.
/// Errors: InputError `delivery.price`, `delivery.loses`, `delivery.operating`, `delivery.years`
/// Source: declining value, common practice
/// Verified by: tests/cpp/delivery/test_equipment.cpp
double salvage(const Purchase& purchase, double years);

/// The even yearly cost of buying equipment, running it and selling it.
///
/// Formula: P (A/P) - S (A/F) + c + g (A/G)
/// @param purchase [-] price, loss of value, operating cost and its growth, interest
/// @param years [-] whole number of years it is kept, 1 to 10,000
/// @return [currency] equivalent annual cost
/// Range: any.
/// Errors: those of `salvage` and of the interest factors.
/// Source: engineering economy; interest factor tables
/// Verified by: tests/cpp/delivery/test_equipment.cpp
double annual_cost(const Purchase& purchase, double years);

/// When to replace equipment.
struct EconomicLife {
    double years = 0.0;           ///< [-] at which the yearly cost is least
    double cost = 0.0;            ///< [currency] equivalent annual cost then
    std::vector<double> by_age{}; ///< [currency, n] equivalent annual cost kept 1, 2, ... n years
    bool at_end = false; ///< [-] whether the least is the last age looked at: it may lie beyond
};

/// The age at which replacing equipment by its like costs least a year.
///
/// Formula: least over n of P (A/P) - S (A/F) + c + g (A/G)
/// @param purchase [-] as of `annual_cost`
/// @param most [-] whole number of years looked at, 1 to 100
/// @return [-] the age; the younger one of two that cost the same
/// Range: equipment that is replaced by its like for ever.
/// Errors: those of `annual_cost`; InputError `delivery.most`.
/// Source: engineering economy, economic service life
/// Verified by: tests/cpp/delivery/test_equipment.cpp
EconomicLife economic_life(const Purchase& purchase, int most);

/// Which prices a flow of money is stated in, and what a rate is over.
enum class Prices {
    constant, ///< of today: discounted at real rates
    current   ///< of each year: discounted at nominal rates
};

inline constexpr std::array<std::string_view, 2> price_names{"constant",
                                                             "current"}; ///< [text] by Prices

/// What flows of money are worth now.
///
/// Formula: sum over k of A_k (1 + i)^-k; where prices and rate are of two kinds, the rate is
/// carried over by inflation f: 1 + nominal = (1 + real) (1 + f)
/// @param flows [currency, n] at the end of years 0, 1, 2, ...
/// @param prices [-] what the flows are stated in
/// @param rate [-] a year; may be below 0
/// @param rate_of [-] constant for a real rate, current for a nominal one
/// @param inflation [-] a year, where the two are of two kinds
/// @return [currency] net present value
/// Range: n >= 1.
/// Errors: InputError `delivery.rate_of` where prices and rate are of two kinds and no inflation is
/// given; `delivery.flows` where there is none or no number; those of the interest factors.
/// Source: OMB Circular A-94: real rates on constant prices, nominal rates on current ones
/// Verified by: tests/cpp/delivery/test_equipment.cpp
double net_present_value(std::span<const double> flows, Prices prices, double rate, Prices rate_of,
                         std::optional<double> inflation);

/// Time that crews or equipment have in a season.
///
/// Formula: n d s t (1 - leave) (1 - lost)
/// @param number [each] n, crews or pieces, >= 0
/// @param days [each] d, days of work, >= 0
/// @param shifts [-] s, a day, >= 0
/// @param shift [s] t, length of a shift, >= 0
/// @param leave [-] share of leave and training; of equipment in repair, 0 to 1
/// @param lost [-] share of days that weather takes, 0 to 1
/// @return [s] time of all of them
/// Range: any.
/// Errors: InputError `delivery.number`, `.days`, `.shifts`, `.shift`, `.leave`, `.lost`
/// Source: definition
/// Verified by: tests/cpp/delivery/test_equipment.cpp
Time<> available_time(double number, double days, double shifts, const Time<>& shift, double leave,
                      double lost);

} // namespace scupper::delivery
