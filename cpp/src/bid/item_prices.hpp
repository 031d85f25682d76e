#pragma once
// Prices of one item as whole numbers of one scale, so that a median is exact and sorting quick.

#include "scupper/bid/comparison.hpp"

#include <cstdint>
#include <vector>

namespace scupper::bid::detail {

/// The prices of one item that are known, and whose they are.
class ItemPrices {
  public:
    /// Takes the prices of an item from a table. Raises MoneyError where they span too many digits.
    void take(const PriceTable& table, std::size_t item);
    /// Low, median, high and the median absolute deviation.
    ItemSpread spread();
    /// Adds what lies beyond the rule; to be asked after `spread`.
    void outliers(std::size_t item, const OutlierRule& rule, std::vector<Outlier>& out) const;

  private:
    std::int64_t twice_median(std::vector<std::int64_t>& values) const;
    Decimal half(std::int64_t twice) const;

    std::vector<std::size_t> bids_;
    std::vector<std::int64_t> prices_;
    std::vector<std::int64_t> scratch_;
    std::int64_t twice_median_ = 0;
    std::int64_t four_deviations_ = 0;
    int scale_ = 0;
};

} // namespace scupper::bid::detail
