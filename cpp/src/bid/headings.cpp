#include "headings.hpp"

#include "bidder_names.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <utility>

namespace scupper::bid::detail {

namespace {

std::size_t column_named(const Sheet& sheet, const Header& header, const std::string& name) {
    const std::string wanted = plain(name);
    for (std::size_t c = 0; c < width_of(sheet, header); ++c) {
        if (!wanted.empty() && plain(heading_of(sheet, header, c).text) == wanted) {
            return c;
        }
    }
    std::size_t width = 0;
    for (const auto& row : sheet.rows) {
        width = std::max(width, row.size());
    }
    for (std::size_t c = 0; c < width; ++c) {
        if (column_letters(c) == name) {
            return c;
        }
    }
    throw InputError({"bid.column", sheet.file + " mapping", "\"" + name + "\"",
                      "a heading of line " + std::to_string(header.first + 1) +
                          ", or a letter from A to " + column_letters(width == 0 ? 0 : width - 1)});
}

void add_mapped(const Sheet& sheet, const FormMapping& mapping, const Header& header,
                std::vector<ReadColumn>& columns) {
    const auto add = [&](Role role, const std::string& name, const std::string& bidder) {
        if (!name.empty()) {
            const std::size_t c = column_named(sheet, header, name);
            columns.push_back({c, role, heading_of(sheet, header, c).text, bidder});
        }
    };
    for (const auto& [role, name] : mapping.columns) {
        add(role, name, is_price(role) ? mapping.bidder : std::string());
    }
    for (const BidderColumns& b : mapping.bidders) {
        add(Role::unit_price, b.unit_price, b.bidder);
        add(Role::extension, b.extension, b.bidder);
    }
}

bool has(const std::vector<ReadColumn>& columns, Role role) {
    return std::any_of(columns.begin(), columns.end(),
                       [&](const ReadColumn& c) { return c.role == role; });
}

bool is_taken(const std::vector<ReadColumn>& columns, std::size_t column) {
    return std::any_of(columns.begin(), columns.end(),
                       [&](const ReadColumn& c) { return c.column == column; });
}

/// What headings say that the mapping does not.
void add_guessed(const Sheet& sheet, const FormMapping& mapping, const Header& header,
                 std::vector<ReadColumn>& columns) {
    const bool prices_known = has(columns, Role::unit_price) || has(columns, Role::extension);
    for (std::size_t c = 0; c < width_of(sheet, header); ++c) {
        const ColumnHeading heading = heading_of(sheet, header, c);
        if (heading.role == Role::none || is_taken(columns, c)) {
            continue;
        }
        const bool known = is_price(heading.role) ? prices_known : has(columns, heading.role);
        if (!known) {
            columns.push_back({c, heading.role, heading.text, heading.bidder});
        }
    }
    for (ReadColumn& c : columns) {
        c.bidder = is_price(c.role) && c.bidder.empty() ? mapping.bidder : c.bidder;
    }
}

void note_missing(const Sheet& sheet, const Header& header, std::vector<ReadColumn>& columns,
                  SheetRead& read) {
    if (!has(columns, Role::code)) {
        const bool described = has(columns, Role::description);
        read.doubts.push_back({place_of(sheet, header.last), "", "",
                               "no heading for the item's code",
                               described ? "the description" : "the line's number"});
    }
    std::sort(columns.begin(), columns.end(), [](const ReadColumn& a, const ReadColumn& b) {
        return std::pair(a.column, a.role) < std::pair(b.column, b.role);
    });
    for (std::size_t c = 0; c < width_of(sheet, header); ++c) {
        const ColumnHeading heading = heading_of(sheet, header, c);
        if (!is_taken(columns, c) && !heading.text.empty()) {
            read.doubts.push_back({place_of(sheet, header.last), column_letters(c), heading.text,
                                   "a heading that is not known", "nothing of its column"});
        }
    }
    for (const ReadColumn& c : columns) {
        const ColumnHeading heading = heading_of(sheet, header, c.column);
        const bool nobody = is_price(c.role) && c.bidder.empty();
        const std::string& rest = nobody ? heading.name_above : heading.rest;
        if (!rest.empty()) {
            read.doubts.push_back({place_of(sheet, header.last), column_letters(c.column),
                                   c.heading,
                                   "\"" + rest + "\" is no part of a heading that is known",
                                   std::string(role_names[static_cast<std::size_t>(c.role)])});
        }
    }
}

} // namespace

std::vector<ReadColumn> columns_of(const Sheet& sheet, const FormMapping& mapping,
                                   const Header& header, SheetRead& read) {
    std::vector<ReadColumn> columns;
    add_mapped(sheet, mapping, header, columns);
    add_guessed(sheet, mapping, header, columns);
    name_bidders(sheet, header, columns, read);
    note_missing(sheet, header, columns, read);
    return columns;
}

} // namespace scupper::bid::detail
