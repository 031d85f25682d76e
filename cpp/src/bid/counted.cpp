#include "counted.hpp"

#include "scupper/error.hpp"
#include "scupper/simulate/total_draws.hpp"
#include "scupper/unit.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::bid::detail {

namespace {

/// Counts may have the dimension of a count or none; a day or a shift measures nothing else.
bool counts_in(const Dimension& driver, const PayUnit& unit, const std::string& path) {
    const bool is_count = driver == dim::count || driver == dim::none;
    if (unit.unit.empty()) {
        return is_count;
    }
    const Dimension due = parse_unit(unit.unit, path).dimension;
    return driver == due || (due == dim::count && is_count);
}

double factor_of(const ItemRule& rule, const LayoutField& field, const std::string& path) {
    const PayUnit& unit = pay_unit(rule.item.unit, path);
    if (!counts_in(field.dimension, unit, path)) {
        throw InputError({"bid.dimension", path + ".driver", "\"" + rule.driver + "\"",
                          "a figure that is counted in " + rule.item.unit});
    }
    return unit.unit.empty() ? 1.0 : parse_unit(unit.unit, path).factor;
}

/// Draws that have a number; a draw without a price still has its quantities.
std::vector<double> numbers_of(std::vector<double> drawn) {
    std::erase_if(drawn, [](double x) { return std::isnan(x); });
    std::sort(drawn.begin(), drawn.end());
    return drawn;
}

} // namespace

Drivers drivers_of(std::span<const ItemRule> rules, const estimate::Plan& plan) {
    Drivers drivers;
    for (const ItemRule& rule : rules) {
        const std::string path = "items[" + rule.item.code + "]";
        const bool lump = rule.driver.empty();
        const std::size_t place = lump ? 0 : estimate::figure_place_of(plan, rule.driver);
        drivers.places.push_back(place);
        drivers.unit_factors.push_back(lump ? 0.0
                                            : factor_of(rule, plan.figures.fields()[place], path));
    }
    return drivers;
}

std::vector<Range> drawn_ranges(const estimate::Programme& programme,
                                std::span<const Structure> structures, const Drivers& drivers,
                                const ItemSettings& settings) {
    const std::size_t n = drivers.places.size();
    if (n == 0 || settings.draws.draws == 0) {
        return {};
    }
    const auto& [seed, draws, sampling] = settings.draws;
    const auto totals = simulate::total_draws(
        programme, structures, drivers.places,
        {.seed = seed, .draws = draws, .replicates = 1, .sampling = sampling}, settings.threads);
    std::vector<Range> ranges;
    for (std::size_t k = 0; k < n; ++k) {
        const std::vector<double> sample = numbers_of(totals[k]);
        const double factor = drivers.unit_factors[k];
        ranges.push_back(factor == 0.0 ? Range{1.0, 1.0}
                                       : Range{estimate::sorted_quantile(sample, 0.05) / factor,
                                               estimate::sorted_quantile(sample, 0.95) / factor});
    }
    return ranges;
}

Decimal stated(double quantity, int decimals, const std::string& path) {
    const Decimal nearest = rounded_from_double(quantity, decimals, path);
    return quantity > 0.0 && nearest == Decimal() ? Decimal(1, decimals) : nearest;
}

} // namespace scupper::bid::detail
