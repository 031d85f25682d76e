#include "factors.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <limits>

namespace scupper::simulate::detail {

namespace {

constexpr std::size_t alone = std::numeric_limits<std::size_t>::max();

using KeyLists = std::vector<std::vector<std::string>>;

bool meet(const std::vector<std::string>& a, const std::vector<std::string>& b) {
    return std::any_of(a.begin(), a.end(), [&](const std::string& key) {
        return std::find(b.begin(), b.end(), key) != b.end();
    });
}

/// The lists asked for, and inputs that the job draws together: those that share a key are one.
KeyLists joined_lists(const KeyLists& together, const Job& job) {
    KeyLists lists = together;
    for (const Correlation& correlation : job.correlations) {
        std::vector<std::string> joined = correlation.inputs;
        for (auto list = lists.begin(); list != lists.end();) {
            if (!meet(*list, joined)) {
                ++list;
                continue;
            }
            for (const std::string& key : *list) {
                if (std::find(joined.begin(), joined.end(), key) == joined.end()) {
                    joined.push_back(key);
                }
            }
            list = lists.erase(list);
        }
        lists.push_back(std::move(joined));
    }
    return lists;
}

/// By input place the number of the list it stands in.
std::vector<std::size_t> lists_of(const estimate::Plan& plan, const KeyLists& together) {
    std::vector<std::size_t> lists(plan.inputs.size(), alone);
    for (std::size_t list = 0; list < together.size(); ++list) {
        for (const std::string& key : together[list]) {
            std::size_t& mine = lists[plan.inputs.at(key, "simulate.together")];
            if (mine != alone) {
                throw InputError({"simulate.together", "together", key, "each key once"});
            }
            mine = list;
        }
    }
    return lists;
}

void add_input(const Swing& swing, FactorRow& row, Factor& places) {
    row.label += (row.keys.empty() ? "" : " + ") + swing.label;
    row.keys.push_back(swing.key);
    places.push_back(swing.place);
}

} // namespace

Factors factors_of(const Swings& swings, const estimate::Plan& plan,
                   const SensitivitySettings& settings) {
    const KeyLists together = joined_lists(settings.together, plan.job);
    const std::vector<std::size_t> lists = lists_of(plan, together);
    std::vector<std::size_t> factor_of_list(together.size(), alone);
    Factors factors;
    FactorRow others{.keys = {}, .label = {}, .others = true, .indices = {}};
    Factor others_places;
    for (const Swing& swing : swings.rows) { // widest first: a list ranks as its widest
        const std::size_t list = lists[swing.place];
        std::size_t at = list == alone ? alone : factor_of_list[list];
        if (at == alone) {
            at = std::min(factors.rows.size(), settings.top);
            if (at < settings.top) {
                factors.rows.emplace_back();
                factors.places.emplace_back();
            }
            if (list != alone) {
                factor_of_list[list] = at;
            }
        }
        const bool is_other = at >= settings.top;
        add_input(swing, is_other ? others : factors.rows[at],
                  is_other ? others_places : factors.places[at]);
    }
    if (!others.keys.empty()) {
        others.label = std::to_string(others.keys.size()) + " others";
        factors.rows.push_back(std::move(others));
        factors.places.push_back(std::move(others_places));
    }
    return factors;
}

} // namespace scupper::simulate::detail
