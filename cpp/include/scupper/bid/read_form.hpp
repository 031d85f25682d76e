#pragma once
// Bid forms as owners get them: rows of text cells become bids, and nothing is lost on the way.

#include "scupper/bid/bid.hpp"

#include <array>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::bid {

/// A sheet as text, row by row and cell by cell as in the file.
struct Sheet {
    std::string file;                           ///< [text] name of the file
    std::string name;                           ///< [text] of the sheet; empty for text files
    std::vector<std::vector<std::string>> rows; ///< [text] cells; blank ones are empty
};

/// What stands in a column of a form.
enum class Role { none, code, description, unit, quantity, unit_price, extension, words };

inline constexpr std::array<std::string_view, 8> role_names{
    "none",     "code",       "description", "unit",
    "quantity", "unit_price", "extension",   "words"}; ///< [text] by Role

/// Columns of one bidder on a tabulation; by heading, or by letter.
struct BidderColumns {
    std::string bidder;     ///< [text] who bids
    std::string unit_price; ///< [text] heading or letter; may be empty
    std::string extension;  ///< [text] heading or letter; may be empty
};

/// How forms of one kind are to be read; what is left out is guessed.
struct FormMapping {
    int header_row = 0;                                  ///< [-] from 1; 0: guessed
    std::vector<std::pair<Role, std::string>> columns{}; ///< [text] heading or letter by role
    std::vector<BidderColumns> bidders{};                ///< [-, n] of a tabulation
    std::string bidder{};                                ///< [text] of a form of one bidder
    std::string engineer{};                              ///< [text] bidder that is the estimate
    std::vector<std::string> total_words{};              ///< [text] that begin a row of totals
    std::string currency = "USD";                        ///< [text] of every amount
};

/// What a column was taken for.
struct ReadColumn {
    std::size_t column;  ///< [-] from 0
    Role role;           ///< [-] what stands in it
    std::string heading; ///< [text] as on the form
    std::string bidder;  ///< [text] whose it is; empty for what all have in common
};

/// A cell that may have been misread, and what was taken.
struct Doubt {
    Place place;        ///< [-] file, sheet and line
    std::string column; ///< [text] letter; empty where it concerns a row or the sheet
    std::string text;   ///< [text] what stands there
    std::string why;    ///< [text] what is doubtful
    std::string taken;  ///< [text] what was taken
};

/// A row that is no item, and what it was taken for.
struct OtherRow {
    Place place;      ///< [-] file, sheet and line
    std::string text; ///< [text] its cells
    std::string as;   ///< [text] "title", "heading", "total", "subtotal", "group", "note", "?"
};

/// One sheet as it was understood.
struct SheetRead {
    std::string file;                  ///< [text] name of the file
    std::string sheet;                 ///< [text] name of the sheet
    int header_row = 0;                ///< [-] from 1, the first of its headings
    int header_rows = 1;               ///< [-] rows that the headings stand over
    std::vector<ReadColumn> columns{}; ///< [-, n] what each was taken for
    std::vector<PayItem> items{};      ///< [-, n] items of the form
    std::vector<Bid> bids{};           ///< [-, n] one a bidder
    std::vector<Doubt> doubts{};       ///< [-, n] what may be misread
    std::vector<OtherRow> others{};    ///< [-, n] rows that are no item; blank ones left out
    int total_row = 0;                 ///< [-] from 1 of what was taken as total; 0 for none
};

/// Reads a sheet: one bidder's form, or a tabulation with columns for each.
///
/// The headings are the row, or the two or three rows read downwards ("Unit" over "Price"), that
/// name most columns of a form. Names of bidders stand in cells above their columns, beneath a merged
/// heading, in the heading itself ("A unit price"), or beside a word such as "bidder". Every row that is not blank is an item or among `others`.
/// @param sheet [-] the sheet
/// @param mapping [-] what is known of it
/// @return [-] what was understood
/// Range: any text.
/// Errors: InputError `bid.header` where no row names quantity and price, `bid.column` where the
/// mapping names a column that is not there, `bid.no_item` where there is no item; MoneyError
/// `money.currency`.
/// Source: common practice
/// Verified by: tests/cpp/bid/test_read_form.cpp
SheetRead read_sheet(const Sheet& sheet, const FormMapping& mapping);

/// Sheets for one contract together: the items of the first, then what others add; where units or
/// quantities differ from the first it is a doubt. A bidder who is the engineer goes to `engineer`.
///
/// @param sheets [-, n] sheets that were read
/// @param mapping [-] as they were read with
/// @param doubts [-, n] what is found is added
/// @return [-] the bids
/// Range: at least one sheet.
/// Errors: InputError `bid.bidder` for two bids of one name, `bid.no_item`; MoneyError
/// `money.currency`.
/// Source: common practice
/// Verified by: tests/cpp/bid/test_read_form.cpp
BidSet joined(std::span<const SheetRead> sheets, const FormMapping& mapping,
              std::vector<Doubt>& doubts);

/// The letters of a column as sheets have them: 0 is A, 26 is AA.
///
/// @param column [-] from 0
/// @return [text] one to three letters
/// Range: columns of a sheet.
/// Errors: none.
/// Source: ISO/IEC 29500-1:2016, 18.3.1.4, references to cells
/// Verified by: tests/cpp/bid/test_read_form.cpp
std::string column_letters(std::size_t column);

} // namespace scupper::bid
