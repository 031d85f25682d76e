#include "form_rows.hpp"

#include "headings.hpp"

#include <algorithm>
#include <set>

namespace scupper::bid::detail {

namespace {

class Rows {
  public:
    Rows(const Sheet& sheet, const FormMapping& mapping, const Currency& currency,
         const Header& header, SheetRead& read)
        : sheet_(sheet), mapping_(mapping), currency_(currency), header_(header), read_(read) {}

    void above(std::size_t row) {
        if (!is_blank(row)) {
            other(row, "title");
        }
    }
    void beneath(std::size_t row) {
        if (is_blank(row)) {
            return;
        }
        if (is_heading(row)) {
            other(row, "heading");
        } else if (any_cell(row, is_subtotal)) {
            other(row, "subtotal");
        } else if (is_total_row(row)) {
            total(row);
        } else if (is_item(row)) {
            item(row);
        } else if (is_alone(row)) {
            group_or_note(row);
        } else {
            other(row, "?");
        }
    }

  private:
    bool is_blank(std::size_t row) const {
        return std::all_of(sheet_.rows[row].begin(), sheet_.rows[row].end(),
                           [](const std::string& cell) { return trimmed(cell).empty(); });
    }
    template <class Is>
    bool any_cell(std::size_t row, Is is) const {
        return std::any_of(sheet_.rows[row].begin(), sheet_.rows[row].end(), is);
    }
    bool is_heading(std::size_t row) const { // repeated on a next page
        for (std::size_t headings = header_.first; headings <= header_.last; ++headings) {
            std::size_t same = 0;
            std::size_t all = 0;
            for (const ReadColumn& c : read_.columns) {
                const std::string heading = plain(cell_at(sheet_, headings, c.column));
                all += heading.empty() ? 0U : 1U;
                same +=
                    !heading.empty() && heading == plain(cell_at(sheet_, row, c.column)) ? 1U : 0U;
            }
            if (same * 2 > all) {
                return true;
            }
        }
        return false;
    }
    bool is_total_row(std::size_t row) const {
        const std::string& code = cell_at(sheet_, row, column_of(Role::code));
        const std::string& quantity = cell_at(sheet_, row, column_of(Role::quantity));
        const bool first = is_total(code, mapping_.total_words);
        return first || (trimmed(quantity).empty() && any_cell(row, [&](const std::string& cell) {
                             return is_total(cell, mapping_.total_words);
                         }));
    }
    /// An item has a quantity, or a price, and something that names it.
    bool is_item(std::size_t row) const {
        const bool named = !text(row, Role::code).empty() || !text(row, Role::description).empty();
        const bool nameless =
            column_of(Role::code) == nowhere && column_of(Role::description) == nowhere;
        bool figures = read_amount(text(row, Role::quantity), currency_).value.has_value();
        for (const ReadColumn& c : read_.columns) {
            const bool price = c.role == Role::unit_price || c.role == Role::extension;
            figures =
                figures || (price && read_amount(cell_at(sheet_, row, c.column), currency_).value);
        }
        return (named || nameless) && figures;
    }
    bool is_alone(std::size_t row) const {
        const auto& cells = sheet_.rows[row];
        return std::count_if(cells.begin(), cells.end(),
                             [](const std::string& cell) { return !trimmed(cell).empty(); }) <= 2;
    }

    static constexpr std::size_t nowhere = static_cast<std::size_t>(-1);

    std::size_t column_of(Role role) const {
        for (const ReadColumn& c : read_.columns) {
            if (c.role == role) {
                return c.column;
            }
        }
        return nowhere;
    }
    std::string text(std::size_t row, Role role) const {
        const std::size_t column = column_of(role);
        return column == nowhere ? std::string() : trimmed(cell_at(sheet_, row, column));
    }
    std::string cells(std::size_t row) const {
        std::string all;
        for (const std::string& cell : sheet_.rows[row]) {
            const std::string shown = trimmed(cell);
            all += shown.empty() ? "" : (all.empty() ? "" : " | ") + shown;
        }
        return all;
    }
    void other(std::size_t row, const char* as) {
        read_.others.push_back({place_of(sheet_, row), cells(row), as});
    }
    void doubt(std::size_t row, std::size_t column, const std::string& why,
               const std::string& taken) {
        read_.doubts.push_back({place_of(sheet_, row), column_letters(column),
                                trimmed(cell_at(sheet_, row, column)), why, taken});
    }

