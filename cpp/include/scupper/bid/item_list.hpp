#pragma once
// Which cost lines make which pay item: an owner's item list with its mapping, as data.

#include "scupper/bid/pay_item.hpp"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::bid {

/// Cost lines by their names; a list that is empty takes any name. Of two covers that take a line
/// the one that names more closely has it: a resource beats an operation, which beats a component.
struct Cover {
    std::vector<std::string> components; ///< [text, n] components of the line
    std::vector<std::string> operations; ///< [text, n] operations of the line
    std::vector<std::string> resources;  ///< [text, n] resources of the line
};

/// Options that were chosen, by the name of the choice [text].
using Options = std::map<std::string, std::string>;

/// A choice between ways to pay, the first of its options where nobody chooses.
struct Choice {
    std::string name;                 ///< [text] "mobilization"
    std::vector<std::string> options; ///< [text, n] "item", "spread"
};

/// An item with the cost lines it pays and what it is counted by.
struct ItemRule {
    PayItem item;                  ///< [-] its quantities are not yet known
    std::string driver;            ///< [text] figure of an estimate; empty: one, a lump sum
    std::optional<int> decimals{}; ///< [-] of the quantity; without, by the unit
    std::vector<Cover> covers;     ///< [-, n] the cost lines it pays
    Options when{};                ///< [text] options under which it is on the list
};

/// Cost lines that have no item and are spread over the items in proportion to their own cost.
struct SpreadRule {
    std::vector<Cover> covers; ///< [-, n] the cost lines
    Options when{};            ///< [text] options under which they are spread
};

/// An item list with its mapping.
struct ItemScheme {
    std::string name;                       ///< [text] what to call it
    std::string note;                       ///< [text] where it comes from
    std::vector<Choice> choices;            ///< [-, n] ways to pay that it knows
    std::vector<ItemRule> rules;            ///< [-, n] in the order of the form
    std::vector<SpreadRule> spread;         ///< [-, n] what is spread
    std::vector<std::string> contract_wide; ///< [text, n] items that stay beside lump prices
                                            ///< by structure
    std::string rounding;                   ///< [text] lump-sum item that takes what rounding
                                            ///< leaves; empty: it is shown as a difference
};

/// The unit of a code.
///
/// @param code [text] "SF"
/// @param path [text] where it stands, for the error
/// @return [-] the row of pay_units
/// Range: any text.
/// Errors: UnknownNameError `bid.unit` naming the codes there are.
/// Source: definition
/// Verified by: tests/cpp/bid/test_pay_items.cpp
const PayUnit& pay_unit(std::string_view code, const std::string& path);

/// How many decimals quantities of a unit are stated with where a list says nothing: 1 for hours,
/// weights, miles, cubic yards and 1,000 gallons, 0 for the rest.
///
/// @param code [text] a code of pay_units
/// @return [-] 0 or 1
/// Range: any text.
/// Errors: none.
/// Source: common practice
int usual_decimals(std::string_view code);

/// Throws where an item list cannot be used: a code that is missing or stands twice, an unknown
/// unit, a lump sum with a driver or another unit without one, an item that covers nothing, an
/// option or a code that the list does not have.
///
/// @param scheme [-] the list
/// @param path [text] what to call it in errors
/// Range: any list.
/// Errors: InputError `bid.code`, `bid.twice`, `bid.driver`, `bid.covers`; UnknownNameError
/// `bid.unit`, `bid.option`.
/// Source: own convention
/// Verified by: tests/cpp/bid/test_pay_items.cpp
void check(const ItemScheme& scheme, const std::string& path);

/// The list under some options: only the rules that hold.
///
/// @param scheme [-] the list
/// @param options [text] by choice; the first option where a choice is not named
/// @param path [text] where the options stand, for the error
/// @return [-] the list without choices
/// Range: any list.
/// Errors: UnknownNameError `bid.option` for a choice or an option that the list does not have.
/// Source: own convention
/// Verified by: tests/cpp/bid/test_pay_items.cpp
ItemScheme chosen(const ItemScheme& scheme, const Options& options, const std::string& path);

/// How closely a cover names a cost line.
///
/// @param cover [-] the cover
/// @param component [text] of the line
/// @param operation [text] of the line
/// @param resource [text] of the line
/// @return [-] 0 where it does not take the line; else greater for a closer name
/// Range: any text.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/bid/test_pay_items.cpp
int closeness(const Cover& cover, std::string_view component, std::string_view operation,
              std::string_view resource);

} // namespace scupper::bid
