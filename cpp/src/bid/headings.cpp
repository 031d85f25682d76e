#include "headings.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <set>

namespace scupper::bid::detail {

namespace {

constexpr std::size_t rows_above = 3; // names of bidders stand at most so far above the headings

std::size_t width_of(const Sheet& sheet, std::size_t row) {
    return row < sheet.rows.size() ? sheet.rows[row].size() : 0;
}

bool is_price(Role role) {
    return role == Role::unit_price || role == Role::extension || role == Role::words;
}

/// How many roles a row names; 0 where it lacks quantity or price.
std::size_t score(const Sheet& sheet, std::size_t row) {
    std::set<Role> roles;
    for (std::size_t c = 0; c < width_of(sheet, row); ++c) {
        roles.insert(heading_of(cell_at(sheet, row, c)).role);
    }
    roles.erase(Role::none);
    const bool priced = roles.contains(Role::unit_price) || roles.contains(Role::extension);
    return roles.contains(Role::quantity) && priced ? roles.size() : 0;
}

std::size_t column_named(const Sheet& sheet, std::size_t header, const std::string& name) {
    const std::string wanted = plain(name);
    for (std::size_t c = 0; c < width_of(sheet, header); ++c) {
        if (!wanted.empty() && plain(cell_at(sheet, header, c)) == wanted) {
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
    throw InputError({"bid.column", place_of(sheet, header).file + " mapping", "\"" + name + "\"",
                      "a heading of line " + std::to_string(header + 1) +
                          ", or a letter from A to " + column_letters(width == 0 ? 0 : width - 1)});
}

/// The name in the rows above a column; one in a merged cell stands to the left.
std::string name_above(const Sheet& sheet, std::size_t header, std::size_t column,
                       std::size_t first) {
    for (std::size_t up = 1; up <= std::min(rows_above, header); ++up) {
        for (std::size_t c = column + 1; c-- > first;) {
            const std::string name = trimmed(cell_at(sheet, header - up, c));
            if (!name.empty()) {
                return name;
            }
        }
    }
    return {};
}

void add_mapped(const Sheet& sheet, const FormMapping& mapping, std::size_t header,
                std::vector<ReadColumn>& columns) {
    const auto add = [&](Role role, const std::string& name, const std::string& bidder) {
        if (!name.empty()) {
            const std::size_t c = column_named(sheet, header, name);
            columns.push_back({c, role, cell_at(sheet, header, c), bidder});
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
void add_guessed(const Sheet& sheet, const FormMapping& mapping, std::size_t header,
                 std::vector<ReadColumn>& columns) {
    const bool prices_known = has(columns, Role::unit_price) || has(columns, Role::extension);
    for (std::size_t c = 0; c < width_of(sheet, header); ++c) {
        const std::string& cell = cell_at(sheet, header, c);
        const Heading heading = heading_of(cell);
        if (heading.role == Role::none || is_taken(columns, c)) {
            continue;
        }
        const bool known = is_price(heading.role) ? prices_known : has(columns, heading.role);
        if (!known) {
            columns.push_back({c, heading.role, cell, heading.bidder});
        }
    }
    for (ReadColumn& c : columns) {
        c.bidder = is_price(c.role) && c.bidder.empty() ? mapping.bidder : c.bidder;
    }
}

/// Names of bidders from merged cells above the headings, where the headings have none; without
/// either they are numbered.
void name_bidders(const Sheet& sheet, std::size_t header, std::vector<ReadColumn>& columns,
                  SheetRead& read) {
    std::size_t first = sheet.rows[header].size();
    std::size_t prices = 0;
    for (const ReadColumn& c : columns) {
        first = is_price(c.role) ? std::min(first, c.column) : first;
        prices += c.role == Role::unit_price ? 1U : 0U;
    }
    std::size_t number = 0;
    for (ReadColumn& c : columns) {
        if (!is_price(c.role) || !c.bidder.empty() || prices < 2) {
            continue;
        }
        number += c.role == Role::unit_price ? 1U : 0U;
        c.bidder = name_above(sheet, header, c.column, first);
        if (c.bidder.empty()) {
            c.bidder = "bidder " + std::to_string(std::max<std::size_t>(number, 1));
            read.doubts.push_back({place_of(sheet, header), column_letters(c.column), c.heading,
                                   "no name of a bidder above", c.bidder});
        }
    }
}

void note_missing(const Sheet& sheet, std::size_t header, std::vector<ReadColumn>& columns,
                  SheetRead& read) {
    if (!has(columns, Role::code)) {
        const bool described = has(columns, Role::description);
        read.doubts.push_back({place_of(sheet, header), "", "", "no heading for the item's code",
                               described ? "the description" : "the line's number"});
    }
    std::sort(columns.begin(), columns.end(), [](const ReadColumn& a, const ReadColumn& b) {
        return std::pair(a.column, a.role) < std::pair(b.column, b.role);
    });
    for (std::size_t c = 0; c < width_of(sheet, header); ++c) {
        const std::string& cell = cell_at(sheet, header, c);
        if (!is_taken(columns, c) && !trimmed(cell).empty()) {
            read.doubts.push_back({place_of(sheet, header), column_letters(c), cell,
                                   "a heading that is not known", "nothing of its column"});
        }
    }
}

} // namespace

const std::string& cell_at(const Sheet& sheet, std::size_t row, std::size_t column) {
    static const std::string blank;
    return row < sheet.rows.size() && column < sheet.rows[row].size() ? sheet.rows[row][column]
                                                                      : blank;
}

Place place_of(const Sheet& sheet, std::size_t row) {
    return {sheet.file, sheet.name, static_cast<int>(row) + 1};
}

std::size_t header_row_of(const Sheet& sheet, const FormMapping& mapping) {
    const std::string where = sheet.name.empty() ? sheet.file : sheet.file + " " + sheet.name;
    if (mapping.header_row > 0) {
        if (static_cast<std::size_t>(mapping.header_row) > sheet.rows.size()) {
            throw InputError({"bid.header", where + " header_row",
                              std::to_string(mapping.header_row),
                              "1 to " + std::to_string(sheet.rows.size())});
        }
        return static_cast<std::size_t>(mapping.header_row) - 1;
    }
    std::size_t best = 0;
    std::size_t at = 0;
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
        if (const std::size_t n = score(sheet, row); n > best) {
            best = n;
            at = row;
        }
    }
    if (best == 0) {
        throw InputError({"bid.header", where, "no row that names quantity and price",
                          "headings as \"Quantity\" and \"Unit price\", or a mapping"});
    }
    return at;
}

std::vector<ReadColumn> columns_of(const Sheet& sheet, const FormMapping& mapping,
                                   std::size_t header, SheetRead& read) {
    std::vector<ReadColumn> columns;
    add_mapped(sheet, mapping, header, columns);
    add_guessed(sheet, mapping, header, columns);
    name_bidders(sheet, header, columns, read);
    note_missing(sheet, header, columns, read);
    return columns;
}

} // namespace scupper::bid::detail
