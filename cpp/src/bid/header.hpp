#pragma once
// The rows of headings of a form, one or several, and what they say of a column. Internal to reading
// it.

#include "form_words.hpp"

namespace scupper::bid::detail {

/// The cell of a row; empty past its end.
const std::string& cell_at(const Sheet& sheet, std::size_t row, std::size_t column);
/// The place of a row.
Place place_of(const Sheet& sheet, std::size_t row);

/// The rows of headings, from 0.
struct Header {
    std::size_t first;
    std::size_t last;

    bool holds(std::size_t row) const { return row >= first && row <= last; }
};

/// What the cells of a column say, from the upper row of headings to the lower.
struct ColumnHeading {
    std::string text{};       ///< all of it: "Unit" over "Price" is "Unit Price"
    Role role = Role::none;   ///< what stands in the column
    std::string bidder{};     ///< whose it is, where the heading says so
    std::string name_above{}; ///< text over a price's heading, where the rows of headings hold one
    std::size_t cells = 0;    ///< of the rows that are the heading; without names above and rest
    std::string rest{};       ///< words that are no part of a heading that is known
};
ColumnHeading heading_of(const Sheet& sheet, const Header& header, std::size_t column);

/// The rows that name most columns of a form; of equals those whose cells say more, then the fewest.
Header header_of(const Sheet& sheet, const FormMapping& mapping);
/// How many columns the rows of headings have.
std::size_t width_of(const Sheet& sheet, const Header& header);
/// Whether a role is a bidder's own: a price, in figures or words.
bool is_price(Role role);

} // namespace scupper::bid::detail
