#include "plain_text.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace scupper::detail {

namespace {
using Spelling = std::pair<std::string_view, std::string_view>;
constexpr auto spellings = std::to_array<Spelling>({
    {"\u00b2", "2"},    {"\u00b3", "3"},    {"\u00b0", "deg"},  {"\u00b5", "u"},
    {"\u03bc", "u"},    {"\u00b7", "*"},    {"\u22c5", "*"},    {"\u00d7", "*"},
    {"\u2212", "-"},    {"\u2032", "'"},    {"\u2033", "\""},   {"\u00bd", " 1/2"},
    {"\u00bc", " 1/4"}, {"\u00be", " 3/4"}, {"\u215b", " 1/8"}, {"\u215c", " 3/8"},
    {"\u215d", " 5/8"}, {"\u215e", " 7/8"}, {"\u2044", "/"},    {"\u00a0", " "},
    {"\u2009", " "},    {"\u202f", " "},    {"\t", " "},
});
} // namespace

std::string plain_text(std::string_view text) {
    std::string plain;
    while (!text.empty()) {
        const auto row = std::find_if(spellings.begin(), spellings.end(),
                                      [text](const auto& s) { return text.starts_with(s.first); });
        const bool known = row != spellings.end();
        plain += known ? row->second : text.substr(0, 1);
        text.remove_prefix(known ? row->first.size() : 1);
    }
    const auto both_spaces = [](char a, char b) { return a == ' ' && b == ' '; };
    plain.erase(std::unique(plain.begin(), plain.end(), both_spaces), plain.end());
    if (plain.starts_with(' ')) {
        plain.erase(0, 1);
    }
    if (plain.ends_with(' ')) {
        plain.pop_back();
    }
    return plain;
}

} // namespace scupper::detail
