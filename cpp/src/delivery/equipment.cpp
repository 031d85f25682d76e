#include "scupper/delivery/equipment.hpp"

#include "require.hpp"
#include "scupper/cost.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace scupper::delivery {

namespace {

void at_least_zero(const char* name, double value) {
    detail::require(value >= 0.0 && std::isfinite(value), name, value, ">= 0");
}

void share(const char* name, double value) {
    detail::require(value >= 0.0 && value <= 1.0, name, value, "0 to 1");
}

void check(const Purchase& p) {
    at_least_zero("price", p.price);
    share("loses", p.loses);
    at_least_zero("operating", p.operating);
    detail::require(std::isfinite(p.growth), "growth", p.growth, "a number");
}

/// The rate of the flows' own kind.
double own_rate(Prices prices, double rate, Prices rate_of, std::optional<double> inflation) {
    if (prices == rate_of) {
        return rate;
    }
    detail::require(inflation.has_value(), "rate_of",
                    std::string(price_names[static_cast<std::size_t>(rate_of)]) + " on prices " +
                        std::string(price_names[static_cast<std::size_t>(prices)]),
                    "a real rate on constant prices, a nominal one on current prices, or inflation "
                    "to carry one over");
    return prices == Prices::current ? cost::nominal_rate(rate, *inflation)
                                     : cost::real_rate(rate, *inflation);
}

} // namespace

double salvage(const Purchase& purchase, double years) {
    check(purchase);
    at_least_zero("years", years);
    return purchase.price * std::pow(1.0 - purchase.loses, years);
}

double annual_cost(const Purchase& p, double years) {
    const double sold = salvage(p, years);
    return p.price * cost::capital_recovery_factor(p.interest, years) -
           sold * cost::sinking_fund_factor(p.interest, years) + p.operating +
           p.growth * cost::gradient_series_factor(p.interest, years);
}

EconomicLife economic_life(const Purchase& purchase, int most) {
    detail::require(most >= 1 && most <= 100, "most", std::to_string(most), "1 to 100 years");
    EconomicLife life;
    for (int n = 1; n <= most; ++n) {
        life.by_age.push_back(annual_cost(purchase, n));
    }
    const auto least = std::min_element(life.by_age.begin(), life.by_age.end());
    life.cost = *least;
    life.years = static_cast<double>(least - life.by_age.begin()) + 1.0;
    life.at_end = least + 1 == life.by_age.end();
    return life;
}

double net_present_value(std::span<const double> flows, Prices prices, double rate, Prices rate_of,
                         std::optional<double> inflation) {
    const bool numbers =
        std::all_of(flows.begin(), flows.end(), [](double x) { return std::isfinite(x); });
    detail::require(!flows.empty() && numbers, "flows", std::to_string(flows.size()) + " flows",
                    "a number for every year, at least one");
    const double own = own_rate(prices, rate, rate_of, inflation);
    double worth = 0.0;
    for (std::size_t k = 0; k < flows.size(); ++k) {
        worth += flows[k] * cost::present_worth_factor(own, static_cast<double>(k));
    }
    return worth;
}

Time<> available_time(double number, double days, double shifts, const Time<>& shift, double leave,
                      double lost) {
    at_least_zero("number", number);
    at_least_zero("days", days);
    at_least_zero("shifts", shifts);
    at_least_zero("shift", shift.si());
    share("leave", leave);
    share("lost", lost);
    return (number * days * shifts * (1.0 - leave) * (1.0 - lost)) * shift;
}

} // namespace scupper::delivery
