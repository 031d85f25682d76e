#pragma once
// A year's work with own people, at avoidable and at full cost, and by contract.

#include "scupper/delivery/case.hpp"
#include "scupper/traced.hpp"

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

namespace scupper::delivery {

/// What a line counts in.
enum class Side {
    avoidable,   ///< in-house, and gone when the work goes out
    overhead,    ///< in-house, and there either way; part of the full cost
    contract,    ///< by contract
    differential ///< by law a contract has to save this besides
};

inline constexpr std::array<std::string_view, 4> side_names{"avoidable", "overhead", "contract",
                                                            "differential"}; ///< [text] by Side

/// A line of the comparison.
struct LineField {
    std::string_view key;   ///< [text] "idle_equipment"
    std::string_view label; ///< [text] what people call it
    Side side;              ///< [-] what it counts in
    Input from;             ///< [-] the input that it rests on most
    std::string_view why;   ///< [text] why it is there, and how it comes about
};

inline constexpr std::array<LineField, 13> line_table{{
    {"direct", "direct cost of the work", Side::avoidable, Input::cost_each,
     "wages, equipment by the hour, water, disposal and charges as the in-house job prices them"},
    {"kept", "keeping the crew", Side::avoidable, Input::kept,
     "ends only where the crew is given up"},
    {"displaced", "work displaced", Side::avoidable, Input::displaced_value,
     "crew time beyond what is spare, at the worth of the work that waits"},
    {"idle_equipment", "idle equipment", Side::overhead, Input::ownership,
     "ownership that hourly rates do not recover because equipment is used less than rated"},
    {"supervision", "supervision", Side::overhead, Input::supervision, "over wages"},
    {"overhead", "overhead", Side::overhead, Input::overhead, "over wages"},
    {"facilities", "garage, yard and office", Side::overhead, Input::facilities,
     "there with or without this work"},
    {"price", "contract price", Side::contract, Input::price_each,
     "as the contract job prices it, margins included"},
    {"preparation", "preparing and letting", Side::contract, Input::preparation,
     "for every contract"},
    {"administration", "administration", Side::contract, Input::administration, "over the price"},
    {"inspection", "inspection", Side::contract, Input::inspection, "over the price"},
    {"conversion", "going over to contracts", Side::contract, Input::conversion,
     "once, spread over the years by capital recovery"},
    {"differential", "least saving by law", Side::differential, Input::differential_share,
     "the lesser of a share of personnel cost and an amount over all years, spread evenly"},
}};

/// A year both ways.
template <class T>
struct Ways {
    std::array<Amount<T>, line_table.size()> lines{}; ///< [currency] by line_table
    Amount<T> avoidable;                              ///< [currency] in-house, what would go away
    Amount<T> full;                                   ///< [currency] in-house, all of it
    Amount<T> contract;                               ///< [currency] by contract, all of it
    Amount<T> differential;                           ///< [currency] that a contract has to save
    Time<T> crew_time;                                ///< [s] paid crew time of the work
};

/// Which in-house cost a contract is held against.
enum class Basis {
    avoidable, ///< what goes away with the work: the choice for a year
    full       ///< all of it: the choice for good
};

inline constexpr std::array<std::string_view, 2> basis_names{"avoidable",
                                                             "full"}; ///< [text] by Basis

/// The basis that a word stands for.
///
/// @param word [text] "avoidable" or "full"
/// @return [-] the basis
/// Range: any text.
/// Errors: UnknownNameError `delivery.basis`.
/// Source: own convention
/// Verified by: tests/cpp/delivery/test_ways.cpp
Basis basis_of(std::string_view word);

/// What going out has to save in a year, before work leaves own people.
///
/// The rule compares the work of one solicitation over all years that it asks for (from memory of its
/// words): of several contracts each is held to its own share and its own most.
/// Formula: min(s y L, M) / y
/// @param personnel [currency] L, wages and their supervision of a year, >= 0
/// @param years [-] y, number of years, > 0
/// @param share [-] s, of personnel cost, >= 0
/// @param most [currency] M, over all years, >= 0
/// @return [currency] least saving of a year
/// Range: any.
/// Errors: those of `cost::conversion_differential`.
/// Source: 10 U.S.C. 2461(a)(1)(F)
/// Verified by: tests/cpp/delivery/test_ways.cpp
template <class T>
Amount<T> least_saving(const Amount<T>& personnel, const T& years, const T& share,
                       const Amount<T>& most);

/// What a year costs with own people and by contract, line by line.
///
/// Formula: direct = n c + A c'; displaced = v max(0, H - spare); idle = O max(0, 1 - (H + other)
/// / R); supervision and overhead = shares of wages; contract = P + k p + (a + i) P + C (A/P);
/// differential = `least_saving` of all of it, with L wages and their supervision
/// @param given [SI unit of each input] the case, checked
/// @return [currency] every line and the sums
/// Range: cases that `check` passes.
/// Errors: as `capital_recovery_factor`
/// Source: avoidable and full cost: common practice of make-or-buy comparisons; differential: 10
/// U.S.C. 2461(a)(1)(F)
/// Verified by: tests/cpp/delivery/test_ways.cpp
template <class T>
Ways<T> compare_ways(const Case<T>& given);

/// By how much own people are cheaper in a year; below 0 where a contract is.
///
/// Formula: contract + differential - in-house cost on the basis
/// @param ways [currency] a year both ways
/// @param basis [-] avoidable or full cost
/// @return [currency] advantage of own people
/// Range: any.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/delivery/test_ways.cpp
template <class T>
Amount<T> advantage(const Ways<T>& ways, Basis basis);

/// How the advantage of own people comes about, down to the inputs.
///
/// @param given [SI unit of each input] the case
/// @param basis [-] avoidable or full cost
/// @param sources [text, n] where each input comes from; empty: what the table says
/// @return [-] the derivation
/// Range: cases that `check` passes.
/// Errors: those of `check`.
/// Source: own convention
/// Verified by: tests/cpp/delivery/test_ways.cpp
Derivation explain(const Case<double>& given, Basis basis,
                   const std::array<std::string, case_table.size()>& sources = {});

} // namespace scupper::delivery
