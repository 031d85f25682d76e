#include "lookup.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

namespace scupper::detail {

namespace {
using Advice = std::pair<std::string_view, std::string_view>;
constexpr auto ambiguous = std::to_array<Advice>({
    {"tons", "\"short ton\" (2,000 lb), \"t\" (1,000 kg) or \"long ton\" (2,240 lb)"},
    {"ton", "\"short ton\" (2,000 lb), \"t\" (1,000 kg) or \"long ton\" (2,240 lb)"},
    {"T", "\"short ton\" (2,000 lb) or \"t\" (1,000 kg)"},
    {"oz", "\"oz av\" (mass) or \"US fl oz\" (volume)"},
    {"ounce", "\"oz av\" (mass) or \"US fl oz\" (volume)"},
    {"ounces", "\"oz av\" (mass) or \"US fl oz\" (volume)"},
    {"C", "\"degC\""},
    {"F", "\"degF\""},
    {"M", "\"m\" (metre), \"mi\" (mile) or \"min\" (minute)"},
    {"mil", "\"in\" (0.001 in) or \"mm\""},
    {"mils", "\"in\" (0.001 in) or \"mm\""},
    {"psia", "the gauge pressure in \"psi\""},
    {"month", "\"day\" or \"year\""},
    {"months", "\"day\" or \"year\""},
    {"man-hour", "\"labour-h\""},
    {"man-hours", "\"labour-h\""},
    {"$", "the currency's code, as in \"USD 85/h\""},
    {"\u20ac", "the currency's code, as in \"EUR 85/h\""},
    {"\u00a3", "the currency's code, as in \"GBP 85/h\""},
});

/// Whether a name can end here: "m" does not end inside "mm" or "m-x".
bool ends_name(std::string_view text, std::size_t length) {
    const Cursor after(text.substr(length));
    const bool hyphened = after.peek() == '-' && is_letter(after.peek(1));
    return !is_letter(text[length - 1]) ||
           !(is_letter(after.peek()) || after.peek() == '_' || hyphened);
}

bool begins_with_name(std::string_view text, std::string_view name) {
    return !name.empty() && text.starts_with(name) && ends_name(text, name.size());
}

template <class Visit>
void for_each_name(const UnitRow& row, Visit visit) {
    visit(row.name);
    for (std::string_view rest = row.aliases; !rest.empty();) {
        const std::size_t bar = std::min(rest.find('|'), rest.size());
        visit(rest.substr(0, bar));
        rest.remove_prefix(std::min(bar + 1, rest.size()));
    }
}
} // namespace

const UnitRow* take_unit(Cursor& cursor) {
    const UnitRow* found = nullptr;
    std::size_t longest = 0;
    for (const UnitRow& row : unit_table()) {
        for_each_name(row, [&](std::string_view name) {
            if (name.size() > longest && begins_with_name(cursor.rest(), name)) {
                found = &row;
                longest = name.size();
            }
        });
    }
    cursor.take(longest);
    return found;
}

std::optional<std::string_view> ambiguity_advice(std::string_view text) {
    const auto row = std::find_if(ambiguous.begin(), ambiguous.end(), [text](const auto& a) {
        return begins_with_name(text, a.first);
    });
    return row == ambiguous.end() ? std::nullopt : std::optional(row->second);
}

std::string_view leading_words(std::string_view text) {
    const std::size_t stop = std::min(text.find_first_of("*/^0123456789", 1), text.find(" per "));
    std::string_view words = text.substr(0, stop);
    while (words.ends_with(' ')) {
        words.remove_suffix(1);
    }
    return words;
}

std::string nearest_unit(std::string_view wrong) {
    std::vector<std::string_view> names;
    for (const UnitRow& row : unit_table()) {
        for_each_name(row, [&](std::string_view name) { names.push_back(name); });
    }
    return nearest_name(wrong, names);
}

} // namespace scupper::detail