    /// The number of a cell; a doubt where there is one, and where a blank one matters.
    std::optional<Decimal> number(std::size_t row, std::size_t column, bool blank_matters) {
        const ReadAmount amount = read_amount(cell_at(sheet_, row, column), currency_);
        const std::string taken = amount.value ? to_text(*amount.value) : "nothing";
        if (!amount.why.empty()) {
            doubt(row, column, amount.why, taken);
        } else if (!amount.value && blank_matters) {
            doubt(row, column, "blank", taken);
        }
        return amount.value;
    }

    /// The unit by its code; what pay_units does not know stays as it is.
    std::string unit(std::size_t row) {
        const std::string written = text(row, Role::unit);
        const std::size_t column = column_of(Role::unit);
        if (column == nowhere) {
            return written;
        }
        if (written.empty()) {
            doubt(row, column, "no unit", "nothing");
            return written;
        }
        std::string letters;
        for (const char c : written) {
            letters += c == '.' || c == ' '
                           ? ""
                           : std::string(
                                 1, static_cast<char>(std::toupper(static_cast<unsigned char>(c))));
        }
        for (const PayUnit& known : pay_units) {
            if (letters == known.code || plain(written) == known.name) {
                return std::string(known.code);
            }
        }
        doubt(row, column, "a unit that is not known", written);
        return written;
    }

    std::string code(std::size_t row) {
        std::string written = text(row, Role::code);
        if (written.ends_with(".0")) { // a whole number that a sheet holds as a fraction
            written.erase(written.size() - 2);
        }
        if (written.empty()) {
            written = text(row, Role::description);
            if (written.empty()) {
                written = "line " + std::to_string(row + 1);
            }
            if (column_of(Role::code) != nowhere) {
                doubt(row, column_of(Role::code), "no code", written);
            }
        }
        return written;
    }

    /// Forms repeat a code under another heading: then it is another item.
    std::string own_code(std::size_t row, const PayItem& item) {
        const auto with_code = [&](const std::string& wanted) {
            return std::find_if(read_.items.begin(), read_.items.end(),
                                [&](const PayItem& i) { return i.code == wanted; });
        };
        std::string own = item.code;
        for (int n = 2; with_code(own) != read_.items.end(); ++n) {
            const PayItem& other = *with_code(own);
            if (other.group == item.group && other.description == item.description &&
                other.quantity == item.quantity) {
                doubt(row, std::min(column_of(Role::code), width(row)), "the same item once more",
                      own + ", two lines");
                return own;
            }
            own = item.code + "/" + std::to_string(n);
        }
        if (own != item.code) {
            doubt(row, std::min(column_of(Role::code), width(row)), "a code that stands twice",
                  own);
        }
        return own;
    }
    std::size_t width(std::size_t row) const {
        return sheet_.rows[row].empty() ? 0 : sheet_.rows[row].size() - 1;
    }

    /// Figures in a column that nothing is read of, once a column; headings that are not known are
    /// doubts of their own.
    void note_unread(std::size_t row) {
        for (std::size_t c = 0; c < sheet_.rows[row].size(); ++c) {
            const bool read =
                std::any_of(read_.columns.begin(), read_.columns.end(),
                            [c](const ReadColumn& column) { return column.column == c; });
            if (!read && heading_of(sheet_, header_, c).text.empty() &&
                read_amount(cell_at(sheet_, row, c), currency_).value && unread_.insert(c).second) {
                doubt(row, c, "a figure beneath no heading", "nothing of its column");
            }
        }
    }

