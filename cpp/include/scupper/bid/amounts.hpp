#pragma once
// Amounts as people write them on bid forms, in figures and in words.

#include "scupper/money.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace scupper::bid {

/// What a cell of a form says.
struct ReadAmount {
    std::optional<Decimal> value{}; ///< [-] the number; none where there is none to take
    std::string why{};              ///< [text] what is doubtful; empty where nothing is
};

/// The number in a cell of a form, exact.
///
/// Accepted beside plain numbers: the currency's sign or code before or after, commas before groups
/// of three, a minus behind, brackets for a negative, a unit after a stroke ("$2.10/SF"). A blank
/// cell has no value and no doubt. A binary fraction that a sheet computed (more than ten decimals)
/// is rounded to six. Letters for digits, decimal commas and words are not taken.
/// @param text [text] the cell
/// @param currency [text] of the form
/// @return [-] the number and what is doubtful about it
/// Range: 18 significant digits.
/// Errors: none; what cannot be read has no value and says why.
/// Source: common practice
/// Verified by: tests/cpp/bid/test_read_form.cpp
ReadAmount read_amount(std::string_view text, const Currency& currency);

/// The amount that English words say: "two hundred ten dollars and fifty cents", "2 dollars and
/// 10/100".
///
/// @param words [text] as on a form
/// @return [currency] the amount; none where a word is not understood
/// Range: below a thousand million; whole dollars and cents.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/bid/test_read_form.cpp
std::optional<Decimal> amount_in_words(std::string_view words);

} // namespace scupper::bid
