#pragma once
// Quantities of items: as estimated, by structure, and the range that draws give them. Internal.

#include "scupper/bid/pay_items.hpp"

namespace scupper::bid::detail {

/// Figures by which items are counted: where each stands, and its unit.
struct Drivers {
    std::vector<std::size_t> places;  ///< [-, n] of the figure; meaningless for a lump sum
    std::vector<double> unit_factors; ///< [SI per unit, n] 0 for a lump sum
};

/// Looks the drivers of items up.
Drivers drivers_of(std::span<const ItemRule> rules, const estimate::Plan& plan);

/// What draws say of the sum of every driver: 5 % and 95 %, in the item's unit.
struct Range {
    double low, high;
};
std::vector<Range> drawn_ranges(const estimate::Programme& programme,
                                std::span<const Structure> structures, const Drivers& drivers,
                                const ItemSettings& settings);

/// A quantity as it is stated: rounded, but never to nothing.
Decimal stated(double quantity, int decimals, const std::string& path);

} // namespace scupper::bid::detail
