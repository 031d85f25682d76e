#include "require.hpp"
#include "split_parts.hpp"

#include <cmath>
#include <limits>
#include <map>
#include <set>

namespace scupper::delivery {

namespace {

constexpr double unlimited = std::numeric_limits<double>::infinity();

void check_rules(const SplitRules& rules) {
    const bool right = rules.time_there >= 0.0 && rules.kept >= 0.0 && rules.per_contract >= 0.0 &&
                       rules.least >= 0.0 && rules.most >= rules.least && rules.contracts <= 1000;
    detail::require(right, "rules", "a limit that cannot be kept",
                    "time, costs and sizes >= 0, least <= most, at most 1,000 contracts");
}

void check_items(const std::vector<SplitItem>& items) {
    detail::require(!items.empty(), "items", "none", "at least one structure");
    const auto cost = [](double x) { return std::isnan(x) || (x >= 0.0 && std::isfinite(x)); };
    const auto known = [](double x) { return x >= 0.0 && std::isfinite(x); };
    for (const SplitItem& item : items) {
        const bool own = !std::isnan(item.in_house);
        const bool right = cost(item.in_house) && cost(item.contract) && known(item.size) &&
                           (own || !std::isnan(item.contract)) && (!own || known(item.time));
        detail::require(right, "items", item.name,
                        "costs, time and size >= 0, and a price for one way at least");
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
        model_.starts.push_back(0);
    }

    SplitModel write() {
        costs();
        every_unit_goes_somewhere();
        crew_time();
        for (std::size_t k = 1; k <= layout_.contracts(); ++k) {
            contract(k);
        }
        return std::move(model_);
    }

  private:
    void costs() {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            const std::size_t u = layout_.unit_of(i);
            choice(layout_.place(u, 0), items_[i].in_house, !rules_.nothing_in_house);
            for (std::size_t k = 1; k <= layout_.contracts(); ++k) {
                choice(layout_.place(u, k), items_[i].contract, layout_.may_go(items_[i], k));
            }
        }
        model_.cost[layout_.kept()] = rules_.kept;
        for (std::size_t k = 1; k <= layout_.contracts(); ++k) {
            model_.cost[layout_.let(k)] = rules_.per_contract;
        }
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

    void crew_time() {
        if (rules_.time_there < unlimited) {
            sum(0, &SplitItem::time);
            end_row(0.0, rules_.time_there);
        }
        only_where(0, layout_.kept());
    }
    void contract(std::size_t k) {
        if (rules_.least > 0.0) {
            sum(k, &SplitItem::size);
            entry(layout_.let(k), -rules_.least);
            end_row(0.0, unlimited);
        }
        if (rules_.most < unlimited) {
            sum(k, &SplitItem::size);
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

    void sum(std::size_t k, double SplitItem::*what) {
        std::vector<double> of_unit(layout_.units(), 0.0);
        for (std::size_t i = 0; i < items_.size(); ++i) {
            of_unit[layout_.unit_of(i)] += items_[i].*what;
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
}

} // namespace detail

SplitModel split_model(const std::vector<SplitItem>& items, const SplitRules& rules) {
    check_rules(rules);
    check_items(items);
    return ModelWriter(items, rules).write();
}

} // namespace scupper::delivery
