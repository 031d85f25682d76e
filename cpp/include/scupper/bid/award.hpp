#pragma once
// What an award may be decided by beside the base bid: alternates, time, competition, the estimate.

#include "scupper/bid/price_table.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace scupper::bid {

/// Bids on the base items and some of the others.
struct AwardStage {
    std::string name;               ///< [text] as "base + A1 + A2"
    std::vector<std::size_t> added; ///< [-, n] items beside the base items
    Amounts totals;                 ///< [currency, bids] none where an item has no price
    std::vector<std::size_t> ranks; ///< [-, bids] as `ranks`
};

/// How many bids are near the low one.
struct Competition {
    std::array<std::size_t, 3> within{}; ///< [-] bids within 5, 10 and 20 % of low, low among them
    bool excellent = false;              ///< [-] six or more within 20 %
};

inline constexpr std::array<double, 3> competition_bands{0.05, 0.10,
                                                         0.20}; ///< [-] of `Competition::within`

/// How often an estimate was near the low bid.
struct EstimateAccuracy {
    std::size_t projects = 0; ///< [-] with a low bid and an estimate
    std::size_t near = 0;     ///< [-] with an estimate within a tenth of the low bid
    bool met = false;         ///< [-] at least half of them
};

/// Who is low as the owner takes up alternates in the order stated, and with each optional item.
///
/// Formula: total = base + alternates so far; base + one optional item
/// @param table [-] prices of bids; the order of the form's alternates is the owner's
/// @return [-, n] base first, alternates cumulated, then optional items one by one
/// Range: any number of items.
/// Errors: MoneyError `money.overflow`
/// Source: common practice of alternates in a stated order
/// Verified by: tests/cpp/bid/test_award.cpp
std::vector<AwardStage> award_stages(const PriceTable& table);

/// What bids are compared by when the days are counted (A + B).
///
/// Formula: as `closure::bid_with_time`, rounded to the minor unit; what is paid stays the bid
/// @param form [-] whose currency it is
/// @param totals [currency, bids]
/// @param days [day, bids] time bid
/// @param daily_cost [currency per day] road-user cost
/// @return [currency, bids] nothing where a total or the days are not known
/// Range: daily cost of 0 and above.
/// Errors: InputError `bid.days` where days are below 0, `bid.daily_cost` where the cost is
/// Source: cost-plus-time bidding, common practice
/// Verified by: tests/cpp/bid/test_award.cpp
Amounts with_time(const ItemList& form, std::span<const std::optional<Decimal>> totals,
                  std::span<const std::optional<Decimal>> days, const Decimal& daily_cost);

/// How many bids lie near the low one.
///
/// Formula: number of totals <= low (1 + band)
/// @param totals [currency, bids]
/// @return [-] counts by band
/// Range: a low total above zero; else no bid is near.
/// Errors: none.
/// Source: six within 20 %: FHWA guideline of 2004, superseded 2021 (from memory, row bids-004);
/// the narrower bands: common practice
/// Verified by: tests/cpp/bid/test_award.cpp
Competition competition(std::span<const std::optional<Decimal>> totals);

/// Whether estimates are near enough to low bids often enough.
///
/// Formula: near where |estimate - low| <= 0.10 low; met where near >= half the projects
/// @param projects [currency, n] estimate and low bid
/// @return [-] counts; not met without projects
/// Range: low bids above zero are counted.
/// Errors: none.
/// Source: FHWA criterion as stated in KTC-91-6 (1991), row bids-001
/// Verified by: tests/cpp/bid/test_award.cpp
EstimateAccuracy estimate_accuracy(std::span<const std::pair<Decimal, Decimal>> projects);

} // namespace scupper::bid
