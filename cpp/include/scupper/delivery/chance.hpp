#pragma once
// How sure the choice is: both ways priced in the same draws.

#include "scupper/delivery/ways.hpp"
#include "scupper/random.hpp"
#include "scupper/simulate.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace scupper::delivery {

/// An input of the choice that is not certain.
struct DrawnInput {
    Input input{};      ///< [-] which
    ThreePoint guess{}; ///< [SI unit of the input] low, likely, high
};

/// Totals of a list in every draw, both ways; draw i of one goes with draw i of the others.
struct PairedTotals {
    std::span<const double> direct;    ///< [currency, draws] in-house job
    std::span<const double> crew_time; ///< [any unit, draws] labour of the in-house job
    std::span<const double> price;     ///< [currency, draws] contract job
    double direct_estimated = 0.0;     ///< [currency] as estimated
    double crew_time_estimated = 0.0;  ///< [unit of crew_time] as estimated
    double price_estimated = 0.0;      ///< [currency] as estimated
    std::size_t replicates = 1;        ///< [-] independent samples that the draws are made of
    std::uint64_t seed = 1;            ///< [-] of the inputs of the choice
};

/// The case with its costs, crew time and price times factors.
///
/// @param given [SI unit of each input] the case
/// @param direct [-] times the direct cost in-house
/// @param crew_time [-] times the crew time
/// @param price [-] times the contract price
/// @return [SI unit of each input] the changed case
/// Range: factors >= 0; wages keep their share of the direct cost.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/delivery/test_break_even.cpp
Case<double> scaled(const Case<double>& given, double direct, double crew_time, double price);

/// The advantage of own people where the totals of a list are other than estimated.
///
/// Formula: advantage of the case times direct / estimate and price / estimate, crew time held
/// @param given [SI unit of each input] the case
/// @param basis [-] avoidable or full cost
/// @param direct [currency] total of the in-house job
/// @param direct_estimated [currency] the same as estimated, > 0
/// @param price [currency] total of the contract job
/// @param price_estimated [currency] the same as estimated, > 0
/// @return [currency] advantage; NaN where a total is
/// Range: any totals >= 0.
/// Errors: those of `check`; InputError `delivery.estimated` where an estimate is not above 0.
/// Source: definition
/// Verified by: tests/cpp/delivery/test_break_even.cpp
double advantage_at(const Case<double>& given, Basis basis, double direct, double direct_estimated,
                    double price, double price_estimated);

/// The advantage of own people in every draw.
///
/// Formula: the case with its costs, crew time and price times what the draw has of the estimate,
/// and uncertain inputs of the choice drawn
/// @param given [SI unit of each input] the case
/// @param basis [-] avoidable or full cost
/// @param totals [-] of the list, both ways in the same draws
/// @param inputs [-, n] inputs that are drawn
/// @return [currency, draws] the advantage
/// Range: wages keep their share of the direct cost.
/// Errors: those of `check`; InputError `delivery.draws` where lists differ, are empty, or no whole
/// multiple of the replicates; `delivery.estimated` where an estimate is not above 0.
/// Source: common random numbers, common practice of simulation
/// Verified by: tests/cpp/delivery/test_break_even.cpp
std::vector<double> drawn_advantages(const Case<double>& given, Basis basis,
                                     const PairedTotals& totals,
                                     const std::vector<DrawnInput>& inputs);

/// What draws say of a choice.
struct Chance {
    simulate::Estimated cheaper{};         ///< [-] chance that own people are cheaper
    simulate::Estimated advantage{};       ///< [currency] expected advantage of own people
    simulate::Estimated regret_in_house{}; ///< [currency] expected loss of choosing own people
    simulate::Estimated regret_contract{}; ///< [currency] expected loss of choosing a contract
    simulate::Estimated information{};     ///< [currency] worth of knowing before choosing: the
                                           ///< lesser of both regrets
    std::array<double, 3> quantiles{};     ///< [currency] P5, P50, P95 of the advantage
};

/// Chance, regret and worth of knowing.
///
/// Formula: regret of own people = mean of max(0, -a), of a contract = mean of max(0, a); what is
/// worth knowing = the lesser; standard error = sd over replicates / sqrt(r)
/// @param advantages [currency, draws] of own people
/// @param replicates [-] r, independent samples that the draws are made of; one: NaN errors
/// @return [-] each with its standard error
/// Range: at least one draw.
/// Errors: InputError `delivery.draws` where there is none, or no whole multiple of replicates.
/// Source: expected value of perfect information, decision analysis
/// Verified by: tests/cpp/delivery/test_break_even.cpp
Chance chance_of(std::span<const double> advantages, std::size_t replicates);

} // namespace scupper::delivery
