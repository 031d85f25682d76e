#pragma once
// Keys known when compiling: get<"deck.length">() finds its place once, in the compiler.

#include "scupper/schema/figure_table.hpp"
#include "scupper/schema/input_table.hpp"

#include <cstddef>
#include <string_view>

namespace scupper {

/// Text that can be a template argument.
template <std::size_t N>
struct FixedText {
    char text[N]{};                                 ///< [text] the characters and the closing zero
    constexpr FixedText(const char (&literal)[N]) { // NOLINT: a literal is meant
        for (std::size_t i = 0; i < N; ++i) {
            text[i] = literal[i];
        }
    }
    /// The text without its closing zero [text].
    constexpr std::string_view view() const { return {text, N - 1}; }
};

/// Where a field stands in its table.
struct FieldPlace {
    std::size_t index;        ///< in the table
    std::size_t group;        ///< in the table of groups
    std::size_t within_group; ///< among the fields of its group
};

/// Where a key stands in a schema table, found by the compiler for keys written in code.
///
/// @param table [-, n] `input_table` or `figure_table`
/// @param groups [-, m] the groups of that table
/// @param key [text] "group.field", rows left out
/// @return [-] the place; its index is table.size() where there is no such field
/// Range: any text.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/schema/test_keys.cpp
template <class Table, class Groups>
constexpr FieldPlace find_field(const Table& table, const Groups& groups, std::string_view key) {
    // Not key.find('.'): g++ 12 cannot evaluate it when compiling with -fsanitize=undefined.
    std::size_t dot = 0;
    while (dot < key.size() && key[dot] != '.') {
        ++dot;
    }
    const std::string_view group = key.substr(0, dot);
    const std::string_view field = dot == key.size() ? std::string_view{} : key.substr(dot + 1);
    std::size_t g = 0;
    while (g < groups.size() && groups[g].key != group) {
        ++g;
    }
    std::size_t within = 0;
    for (std::size_t i = 0; i < table.size(); ++i) {
        if (table[i].group != group) {
            continue;
        }
        if (table[i].field == field) {
            return {i, g, within};
        }
        ++within;
    }
    return {table.size(), g, 0};
}

/// The place of an input that code reads by its key.
///
/// @param key [text] "deck.length"; rows left out
/// @return [-] the place, for `Layout::place`
/// Range: keys of `input_table`.
/// Errors: none when running; a misspelt key does not compile.
/// Source: own convention
/// Verified by: tests/cpp/schema/test_keys.cpp
consteval FieldPlace input_place(std::string_view key) {
    const FieldPlace place = find_field(input_table, input_groups, key);
    if (place.index == input_table.size()) {
        throw "no such input field";
    }
    return place;
}

/// The place of a figure that code writes or reads by its key.
///
/// @param key [text] "cost.total"; rows left out
/// @return [-] the place, for `Layout::place`
/// Range: keys of `figure_table`.
/// Errors: none when running; a misspelt key does not compile.
/// Source: own convention
consteval FieldPlace figure_place(std::string_view key) {
    const FieldPlace place = find_field(figure_table, figure_groups, key);
    if (place.index == figure_table.size()) {
        throw "no such figure";
    }
    return place;
}

} // namespace scupper
