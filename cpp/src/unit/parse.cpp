#include "scupper/unit/parse.hpp"

#include "context.hpp"
#include "cursor.hpp"
#include "expression.hpp"
#include "lookup.hpp"
#include "number.hpp"
#include "plain_text.hpp"
#include "scupper/unit/unit.hpp"

#include <cmath>

namespace scupper {

using detail::Context;
using detail::Cursor;
using detail::quoted;

namespace {
/// A quantity and the unit its text ends with.
struct Reading {
    double si;
    Unit unit;
};

[[noreturn]] void refuse_rest(std::string_view rest, const Context& context) {
    rest.remove_prefix(rest.starts_with(' ') ? 1 : 0);
    context.fail("text", quoted(rest) + " left over in " + quoted(context.text),
                 "nothing after the unit");
}

/// "1 200 gal": spaces do not group thousands. "10-20 psi": a range is three inputs.
void require_unit_next(const Cursor& cursor, const Context& context) {
    const bool reciprocal = cursor.peek() == '1' && cursor.peek(1) == '/';
    if (detail::is_digit(cursor.peek()) && !reciprocal) {
        context.fail("number", quoted(context.text), "thousands with a comma, \"1,200\"");
    }
    if (cursor.peek() == '-' && detail::is_digit(cursor.peek(1))) {
        context.fail("number", quoted(context.text), "one number, not a range");
    }
}

Reading take_term(Cursor& cursor, const Context& context) {
    const double number = detail::take_number(cursor, context);
    cursor.skip(" ");
    require_unit_next(cursor, context);
    return {number, detail::take_unit_expression(cursor, context)};
}

/// The "6 in" of "12 ft 6 in" (or 12'-6"): a smaller unit of the same dimension.
void add_smaller_term(Reading& sum, Cursor& cursor, const Context& context) {
    cursor.take(detail::is_digit(cursor.peek()) ? 0 : 1);
    const Reading next = take_term(cursor, context);
    if (next.unit.dimension == dim::none) {
        context.fail("missing", quoted(context.text), "a unit after every number");
    }
    const bool fits = next.unit.dimension == sum.unit.dimension &&
                      next.unit.factor < sum.unit.factor &&
                      !detail::is_temperature_scale(sum.unit) &&
                      !detail::is_temperature_scale(next.unit) && next.unit.currency.empty();
    if (!fits) {
        context.fail("text", quoted(context.text),
                     "a sum from greater to smaller units, as in \"12 ft 6 in\"");
    }
    sum.si += from_unit(next.si, next.unit);
    sum.unit.factor = next.unit.factor;
}

/// Behind a unit: a digit at once (12'6"), or after one space or one hyphen.
bool sum_goes_on(const Cursor& cursor) {
    const bool joined = cursor.peek() == ' ' || cursor.peek() == '-';
    return detail::is_digit(cursor.peek(joined ? 1 : 0));
}

Reading take_sum(Cursor& cursor, double sign, const Context& context) {
    const Reading first = take_term(cursor, context);
    if (!sum_goes_on(cursor)) {
        return {from_unit(sign * first.si, first.unit), first.unit};
    }
    Reading sum{from_unit(first.si, first.unit), first.unit};
    while (sum_goes_on(cursor)) {
        add_smaller_term(sum, cursor, context);
    }
    return {sign * sum.si, sum.unit};
}

double take_sign(Cursor& cursor) {
    const bool negative = cursor.skip("-");
    if (!negative) {
        cursor.skip("+");
    }
    return negative ? -1.0 : 1.0;
}

/// "USD 85/h": the code first, what it is per behind the number.
Reading take_price(Cursor& cursor, const Context& context) {
    const std::string code(cursor.take(3));
    cursor.skip(" ");
    const double sign = take_sign(cursor);
    Reading price = take_term(cursor, context);
    if (price.unit.dimension.money != 0) {
        context.fail("currency", quoted(context.text), "the currency once");
    }
    price.unit.dimension = price.unit.dimension * dim::money;
    price.unit.currency = code;
    return {from_unit(sign * price.si, price.unit), price.unit};
}

Reading take_quantity(Cursor& cursor, const Context& context) {
    if (!detail::leading_currency(cursor.rest()).empty()) {
        return take_price(cursor, context);
    }
    if (const auto advice = detail::ambiguity_advice(cursor.rest())) {
        context.fail("ambiguous", quoted(context.text), *advice);
    }
    const double sign = take_sign(cursor);
    return take_sum(cursor, sign, context);
}

bool is_absolute(const Unit& unit) {
    return unit.dimension == dim::temperature &&
           (detail::is_temperature_scale(unit) || unit.name == "K");
}

ParsedQuantity read(const Context& context) {
    const std::string plain = detail::plain_text(context.text);
    Cursor cursor(plain);
    const Reading reading = take_quantity(cursor, context);
    if (!cursor.done()) {
        refuse_rest(cursor.rest(), context);
    }
    if (!std::isfinite(reading.si)) {
        context.fail("number", quoted(context.text), "a finite number");
    }
    if (reading.unit.dimension.money != 0 && reading.unit.currency.empty()) {
        context.fail("currency", quoted(context.text), "the currency's code, as in \"USD 85/h\"");
    }
    const bool absolute = is_absolute(reading.unit);
    if (absolute && reading.si < 0.0) {
        context.fail("number", quoted(context.text), "a temperature from absolute zero up");
    }
    return {reading.si, reading.unit.dimension, reading.unit.currency, absolute};
}

ParsedQuantity read_as(const Context& context) {
    ParsedQuantity quantity = read(context);
    if (quantity.dimension == *context.expected) {
        if (quantity.dimension == dim::temperature && !quantity.absolute_temperature) {
            context.fail("dimension", quoted(context.text) + ", a difference",
                         "a point on a temperature scale");
        }
        return quantity;
    }
    const bool bare = quantity.dimension == dim::none;
    context.fail(bare ? "missing" : "dimension", quoted(context.text),
                 bare ? "a unit with the number" : "");
}
} // namespace

Unit parse_unit(std::string_view text, std::string_view path) {
    const Context context{text, path, std::nullopt};
    const std::string plain = detail::plain_text(text);
    Cursor cursor(plain);
    if (cursor.done()) {
        context.fail("missing", "no unit", "the name of a unit, e.g. \"ft2/h\"; \"1\" for none");
    }
    Unit unit = detail::take_unit_expression(cursor, context);
    if (!cursor.done()) {
        refuse_rest(cursor.rest(), context);
    }
    unit.name = plain;
    return unit;
}

ParsedQuantity parse_quantity(std::string_view text, std::string_view path) {
    return read({text, path, std::nullopt});
}

double parse_as(std::string_view text, Dimension expected, std::string_view path,
                std::string& currency) {
    const Context context{text, path, expected};
    const ParsedQuantity quantity = read_as(context);
    if (currency.empty()) {
        currency = quantity.currency;
    } else if (!quantity.currency.empty() && quantity.currency != currency) {
        context.fail("currency", quoted(text), "amounts in " + currency);
    }
    return quantity.si;
}

double parse_as(std::string_view text, Dimension expected, std::string_view path) {
    const Context context{text, path, expected};
    const ParsedQuantity quantity = read_as(context);
    if (!quantity.currency.empty()) {
        context.fail("currency", quoted(text), "a quantity without money: its currency has no use");
    }
    return quantity.si;
}

Temperature<double> parse_temperature(std::string_view text, std::string_view path) {
    return Temperature<double>(parse_as(text, dim::temperature, path));
}

double to_unit(double si, const Unit& unit) {
    return si / unit.factor - unit.offset;
}

double from_unit(double number, const Unit& unit) {
    return (number + unit.offset) * unit.factor;
}

} // namespace scupper
