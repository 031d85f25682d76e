#include "checked.hpp"
#include "scupper/money/decimal.hpp"
#include "scupper/money/digits.hpp"

#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>

namespace scupper {

namespace {
constexpr std::string_view digits_only = "0123456789";

[[noreturn]] void refuse_number(std::string_view text, std::string_view path) {
    const bool comma = text.find(',') != std::string_view::npos;
    throw MoneyError({"money.number", std::string(path), "\"" + std::string(text) + "\"",
                      comma ? detail::comma_advice(text) : "a plain number, e.g. \"1,234.56\""});
}

std::string_view without_outer_spaces(std::string_view text) {
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

/// Whole digits and decimals of an unsigned number, commas removed.
struct Digits {
    std::string whole;
    std::string decimals;
};

std::optional<Digits> digits_of(std::string_view number) {
    const std::size_t point = number.find('.');
    const std::string_view whole = number.substr(0, point);
    const auto plain = whole.empty() ? std::optional<std::string>("") : detail::ungrouped(whole);
    if (!plain) {
        return std::nullopt;
    }
    if (point == std::string_view::npos) {
        return whole.empty() ? std::nullopt : std::optional(Digits{*plain, ""});
    }
    const std::string_view decimals = number.substr(point + 1);
    if (decimals.empty() || decimals.find_first_not_of(digits_only) != std::string_view::npos) {
        return std::nullopt;
    }
    return Digits{*plain, std::string(decimals)};
}

/// A double as coefficient x 10^-scale, by its shortest digits; the scale can be anything.
struct ShortestDigits {
    std::int64_t coefficient;
    int scale;
};

ShortestDigits shortest_digits(double value) {
    std::array<char, 32> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                   std::chars_format::scientific)
                         .ptr;
    const std::string_view text(buffer.data(), static_cast<std::size_t>(end - buffer.data()));
    const std::size_t e = text.find('e');
    std::string mantissa(text.substr(0, e));
    const std::size_t point = mantissa.find('.');
    const int decimals =
        point == std::string::npos ? 0 : static_cast<int>(mantissa.size() - point - 1);
    std::erase(mantissa, '.');
    // std::stoi takes the sign "+" that the text carries, std::from_chars does not.
    return {std::stoll(mantissa), decimals - std::stoi(std::string(text.substr(e + 1)))};
}
} // namespace

Decimal parse_decimal(std::string_view text, std::string_view path) {
    const std::string_view body = without_outer_spaces(text);
    const bool is_signed = !body.empty() && (body.front() == '-' || body.front() == '+');
    const auto digits = digits_of(body.substr(is_signed ? 1 : 0));
    if (!digits) {
        refuse_number(text, path);
    }
    const std::string all = digits->whole + digits->decimals;
    std::int64_t coefficient = 0;
    const auto read = std::from_chars(all.data(), all.data() + all.size(), coefficient);
    if (read.ec != std::errc{} || digits->decimals.size() > Decimal::max_scale) {
        detail::throw_overflow(path, "\"" + std::string(text) + "\"");
    }
    return Decimal(body.front() == '-' ? -coefficient : coefficient,
                   static_cast<int>(digits->decimals.size()));
}

std::string to_text(const Decimal& number) {
    std::string digits = std::to_string(detail::magnitude(number.coefficient()));
    const auto scale = static_cast<std::size_t>(number.scale());
    if (digits.size() <= scale) {
        digits.insert(0, scale + 1 - digits.size(), '0');
    }
    if (scale > 0) {
        digits.insert(digits.size() - scale, ".");
    }
    return number.coefficient() < 0 ? "-" + digits : digits;
}

double to_double(const Decimal& number) {
    return *detail::nearest_double(to_text(number));
}

Decimal rounded_from_double(double value, int decimals, std::string_view path) {
    if (!std::isfinite(value)) {
        throw MoneyError(
            {"money.number", std::string(path), std::to_string(value), "a finite amount"});
    }
    const ShortestDigits digits = shortest_digits(value);
    const int surplus = digits.scale - Decimal(0, decimals).scale();
    if (surplus > Decimal::max_scale) {
        return Decimal(0, decimals);
    }
    if (surplus >= 0) {
        return Decimal(detail::divide_half_away(digits.coefficient, detail::ten_to(surplus)),
                       decimals);
    }
    const auto widened =
        surplus < -Decimal::max_scale
            ? std::nullopt
            : detail::checked_product(digits.coefficient, detail::ten_to(-surplus));
    if (!widened && digits.coefficient != 0) {
        detail::throw_overflow(path, std::to_string(value));
    }
    return Decimal(widened.value_or(0), decimals);
}

} // namespace scupper
