#pragma once
// Item lists of contracts as documents.

#include "scupper/bid/item_list.hpp"

#include <array>
#include <string_view>

namespace scupper::json {

inline constexpr std::array<std::string_view, 8> item_list_keys{
    "scupper_items", "name",   "note",          "choices",
    "items",         "spread", "contract_wide", "rounding"}; ///< [text] of an item list
inline constexpr std::array<std::string_view, 9> item_keys{
    "code", "description", "unit", "driver", "decimals",
    "kind", "group",       "when", "covers"}; ///< [text] of an item
inline constexpr std::array<std::string_view, 3> cover_keys{"component", "operation",
                                                            "resource"}; ///< [text] of a cover

/// Reads an item list with its mapping, and checks it.
///
/// @param text [text] a JSON document with `scupper_items` and the keys of `item_list_keys`
/// @param name [text] what to call the document in errors
/// @return [-] the list
/// Range: UTF-8.
/// Errors: FileError `json.text` where it is no JSON; UnknownNameError `json.key`, `json.word`
/// with the nearest; InputError `json.type`, `json.version`; those of `bid::check`. Where the
/// document has lines, the path says the line.
/// Source: own convention
/// Verified by: tests/cpp/bid/test_pay_items.cpp
bid::ItemScheme read_item_list(std::string_view text, std::string_view name);

/// The document of the item list that ships with the library [text]; its items are invented.
std::string_view shipped_item_list();

} // namespace scupper::json
