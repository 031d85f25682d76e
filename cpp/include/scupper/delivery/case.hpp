#pragma once
// What a choice between own people and a contract rests on: one list of numbers for a year.

#include "scupper/quantity.hpp"
#include "scupper/quantity/factors.hpp"

#include <array>
#include <cstddef>
#include <span>
#include <string_view>

namespace scupper::delivery {

/// Inputs of the choice, in the order of `case_table`.
enum class Input : std::size_t {
    structures,
    area,
    cost_each,
    cost_area,
    labour_share,
    time_each,
    time_area,
    price_each,
    price_area,
    kept,
    displaced_value,
    spare_time,
    ownership,
    rated_time,
    other_time,
    supervision,
    overhead,
    facilities,
    contracts,
    preparation,
    administration,
    inspection,
    conversion,
    years,
    interest,
    differential_share,
    differential_most,
};

/// One input: what it is called, what it may be, why it stands there.
struct CaseField {
    std::string_view key;    ///< [text] "contract.inspection"
    std::string_view label;  ///< [text] what people call it
    Dimension dimension;     ///< of the value
    double least;            ///< [SI unit of `dimension`] no less
    double most;             ///< [SI unit of `dimension`] no more
    double without;          ///< [SI unit of `dimension`] where nobody gives it
    std::string_view source; ///< [text] where it comes from, or where such a figure is found
};

inline constexpr double no_most = 1e15;         ///< [any unit] where nothing limits an input
inline constexpr std::size_t priced_inputs = 9; ///< [-] the first rows: they follow from prices

inline constexpr std::array<CaseField, 27> case_table{{
    {"work.structures", "structures a year", dim::count, 0.0, no_most, 0.0, "priced list"},
    {"work.area", "area washed a year", dim::area, 0.0, no_most, 0.0, "take-off of the list"},
    {"in_house.cost_per_structure", "direct cost of a structure, whatever its area", dim::money,
     0.0, no_most, 0.0, "least squares over the structures, in-house job"},
    {"in_house.cost_per_area", "direct cost by area", dim::money / dim::area, 0.0, no_most, 0.0,
     "least squares over the structures, in-house job"},
    {"in_house.labour_share", "wages in the direct cost", dim::none, 0.0, 1.0, 0.0,
     "priced list, in-house job"},
    {"in_house.time_per_structure", "paid crew time of a structure, whatever its area", dim::time,
     0.0, no_most, 0.0, "least squares over the structures, in-house job"},
    {"in_house.time_per_area", "paid crew time by area", dim::time / dim::area, 0.0, no_most, 0.0,
     "least squares over the structures, in-house job"},
    {"contract.price_per_structure", "price of a structure, whatever its area", dim::money, 0.0,
     no_most, 0.0, "least squares over the structures, contract job"},
    {"contract.price_per_area", "price by area", dim::money / dim::area, 0.0, no_most, 0.0,
     "least squares over the structures, contract job"},
    {"in_house.kept", "keeping the crew, what would end with it", dim::money, 0.0, no_most, 0.0,
     "the agency's books: training, licences, a yard of its own"},
    {"in_house.displaced_value", "worth of other work that the crew leaves", dim::money_per_time,
     0.0, no_most, 0.0, "what the agency would pay to have that work done"},
    {"in_house.spare_time", "crew time that displaces nothing", dim::time, 0.0, no_most, 0.0,
     "capacity of the season less work that is planned"},
    {"in_house.ownership", "owning the crew's equipment for a year", dim::money, 0.0, no_most, 0.0,
     "capital recovery, insurance, storage"},
    {"in_house.rated_time", "use a year over which hourly rates spread ownership", dim::time, 0.0,
     no_most, 0.0, "the agency's equipment list"},
    {"in_house.other_time", "use of the equipment by other work a year", dim::time, 0.0, no_most,
     0.0, "the agency's equipment log"},
    {"in_house.supervision", "supervision over wages", dim::none, 0.0, 10.0, 0.0,
     "the agency's books; common practice"},
    {"in_house.overhead", "overhead over wages", dim::none, 0.0, 10.0, 0.0,
     "the agency's books; 12 % in OMB Circular A-76 (2003), attachment C, from memory"},
    {"in_house.facilities", "garage, yard and office for a year", dim::money, 0.0, no_most, 0.0,
     "the agency's books"},
    {"contract.number", "contracts a year", dim::count, 0.0, no_most, 1.0, "the agency's plan"},
    {"contract.preparation", "preparing and letting a contract", dim::money, 0.0, no_most, 0.0,
     "the agency's books"},
    {"contract.administration", "administration over the price", dim::none, 0.0, 10.0, 0.0,
     "the agency's books; common practice"},
    {"contract.inspection", "inspection over the price", dim::none, 0.0, 10.0, 0.0,
     "the agency's books; common practice"},
    {"contract.conversion", "going over to contracts, once, less what is sold", dim::money,
     -no_most, no_most, 0.0, "severance and training less proceeds of equipment"},
    {"contract.years", "years that the conversion serves", dim::time, factor::year,
     100.0 * factor::year, factor::year, "performance period"},
    {"contract.interest", "discount rate a year", dim::none, -0.5, 1.0, 0.0,
     "OMB Circular A-94, appendix C, for the years; real where costs are of today"},
    {"contract.differential_share", "least saving of a contract, over personnel cost", dim::none,
     0.0, 10.0, 0.0, "10 U.S.C. 2461(a)(1)(F)(i): 10 %"},
    {"contract.differential_most", "least saving, no more than over all years", dim::money, 0.0,
     no_most, no_most, "10 U.S.C. 2461(a)(1)(F)(ii): 10 million dollars"},
}};

/// The numbers of one case, by Input.
template <class T>
struct Case {
    std::array<T, case_table.size()> values{}; ///< [SI unit of each input]

