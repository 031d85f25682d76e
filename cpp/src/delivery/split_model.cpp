#include "require.hpp"
#include "split_parts.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>

namespace scupper::delivery {

namespace {

constexpr double unlimited = std::numeric_limits<double>::infinity();

void check_rules(const SplitRules& rules) {
    const bool right = std::all_of(rules.limits.begin(), rules.limits.end(),
                                   [](const SplitLimit& l) { return l.there >= 0.0; }) &&
                       rules.kept >= 0.0 && rules.per_contract >= 0.0 && rules.least >= 0.0 &&
                       rules.most >= rules.least && rules.contracts <= 1000;
    detail::require(right, "rules", "a limit that cannot be kept",
                    "hours, costs and sizes >= 0, least <= most, at most 1,000 contracts");
    const SavingRule& s = rules.saving;
    detail::require(s.share >= 0.0 && s.most >= 0.0 && s.years > 0.0 && std::isfinite(s.share) &&
                        std::isfinite(s.years),
                    "rules", "a saving that cannot be asked", "share and most >= 0, years > 0");
}

void check_items(const std::vector<SplitItem>& items, const SplitRules& rules) {
    detail::require(!items.empty(), "items", "none", "at least one structure");
    const auto cost = [](double x) { return std::isnan(x) || (x >= 0.0 && std::isfinite(x)); };
    const auto known = [](double x) { return x >= 0.0 && std::isfinite(x); };
    for (const SplitItem& item : items) {
        const bool own = !std::isnan(item.in_house);
        const bool right = cost(item.in_house) && cost(item.contract) && known(item.size) &&
                           known(item.personnel) && (own || !std::isnan(item.contract)) &&
                           (!own || std::all_of(item.times.begin(), item.times.end(), known));
        detail::require(right, "items", item.name,
                        "costs, hours and size >= 0, and a price for one way at least");
        detail::require(item.times.size() == items.front().times.size() &&
                            item.times.size() >= rules.limits.size(),
                        "items", item.name, "hours of every resource that has a limit");
    }
}

/// Fills the programme row by row.
class ModelWriter {
  public:
    ModelWriter(const std::vector<SplitItem>& items, const SplitRules& rules)
        : items_(items), rules_(rules), layout_(items, rules) {
        model_.unit_of = layout_.unit_of();
        model_.units = layout_.units();
        model_.contracts = layout_.contracts();
        model_.cost.assign(layout_.unknowns(), 0.0);
        model_.upper.assign(layout_.unknowns(), 1.0);
        model_.whole.assign(layout_.unknowns(), 1);
        model_.starts.push_back(0);
    }

    SplitModel write() {
        costs();
        every_unit_goes_somewhere();
        hours();
        only_where(0, layout_.kept());
        for (std::size_t k = 1; k <= layout_.contracts(); ++k) {
            contract(k);
        }
        for (std::size_t g = 0; g < layout_.groups(); ++g) {
            least_saving(g);
        }
        return std::move(model_);
    }

  private:
    void costs() {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            const std::size_t u = layout_.unit_of(i);
            choice(layout_.place(u, 0), items_[i].in_house, !rules_.nothing_in_house);
            for (std::size_t k = 1; k <= layout_.contracts(); ++k) {
                choice(layout_.place(u, k), items_[i].contract + asked(items_[i]),
                       layout_.may_go(items_[i], k));
            }
        }
        model_.cost[layout_.kept()] = rules_.kept;
        for (std::size_t k = 1; k <= layout_.contracts(); ++k) {
            model_.cost[layout_.let(k)] = rules_.per_contract;
        }
    }
    /// What going out is held to save, as long as that stays below its most.
    double asked(const SplitItem& item) const {
        return rules_.saving.over == SavingOver::nothing ? 0.0
                                                         : rules_.saving.share * item.personnel;
    }
    void choice(std::size_t place, double cost, bool allowed) {
        if (std::isnan(cost) || !allowed) {
            model_.upper[place] = 0.0;
        } else {
            model_.cost[place] += cost;
        }
    }

    void every_unit_goes_somewhere() {
        for (std::size_t u = 0; u < layout_.units(); ++u) {
            for (std::size_t k = 0; k <= layout_.contracts(); ++k) {
                entry(layout_.place(u, k), 1.0);
            }
            end_row(1.0, 1.0);
        }
    }

