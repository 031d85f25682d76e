#include "scupper/delivery/split.hpp"

#include "require.hpp"
#include "scupper/delivery/ways.hpp"
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

/// Hours of every resource that own people need.
std::vector<double> times_of(const std::vector<SplitItem>& items,
                             const std::vector<std::size_t>& to) {
    std::vector<double> times(items.empty() ? 0 : items.front().times.size(), 0.0);
    for (std::size_t i = 0; i < items.size(); ++i) {
        for (std::size_t r = 0; to[i] == 0 && r < times.size(); ++r) {
            times[r] += items[i].times.at(r);
        }
    }
    return times;
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

/// The work that goes out, by what a least saving is counted over.
std::vector<ComparedWork> compared_work(const std::vector<SplitItem>& items,
                                        const SplitRules& rules,
                                        const std::vector<std::size_t>& to) {
    const SavingRule& rule = rules.saving;
    std::map<std::size_t, ComparedWork> all;
    std::map<std::size_t, double> personnel;
    std::set<std::size_t> let;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (to[i] > 0) {
            const std::size_t number = rule.over == SavingOver::programme ? 0 : to[i];
            ComparedWork& work = all[number];
            work.contract = number;
            work.by_contract += let.insert(to[i]).second ? rules.per_contract : 0.0;
            if (!std::isnan(items[i].in_house)) {
                ++work.structures;
                work.in_house += items[i].in_house;
                work.by_contract += items[i].contract;
                personnel[number] += items[i].personnel;
            }
        }
    }
    std::vector<ComparedWork> rows;
    for (auto& [number, work] : all) {
        work.saved = work.in_house - work.by_contract;
        if (rule.over != SavingOver::nothing) {
            work.asked = least_saving(Amount<>(personnel[number]), rule.years, rule.share,
                                      Amount<>(rule.most))
                             .si();
        }
        work.meets = fits(work.asked, work.saved);
        rows.push_back(work);
    }
    return rows;
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
                     double wages, double price, std::vector<double> times, double size) {
    const double on_top = 1.0 + given[Input::administration] + given[Input::inspection];
    const double personnel =
        std::isnan(direct) || std::isnan(wages) ? 0.0 : wages * (1.0 + given[Input::supervision]);
    return {.name = std::move(name),
            .region = std::move(region),
            .in_house = direct,
            .contract = price * on_top,
            .times = std::move(times),
            .personnel = personnel,
            .size = size};
}

Split priced_split(const std::vector<SplitItem>& items, const SplitRules& rules,
                   std::vector<std::size_t> to) {
    detail::require(items.size() == to.size(), "items", std::to_string(to.size()) + " ways",
                    std::to_string(items.size()));
    Split split;
    split.to = std::move(to);
    split.times = times_of(items, split.to);
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (split.to[i] == 0) {
            split.in_house += items[i].in_house;
            split.kept = rules.kept;
        } else {
            split.contract += items[i].contract;
        }
    }
    split.contracts = contracts_of(items, split.to).size();
    split.letting = static_cast<double>(split.contracts) * rules.per_contract;
    split.cost = split.in_house + split.contract + split.kept + split.letting;
    split.out = compared_work(items, rules, split.to);
    for (const ComparedWork& work : split.out) {
        split.saving_asked += work.asked;
    }
    split.compared = split.cost + split.saving_asked;
    return split;
}

std::string split_fault(const std::vector<SplitItem>& items, const SplitRules& rules,
                        const std::vector<std::size_t>& to) {
    for (std::size_t i = 0; i < items.size(); ++i) {
        const std::string fault = item_fault(items[i], to[i], rules);
        if (!fault.empty()) {
            return fault;
        }
    }
    const std::vector<double> times = times_of(items, to);
    for (std::size_t r = 0; r < rules.limits.size(); ++r) {
        if (!fits(times.at(r), rules.limits[r].there)) {
            return "more hours of " + rules.limits[r].name + " than there are";
        }
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
