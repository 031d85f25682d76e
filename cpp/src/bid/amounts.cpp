#include "scupper/bid/amounts.hpp"

#include "form_words.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <map>
#include <vector>

namespace scupper::bid {

namespace {

using detail::trimmed;

constexpr int most_decimals = 10; // more come from binary fractions that a sheet computed
constexpr int kept_decimals = 6;

bool remove_prefix(std::string& text, std::string_view prefix) {
    if (!text.starts_with(prefix)) {
        return false;
    }
    text = trimmed(text.substr(prefix.size()));
    return true;
}

bool remove_suffix(std::string& text, std::string_view suffix) {
    if (!text.ends_with(suffix)) {
        return false;
    }
    text = trimmed(text.substr(0, text.size() - suffix.size()));
    return true;
}

/// Takes sign and code of the currency away, wherever they stand.
void remove_currency(std::string& text, const Currency& currency) {
    const bool dollar = currency.code().ends_with("D") || currency.code() == "MXN";
    for (bool more = true; more;) {
        more = remove_prefix(text, currency.code()) || remove_suffix(text, currency.code());
        more = more || (dollar && (remove_prefix(text, "$") || remove_prefix(text, "US$")));
        more = more || (currency.code() == "EUR" && remove_prefix(text, "\xE2\x82\xAC"));
        more = more || (currency.code() == "GBP" && remove_prefix(text, "\xC2\xA3"));
    }
}

/// Takes the marks of a negative away and says whether there were any.
bool remove_negative(std::string& text, std::string& why) {
    if (text.size() > 2 && text.front() == '(' && text.back() == ')') {
        text = trimmed(text.substr(1, text.size() - 2));
        why = "brackets, taken for a negative";
        return true;
    }
    if (text.size() > 1 && text.back() == '-') {
        text = trimmed(text.substr(0, text.size() - 1));
        why = "a minus behind, taken for a negative";
        return true;
    }
    return text.size() > 1 && text.front() == '-' && (text.erase(0, 1), true);
}

/// "2.10/SF" is a price with its unit.
void remove_unit(std::string& text, std::string& why) {
    const std::size_t stroke = text.find('/');
    if (stroke != text.npos && stroke > 0 && stroke + 1 < text.size() &&
        std::isalpha(static_cast<unsigned char>(text[stroke + 1])) != 0) {
        why = "a unit after the number";
        text = trimmed(text.substr(0, stroke));
    }
}

std::optional<Decimal> number_of(const std::string& text, std::string& why) {
    try {
        Decimal number = parse_decimal(text.front() == '.' ? "0" + text : text, "cell");
        if (number.scale() > most_decimals) {
            number = rounded(number, kept_decimals);
            why = "a fraction that the sheet computed, rounded to 6 decimals";
        }
        return number;
    } catch (const MoneyError&) {
    }
    double binary = 0.0; // sheets write very small and very large numbers with an exponent
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), binary);
    if (fault == std::errc() && end == text.data() + text.size()) {
        try {
            why = "a fraction that the sheet computed, rounded to 6 decimals";
            return rounded_from_double(binary, kept_decimals, "cell");
        } catch (const MoneyError&) {
        }
    }
    why = "not a number";
    return std::nullopt;
}

} // namespace

ReadAmount read_amount(std::string_view cell, const Currency& currency) {
    ReadAmount read;
    std::string text = trimmed(cell);
    if (text.empty()) {
        return read;
    }
    if (text.front() == '=') {
        read.why = "a formula that was never computed";
        return read;
    }
    remove_unit(text, read.why);
    remove_currency(text, currency);
    const bool negative = !text.empty() && remove_negative(text, read.why);
    remove_currency(text, currency);
    if (text.empty()) {
        read.why = "not a number";
        return read;
    }
    read.value = number_of(text, read.why);
    if (read.value && negative) {
        read.value = -*read.value;
    }
    return read;
}

namespace {

const std::map<std::string, int>& small_numbers() {
    static const std::map<std::string, int> numbers{
        {"zero", 0},      {"no", 0},       {"one", 1},      {"two", 2},        {"three", 3},
        {"four", 4},      {"five", 5},     {"six", 6},      {"seven", 7},      {"eight", 8},
        {"nine", 9},      {"ten", 10},     {"eleven", 11},  {"twelve", 12},    {"thirteen", 13},
        {"fourteen", 14}, {"fifteen", 15}, {"sixteen", 16}, {"seventeen", 17}, {"eighteen", 18},
        {"nineteen", 19}, {"twenty", 20},  {"thirty", 30},  {"forty", 40},     {"fifty", 50},
        {"sixty", 60},    {"seventy", 70}, {"eighty", 80},  {"ninety", 90}};
    return numbers;
}

/// A whole number that grows word by word.
struct Growing {
    std::int64_t done = 0, group = 0;
    bool any = false;

    bool add(const std::string& word) {
        const auto found = small_numbers().find(word);
        if (found != small_numbers().end()) {
            group += found->second;
        } else if (word == "hundred") {
            group = std::max<std::int64_t>(group, 1) * 100;
        } else if (word == "thousand" || word == "million") {
            done += std::max<std::int64_t>(group, 1) * (word == "thousand" ? 1'000 : 1'000'000);
            group = 0;
        } else if (std::all_of(word.begin(), word.end(),
                               [](unsigned char c) { return std::isdigit(c) != 0; }) &&
                   word.size() <= 9) {
            group += std::stoll(word);
        } else {
            return false;
        }
        any = true;
        return done < 1'000'000'000 && group < 1'000'000'000;
    }
    std::int64_t value() const { return done + group; }
};

} // namespace

std::optional<Decimal> amount_in_words(std::string_view words) {
    Growing whole;
    Growing cents;
    bool in_cents = false;
    bool hundredths = false;
    for (const std::string& word : detail::words_of(words)) {
        if (word == "and" || word == "only" || word == "per" || word == "us") {
            continue;
        }
        if (word == "dollar" || word == "dollars") {
            in_cents = true;
        } else if (word == "cent" || word == "cents") {
            if (!in_cents) { // "fifty cents"
                std::swap(whole, cents);
            }
            hundredths = true;
        } else if (in_cents && cents.any && word == "100") {
            hundredths = true; // "dollars and 10/100"
        } else if (!(in_cents ? cents : whole).add(word)) {
            return std::nullopt;
        }
    }
    if ((cents.any && !hundredths) || cents.value() > 99 || !(whole.any || cents.any)) {
        return std::nullopt;
    }
    return Decimal(whole.value() * 100 + cents.value(), 2);
}

} // namespace scupper::bid
