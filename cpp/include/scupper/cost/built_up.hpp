#pragma once
// Rates that are built up from their parts instead of given: a wage, an hour of equipment.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"
#include "scupper/uncertain.hpp"

#include <array>
#include <span>
#include <string>
#include <string_view>

namespace scupper::cost {

/// What is built up.
enum class BuiltUp {
    none,           ///< nothing: the field takes a number
    wage,           ///< cost of a person for a time
    overtime_share, ///< share of that cost that overtime pays more
    equipment       ///< cost of a piece of equipment for a time
};

/// One part that a rate may be built up from.
struct RatePart {
    std::string_view name;    ///< [text] stable word
    Dimension dimension;      ///< of its value
    double least;             ///< smallest possible value, SI
    double greatest;          ///< greatest possible value, SI
    std::string_view label;   ///< [text] what people call it
    bool required = false;    ///< [-] whether every rate of its kind needs it
    std::string_view needs{}; ///< [text] another part without which it says nothing
};

/// The parts of a wage. A tax without a cap is due on all pay.
inline constexpr std::array<RatePart, 17> wage_parts{{
    {"cash", dim::money_per_time, 0.0, 1e3, "pay in cash", true},
    {"basic", dim::money_per_time, 0.0, 1e3, "basic rate of the wage determination"},
    {"fringe", dim::money_per_time, 0.0, 1e3, "fringe benefits paid into plans"},
    {"year_hours", dim::time, 3600.0, 3.2e7, "paid hours of a year"},
    {"worked_hours", dim::time, 3600.0, 3.2e7, "hours worked of them", false, "year_hours"},
    {"social_security", dim::none, 0.0, 1.0, "social security, employer's share"},
    {"social_security_cap", dim::money, 0.0, 1e9, "pay up to which social security is due", false,
     "social_security"},
    {"medicare", dim::none, 0.0, 1.0, "health insurance tax, employer's share"},
    {"federal_unemployment", dim::none, 0.0, 1.0, "federal unemployment tax"},
    {"federal_unemployment_cap", dim::money, 0.0, 1e9, "pay up to which it is due", false,
     "federal_unemployment"},
    {"state_unemployment", dim::none, 0.0, 1.0, "state unemployment tax"},
    {"state_unemployment_cap", dim::money, 0.0, 1e9, "pay up to which the state's is due", false,
     "state_unemployment"},
    {"insurance", dim::none, 0.0, 2.0, "workers' compensation and liability, over pay"},
    {"modifier", dim::none, 0.0, 10.0, "experience modifier of the insurance", false, "insurance"},
    {"insured_premium", dim::none, 0.0, 1.0, "share of overtime premiums that is insured", false,
     "insurance"},
    {"per_diem", dim::money, 0.0, 1e5, "per diem", false, "day_hours"},
    {"day_hours", dim::time, 3600.0, 86400.0, "hours worked of a day", false, "per_diem"},
}};

/// The parts of an hour of equipment.
inline constexpr std::array<RatePart, 18> equipment_parts{{
    {"ownership", dim::none, 0.0, 1.0, "how ownership is reckoned"},
    {"price", dim::money, 0.0, 1e9, "price when bought", true},
    {"salvage", dim::money, 0.0, 1e9, "sold for at the end"},
    {"life", dim::time, 8.64e4, 3.2e9, "years of service", true},
    {"year_hours", dim::time, 3600.0, 3.2e7, "hours charged in a year", true},
    {"interest", dim::none, -0.5, 1.0, "interest a year"},
    {"keeping", dim::none, 0.0, 1.0, "insurance, taxes, storage a year over the investment"},
    {"utilisation", dim::none, 0.0, 1.0, "working hours over charged hours"},
    {"power", dim::power, 0.0, 1e8, "rated power of the engine", false, "fuel_use"},
    {"fuel_use", dim::volume / dim::energy, 0.0, 1e-6, "fuel for an energy at full load", false,
     "fuel_price"},
    {"load", dim::none, 0.0, 1.0, "share of full load on the average", false, "power"},
    {"fuel_price", dim::money_per_volume, 0.0, 1e6, "price of fuel", false, "power"},
    {"lubrication", dim::none, 0.0, 5.0, "lubricants over fuel", false, "power"},
    {"repair", dim::none, 0.0, 20.0, "repair over straight-line depreciation"},
    {"tyre_set", dim::money, 0.0, 1e7, "a set of tyres", false, "tyre_life"},
    {"tyre_life", dim::time, 3600.0, 3.2e9, "hours that a set lasts", false, "tyre_set"},
    {"tyre_repair", dim::none, 0.0, 5.0, "tyre repair over wear", false, "tyre_set"},
    {"wear_parts", dim::money_per_time, 0.0, 1e3, "wear parts: nozzles, hose, brooms"},
}};

/// How ownership is reckoned, in the order of the values of the part `ownership`.
inline constexpr std::array<std::string_view, 2> ownership_names{"capital_recovery",
                                                                 "average_investment"};

/// What an input field can be built up as.
///
/// @param key [text] key of the input schema, with or without its row
/// @return [-] wage for `labour.wage` and `haul.wage`, equipment for `equipment.rate`
/// Range: any text.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/cost/test_built_up.cpp
BuiltUp built_up_of(std::string_view key);

/// The parts of a kind of rate.
///
/// @param kind [-] what is built up
/// @return [-, n] its parts; none for none
/// Range: any.
/// Errors: none.
/// Source: own convention
std::span<const RatePart> parts_of(BuiltUp kind);

/// The table row of a part.
///
/// @param kind [-] what is built up
/// @param name [text] word of the part
/// @param path [text] where it was written, for the error
/// @return [-] the row
/// Range: any text.
/// Errors: UnknownNameError `cost.part` naming the nearest part.
/// Source: own convention
/// Verified by: tests/cpp/cost/test_built_up.cpp
const RatePart& rate_part(BuiltUp kind, std::string_view name, const std::string& path);

/// Refuses parts from which nothing can be built up.
///
/// @param kind [-] what is built up
/// @param parts [SI unit of each, n] what was given
/// @param path [text] where they were written, for the error
/// Range: any.
/// Errors: InputError `cost.missing` for a part that is needed, `cost.bounds` for a value out of
/// its bounds; UnknownNameError `cost.part`.
/// Source: own convention
/// Verified by: tests/cpp/cost/test_built_up.cpp
void check_parts(BuiltUp kind, std::span<const PartValue> parts, const std::string& path);

/// One part in the number type of the formula.
template <class T>
struct NamedPart {
    std::string_view name; ///< [text] word of the part
    T value;               ///< [SI unit of the part]
};

/// The rate that parts come to.
///
/// Formula: wage: cash L (1 + taxes + insurance) + fringe + per diem / day; overtime share:
/// max(cash, basic) (1 + taxes + insured insurance) over the wage; equipment: (ownership + keeping)
/// / hours + utilisation (fuel + lubrication + repair + tyres + wear parts)
/// @param kind [-] what is built up
/// @param parts [SI unit of each, n] its parts
/// @return [currency/s, or - for the share] the rate
/// Range: parts that `check_parts` accepts.
/// Errors: those of the formulas it is made of.
/// Source: the formulas it is made of, see `wage.hpp`, `ownership.hpp`, `operating.hpp`
/// Verified by: tests/cpp/cost/test_built_up.cpp
template <class T>
T built_up_rate(BuiltUp kind, std::span<const NamedPart<T>> parts);

/// The rate that plain parts come to.
///
/// @param kind [-] what is built up
/// @param parts [SI unit of each, n] its parts
/// @return [currency/s, or - for the share] the rate
/// Range: parts that `check_parts` accepts.
/// Errors: as `built_up_rate`
/// Source: as `built_up_rate`
/// Verified by: tests/cpp/cost/test_built_up.cpp
double built_up_rate(BuiltUp kind, std::span<const PartValue> parts);

/// The range that a rate has because its parts have one.
///
/// Formula: likely = the rate of the likely parts; low = likely - sqrt(sum of (likely - l)^2), l the
/// lower of the rates with one part at its low or its high value and the others likely; high alike
/// @param kind [-] what is built up
/// @param parts [SI unit of each, n] its parts
/// @return [currency/s, or - for the share] low, likely, high; without spread where no part has any
/// Range: parts that `check_parts` accepts, each varying by itself.
/// Errors: as `built_up_rate`
/// Source: propagation of independent errors, JCGM 100:2008 section 5.1 (from memory)
/// Verified by: tests/cpp/cost/test_built_up.cpp
ThreePoint built_up_range(BuiltUp kind, std::span<const PartValue> parts);

} // namespace scupper::cost
