#include "scupper/bid/read_form.hpp"

#include "form_rows.hpp"
#include "headings.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <filesystem>

namespace scupper::bid {

namespace {

using detail::cell_at;
using detail::place_of;
using detail::trimmed;

/// The cell beside a label: behind its colon, or the next one that is not blank.
std::string beside(const Sheet& sheet, std::size_t row, std::size_t column) {
    for (std::size_t c = column + 1; c < sheet.rows[row].size(); ++c) {
        if (const std::string text = trimmed(cell_at(sheet, row, c)); !text.empty()) {
            return text;
        }
    }
    return {};
}

/// What stands beside a label anywhere on the sheet; empty without.
template <class IsLabel>
std::string labelled(const Sheet& sheet, IsLabel is_label, std::size_t& row_found) {
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
        for (std::size_t c = 0; c < sheet.rows[row].size(); ++c) {
            const std::string& cell = cell_at(sheet, row, c);
            const std::size_t colon = cell.find(':');
            const std::string label = cell.substr(0, colon);
            if (!is_label(label)) {
                continue;
            }
            const std::string behind = colon == cell.npos ? "" : trimmed(cell.substr(colon + 1));
            const std::string text = behind.empty() ? beside(sheet, row, c) : behind;
            if (!text.empty()) {
                row_found = row;
                return text;
            }
        }
    }
    return {};
}

/// Who bids on a form of one bidder.
std::string sole_bidder(const Sheet& sheet, const detail::Header& header, SheetRead& read) {
    std::size_t row = header.first;
    const std::string named = labelled(sheet, detail::is_bidder_label, row);
    if (!named.empty() && !header.holds(row)) {
        return named;
    }
    const std::string stem = std::filesystem::path(sheet.file).stem().string();
    read.doubts.push_back({place_of(sheet, header.last), "", "", "no name of a bidder on the form",
                           "the file's name, " + stem});
    return stem;
}

/// Every bidder of the columns, in their order.
void add_bids(const Sheet& sheet, const detail::Header& header, SheetRead& read) {
    for (ReadColumn& column : read.columns) {
        const bool price = column.role == Role::unit_price || column.role == Role::extension ||
                           column.role == Role::words;
        if (!price) {
            continue;
        }
        if (column.bidder.empty()) {
            column.bidder =
                read.bids.empty() ? sole_bidder(sheet, header, read) : read.bids.front().bidder;
        }
        const auto same = std::find_if(read.bids.begin(), read.bids.end(), [&](const Bid& bid) {
            return detail::plain(bid.bidder) == detail::plain(column.bidder);
        });
        if (same == read.bids.end()) {
            read.bids.push_back({.bidder = column.bidder, .lines = {}});
        } else {
            column.bidder = same->bidder;
        }
    }
}

void read_days(const Sheet& sheet, const Currency& currency, SheetRead& read) {
    std::size_t row = 0;
    const std::string days = labelled(sheet, detail::is_days_label, row);
    if (days.empty() || read.bids.size() != 1) {
        return;
    }
    const ReadAmount number = read_amount(days, currency);
    if (number.value) {
        read.bids.front().days = number.value;
    } else {
        read.doubts.push_back({place_of(sheet, row), "", days, "no number of days", "nothing"});
    }
}

} // namespace

std::string column_letters(std::size_t column) {
    std::string letters;
    for (std::size_t n = column + 1; n > 0; n = (n - 1) / 26) {
        letters.insert(letters.begin(), static_cast<char>('A' + (n - 1) % 26));
    }
    return letters;
}

SheetRead read_sheet(const Sheet& sheet, const FormMapping& mapping) {
    const Currency currency = parse_currency(mapping.currency, "currency");
    SheetRead read{.file = sheet.file, .sheet = sheet.name};
    const detail::Header header = detail::header_of(sheet, mapping);
    read.header_row = static_cast<int>(header.first) + 1;
    read.header_rows = static_cast<int>(header.last - header.first) + 1;
    read.columns = detail::columns_of(sheet, mapping, header, read);
    add_bids(sheet, header, read);
    detail::read_rows(sheet, mapping, currency, header, read);
    read_days(sheet, currency, read);
    if (read.items.empty()) {
        throw InputError({"bid.no_item", sheet.file + ":" + std::to_string(header.last + 2),
                          "no row with an item", "rows of items beneath the headings"});
    }
    return read;
}

namespace {

void add_item(ItemList& form, const PayItem& item, const SheetRead& sheet, bool is_first,
              std::vector<Doubt>& doubts) {
    const auto same = std::find_if(form.items.begin(), form.items.end(),
                                   [&](const PayItem& known) { return known.code == item.code; });
    const auto doubt = [&](const std::string& text, const std::string& why,
                           const std::string& taken) {
        doubts.push_back({{sheet.file, sheet.sheet, 0}, "", text, why, taken});
    };
    if (same == form.items.end()) {
        if (!is_first) {
            doubt(item.code, "an item that the first form does not have", "added to the items");
        }
        form.items.push_back(item);
    } else if (!is_first && same->quantity != item.quantity) {
        doubt(item.code + ": " + to_text(item.quantity), "another quantity than on the first form",
              "as read for this bid, " + to_text(same->quantity) + " for the items");
    } else if (!is_first && detail::plain(same->unit) != detail::plain(item.unit)) {
        doubt(item.code + ": " + item.unit, "another unit than on the first form", same->unit);
    }
}

void add_bid(BidSet& set, const Bid& bid, const FormMapping& mapping) {
    const bool engineer = mapping.engineer.empty()
                              ? detail::is_engineer(bid.bidder)
                              : detail::plain(mapping.engineer) == detail::plain(bid.bidder);
    if (engineer && !set.engineer) {
        set.engineer = bid;
        return;
    }
    for (const Bid& other : set.bids) {
        if (detail::plain(other.bidder) == detail::plain(bid.bidder)) {
            throw InputError({"bid.bidder", "bidder", "two bids of \"" + bid.bidder + "\"",
                              "one for each bidder; a mapping may name them"});
        }
    }
    set.bids.push_back(bid);
}

} // namespace

BidSet joined(std::span<const SheetRead> sheets, const FormMapping& mapping,
              std::vector<Doubt>& doubts) {
    BidSet set{.form = {.currency = parse_currency(mapping.currency, "currency"), .items = {}},
               .bids = {}};
    if (sheets.empty()) {
        throw InputError({"bid.no_item", "paths", "no sheet", "at least one"});
    }
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        for (const PayItem& item : sheets[i].items) {
            add_item(set.form, item, sheets[i], i == 0, doubts);
        }
        for (const Bid& bid : sheets[i].bids) {
            add_bid(set, bid, mapping);
        }
    }
    return set;
}

} // namespace scupper::bid
