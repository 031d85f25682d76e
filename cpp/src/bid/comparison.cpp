#include "scupper/bid/comparison.hpp"

#include "item_prices.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::bid {

namespace {

std::vector<Decimal> known(std::span<const std::optional<Decimal>> totals) {
    std::vector<Decimal> values;
    for (const auto& total : totals) {
        if (total) {
            values.push_back(*total);
        }
    }
    std::sort(values.begin(), values.end());
    return values;
}

double mean_of(const std::vector<Decimal>& values) {
    double sum = 0.0;
    for (const Decimal& value : values) {
        sum += to_double(value);
    }
    return sum / static_cast<double>(values.size());
}

double sd_of(const std::vector<Decimal>& values, double mean) {
    double squares = 0.0;
    for (const Decimal& value : values) {
        const double away = to_double(value) - mean;
        squares += away * away;
    }
    return std::sqrt(squares / static_cast<double>(values.size() - 1));
}

} // namespace

std::vector<std::size_t> ranks(std::span<const std::optional<Decimal>> totals) {
    const std::vector<Decimal> sorted = known(totals);
    std::vector<std::size_t> out;
    for (const auto& total : totals) {
        const auto less =
            total ? std::lower_bound(sorted.begin(), sorted.end(), *total) : sorted.end();
        out.push_back(total ? 1 + static_cast<std::size_t>(less - sorted.begin()) : 0);
    }
    return out;
}

Spread spread_of(std::span<const std::optional<Decimal>> totals) {
    const std::vector<Decimal> sorted = known(totals);
    Spread spread;
    spread.number = sorted.size();
    if (sorted.empty()) {
        return spread;
    }
    spread.low = sorted.front();
    spread.high = sorted.back();
    spread.mean = mean_of(sorted);
    if (sorted.size() > 1) {
        spread.second = sorted[1];
        spread.left = sorted[1] - sorted[0];
        spread.left_share = ratio(spread.left, spread.low);
        spread.high_ratio = ratio(spread.high, spread.low);
        spread.second_ratio = ratio(spread.second, spread.low);
        spread.sd = sd_of(sorted, *spread.mean);
    }
    return spread;
}

std::optional<double> ratio(const std::optional<Decimal>& amount,
                            const std::optional<Decimal>& base) {
    if (!amount || !base || *base <= Decimal()) {
        return std::nullopt;
    }
    return to_double(*amount) / to_double(*base);
}

Comparison compare(const PriceTable& table, const OutlierRule& rule) {
    if (!(rule.score > 0.0) || rule.fewest < 3) {
        throw InputError(
            {"bid.outlier", "outlier rule",
             std::to_string(rule.score) + " of " + std::to_string(rule.fewest) + " bids",
             "a score above 0 and at least 3 bids"});
    }
    Comparison out;
    out.totals = base_totals(table);
    out.ranks = ranks(out.totals);
    out.spread = spread_of(out.totals);
    if (!table.estimate.empty()) {
        out.estimate = base_total(table.form, table.estimate);
    }
    detail::ItemPrices prices;
    for (std::size_t item = 0; item < table.items(); ++item) {
        prices.take(table, item);
        out.items.push_back(prices.spread());
        prices.outliers(item, rule, out.outliers);
    }
    return out;
}

} // namespace scupper::bid