    void hours() {
        for (std::size_t r = 0; r < rules_.limits.size(); ++r) {
            if (rules_.limits[r].there < unlimited) {
                sum(0, [r](const SplitItem& item) { return item.times[r]; });
                end_row(0.0, rules_.limits[r].there);
            }
        }
    }
    /// What the share exceeds the most by is not asked: r <= share of all - most where w, else 0.
    void least_saving(std::size_t group) {
        const double most_excess = detail::excess(items_, rules_.saving);
        const std::size_t reached = layout_.reached(group);
        const std::size_t rebate = layout_.rebate(group);
        model_.cost[rebate] = -1.0;
        model_.upper[rebate] = most_excess;
        model_.whole[rebate] = 0;
        entry(rebate, 1.0);
        entry(reached, -most_excess);
        end_row(-unlimited, 0.0);
        const bool all = rules_.saving.over == SavingOver::programme;
        for (std::size_t k = all ? 1 : group + 1; k <= (all ? layout_.contracts() : group + 1);
             ++k) {
            sum(k, [this](const SplitItem& item) { return -asked(item); });
        }
        entry(rebate, 1.0);
        entry(reached, rules_.saving.most / rules_.saving.years);
        end_row(-unlimited, 0.0);
    }
    void contract(std::size_t k) {
        const auto size = [](const SplitItem& item) { return item.size; };
        if (rules_.least > 0.0) {
            sum(k, size);
            entry(layout_.let(k), -rules_.least);
            end_row(0.0, unlimited);
        }
        if (rules_.most < unlimited) {
            sum(k, size);
            entry(layout_.let(k), -rules_.most);
            end_row(-unlimited, 0.0);
        }
        only_where(k, layout_.let(k));
        if (layout_.follows(k)) {
            entry(layout_.let(k), 1.0);
            entry(layout_.let(k - 1), -1.0);
            end_row(-unlimited, 0.0);
        }
    }
    /// No unit goes to k unless the crew is kept, or the contract is let; and none is let for nothing.
    void only_where(std::size_t k, std::size_t fixed) {
        for (std::size_t u = 0; u < layout_.units(); ++u) {
            entry(layout_.place(u, k), 1.0);
            entry(fixed, -1.0);
            end_row(-unlimited, 0.0);
        }
        for (std::size_t u = 0; u < layout_.units(); ++u) {
            entry(layout_.place(u, k), 1.0);
        }
        entry(fixed, -1.0);
        end_row(0.0, unlimited);
    }

    template <class What>
    void sum(std::size_t k, const What& what) {
        std::vector<double> of_unit(layout_.units(), 0.0);
        for (std::size_t i = 0; i < items_.size(); ++i) {
            of_unit[layout_.unit_of(i)] += what(items_[i]);
        }
        for (std::size_t u = 0; u < layout_.units(); ++u) {
            entry(layout_.place(u, k), of_unit[u]);
        }
    }
    void entry(std::size_t column, double value) {
        model_.columns.push_back(column);
        model_.entries.push_back(value);
    }
    void end_row(double low, double high) {
        model_.starts.push_back(model_.entries.size());
        model_.low.push_back(low);
        model_.high.push_back(high);
    }

    const std::vector<SplitItem>& items_;
    const SplitRules& rules_;
    detail::SplitLayout layout_;
    SplitModel model_{};
};

} // namespace

namespace detail {

double excess(const std::vector<SplitItem>& items, const SavingRule& rule) {
    if (rule.over == SavingOver::nothing) {
        return 0.0;
    }
    double personnel = 0.0;
    for (const SplitItem& item : items) {
        personnel += item.personnel;
    }
    return rule.share * personnel - rule.most / rule.years;
}

SplitLayout::SplitLayout(const std::vector<SplitItem>& items, const SplitRules& rules)
    : within_regions_(rules.within_regions) {
    std::map<std::string, std::size_t> unit_of_region;
    std::set<std::string> regions;
    for (const SplitItem& item : items) {
        regions.insert(rules.within_regions ? item.region : "");
        const auto [at, fresh] = unit_of_region.emplace(item.region, units_);
        const std::size_t unit = rules.together ? at->second : units_;
        unit_of_.push_back(unit);
        units_ += !rules.together || fresh ? 1 : 0;
    }
    for (const std::string& region : regions) {
        regions_of_contracts_.insert(regions_of_contracts_.end(), rules.contracts, region);
    }
    if (excess(items, rules.saving) > 0.0) {
        groups_ = rules.saving.over == SavingOver::programme ? 1 : contracts();
    }
}

} // namespace detail

SplitModel split_model(const std::vector<SplitItem>& items, const SplitRules& rules) {
    check_rules(rules);
    check_items(items, rules);
    return ModelWriter(items, rules).write();
}

} // namespace scupper::delivery
