#include "header.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <cctype>
#include <set>
#include <utility>

namespace scupper::bid::detail {

namespace {

constexpr std::size_t most_rows = 3; // of headings: a name, a word, the rest of the word

std::string joined_from(const std::vector<std::string>& cells, std::size_t first,
                        std::size_t count) {
    std::string all;
    for (std::size_t i = first; i < first + count; ++i) {
        all += (all.empty() ? "" : " ") + cells[i];
    }
    return all;
}

/// The role of a run of cells read downwards; of two also upwards: "Price" over "Unit".
Role role_of_run(const std::vector<std::string>& cells, std::size_t first, std::size_t count) {
    const Role role = role_named(joined_from(cells, first, count));
    return role == Role::none && count == 2 ? role_named(cells[first + 1] + " " + cells[first])
                                            : role;
}

void put_rest(const std::vector<std::string>& cells, std::size_t first, std::size_t count,
              ColumnHeading& heading) {
    const std::string above = joined_from(cells, 0, first);
    heading.rest = joined_from(cells, first + count, cells.size() - first - count);
    if (heading.role == Role::unit && !above.empty()) {
        heading.role = Role::unit_price; // beneath a name "Unit" is short for it
    }
    if (is_price(heading.role)) {
        heading.name_above = above;
    } else if (!above.empty()) {
        heading.rest = above + (heading.rest.empty() ? "" : " ") + heading.rest;
    }
}

/// The longest run of cells that is a heading, the lowest of equals.
bool find_run(const std::vector<std::string>& cells, ColumnHeading& heading) {
    for (std::size_t count = cells.size(); count > 0; --count) {
        for (std::size_t first = cells.size() - count + 1; first-- > 0;) {
            heading.role = role_of_run(cells, first, count);
            if (heading.role != Role::none) {
                heading.cells = count;
                put_rest(cells, first, count, heading);
                return true;
            }
        }
    }
    return false;
}

/// A heading of prices that is merged over several columns, each with a cell of its own beneath.
std::string merged_over(const Sheet& sheet, const Header& header, std::size_t column) {
    for (std::size_t row = header.first; row < header.last; ++row) {
        std::size_t c = column;
        while (c > 0 && trimmed(cell_at(sheet, row, c)).empty()) {
            --c;
        }
        const std::string text = trimmed(cell_at(sheet, row, c));
        const bool spreads = trimmed(cell_at(sheet, row, c + 1)).empty() &&
                             !trimmed(cell_at(sheet, header.last, c + 1)).empty();
        if (is_price(role_named(text)) && spreads) {
            return text;
        }
    }
    return {};
}

/// "Unit price" over "Ash" and "Birch", or over "in figures" and "in words".
bool find_merged(const Sheet& sheet, const Header& header, std::size_t column,
                 ColumnHeading& heading) {
    const std::string own = trimmed(cell_at(sheet, header.last, column));
    const std::string over = merged_over(sheet, header, column);
    if (own.empty() || over.empty() || heading_of(own).role != Role::none) {
        return false;
    }
    heading.text = over + " " + own;
    const Role together = role_named(heading.text);
    heading.role = together == Role::none ? role_named(over) : together;
    heading.bidder = together == Role::none ? own : "";
    heading.cells = together == Role::none ? 1 : 2;
    return true;
}

/// Rows of headings hold words: a row with a figure in it is one of items.
bool may_be_headings(const Sheet& sheet, const Header& header) {
    const auto is_figure = [](const std::string& cell) {
        const auto any = [&](int (*is)(int)) {
            return std::any_of(cell.begin(), cell.end(),
                               [is](unsigned char c) { return is(c) != 0; });
        };
        return any(std::isdigit) && !any(std::isalpha);
    };
    for (std::size_t row = header.first; row <= header.last; ++row) {
        const auto& cells = sheet.rows[row];
        const bool blank = std::all_of(cells.begin(), cells.end(), [](const std::string& cell) {
            return trimmed(cell).empty();
        });
        if (blank || std::any_of(cells.begin(), cells.end(), is_figure)) {
            return false;
        }
    }
    return true;
}

/// How many roles rows name, and in how many cells; nothing where they lack quantity or price.
std::pair<std::size_t, std::size_t> score(const Sheet& sheet, const Header& header) {
    if (header.last > header.first && !may_be_headings(sheet, header)) {
        return {0, 0};
    }
    std::set<Role> roles;
    std::size_t cells = 0;
    for (std::size_t c = 0; c < width_of(sheet, header); ++c) {
        const ColumnHeading heading = heading_of(sheet, header, c);
        roles.insert(heading.role);
        cells += heading.cells;
    }
    roles.erase(Role::none);
    const bool priced = roles.contains(Role::unit_price) || roles.contains(Role::extension);
    return roles.contains(Role::quantity) && priced ? std::pair(roles.size(), cells)
                                                    : std::pair<std::size_t, std::size_t>();
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

bool is_price(Role role) {
    return role == Role::unit_price || role == Role::extension || role == Role::words;
}

std::size_t width_of(const Sheet& sheet, const Header& header) {
    std::size_t width = 0;
    for (std::size_t row = header.first; row <= header.last && row < sheet.rows.size(); ++row) {
        width = std::max(width, sheet.rows[row].size());
    }
    return width;
}

ColumnHeading heading_of(const Sheet& sheet, const Header& header, std::size_t column) {
    std::vector<std::string> cells;
    for (std::size_t row = header.first; row <= header.last; ++row) {
        if (std::string cell = trimmed(cell_at(sheet, row, column)); !cell.empty()) {
            cells.push_back(std::move(cell));
        }
    }
    ColumnHeading heading{.text = joined_from(cells, 0, cells.size())};
    if (!find_merged(sheet, header, column, heading) && !find_run(cells, heading)) {
        const Heading named = heading_of(heading.text); // "A unit price"
        heading.role = named.role;
        heading.bidder = named.bidder;
        heading.cells = named.role == Role::none ? 0 : 1;
    }
    return heading;
}

Header header_of(const Sheet& sheet, const FormMapping& mapping) {
    const std::string where = sheet.name.empty() ? sheet.file : sheet.file + " " + sheet.name;
    if (mapping.header_row > 0) {
        const auto row = static_cast<std::size_t>(mapping.header_row);
        if (row > sheet.rows.size()) {
            throw InputError({"bid.header", where + " header_row", std::to_string(row),
                              "1 to " + std::to_string(sheet.rows.size())});
        }
        return {row - 1, row - 1};
    }
    std::pair<std::size_t, std::size_t> best;
    Header found{0, 0};
    for (std::size_t rows = 1; rows <= most_rows; ++rows) {
        for (std::size_t row = 0; row + rows <= sheet.rows.size(); ++row) {
            const Header header{row, row + rows - 1};
            if (const auto named = score(sheet, header); named > best) {
                best = named;
                found = header;
            }
        }
    }
    if (best.first == 0) {
        throw InputError({"bid.header", where, "no row that names quantity and price",
                          "headings as \"Quantity\" and \"Unit price\", or a mapping"});
    }
    return found;
}

} // namespace scupper::bid::detail
