#include "form_words.hpp"

#include <algorithm>
#include <array>
#include <cctype>

namespace scupper::bid::detail {

namespace {

/// Headings as forms have them, words in small letters.
struct Known {
    std::string_view text;
    Role role;
};

constexpr std::array<Known, 62> headings{{
    {"item", Role::code},
    {"item no", Role::code},
    {"item number", Role::code},
    {"item code", Role::code},
    {"item id", Role::code},
    {"no", Role::code},
    {"number", Role::code},
    {"code", Role::code},
    {"pay item", Role::code},
    {"pay item no", Role::code},
    {"bid item", Role::code},
    {"bid item no", Role::code},
    {"line", Role::code},
    {"line no", Role::code},
    {"ref no", Role::code},
    {"source row", Role::code},
    {"description", Role::description},
    {"item description", Role::description},
    {"description of work", Role::description},
    {"description of item", Role::description},
    {"item of work", Role::description},
    {"work", Role::description},
    {"name", Role::description},
    {"unit", Role::unit},
    {"units", Role::unit},
    {"uom", Role::unit},
    {"unit of measure", Role::unit},
    {"pay unit", Role::unit},
    {"quantity", Role::quantity},
    {"qty", Role::quantity},
    {"est qty", Role::quantity},
    {"est quantity", Role::quantity},
    {"estimated quantity", Role::quantity},
    {"estimated qty", Role::quantity},
    {"approx quantity", Role::quantity},
    {"approximate quantity", Role::quantity},
    {"approx qty", Role::quantity},
    {"plan quantity", Role::quantity},
    {"bid quantity", Role::quantity},
    {"unit price", Role::unit_price},
    {"unit prices", Role::unit_price},
    {"unit bid price", Role::unit_price},
    {"unit price in figures", Role::unit_price},
    {"unit cost", Role::unit_price},
    {"bid unit price", Role::unit_price},
    {"price", Role::unit_price},
    {"rate", Role::unit_price},
    {"extension", Role::extension},
    {"extended price", Role::extension},
    {"extended amount", Role::extension},
    {"ext", Role::extension},
    {"amount", Role::extension},
    {"amount bid", Role::extension},
    {"bid amount", Role::extension},
    {"item total", Role::extension},
    {"total price", Role::extension},
    {"total amount", Role::extension},
    {"total", Role::extension},
    {"total cost", Role::extension},
    {"unit price in words", Role::words},
    {"price in words", Role::words},
    {"words", Role::words},
}};

/// Endings of a heading that names its bidder too: "bidder A unit price", "A ext".
constexpr std::array<Known, 10> endings{{
    {"unit price", Role::unit_price},
    {"unit bid price", Role::unit_price},
    {"unit cost", Role::unit_price},
    {"price", Role::unit_price},
    {"unit", Role::unit_price},
    {"extension", Role::extension},
    {"extended price", Role::extension},
    {"ext", Role::extension},
    {"amount", Role::extension},
    {"total", Role::extension},
}};

/// The name before the last so many words, as it was written.
std::string before(std::string_view cell, std::string_view ending) {
    const auto words = static_cast<std::size_t>(1 + std::count(ending.begin(), ending.end(), ' '));
    std::size_t end = cell.size();
    const auto is_letter = [](char c) {
        return std::isalnum(static_cast<unsigned char>(c)) != 0 ||
               (static_cast<unsigned char>(c) & 0x80U) != 0;
    };
    for (std::size_t w = 0; w < words; ++w) {
        while (end > 0 && !is_letter(cell[end - 1])) {
            --end;
        }
        while (end > 0 && is_letter(cell[end - 1])) {
            --end;
        }
    }
    while (end > 0 && !is_letter(cell[end - 1])) {
        --end;
    }
    std::string name(cell.substr(0, end));
    std::replace(name.begin(), name.end(), '_', ' ');
    if (plain(name).starts_with("bidder ")) {
        name = name.substr(name.find_first_of(" :") + 1);
    }
    return trimmed(name);
}

bool begins(std::string_view text, std::string_view with) {
    return text == with || (text.starts_with(with) && text[with.size()] == ' ');
}

} // namespace

std::string trimmed(std::string_view text) {
    constexpr std::string_view hard = "\xC2\xA0";
    for (bool more = true; more && !text.empty();) {
        more = false;
        if (text.starts_with(hard)) {
            text.remove_prefix(hard.size());
            more = true;
        } else if (text.ends_with(hard)) {
            text.remove_suffix(hard.size());
            more = true;
        } else if (std::isspace(static_cast<unsigned char>(text.front())) != 0) {
            text.remove_prefix(1);
            more = true;
        } else if (std::isspace(static_cast<unsigned char>(text.back())) != 0) {
            text.remove_suffix(1);
            more = true;
        }
    }
    return std::string(text);
}

std::vector<std::string> words_of(std::string_view text) {
    std::vector<std::string> words;
    bool in_word = false;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        const bool letter = std::isalnum(byte) != 0 || byte >= 0x80U;
        if (letter && !in_word) {
            words.emplace_back();
        }
        if (letter) {
            words.back() += static_cast<char>(std::tolower(byte));
        }
        in_word = letter;
    }
    return words;
}

