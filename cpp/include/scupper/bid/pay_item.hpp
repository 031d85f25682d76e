#pragma once
// What a contract pays for: an item, its unit and its quantity.

#include "scupper/money.hpp"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::bid {

/// A unit that bid forms pay by.
struct PayUnit {
    std::string_view code; ///< [text] as a form writes it
    std::string_view name; ///< [text] what it is
    std::string_view unit; ///< [text] for `parse_unit`; empty where it measures nothing
};

/// Units that bid forms pay by; abbreviations are common practice.
inline constexpr std::array<PayUnit, 21> pay_units{{
    {"LS", "lump sum", ""},
    {"EA", "each", "each"},
    {"SF", "square foot", "ft2"},
    {"SY", "square yard", "yd2"},
    {"SM", "square metre", "m2"},
    {"LF", "linear foot", "ft"},
    {"M", "metre", "m"},
    {"MI", "mile", "mi"},
    {"CF", "cubic foot", "ft3"},
    {"CY", "cubic yard", "yd3"},
    {"CM", "cubic metre", "m3"},
    {"LB", "pound", "lb"},
    {"TON", "short ton", "short_ton"},
    {"T", "tonne", "t"},
    {"GAL", "US gallon", "gal"},
    {"MGAL", "1,000 US gallons", "kgal"},
    {"HR", "hour", "h"},
    {"DAY", "day", ""},
    {"SHIFT", "shift", ""},
    {"MO", "month", ""},
    {"ALLOW", "allowance", ""},
}};

/// Whether an item belongs to every bid, or the owner may take it up.
enum class ItemKind {
    base,      ///< in every total
    alternate, ///< may take the place of others, or be added, in the order that the owner stated
    optional,  ///< may be ordered beside the contract
};

inline constexpr std::array<std::string_view, 3> item_kind_names{
    "base", "alternate", "optional"}; ///< [text] by ItemKind

/// An item of a contract. Quantities are exact decimals; equal low and high mean a certain one.
struct PayItem {
    std::string code;               ///< [text] short, the contract's own; no two alike
    std::string description;        ///< [text] what is done and paid
    std::string unit;               ///< [text] a code of pay_units
    Decimal quantity{};             ///< [unit] that bids are extended with
    Decimal low{};                  ///< [unit] the least that may come
    Decimal high{};                 ///< [unit] the most that may come
    ItemKind kind = ItemKind::base; ///< [-] whether it is in every total
    std::string group{};            ///< [text] heading it stands under; may be empty
};

} // namespace scupper::bid
