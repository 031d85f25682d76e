#include "scupper/money/money.hpp"

#include "checked.hpp"
#include "scupper/money/digits.hpp"

#include <algorithm>
#include <cstddef>

namespace scupper {

namespace {
void require_same_currency(const Currency& a, const Currency& b, std::string_view path) {
    if (a != b) {
        throw MoneyError({"money.mixed", std::string(path),
                          std::string(b.code()) + " beside " + std::string(a.code()),
                          "amounts of one currency"});
    }
}

std::string_view sign_of(const Currency& currency) {
    for (const std::string_view code : {"USD", "CAD", "AUD", "NZD", "MXN"}) {
        if (currency.code() == code) {
            return "$";
        }
    }
    if (currency.code() == "EUR") {
        return "\u20ac";
    }
    return currency.code() == "GBP" ? "\u00a3" : "";
}

bool is_letter(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}

/// A text cut into number and currency code, whichever stands first; spaces stay.
struct Parts {
    std::string_view number;
    std::string_view code;
};

Parts parts_of(std::string_view text) {
    const auto first = std::find_if(text.begin(), text.end(), is_letter);
    const auto last = std::find_if_not(first, text.end(), is_letter);
    const auto start = static_cast<std::size_t>(first - text.begin());
    const auto length = static_cast<std::size_t>(last - first);
    const std::string_view before = text.substr(0, start);
    const std::string_view after = text.substr(start + length);
    const bool code_first = before.find_first_not_of(' ') == std::string_view::npos;
    const std::string_view rest = code_first ? before : after;
    if (rest.find_first_not_of(' ') != std::string_view::npos) {
        return {text, {}};
    }
    return {code_first ? after : before, text.substr(start, length)};
}

std::string without_sign(std::string_view text, std::string_view sign) {
    std::string plain(text);
    const std::size_t at = text.find_first_not_of(" -+");
    if (!sign.empty() && at != std::string_view::npos && text.substr(at).starts_with(sign)) {
        plain.erase(at, sign.size());
    }
    return plain;
}
} // namespace

Money operator+(const Money& a, const Money& b) {
    require_same_currency(a.currency_, b.currency_, "");
    return {a.amount_ + b.amount_, a.currency_};
}

std::weak_ordering operator<=>(const Money& a, const Money& b) {
    require_same_currency(a.currency_, b.currency_, "");
    return a.amount_ <=> b.amount_;
}

Money rounded_to_minor_unit(const Money& amount) {
    return {rounded(amount.amount(), minor_digits(amount.currency())), amount.currency()};
}

Money extension(const Money& unit_price, const Decimal& quantity) {
    return rounded_to_minor_unit(unit_price * quantity);
}

Money from_minor_units(std::int64_t units, const Currency& currency) {
    return {Decimal(units, minor_digits(currency)), currency};
}

Money parse_money(std::string_view text, std::string_view path) {
    const Parts parts = parts_of(text);
    if (parts.code.empty()) {
        throw MoneyError({"money.currency", std::string(path), "\"" + std::string(text) + "\"",
                          "an amount with its currency, e.g. \"USD 1,234.56\""});
    }
    const Currency currency = parse_currency(parts.code, path);
    return {parse_decimal(parts.number, path), currency};
}

Money parse_amount(std::string_view text, const Currency& currency, std::string_view path) {
    if (std::any_of(text.begin(), text.end(), is_letter)) {
        const Money amount = parse_money(text, path);
        require_same_currency(currency, amount.currency(), path);
        return amount;
    }
    return {parse_decimal(without_sign(text, sign_of(currency)), path), currency};
}

std::string to_text(const Money& amount) {
    const Decimal cents_at_least = amount.amount() + Decimal(0, minor_digits(amount.currency()));
    std::string digits = to_text(cents_at_least);
    const bool negative = digits.front() == '-';
    digits.erase(0, negative ? 1 : 0);
    const std::size_t point = std::min(digits.find('.'), digits.size());
    return std::string(amount.currency().code()) + (negative ? " -" : " ") +
           detail::grouped(digits.substr(0, point)) + digits.substr(point);
}

} // namespace scupper
