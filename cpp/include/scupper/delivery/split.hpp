#pragma once
// Which structures own people clean and which go out, so that the whole costs least: the model that
// a solver of mixed-integer programmes takes, and what its answer means.

#include "scupper/delivery/case.hpp"

#include <array>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::delivery {

/// A structure that is done one way or the other.
struct SplitItem {
    std::string name;      ///< [text] structure number
    std::string region;    ///< [text] county or district
    double in_house = 0.0; ///< [currency] avoidable cost with own people; NaN: cannot be done so
    double contract = 0.0; ///< [currency] cost by contract; NaN: cannot be done so
    std::vector<double> times{}; ///< [s, resources] of the crew and of equipment, with own people
    double personnel = 0.0;      ///< [currency] wages and their supervision with own people
    double size = 0.0;           ///< [any unit] what it adds to the size of a contract
};

/// Hours that there are of the crew, or of a kind of equipment.
struct SplitLimit {
    std::string name;   ///< [text] "crew", "bucket_truck"
    double there = 0.0; ///< [s] of all pieces together; infinite: no limit
};

/// What the least saving by law is counted over.
enum class SavingOver {
    nothing,  ///< no law asks for it
    contract, ///< the work of each contract by itself
    programme ///< all work that goes out
};

inline constexpr std::array<std::string_view, 3> saving_over_names{
    "nothing", "contract", "programme"}; ///< [text] by SavingOver

/// What going out has to save besides, before work leaves own people.
struct SavingRule {
    SavingOver over = SavingOver::nothing; ///< [-] each contract by itself, or all of them
    double share = 0.0;                    ///< [-] of personnel cost
    double most = 0.0;                     ///< [currency] over all years, at each of them
    double years = 1.0;                    ///< [years] that contracts last
};

/// What a split has to keep to.
struct SplitRules {
    std::vector<SplitLimit> limits{}; ///< [s] of the first of the items' times
    double kept = 0.0;                ///< [currency] of keeping the crew, where it has any work
    double per_contract = 0.0;        ///< [currency] of every contract that is let
    std::size_t contracts = 1;        ///< [-] most contracts, in each region where they stay in one
    double least = 0.0;               ///< [unit of the sizes] of a contract that is let
    double most = 0.0;                ///< [unit of the sizes] of a contract; infinite: no limit
    bool within_regions = false;      ///< [-] a contract has structures of one region only
    bool together = false;         ///< [-] the structures of a region go one way, in one contract
    bool nothing_in_house = false; ///< [-] all goes out
    SavingRule saving{};           ///< [-] what a contract has to save besides
};

/// What a structure of the list costs either way, and what it takes of the season.
///
/// Formula: in-house = direct; by contract = price (1 + administration + inspection); personnel =
/// wages (1 + supervision), 0 where there is no price with own people to hold a contract against
/// @param given [SI unit of each input] the case
/// @param name [text] structure number
/// @param region [text] county or district
/// @param direct [currency] in-house job; NaN where it has no price
/// @param wages [currency] of the direct cost; NaN where it has no price
/// @param price [currency] contract job; NaN where it has no price
/// @param times [s, resources] of the crew and of equipment
/// @param size [any unit] what it adds to the size of a contract
/// @return [-] the item
/// Range: any.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/delivery/test_split.cpp
SplitItem split_item(const Case<double>& given, std::string name, std::string region, double direct,
                     double wages, double price, std::vector<double> times, double size);

/// A programme of binary unknowns, and few of any size: least cost, rows between limits.
struct SplitModel {
    std::vector<double> cost;         ///< [currency, n] of every unknown
    std::vector<double> upper;        ///< [any unit, n] no more; 0 where it cannot be chosen
    std::vector<int> whole;           ///< [-, n] 1: 0 or 1; 0: any size from 0 to `upper`
    std::vector<std::size_t> starts;  ///< [-, rows + 1] where each row begins among the entries
    std::vector<std::size_t> columns; ///< [-, entries] unknown of each entry
    std::vector<double> entries;      ///< [any unit, entries] coefficients
    std::vector<double> low;          ///< [any unit, rows] no less
    std::vector<double> high;         ///< [any unit, rows] no more
    std::vector<std::size_t> unit_of; ///< [-, items] which unit an item belongs to
    std::size_t units = 0;            ///< [-] structures, or regions that stay together
    std::size_t contracts = 0;        ///< [-] that may be let in all
};

