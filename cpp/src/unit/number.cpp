#include "number.hpp"

#include "scupper/money/digits.hpp"

#include <optional>
#include <string>

namespace scupper::detail {

namespace {
constexpr std::string_view number_advice = "a number such as \"12.5\", \"1,200\" or \"1 1/2\"";

std::string_view take_decimal(Cursor& cursor) {
    std::size_t n = 0;
    while (is_digit(cursor.peek(n)) || cursor.peek(n) == ',' || cursor.peek(n) == '.') {
        ++n;
    }
    return cursor.take(n);
}

/// "e-6" where digits follow; "5 each" has none.
std::string_view take_exponent(Cursor& cursor) {
    if (cursor.peek() != 'e' && cursor.peek() != 'E') {
        return {};
    }
    std::size_t n = cursor.peek(1) == '-' || cursor.peek(1) == '+' ? 2 : 1;
    if (!is_digit(cursor.peek(n))) {
        return {};
    }
    while (is_digit(cursor.peek(n))) {
        ++n;
    }
    return cursor.take(n);
}

double decimal_value(std::string_view number, std::string_view exponent, const Context& context) {
    const std::size_t point = number.find('.');
    const std::string_view whole = number.substr(0, point);
    const std::string_view decimals =
        point == std::string_view::npos ? "" : number.substr(point + 1);
    auto plain =
        whole.empty() && !decimals.empty() ? std::optional<std::string>("0") : ungrouped(whole);
    const bool pointless = point != std::string_view::npos && decimals.empty();
    if (!plain || pointless || decimals.find_first_of(",.") != std::string_view::npos) {
        const bool comma = number.find(',') != std::string_view::npos;
        context.fail("number", quoted(context.text),
                     comma ? comma_advice(number) : std::string(number_advice));
    }
    if (!decimals.empty()) {
        *plain += '.' + std::string(decimals);
    }
    std::string power(exponent);
    std::erase(power, '+');
    const auto value = nearest_double(*plain + power);
    if (!value) {
        context.fail("number", quoted(context.text), "a number within 1e-300 to 1e300");
    }
    return *value;
}

/// "7/8": two runs of digits; nothing is taken where it is not one.
std::optional<double> take_fraction(Cursor& cursor, const Context& context) {
    Cursor ahead = cursor;
    const std::string_view top = ahead.take_digits();
    if (top.empty() || !ahead.skip("/") || !is_digit(ahead.peek())) {
        return std::nullopt;
    }
    const std::string_view bottom = ahead.take_digits();
    const auto numerator = nearest_double(top);
    const auto denominator = nearest_double(bottom);
    if (!numerator || !denominator || *denominator == 0.0) {
        context.fail("number", quoted(context.text), "a fraction such as \"7/8\"");
    }
    cursor = ahead;
    return *numerator / *denominator;
}

/// The " 1/2" or "-1/2" after a whole number.
double take_further_fraction(Cursor& cursor, const Context& context) {
    Cursor ahead = cursor;
    if (!ahead.skip(" ") && !ahead.skip("-")) {
        return 0.0;
    }
    const auto fraction = take_fraction(ahead, context);
    if (!fraction) {
        return 0.0;
    }
    if (*fraction >= 1.0) {
        context.fail("number", quoted(context.text), "a fraction below one, as in \"1 1/2\"");
    }
    cursor = ahead;
    return *fraction;
}
} // namespace

double take_number(Cursor& cursor, const Context& context) {
    if (const auto fraction = take_fraction(cursor, context)) {
        return *fraction;
    }
    const std::string_view number = take_decimal(cursor);
    if (number.empty()) {
        context.fail("number", quoted(context.text), number_advice);
    }
    const double value = decimal_value(number, take_exponent(cursor), context);
    const bool whole = number.find('.') == std::string_view::npos;
    return whole ? value + take_further_fraction(cursor, context) : value;
}

} // namespace scupper::detail
