#include "item_prices.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace scupper::bid::detail {

namespace {

/// Four times a price has to fit, for twice a deviation from twice a median.
constexpr std::int64_t largest = 9'000'000'000'000'000'000 / 8;

std::int64_t at_scale(const Decimal& price, int scale, const std::string& code) {
    std::int64_t value = price.coefficient();
    for (int s = price.scale(); s < scale; ++s) {
        if (std::abs(value) > largest / 10) {
            throw MoneyError({"money.overflow", code + ".unit_price", to_text(price),
                              "prices of at most 18 significant digits, decimals included"});
        }
        value *= 10;
    }
    return value;
}

} // namespace

void ItemPrices::take(const PriceTable& table, std::size_t item) {
    bids_.clear();
    prices_.clear();
    scale_ = 0;
    const std::size_t items = table.items();
    for (std::size_t at = item; at < table.prices.size(); at += items) {
        scale_ = table.prices[at] ? std::max(scale_, table.prices[at]->scale()) : scale_;
    }
    scale_ = std::min(scale_, Decimal::max_scale - 2);
    for (std::size_t bid = 0; bid < table.bidders.size(); ++bid) {
        if (const auto& price = table.prices[bid * items + item]) {
            bids_.push_back(bid);
            prices_.push_back(at_scale(*price, scale_, table.form.items[item].code));
        }
    }
}

std::int64_t ItemPrices::twice_median(std::vector<std::int64_t>& values) const {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1) {
        return 2 * *middle;
    }
    return *middle + *std::max_element(values.begin(), middle);
}

Decimal ItemPrices::half(std::int64_t twice) const {
    return twice % 2 == 0 ? Decimal(twice / 2, scale_) : Decimal(twice, scale_) * Decimal(5, 1);
}

ItemSpread ItemPrices::spread() {
    ItemSpread spread;
    spread.number = prices_.size();
    if (prices_.empty()) {
        return spread;
    }
    const auto [low, high] = std::minmax_element(prices_.begin(), prices_.end());
    spread.low = Decimal(*low, scale_);
    spread.high = Decimal(*high, scale_);
    scratch_ = prices_;
    twice_median_ = twice_median(scratch_);
    spread.median = half(twice_median_);
    for (std::size_t i = 0; i < prices_.size(); ++i) {
        scratch_[i] = std::abs(2 * prices_[i] - twice_median_);
    }
    four_deviations_ = twice_median(scratch_);
    spread.deviation = Decimal(four_deviations_, scale_) * Decimal(25, 2);
    return spread;
}

void ItemPrices::outliers(std::size_t item, const OutlierRule& rule,
                          std::vector<Outlier>& out) const {
    if (prices_.size() < rule.fewest || four_deviations_ == 0) {
        return;
    }
    const double unit = 0.6745 * 2.0 / static_cast<double>(four_deviations_);
    for (std::size_t i = 0; i < prices_.size(); ++i) {
        const double score = unit * static_cast<double>(2 * prices_[i] - twice_median_);
        if (std::abs(score) > rule.score) {
            out.push_back({bids_[i], item, score});
        }
    }
}

} // namespace scupper::bid::detail
