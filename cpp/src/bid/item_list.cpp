#include "scupper/bid/item_list.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <array>
#include <set>

namespace scupper::bid {

namespace {

bool takes(const std::vector<std::string>& names, std::string_view name) {
    return names.empty() || std::find(names.begin(), names.end(), name) != names.end();
}

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) {
        text += (text.empty() ? "" : ", ") + word;
    }
    return text;
}

const Choice* choice_of(const ItemScheme& scheme, const std::string& name) {
    const auto found = std::find_if(scheme.choices.begin(), scheme.choices.end(),
                                    [&](const Choice& c) { return c.name == name; });
    return found == scheme.choices.end() ? nullptr : &*found;
}

void require_options(const ItemScheme& scheme, const Options& options, const std::string& path) {
    for (const auto& [name, option] : options) {
        const Choice* choice = choice_of(scheme, name);
        if (choice == nullptr) {
            std::vector<std::string> known;
            for (const Choice& c : scheme.choices) {
                known.push_back(c.name);
            }
            throw UnknownNameError(
                {"bid.option", path, "\"" + name + "\"",
                 known.empty() ? "no choice: the list has none" : "one of " + joined(known)});
        }
        if (choice->options.empty() || !takes(choice->options, option)) {
            throw UnknownNameError({"bid.option", path + "." + name, "\"" + option + "\"",
                                    "one of " + joined(choice->options)});
        }
    }
}

bool holds(const Options& when, const Options& options) {
    return std::all_of(when.begin(), when.end(),
                       [&](const auto& w) { return options.at(w.first) == w.second; });
}

bool is_lump(const ItemRule& rule) {
    return rule.item.unit == "LS" || rule.item.unit == "ALLOW";
}

void check_rule(const ItemRule& rule, const std::string& path) {
    if (rule.item.code.empty() || rule.item.description.empty()) {
        throw InputError({"bid.code", path, "an item without code or description", "both"});
    }
    pay_unit(rule.item.unit, path + ".unit");
    if (is_lump(rule) != rule.driver.empty()) {
        throw InputError({"bid.driver", path + ".driver",
                          rule.driver.empty() ? "nothing" : "\"" + rule.driver + "\"",
                          is_lump(rule) ? "nothing: a lump sum is one"
                                        : "the figure that counts " + rule.item.unit});
    }
    if (rule.decimals && (*rule.decimals < 0 || *rule.decimals > 6)) {
        throw InputError(
            {"bid.decimals", path + ".decimals", std::to_string(*rule.decimals), "0 to 6"});
    }
    if (rule.covers.empty()) {
        throw InputError({"bid.covers", path + ".covers", "nothing", "the cost lines it pays"});
    }
}

std::string at(const std::string& path, const char* list, std::size_t i) {
    return path + "." + list + "[" + std::to_string(i) + "]";
}

} // namespace

const PayUnit& pay_unit(std::string_view code, const std::string& path) {
    std::string known;
    for (const PayUnit& unit : pay_units) {
        if (unit.code == code) {
            return unit;
        }
        known += (known.empty() ? "" : ", ") + std::string(unit.code);
    }
    throw UnknownNameError({"bid.unit", path, "\"" + std::string(code) + "\"", "one of " + known});
}

int usual_decimals(std::string_view code) {
    static constexpr std::array<std::string_view, 8> tenths{"HR", "TON", "T",    "MI",
                                                            "CY", "CM",  "MGAL", "CF"};
    return std::find(tenths.begin(), tenths.end(), code) != tenths.end() ? 1 : 0;
}

void check(const ItemScheme& scheme, const std::string& path) {
    std::set<std::string> codes;
    for (std::size_t i = 0; i < scheme.rules.size(); ++i) {
        const std::string where = at(path, "items", i);
        check_rule(scheme.rules[i], where);
        require_options(scheme, scheme.rules[i].when, where + ".when");
        // One code may stand once under every option of a choice.
        const auto& when = scheme.rules[i].when;
        std::string key = scheme.rules[i].item.code;
        for (const auto& [name, option] : when) {
            key += "\n" + name + "\n" + option;
        }
        if (!codes.insert(key).second) {
            throw InputError({"bid.twice", where + ".code", "\"" + scheme.rules[i].item.code + "\"",
                              "one item for each code"});
        }
    }
    for (std::size_t i = 0; i < scheme.spread.size(); ++i) {
        require_options(scheme, scheme.spread[i].when, at(path, "spread", i) + ".when");
    }
    const auto known = [&](const std::string& code) {
        return std::any_of(scheme.rules.begin(), scheme.rules.end(),
                           [&](const ItemRule& rule) { return rule.item.code == code; });
    };
    std::vector<std::string> named = scheme.contract_wide;
    if (!scheme.rounding.empty()) {
        named.push_back(scheme.rounding);
    }
    for (const std::string& code : named) {
        if (!known(code)) {
            throw InputError({"bid.code", path, "\"" + code + "\"", "a code of the list"});
        }
    }
}

ItemScheme chosen(const ItemScheme& scheme, const Options& options, const std::string& path) {
    require_options(scheme, options, path);
    Options all = options;
    for (const Choice& choice : scheme.choices) {
        if (!choice.options.empty()) {
            all.emplace(choice.name, choice.options.front());
        }
    }
    ItemScheme list = scheme;
    std::erase_if(list.rules, [&](const ItemRule& rule) { return !holds(rule.when, all); });
    std::erase_if(list.spread, [&](const SpreadRule& rule) { return !holds(rule.when, all); });
    list.choices.clear();
    std::set<std::string> codes;
    for (ItemRule& rule : list.rules) {
        rule.when.clear();
        if (!codes.insert(rule.item.code).second) {
            throw InputError({"bid.twice", path, "\"" + rule.item.code + "\" under these options",
                              "one item for each code"});
        }
    }
    return list;
}

int closeness(const Cover& cover, std::string_view component, std::string_view operation,
              std::string_view resource) {
    if (!takes(cover.components, component) || !takes(cover.operations, operation) ||
        !takes(cover.resources, resource)) {
        return 0;
    }
    return 1 + (cover.components.empty() ? 0 : 1) + (cover.operations.empty() ? 0 : 2) +
           (cover.resources.empty() ? 0 : 4);
}

} // namespace scupper::bid
