#include "scupper/delivery/case.hpp"

#include "require.hpp"
#include "scupper/unit.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>
#include <vector>

namespace scupper::delivery {

namespace {

void check_lists(std::span<const double> costs, std::span<const double> areas) {
    const auto usable = [](double x) { return x >= 0.0 && std::isfinite(x); };
    const bool right = costs.size() == areas.size() && !costs.empty() &&
                       std::all_of(costs.begin(), costs.end(), usable) &&
                       std::all_of(areas.begin(), areas.end(), usable);
    detail::require(right, "costs", std::to_string(costs.size()) + " costs",
                    "a cost and an area >= 0 for every structure");
}

double sum_of(std::span<const double> x) {
    return std::accumulate(x.begin(), x.end(), 0.0);
}

double mean_of(std::span<const double> x) {
    return sum_of(x) / static_cast<double>(x.size());
}

} // namespace

Input input_of(std::string_view key) {
    std::vector<std::string_view> keys;
    for (std::size_t i = 0; i < case_table.size(); ++i) {
        keys.push_back(case_table[i].key);
        if (keys.back() == key) {
            return static_cast<Input>(i);
        }
    }
    detail::unknown("key", key, keys);
}

Case<double> empty_case() {
    Case<double> given;
    for (std::size_t i = 0; i < case_table.size(); ++i) {
        given.values[i] = case_table[i].without;
    }
    return given;
}

void check(const Case<double>& given) {
    for (std::size_t i = 0; i < case_table.size(); ++i) {
        const CaseField& field = case_table[i];
        const double value = given.values[i];
        if (!(value >= field.least && value <= field.most)) {
            const std::string most = format_number(field.most, 9);
            detail::refuse(std::string(field.key), value,
                           format_number(field.least, 9) + " to " + most + " (SI)");
        }
    }
    detail::require(given[Input::ownership] <= 0.0 || given[Input::rated_time] > 0.0,
                    "in_house.rated_time", "0", "> 0 where equipment is owned");
}

TwoPart two_part(std::span<const double> costs, std::span<const double> areas) {
    check_lists(costs, areas);
    const double cost = mean_of(costs);
    const double area = mean_of(areas);
    double both = 0.0;
    double spread = 0.0;
    double total = 0.0;
    for (std::size_t i = 0; i < costs.size(); ++i) {
        both += (areas[i] - area) * (costs[i] - cost);
        spread += (areas[i] - area) * (areas[i] - area);
        total += (costs[i] - cost) * (costs[i] - cost);
    }
    const double steepest = area > 0.0 ? cost / area : 0.0;
    TwoPart parts;
    parts.by_area = spread > 0.0 ? std::clamp(both / spread, 0.0, steepest) : 0.0;
    parts.each = std::max(0.0, cost - parts.by_area * area);
    double left = 0.0;
    for (std::size_t i = 0; i < costs.size(); ++i) {
        const double off = costs[i] - parts.each - parts.by_area * areas[i];
        left += off * off;
    }
    parts.explains = total > 0.0 ? 1.0 - left / total : 1.0;
    return parts;
}

Case<double> priced_case(const Case<double>& given, const PricedList& list) {
    const TwoPart direct = two_part(list.direct, list.areas);
    const TwoPart time = two_part(list.crew_time, list.areas);
    const TwoPart price = two_part(list.price, list.areas);
    const double all = sum_of(list.direct);
    Case<double> c = given;
    c[Input::structures] = static_cast<double>(list.areas.size());
    c[Input::area] = sum_of(list.areas);
    c[Input::cost_each] = direct.each;
    c[Input::cost_area] = direct.by_area;
    c[Input::labour_share] = all > 0.0 ? sum_of(list.wages) / all : 0.0;
    c[Input::time_each] = time.each;
    c[Input::time_area] = time.by_area;
    c[Input::price_each] = price.each;
    c[Input::price_area] = price.by_area;
    check(c);
    return c;
}

} // namespace scupper::delivery
