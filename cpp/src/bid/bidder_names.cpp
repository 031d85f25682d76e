#include "bidder_names.hpp"

#include <algorithm>
#include <set>
#include <utility>

namespace scupper::bid::detail {

namespace {

constexpr std::size_t rows_above = 3; // names stand at most so far above the headings

/// A name and the column it stands over; of a merged cell the first.
struct Name {
    std::size_t column;
    std::string text;
};

/// Names within the rows of headings, else in the nearest row above that has any.
std::vector<Name> names_over(const Sheet& sheet, const Header& header, std::size_t first,
                             std::size_t last) {
    std::vector<Name> names;
    for (std::size_t c = first; c <= last; ++c) {
        if (const auto heading = heading_of(sheet, header, c); !heading.name_above.empty()) {
            names.push_back({c, heading.name_above});
        }
    }
    for (std::size_t up = 1; names.empty() && up <= std::min(rows_above, header.first); ++up) {
        for (std::size_t c = first; c <= last; ++c) {
            const std::string text = trimmed(cell_at(sheet, header.first - up, c));
            if (!text.empty() && role_named(text) == Role::none) {
                names.push_back({c, text});
            }
        }
    }
    return names;
}

/// Columns of prices without a name that probably belong together.
using Group = std::vector<ReadColumn*>;

/// Each begins where a role comes again.
std::vector<Group> groups_of(std::vector<ReadColumn>& columns) {
    std::vector<Group> groups;
    for (ReadColumn& c : columns) {
        if (!is_price(c.role) || !c.bidder.empty()) {
            continue;
        }
        const auto has = [&](Role role) {
            return std::any_of(groups.back().begin(), groups.back().end(),
                               [role](const ReadColumn* other) { return other->role == role; });
        };
        if (groups.empty() || has(c.role)) {
            groups.emplace_back();
        }
        groups.back().push_back(&c);
    }
    return groups;
}

/// The last name at or before a column.
const Name* name_before(const std::vector<Name>& names, std::size_t column) {
    const Name* found = nullptr;
    for (const Name& name : names) {
        found = name.column <= column ? &name : found;
    }
    return found;
}

/// Whether every column has a name before it that no other column of its role has.
bool stand_over(const std::vector<Name>& names, const std::vector<Group>& groups) {
    std::set<std::pair<const Name*, Role>> taken;
    for (const Group& group : groups) {
        for (const ReadColumn* c : group) {
            const Name* name = name_before(names, c->column);
            if (name == nullptr || !taken.insert({name, c->role}).second) {
                return false;
            }
        }
    }
    return true;
}

/// Names that do not stand over their columns go to the groups in order where there are as many.
void name_in_order(const Sheet& sheet, const Header& header, const std::vector<Name>& names,
                   const std::vector<Group>& groups, SheetRead& read) {
    const bool as_many = names.size() == groups.size();
    const Name* before = nullptr;
    for (std::size_t g = 0; g < groups.size(); ++g) {
        const ReadColumn& head = *groups[g].front();
        const Name* name = as_many ? &names[g] : name_before(names, head.column);
        const bool known = name != nullptr && name != before;
        before = name;
        const std::string bidder = known ? name->text : "bidder " + std::to_string(g + 1);
        if (!known || as_many) {
            read.doubts.push_back(
                {place_of(sheet, header.last), column_letters(head.column), head.heading,
                 known ? "the name does not stand over its columns" : "no name of a bidder above",
                 bidder});
        }
        for (ReadColumn* c : groups[g]) {
            c->bidder = bidder;
        }
    }
}

} // namespace

void name_bidders(const Sheet& sheet, const Header& header, std::vector<ReadColumn>& columns,
                  SheetRead& read) {
    const std::vector<Group> groups = groups_of(columns);
    const auto prices = std::count_if(columns.begin(), columns.end(), [](const ReadColumn& c) {
        return c.role == Role::unit_price;
    });
    if (groups.empty() || (prices < 2 && groups.size() < 2)) {
        return;
    }
    const auto names =
        names_over(sheet, header, groups.front().front()->column, groups.back().back()->column);
    if (!stand_over(names, groups)) {
        name_in_order(sheet, header, names, groups, read);
        return;
    }
    for (const Group& group : groups) {
        for (ReadColumn* c : group) {
            c->bidder = name_before(names, c->column)->text;
        }
    }
}

} // namespace scupper::bid::detail
