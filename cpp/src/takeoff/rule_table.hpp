#pragma once
// All rules in one table, found by name when compiling, and the provenance of what follows.

#include "deck_rules.hpp"
#include "girder_rules.hpp"
#include "quantity_rules.hpp"
#include "scupper/uncertain.hpp"
#include "site_rules.hpp"
#include "support_rules.hpp"

#include <algorithm>

namespace scupper::takeoff::detail {

inline constexpr auto rule_table = [] {
    std::array<Rule, kind_rules.size() + deck_rules.size() + girder_rules.size() +
                         support_rules.size() + quantity_rules.size() + site_rules.size()>
        all;
    auto* end = std::copy(kind_rules.begin(), kind_rules.end(), all.begin());
    end = std::copy(deck_rules.begin(), deck_rules.end(), end);
    end = std::copy(girder_rules.begin(), girder_rules.end(), end);
    end = std::copy(support_rules.begin(), support_rules.end(), end);
    end = std::copy(quantity_rules.begin(), quantity_rules.end(), end);
    std::copy(site_rules.begin(), site_rules.end(), end);
    return all;
}();

/// The index of a rule; a misspelt name does not compile.
struct RuleId {
    std::size_t index;

    consteval RuleId(std::string_view name) : index(0) { // NOLINT: names stand for rules
        while (index < rule_table.size() && rule_table[index].name != name) {
            ++index;
        }
        if (index == rule_table.size()) {
            throw "no such rule";
        }
    }
    consteval RuleId(const char* name) : RuleId(std::string_view(name)) {} // NOLINT
    constexpr const Rule& operator*() const { return rule_table[index]; }
    constexpr const Rule* operator->() const { return &rule_table[index]; }
};

/// Where values that follow from each rule come from, one entry a rule.
const std::array<Provenance, rule_table.size()>& provenances();

} // namespace scupper::takeoff::detail
