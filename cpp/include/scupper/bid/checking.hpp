#pragma once
// The arithmetic of bids as they were read: what does not multiply or add, and what follows by the
// rule that governs. Nothing is dropped; what is irregular is said in a sentence.

#include "scupper/bid/bid.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::bid {

/// What holds where the figures of a bid contradict each other. The instructions to bidders say.
enum class Governs {
    unit_price, ///< the unit price in figures
    words,      ///< the unit price in words; in figures where there are none
    extension,  ///< the extension as written; the unit price follows
};

inline constexpr std::array<std::string_view, 3> governs_names{"unit_price", "words",
                                                               "extension"}; ///< [text] by Governs

/// What can be found in a bid.
enum class FindingKind {
    missing_line,
    missing_price,
    zero_price,
    penny_price,
    negative_price,
    duplicate,
    unknown_item,
    quantity_differs,
    words_differ,
    extension_differs,
    total_differs,
    no_total,
};

/// A kind of finding: its word, whether it makes a bid irregular, what the owner may do.
struct FindingRow {
    std::string_view name;   ///< [text] word for programs and tables
    bool irregular;          ///< [-] false: only worth knowing
    std::string_view remedy; ///< [text] what the owner may do; local rules decide
};

inline constexpr std::array<FindingRow, 12> finding_table{{
    {"missing_line", true, "The owner may ask whether the rules allow a bid without this item."},
    {"missing_price", true, "The owner may ask whether the rules allow a bid without this price."},
    {"zero_price", true, "The owner may ask whether the work of this item is included elsewhere."},
    {"penny_price", false, "The owner may ask what the price covers; no other price need be high."},
    {"negative_price", true, "The owner may ask whether a credit was meant and is allowed."},
    {"duplicate", true, "The first line is used; the owner may ask which one holds."},
    {"unknown_item", true, "It is in no corrected total; the owner may ask why it was added."},
    {"quantity_differs", true, "The quantity of the form is used; every bid is compared on it."},
    {"words_differ", true, "The named rule decides; the owner may have the bidder confirm it."},
    {"extension_differs", true,
     "The named rule decides; the owner may have the bidder confirm it."},
    {"total_differs", true, "The corrected total is compared; the total as read stands beside it."},
    {"no_total", false, "The sum of the extensions stands in its place."},
}}; ///< by FindingKind

/// Something found in a bid.
struct Finding {
    FindingKind kind; ///< [-] what it is
    std::string item; ///< [text] code of the item; empty where it concerns the whole bid
    std::string text; ///< [text] a sentence with the figures
    Place place{};    ///< [-] where it stands
};

/// One item of one bid.
struct CheckedLine {
    std::optional<Decimal> read_price;     ///< [currency per unit] in figures, as written
    std::optional<Decimal> read_extension; ///< [currency] as written
    std::optional<Decimal> price;          ///< [currency per unit] that governs
    std::optional<Decimal> extension;      ///< [currency] of the form's quantity at that price
};

/// A bid with its arithmetic done again.
struct CheckedBid {
    std::string bidder;               ///< [text] who bids
    std::vector<CheckedLine> lines;   ///< [-, n] in the order of the form
    std::optional<Decimal> as_read;   ///< [currency] total as written, else sum of the extensions
    std::optional<Decimal> corrected; ///< [currency] base items; none where one has no price
    std::optional<Decimal> days;      ///< [day] time bid
    std::vector<Finding> findings;    ///< [-, n] in the order of the form, the whole bid last

    /// Whether a finding makes it irregular [-].
    bool irregular() const;
};

/// Bids with their arithmetic done again under a rule.
///
/// The quantity is the form's, whatever a bidder wrote. A price that only the extension tells is
/// the extension by the quantity. Nothing that is missing becomes zero: such a bid has no corrected
/// total.
/// Formula: extension = round(price x quantity); corrected total = sum over base items
/// @param set [-] bids as they were read
/// @param governs [-] what holds where figures contradict each other
/// @return [-, n] by bid, in their order
/// Range: any number of bids and items.
/// Errors: InputError `bid.code` where two items of the form have one code; MoneyError
/// `money.overflow`
/// Source: unit price governs: City of Tukwila bid award memo, 13 May 2016; words and extension:
/// common practice of instructions to bidders
/// Verified by: tests/cpp/bid/test_checking.cpp
std::vector<CheckedBid> check_bids(const BidSet& set, Governs governs);

/// The engineer's estimate as a bid with its arithmetic done again.
///
/// @param set [-] bids as they were read
/// @return [-] the estimate by unit prices; nothing where there is none
/// Range: any number of items.
/// Errors: as `check_bids`
/// Source: definition
/// Verified by: tests/cpp/bid/test_checking.cpp
std::optional<CheckedBid> check_estimate(const BidSet& set);

} // namespace scupper::bid
