#pragma once
// Where the choice turns: break-even values, and how far each input moves the choice.

#include "scupper/delivery/ways.hpp"

#include <functional>
#include <optional>
#include <vector>

namespace scupper::delivery {

/// The amount of work at which two ways cost the same, each a fixed cost and a cost by the unit.
///
/// Formula: (F - G) / (d - c)
/// @param fixed [currency] F, of the first way, whatever the work
/// @param unit [currency] c, of the first way for a unit of work
/// @param other_fixed [currency] G, of the second way
/// @param other_unit [currency] d, of the second way
/// @return [units of work] the amount; empty where the two never cost the same at 0 or above
/// Range: any finite numbers.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/delivery/test_break_even.cpp
std::optional<double> linear_break_even(double fixed, double unit, double other_fixed,
                                        double other_unit);

/// Every place between two limits where a function changes its sign.
///
/// Formula: regula falsi and halving in turn in every one of n equal parts whose ends differ in sign
/// @param f [any unit] the function; a part where it is no number is passed over
/// @param low [any unit] lower limit
/// @param high [any unit] upper limit
/// @param parts [-] n, in how many parts to look, >= 1
/// @param tolerance [-] how narrow a bracket becomes, over the whole width
/// @return [unit of the limits] ascending; two changes within one part go unseen
/// Range: low <= high, both finite.
/// Errors: InputError `delivery.limits`, `delivery.parts` where out of range.
/// Source: definition
/// Verified by: tests/cpp/delivery/test_break_even.cpp
std::vector<double> crossings(const std::function<double(double)>& f, double low, double high,
                              std::size_t parts, double tolerance = 1e-14);

/// Where one input turns the choice, the others held.
struct Flip {
    double away = 0.0;            ///< [-] how far `nearest` is, over the value; infinite from 0
    double nearest = 0.0;         ///< [SI unit of the input] nearest to its value; NaN: nowhere
    std::vector<double> all{};    ///< [SI unit of the input, n] ascending
    double low = 0.0, high = 0.0; ///< [SI unit of the input] between which it was looked for
};

/// The values of one input at which both ways cost the same, all others held.
///
/// @param given [SI unit of each input] the case
/// @param input [-] the input
/// @param basis [-] avoidable or full cost
/// @return [SI unit of the input] every crossing from its least value to ten times its value, or
/// ten times what the work costs or takes where it is 0; of shares up to their bound
/// Range: cases that `check` passes. With a contract's `years` the interest is held.
/// Errors: those of `check`.
/// Source: definition
/// Verified by: tests/cpp/delivery/test_break_even.cpp
Flip flip_of(const Case<double>& given, Input input, Basis basis);

/// How far the yard lies from the work, by the time that crews travel.
///
/// Formula: v t / 2
/// @param travel [s] t, there and back
/// @param speed [m/s] v, > 0
/// @return [m] one way
/// Range: any.
/// Errors: InputError `delivery.travel`, `delivery.speed` where out of range.
/// Source: definition
/// Verified by: tests/cpp/delivery/test_break_even.cpp
Length<> one_way_distance(const Time<>& travel, const Speed<>& speed);

/// How far one input moves the choice.
struct Sensitivity {
    Input input{};                ///< [-] which
    double value = 0.0;           ///< [SI unit of the input] as given
    double low = 0.0, high = 0.0; ///< [SI unit of the input] between which it is moved
    bool ranged = false;          ///< [-] whether somebody gave these limits; else 20 % either way
    double at_low = 0.0;          ///< [currency] advantage of own people with it at its low
    double at_high = 0.0;         ///< [currency] advantage of own people with it at its high
    bool turns = false;           ///< [-] whether the choice turns between low and high
    Flip flip{};                  ///< [SI unit of the input] where it turns
};

/// Limits of an input that somebody gave.
struct GivenRange {
    Input input{};                ///< [-] which
    double low = 0.0, high = 0.0; ///< [SI unit of the input]
};

/// Every input by how far it moves the choice, the farthest first.
///
/// Formula: advantage with one input at its low and at its high, the others held; where nobody gave
/// limits 20 % below and above the value, within its bounds
/// @param given [SI unit of each input] the case
/// @param basis [-] avoidable or full cost
/// @param ranges [-, n] limits that somebody gave
/// @return [-] every input that moves the advantage or turns the choice somewhere
/// Range: cases that `check` passes.
/// Errors: those of `check`; InputError `delivery.range` where the value is not within its limits.
/// Source: common practice
/// Verified by: tests/cpp/delivery/test_break_even.cpp
std::vector<Sensitivity> sensitivity(const Case<double>& given, Basis basis,
                                     const std::vector<GivenRange>& ranges);

} // namespace scupper::delivery
