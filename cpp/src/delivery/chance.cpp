#include "scupper/delivery/chance.hpp"

#include "require.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <string>

namespace scupper::delivery {

namespace {

const std::uint64_t stream = hash_text("in-house or contract");

void check_draws(std::size_t draws, std::size_t replicates) {
    detail::require(draws > 0 && replicates > 0 && draws % replicates == 0, "draws",
                    std::to_string(draws),
                    "a whole multiple of " + std::to_string(replicates) + " replicates");
}

void check_totals(const PairedTotals& t) {
    const std::size_t draws = t.direct.size();
    detail::require(draws == t.price.size() && draws == t.crew_time.size(), "draws",
                    std::to_string(draws) + " and " + std::to_string(t.price.size()),
                    "as many draws of either way");
    check_draws(draws, t.replicates);
    const double least = std::min({t.direct_estimated, t.crew_time_estimated, t.price_estimated});
    detail::require(least > 0.0, "estimated", least, "totals above 0");
}

double mean_over(std::span<const double> x, const std::function<double(double)>& f) {
    double sum = 0.0;
    for (const double a : x) {
        sum += f(a);
    }
    return sum / static_cast<double>(x.size());
}

using Statistic = std::function<double(std::span<const double>)>;

simulate::Estimated over_replicates(std::span<const double> x, std::size_t replicates,
                                    const Statistic& statistic) {
    std::vector<double> values;
    const std::size_t size = x.size() / replicates;
    for (std::size_t r = 0; r < replicates; ++r) {
        values.push_back(statistic(x.subspan(r * size, size)));
    }
    const double mean = mean_over(values, [](double v) { return v; });
    const double squares = mean_over(values, [mean](double v) { return (v - mean) * (v - mean); });
    const auto r = static_cast<double>(replicates);
    const double error =
        replicates > 1 ? std::sqrt(squares / (r - 1.0)) : std::numeric_limits<double>::quiet_NaN();
    return {statistic(x), error};
}

} // namespace

Case<double> scaled(const Case<double>& given, double direct, double crew_time, double price) {
    Case<double> c = given;
    c[Input::cost_each] *= direct;
    c[Input::cost_area] *= direct;
    c[Input::time_each] *= crew_time;
    c[Input::time_area] *= crew_time;
    c[Input::price_each] *= price;
    c[Input::price_area] *= price;
    return c;
}

double advantage_at(const Case<double>& given, Basis basis, double direct, double direct_estimated,
                    double price, double price_estimated) {
    check(given);
    const double least = std::min(direct_estimated, price_estimated);
    detail::require(least > 0.0, "estimated", least, "totals above 0");
    if (std::isnan(direct) || std::isnan(price)) {
        return std::numeric_limits<double>::quiet_NaN();
    }
    const auto moved = scaled(given, direct / direct_estimated, 1.0, price / price_estimated);
    return advantage(compare_ways(moved), basis).si();
}

std::vector<double> drawn_advantages(const Case<double>& given, Basis basis,
                                     const PairedTotals& totals,
                                     const std::vector<DrawnInput>& inputs) {
    check(given);
    check_totals(totals);
    std::vector<std::pair<FastQuantile, Sampler>> drawn;
    for (const DrawnInput& d : inputs) {
        const CaseField& field = case_table[static_cast<std::size_t>(d.input)];
        scupper::check(d.guess, std::string(field.key));
        const DrawKey key{totals.seed, stream, hash_text(field.key)};
        drawn.emplace_back(FastQuantile(d.guess),
                           Sampler(Sampling::plain, key, totals.direct.size()));
    }
    std::vector<double> found;
    for (std::size_t i = 0; i < totals.direct.size(); ++i) {
        Case<double> c = given;
        for (std::size_t k = 0; k < inputs.size(); ++k) {
            c[inputs[k].input] = drawn[k].first(drawn[k].second(i));
        }
        c = scaled(c, totals.direct[i] / totals.direct_estimated,
                   totals.crew_time[i] / totals.crew_time_estimated,
                   totals.price[i] / totals.price_estimated);
        found.push_back(advantage(compare_ways(c), basis).si());
    }
    return found;
}

Chance chance_of(std::span<const double> advantages, std::size_t replicates) {
    check_draws(advantages.size(), replicates);
    const auto mean = [&](const std::function<double(double)>& f) {
        return over_replicates(advantages, replicates,
                               [&f](std::span<const double> x) { return mean_over(x, f); });
    };
    Chance chance;
    chance.cheaper = mean([](double a) { return a > 0.0 ? 1.0 : 0.0; });
    chance.advantage = mean([](double a) { return a; });
    chance.regret_in_house = mean([](double a) { return std::max(0.0, -a); });
    chance.regret_contract = mean([](double a) { return std::max(0.0, a); });
    chance.information = chance.regret_in_house.value < chance.regret_contract.value
                             ? chance.regret_in_house
                             : chance.regret_contract;
    std::vector<double> sorted(advantages.begin(), advantages.end());
    std::sort(sorted.begin(), sorted.end());
    chance.quantiles = {estimate::sorted_quantile(sorted, 0.05),
                        estimate::sorted_quantile(sorted, 0.5),
                        estimate::sorted_quantile(sorted, 0.95)};
    return chance;
}

} // namespace scupper::delivery