std::string plain(std::string_view text) {
    std::string all;
    for (const std::string& word : words_of(text)) {
        all += (all.empty() ? "" : " ") + word;
    }
    return all;
}

Role role_named(std::string_view text) {
    const std::string words = plain(text);
    const auto* found = std::find_if(headings.begin(), headings.end(),
                                     [&](const Known& known) { return known.text == words; });
    return found == headings.end() ? Role::none : found->role;
}

Heading heading_of(std::string_view cell) {
    const std::string text = plain(cell);
    if (const Role role = role_named(text); role != Role::none) {
        return {role, {}};
    }
    for (const Known& ending : endings) {
        const std::string tail = " " + std::string(ending.text);
        if (text.ends_with(tail)) {
            return {ending.role, before(cell, ending.text)};
        }
    }
    return {};
}

bool is_total(std::string_view cell, const std::vector<std::string>& own_words) {
    const std::string text = plain(cell);
    const auto matches = [&](std::string_view word) { return begins(text, plain(word)); };
    if (!own_words.empty()) {
        return std::any_of(own_words.begin(), own_words.end(), matches);
    }
    static constexpr std::array<std::string_view, 4> words{"total", "grand total", "bid total",
                                                           "sum total"};
    return std::any_of(words.begin(), words.end(), matches) || text.ends_with(" total");
}

bool is_subtotal(std::string_view cell) {
    const std::string text = plain(cell);
    return begins(text, "subtotal") || begins(text, "sub total") || begins(text, "section total") ||
           begins(text, "subtotals");
}

bool is_bidder_label(std::string_view cell) {
    static constexpr std::array<std::string_view, 9> words{
        "bidder",  "name of bidder", "bidder name",  "bidder s name", "contractor",
        "company", "firm",           "submitted by", "bid of"};
    const std::string text = plain(cell);
    return std::find(words.begin(), words.end(), text) != words.end();
}

bool is_days_label(std::string_view cell) {
    static constexpr std::array<std::string_view, 7> words{
        "days",         "days bid",      "calendar days", "calendar days bid",
        "working days", "time bid days", "time bid"};
    const std::string text = plain(cell);
    return std::find(words.begin(), words.end(), text) != words.end();
}

bool is_engineer(std::string_view name) {
    const std::string text = plain(name);
    return begins(text, "estimate") || begins(text, "engineer") || begins(text, "engineers") ||
           text.ends_with(" estimate");
}

ItemKind kind_of(std::string_view text) {
    for (const std::string& word : words_of(text)) {
        if (word == "alternate" || word == "alternates" || word == "alt") {
            return ItemKind::alternate;
        }
        if (word == "optional" || word == "option") {
            return ItemKind::optional;
        }
    }
    return ItemKind::base;
}

} // namespace scupper::bid::detail