    void item(std::size_t row) {
        note_unread(row);
        PayItem item;
        item.code = code(row);
        item.description = text(row, Role::description);
        item.unit = unit(row);
        item.group = group_;
        item.kind = kind_of(item.group + " " + item.description + " " + item.code);
        const std::size_t at = column_of(Role::quantity);
        const auto quantity = at == nowhere ? std::nullopt : number(row, at, true);
        item.quantity = item.low = item.high = quantity.value_or(Decimal());
        item.code = own_code(row, item);
        const bool is_new = std::none_of(read_.items.begin(), read_.items.end(),
                                         [&](const PayItem& i) { return i.code == item.code; });
        if (is_new) {
            read_.items.push_back(item);
        }
        for (Bid& bid : read_.bids) {
            bid.lines.push_back(line(row, bid.bidder, item.code, quantity));
        }
    }

    BidLine line(std::size_t row, const std::string& bidder, const std::string& code,
                 const std::optional<Decimal>& quantity) {
        BidLine line;
        line.code = code;
        line.quantity = quantity;
        line.place = place_of(sheet_, row);
        for (const ReadColumn& c : read_.columns) {
            if (c.bidder != bidder) {
                continue;
            }
            if (c.role == Role::unit_price) {
                line.unit_price = number(row, c.column, true);
            } else if (c.role == Role::extension) {
                line.extension = number(row, c.column, false);
            } else if (c.role == Role::words) {
                line.words = trimmed(cell_at(sheet_, row, c.column));
                line.price_in_words = amount_in_words(line.words);
                if (!line.words.empty() && !line.price_in_words) {
                    doubt(row, c.column, "words that are not understood", "nothing");
                }
            }
        }
        return line;
    }

    /// A total stands in a bidder's column of extensions, else of unit prices. The last one holds,
    /// but that of alternates is not the total of the bid.
    void total(std::size_t row) {
        other(row, "total");
        const bool first = read_.total_row == 0;
        const bool aside = !first && kind_of(cells(row)) != ItemKind::base;
        bool found = false;
        for (Bid& bid : read_.bids) {
            const std::optional<Decimal> sum = total_of(row, bid.bidder);
            found = found || sum.has_value();
            bid.total = sum && !aside ? sum : bid.total;
        }
        if (!found) {
            doubt(row, 0, "a total without an amount in a bidder's column", "nothing");
            return;
        }
        if (!first) {
            doubt(row, 0, "a second total, the first in line " + std::to_string(read_.total_row),
                  aside ? "the first" : "this one");
        }
        read_.total_row = aside ? read_.total_row : static_cast<int>(row) + 1;
    }
    std::optional<Decimal> total_of(std::size_t row, const std::string& bidder) {
        std::optional<Decimal> sum;
        for (const ReadColumn& c : read_.columns) {
            const bool price = c.role == Role::extension || c.role == Role::unit_price;
            if (price && c.bidder == bidder && (!sum || c.role == Role::extension)) {
                const auto figure = number(row, c.column, false);
                sum = figure ? figure : sum;
            }
        }
        return sum;
    }

    void group_or_note(std::size_t row) {
        const auto& row_cells = sheet_.rows[row];
        const auto count = std::count_if(row_cells.begin(), row_cells.end(),
                                         [](const auto& cell) { return !trimmed(cell).empty(); });
        const bool below = read_.total_row > 0 || count > 1 || !items_follow(row);
        if (!below) {
            group_ = cells(row);
        } else {
            for (Bid& bid : read_.bids) {
                if (read_.bids.size() == 1) {
                    bid.notes.push_back(cells(row));
                }
            }
        }
        other(row, below ? "note" : "group");
    }
    bool items_follow(std::size_t row) const {
        for (std::size_t next = row + 1; next < sheet_.rows.size(); ++next) {
            if (!is_blank(next) && is_item(next) && !is_total_row(next)) {
                return true;
            }
        }
        return false;
    }

    const Sheet& sheet_;
    const FormMapping& mapping_;
    const Currency& currency_;
    const Header& header_;
    SheetRead& read_;
    std::set<std::size_t> unread_;
    std::string group_;
};

} // namespace

void read_rows(const Sheet& sheet, const FormMapping& mapping, const Currency& currency,
               const Header& header, SheetRead& read) {
    Rows rows(sheet, mapping, currency, header, read);
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
        if (row < header.first) {
            rows.above(row);
        } else if (row > header.last) {
            rows.beneath(row);
        }
    }
}

} // namespace scupper::bid::detail