    /// One number [SI unit of the input].
    const T& operator[](Input input) const { return values[static_cast<std::size_t>(input)]; }
    /// One number, to change it [SI unit of the input].
    T& operator[](Input input) { return values[static_cast<std::size_t>(input)]; }
};

/// The input of a key.
///
/// @param key [text] as "contract.inspection"
/// @return [-] the input
/// Range: any text.
/// Errors: UnknownNameError `delivery.key` with the nearest key.
/// Source: own convention
/// Verified by: tests/cpp/delivery/test_ways.cpp
Input input_of(std::string_view key);

/// A case of what the table says where nobody gives anything.
///
/// @return [SI unit of each input] no work, no terms
/// Range: always.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/delivery/test_ways.cpp
Case<double> empty_case();

/// Refuses a case with a number outside its bounds.
///
/// @param given [SI unit of each input] the case
/// Range: any.
/// Errors: InputError `delivery.<key>` where a number is outside its bounds or none at all;
/// `delivery.in_house.rated_time` where there is ownership and no use to spread it over.
/// Source: own convention
/// Verified by: tests/cpp/delivery/test_ways.cpp
void check(const Case<double>& given);

/// A cost that has a part for every structure and a part for its area.
struct TwoPart {
    double each = 0.0;     ///< [unit of the costs] whatever the area
    double by_area = 0.0;  ///< [unit of the costs / m2]
    double explains = 0.0; ///< [-] share of the variance between structures that this explains
};

/// Splits costs, or hours, into a part for every structure and a part for its area.
///
/// Formula: least squares of c = each + by_area A; the line through the origin and the means, or a
/// mean alone, where one of the two would be below 0. each n + by_area sum of A = sum of c
/// @param costs [any unit, n] of every structure, >= 0
/// @param areas [m2, n] of every structure, >= 0
/// @return [unit of the costs] both parts
/// Range: n >= 1. The sum is met exactly; single structures are not.
/// Errors: InputError `delivery.costs` where a number is below 0 or none, or the lists differ.
/// Source: definition of least squares
/// Verified by: tests/cpp/delivery/test_ways.cpp
TwoPart two_part(std::span<const double> costs, std::span<const double> areas);

/// What every structure of a list costs and takes, either way.
struct PricedList {
    std::span<const double> areas;     ///< [m2, n] washed
    std::span<const double> direct;    ///< [currency, n] in-house job
    std::span<const double> wages;     ///< [currency, n] of it
    std::span<const double> crew_time; ///< [s, n] paid, of the in-house job
    std::span<const double> price;     ///< [currency, n] contract job
};

/// A case with the work of a list that was priced either way.
///
/// Formula: costs, crew time and price in two parts; labour share = sum of wages / sum of direct
/// @param given [SI unit of each input] the terms; what follows from prices is replaced
/// @param list [-] the list, both ways
/// @return [SI unit of each input] the case, checked
/// Range: n >= 1.
/// Errors: those of `two_part` and `check`.
/// Source: definition
/// Verified by: tests/cpp/delivery/test_ways.cpp
Case<double> priced_case(const Case<double>& given, const PricedList& list);

} // namespace scupper::delivery