/// The split as a programme of binary unknowns.
///
/// Unknowns: x[u, k] unit u goes to k, with k = 0 own people and k >= 1 the contracts; then y, whether
/// the crew is kept; then z[k], whether a contract is let; then, where a least saving may reach its
/// most, for each contract or for all w, whether it does, and r, by how much the share exceeds it.
/// Formula: least of sum of (costs + share of personnel cost where it goes out) x + kept y + per
/// contract z - sum of r; each unit goes somewhere; sum of times x[u, 0] <= hours there, for each
/// resource; least z <= sum of sizes x <= most z; contracts of a region are let in order; r <= share
/// of personnel x - w most / years; r <= w (its greatest value)
/// @param items [-, n] the structures
/// @param rules [-] what a split keeps to
/// @return [-] the programme
/// Range: n >= 1; costs and sizes finite, or NaN costs.
/// Errors: InputError `delivery.items` where there is none, a number cannot be used, or a structure
/// can be done neither way; `delivery.rules` where a rule cannot be used.
/// Source: generalized assignment with fixed charges, operations research; least saving: see
/// `least_saving`
/// Verified by: tests/cpp/delivery/test_split.cpp, tests/python/test_delivery_split.py
SplitModel split_model(const std::vector<SplitItem>& items, const SplitRules& rules);

/// What goes out in a contract, or in all of them, against the same work with own people.
struct ComparedWork {
    std::size_t contract = 0;   ///< [-] number; 0: all contracts as one
    std::size_t structures = 0; ///< [-] that own people could do as well; the sums are of these
    double in_house = 0.0;      ///< [currency] with own people, where the crew is kept anyway
    double by_contract = 0.0;   ///< [currency] with letting
    double saved = 0.0;         ///< [currency] in-house less contract
    double asked = 0.0;         ///< [currency] that law asks to be saved
    bool meets = false;         ///< [-] saved is no less than asked
};

/// A split and what it costs.
struct Split {
    std::vector<std::size_t> to; ///< [-, items] 0: own people, else the contract's number
    double in_house = 0.0;       ///< [currency] of the structures that own people clean
    double contract = 0.0;       ///< [currency] of the structures that go out
    double kept = 0.0;           ///< [currency] of keeping the crew
    double letting = 0.0;        ///< [currency] of the contracts that are let
    double cost = 0.0;           ///< [currency] all of it
    double saving_asked = 0.0;   ///< [currency] that contracts have to save besides; in no cost
    double compared = 0.0;       ///< [currency] cost and saving asked: what a split is chosen by
    std::vector<double> times{}; ///< [s, resources] of the crew and of equipment, used
    std::vector<ComparedWork> out{}; ///< [-, n] what goes out against own people
    std::size_t contracts = 0;       ///< [-] let
};

/// The split that the unknowns of a solver stand for.
///
/// @param items [-, n] the structures
/// @param rules [-] what a split keeps to
/// @param unknowns [-, m] of `split_model`, each nearly 0 or 1
/// @return [-] the split and its cost
/// Range: unknowns of the model of the same items and rules.
/// Errors: InputError `delivery.unknowns` where their number differs; those of `split_model`.
/// Source: definition
/// Verified by: tests/python/test_delivery_split.py
Split split_of(const std::vector<SplitItem>& items, const SplitRules& rules,
               std::span<const double> unknowns);

/// What a split costs.
///
/// Formula: compared = cost + sum over contracts, or once over all of them, of `least_saving`
/// @param items [-, n] the structures
/// @param rules [-] what a split keeps to
/// @param to [-, n] 0: own people, else the contract's number
/// @return [currency] its parts and sum
/// Range: any split; whether the rules allow it is for `split_fault` to say.
/// Errors: InputError `delivery.items` where the lists differ.
/// Source: definition
/// Verified by: tests/python/test_delivery_split.py
Split priced_split(const std::vector<SplitItem>& items, const SplitRules& rules,
                   std::vector<std::size_t> to);

/// Why a split is not allowed.
///
/// @param items [-, n] the structures
/// @param rules [-] what a split keeps to
/// @param to [-, n] 0: own people, else the contract's number
/// @return [text] the first rule that it breaks; empty where it keeps to all
/// Range: limits are met within 1e-6 of their size.
/// Errors: none.
/// Source: definition
/// Verified by: tests/python/test_delivery_split.py
std::string split_fault(const std::vector<SplitItem>& items, const SplitRules& rules,
                        const std::vector<std::size_t>& to);

} // namespace scupper::delivery
