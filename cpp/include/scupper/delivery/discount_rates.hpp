#pragma once
// Published discount rates by length of the project.

#include "scupper/delivery/equipment.hpp"

#include <array>
#include <string_view>

namespace scupper::delivery {

/// A published rate.
struct DiscountRate {
    int edition;   ///< [-] calendar year it is for
    Prices prices; ///< [-] constant for a real rate, current for a nominal one
    double years;  ///< [-] length of the project
    double rate;   ///< [-] a year
};

/// An edition of the table.
struct RateEdition {
    int edition;             ///< [-] calendar year it is for
    std::string_view source; ///< [text] document
    std::string_view seen;   ///< [text] where it was read, which rows are missing
};

inline constexpr std::array<RateEdition, 2> rate_editions{{
    {2003, "OMB Circular A-94, appendix C, January 2003",
     "archived page of the office; nominal 7 years and real 30 years not read"},
    {2021, "OMB Circular A-94, appendix C, November 2020 for 2021",
     "a copy; to be held against the office's own page before it is cited"},
}};

inline constexpr std::array<DiscountRate, 20> discount_rate_table{{
    {2003, Prices::current, 3.0, 0.031},    {2003, Prices::current, 5.0, 0.036},
    {2003, Prices::current, 10.0, 0.042},   {2003, Prices::current, 30.0, 0.051},
    {2003, Prices::constant, 3.0, 0.016},   {2003, Prices::constant, 5.0, 0.019},
    {2003, Prices::constant, 7.0, 0.022},   {2003, Prices::constant, 10.0, 0.025},
    {2021, Prices::current, 3.0, 0.002},    {2021, Prices::current, 5.0, 0.003},
    {2021, Prices::current, 7.0, 0.006},    {2021, Prices::current, 10.0, 0.008},
    {2021, Prices::current, 20.0, 0.015},   {2021, Prices::current, 30.0, 0.017},
    {2021, Prices::constant, 3.0, -0.018},  {2021, Prices::constant, 5.0, -0.016},
    {2021, Prices::constant, 7.0, -0.014},  {2021, Prices::constant, 10.0, -0.011},
    {2021, Prices::constant, 20.0, -0.005}, {2021, Prices::constant, 30.0, -0.003},
}};

/// The published rate of a project by its length.
///
/// Formula: straight line between the two terms around it; under the shortest term its rate, beyond
/// 30 years the rate of 30
/// @param edition [-] calendar year of the table
/// @param prices [-] constant for a real rate, current for a nominal one
/// @param years [-] length of the project, > 0
/// @return [-] rate a year; real rates may be below 0
/// Range: beyond the longest term only where that is 30 years.
/// Errors: InputError `delivery.edition`, `delivery.years` where no rate was published.
/// Source: OMB Circular A-94, appendix C; rule between terms and beyond 30 years: the same
/// Verified by: tests/cpp/delivery/test_equipment.cpp
double discount_rate(int edition, Prices prices, double years);

} // namespace scupper::delivery
