#include "expression.hpp"

#include "lookup.hpp"
#include "scupper/money/currency.hpp"

#include <cmath>

namespace scupper::detail {

namespace {
enum class Operator { none, times, over };

Operator take_operator(Cursor& cursor) {
    Cursor ahead = cursor;
    ahead.skip(" ");
    Operator op = Operator::none;
    if (ahead.skip("*")) {
        op = Operator::times;
    } else if (ahead.skip("/") || ahead.skip("per ")) {
        op = Operator::over;
    }
    if (op != Operator::none) {
        ahead.skip(" ");
        cursor = ahead;
    }
    return op;
}

[[noreturn]] void refuse_name(std::string_view text, const Context& context) {
    if (const auto advice = ambiguity_advice(text)) {
        context.fail("ambiguous", quoted(context.text), *advice);
    }
    const std::string_view words = leading_words(text);
    if (words.empty()) {
        context.fail("missing", quoted(context.text), "a unit at the end");
    }
    const std::string near = nearest_unit(words);
    context.fail("unknown", "unit " + quoted(words) + " in " + quoted(context.text),
                 near.empty() ? "" : quoted(near) + " is the nearest known");
}

Unit take_named(Cursor& cursor, const Context& context) {
    if (const std::string_view code = leading_currency(cursor.rest()); !code.empty()) {
        cursor.take(code.size());
        return {std::string(code), dim::money, 1.0, 0.0, std::string(code)};
    }
    const std::string_view before = cursor.rest();
    const UnitRow* row = take_unit(cursor);
    if (row == nullptr) {
        refuse_name(before, context);
    }
    return {std::string(row->name), row->dimension, row->factor, row->offset, ""};
}

/// "2", "^2" or "^-2"; 1 where none stands there. A bare digit belongs to a letter before it, so
/// that 12'6" is a sum.
int take_power(Cursor& cursor, bool after_letter, const Context& context) {
    Cursor ahead = cursor;
    const bool raised = ahead.skip("^");
    const bool negative = raised && ahead.skip("-");
    if (!raised && !(after_letter && is_digit(ahead.peek()))) {
        return 1;
    }
    const std::string_view digits = ahead.take_digits();
    if (digits.size() != 1 || digits == "0") {
        context.fail("text", quoted(context.text), "a whole power from 1 to 9, as in \"ft2\"");
    }
    cursor = ahead;
    return (negative ? -1 : 1) * (digits.front() - '0');
}

Unit raised(Unit unit, int n) {
    const double base = n < 0 ? 1.0 / unit.factor : unit.factor;
    unit.factor = base;
    for (int i = 1; i < std::abs(n); ++i) {
        unit.factor *= base;
    }
    unit.dimension = power(unit.dimension, n);
    return unit;
}

Unit take_factor(Cursor& cursor, const Context& context) {
    const std::string_view before = cursor.rest();
    Unit unit = take_named(cursor, context);
    const bool after_letter = is_letter(before[before.size() - cursor.rest().size() - 1]);
    const int n = take_power(cursor, after_letter, context);
    if (n == 1) {
        return unit;
    }
    if (is_temperature_scale(unit)) {
        context.fail("text", quoted(context.text), "a temperature without a power");
    }
    return raised(unit, n);
}

void join(Unit& product, const Unit& next, Operator op, const Context& context) {
    if (product.offset != 0.0 || next.offset != 0.0) {
        context.fail("text", quoted(context.text),
                     "\"delta_degC\" or \"delta_degF\" in a compound unit");
    }
    if (!product.currency.empty() && !next.currency.empty()) {
        context.fail("currency", quoted(context.text), "one currency");
    }
    const bool over = op == Operator::over;
    product.factor = over ? product.factor / next.factor : product.factor * next.factor;
    product.dimension =
        over ? product.dimension / next.dimension : product.dimension * next.dimension;
    product.currency += next.currency;
}

/// The first factor; nothing is taken from "/h", and "1" from "1/h".
Unit take_first(Cursor& cursor, const Context& context) {
    Cursor ahead = cursor;
    const bool one = ahead.skip("1") && !is_digit(ahead.peek());
    if (one) {
        cursor = ahead;
    }
    ahead = cursor;
    if (one || cursor.done() || take_operator(ahead) == Operator::over) {
        return {};
    }
    return take_factor(cursor, context);
}
} // namespace

bool is_temperature_scale(const Unit& unit) {
    return unit.offset != 0.0;
}

std::string_view leading_currency(std::string_view text) {
    const bool longer = is_letter(Cursor(text).peek(3));
    return !longer && is_currency_code(text.substr(0, 3)) ? text.substr(0, 3) : "";
}

Unit take_unit_expression(Cursor& cursor, const Context& context) {
    Unit unit = take_first(cursor, context);
    bool divided = false;
    for (Operator op = take_operator(cursor); op != Operator::none; op = take_operator(cursor)) {
        if (divided && op == Operator::times) {
            context.fail("ambiguous", quoted(context.text),
                         "all that divides behind a \"/\" of its own, as in \"kg/m/s\"");
        }
        divided = divided || op == Operator::over;
        join(unit, take_factor(cursor, context), op, context);
    }
    return unit;
}

} // namespace scupper::detail
