#include "scupper/delivery/split.hpp"

#include "require.hpp"
#include "split_parts.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace scupper::delivery {

namespace {

constexpr double slack = 1e-6; ///< within which a solver meets limits

bool fits(double found, double most) {
    return found <= most + slack * std::max(1.0, std::abs(most));
}

/// Sizes and regions of the contracts of a split.
struct Let {
    double size = 0.0;
    std::set<std::string> regions{};
};

std::map<std::size_t, Let> contracts_of(const std::vector<SplitItem>& items,
                                        const std::vector<std::size_t>& to) {
    std::map<std::size_t, Let> let;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const std::size_t way = to[i];
        if (way > 0) {
            Let& contract = let[way];
            contract.size += items[i].size;
            contract.regions.insert(items[i].region);
        }
    }
    return let;
}

std::string contract_fault(const SplitRules& rules, const std::map<std::size_t, Let>& all) {
    std::map<std::string, std::size_t> in_region;
    for (const auto& [number, let] : all) {
        if (!fits(let.size, rules.most)) {
            return "a contract is too large";
        }
        if (!fits(-let.size, -rules.least)) {
            return "a contract is too small";
        }
        if (rules.within_regions && let.regions.size() > 1) {
            return "a contract has several regions";
        }
        ++in_region[rules.within_regions ? *let.regions.begin() : ""];
    }
    for (const auto& [region, number] : in_region) {
        if (number > rules.contracts) {
            return "too many contracts";
        }
    }
    return "";
}

std::string item_fault(const SplitItem& item, std::size_t to, const SplitRules& rules) {
    if (to == 0 && (std::isnan(item.in_house) || rules.nothing_in_house)) {
        return item.name + " cannot be done in-house";
    }
    return to > 0 && std::isnan(item.contract) ? item.name + " cannot go out" : "";
}

bool stays_together(const std::vector<SplitItem>& items, const std::vector<std::size_t>& to) {
    std::map<std::string, std::size_t> way;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (way.emplace(items[i].region, to[i]).first->second != to[i]) {
            return false;
        }
    }
    return true;
}

} // namespace

SplitItem split_item(const Case<double>& given, std::string name, std::string region, double direct,
                     double price, double time, double size) {
    const double on_top = 1.0 + given[Input::administration] + given[Input::inspection];
    return {std::move(name), std::move(region), direct, price * on_top, time, size};
}

Split priced_split(const std::vector<SplitItem>& items, const SplitRules& rules,
                   std::vector<std::size_t> to) {
    detail::require(items.size() == to.size(), "items", std::to_string(to.size()) + " ways",
                    std::to_string(items.size()));
    Split split{.to = std::move(to)};
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (split.to[i] == 0) {
            split.in_house += items[i].in_house;
            split.time += items[i].time;
            split.kept = rules.kept;
        } else {
            split.contract += items[i].contract;
        }
    }
    split.contracts = contracts_of(items, split.to).size();
    split.letting = static_cast<double>(split.contracts) * rules.per_contract;
    split.cost = split.in_house + split.contract + split.kept + split.letting;
    return split;
}

std::string split_fault(const std::vector<SplitItem>& items, const SplitRules& rules,
                        const std::vector<std::size_t>& to) {
    double time = 0.0;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const std::string fault = item_fault(items[i], to[i], rules);
        if (!fault.empty()) {
            return fault;
        }
        time += to[i] == 0 ? items[i].time : 0.0;
    }
    if (!fits(time, rules.time_there)) {
        return "more crew time than there is";
    }
    if (rules.together && !stays_together(items, to)) {
        return "a region is divided";
    }
    return contract_fault(rules, contracts_of(items, to));
}

Split split_of(const std::vector<SplitItem>& items, const SplitRules& rules,
               std::span<const double> unknowns) {
    const detail::SplitLayout layout(items, rules);
    detail::require(unknowns.size() == layout.unknowns(), "unknowns",
                    std::to_string(unknowns.size()), std::to_string(layout.unknowns()));
    std::vector<std::size_t> to;
    for (std::size_t i = 0; i < items.size(); ++i) {
        std::size_t best = 0;
        for (std::size_t k = 0; k <= layout.contracts(); ++k) {
            const std::size_t u = layout.unit_of(i);
            best = unknowns[layout.place(u, k)] > unknowns[layout.place(u, best)] ? k : best;
        }
        to.push_back(best);
    }
    return priced_split(items, rules, std::move(to));
}

} // namespace scupper::delivery
