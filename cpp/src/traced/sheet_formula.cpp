#include "sheet_formula.hpp"

#include <array>
#include <charconv>
#include <cmath>
#include <iterator>
#include <utility>

namespace scupper {

namespace detail {

namespace {

constexpr std::size_t address_length = 16; // Workings!$C$1234

constexpr Spelling function(std::string_view before, std::string_view after = ")") {
    return {before, ",", after, tightest, {loosest, loosest}};
}

/// Equal precedence on the right is bracketed always, so that sums are added in the same order.
constexpr Spelling infix(std::string_view sign, int precedence) {
    return {{}, sign, {}, precedence, {precedence, precedence + 1}};
}

} // namespace

Spelling spelling_of(Op op) {
    switch (op) {
    case Op::add:
        return infix("+", sum);
    case Op::subtract:
        return infix("-", sum);
    case Op::multiply:
        return infix("*", product);
    case Op::divide:
        return infix("/", product);
    case Op::less:
        return infix("<", comparison);
    case Op::less_equal:
        return infix("<=", comparison);
    case Op::equal:
        return infix("=", comparison);
    case Op::negate: // spreadsheets bind this sign tighter than a power
        return {"(-", {}, ")", tightest, {tightest, tightest}};
    case Op::power:
        return {{}, "^", {}, product + 1, {tightest, tightest}};
    case Op::ceil: // ROUNDUP goes away from zero, this goes up
        return function("(-INT(-(", ")))");
    case Op::count_up:
        return function("(-INT(-(1-1E-09)*(", ")))");
    case Op::sqrt:
        return function("SQRT(");
    case Op::exp:
        return function("EXP(");
    case Op::log:
        return function("LN(");
    case Op::cos:
        return function("COS(");
    case Op::tan:
        return function("TAN(");
    case Op::abs:
        return function("ABS(");
    case Op::min:
        return function("MIN(");
    case Op::max:
        return function("MAX(");
    case Op::both:
        return function("AND(");
    case Op::either:
        return function("OR(");
    case Op::negation:
        return function("NOT(");
    case Op::choose:
        return function("IF(");
    case Op::leaf:
    case Op::constant:
    case Op::named:
    case Op::opaque:
        break;
    }
    return function("(");
}

void append(Formula& to, Formula&& more) {
    for (FormulaPart& part : more) {
        if (part.cell == no_cell) {
            append(to, part.text);
        } else {
            to.push_back(std::move(part));
        }
    }
}

void append(Formula& to, std::string_view text) {
    if (text.empty()) {
        return;
    }
    if (to.empty() || to.back().cell != no_cell) {
        to.emplace_back();
    }
    to.back().text += text;
}

std::size_t length_of(const Formula& formula) {
    std::size_t length = 0;
    for (const FormulaPart& part : formula) {
        length += part.cell == no_cell ? part.text.size() : address_length;
    }
    return length;
}

} // namespace detail

std::string formula_number(double value) {
    if (!std::isfinite(value)) {
        return "NA()";
    }
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
    std::string number(text.data(), end);
    for (char& c : number) {
        c = c == 'e' ? 'E' : c;
    }
    return number;
}

Formula changed(std::span<const std::size_t> cells, const Sheet& sheet) {
    Formula formula;
    detail::append(formula, "IFERROR(IF(OR(");
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const double value = sheet.cells[cells[i]].value;
        detail::append(formula, i == 0 ? "" : ",");
        // An error value compared with itself is an error, which the IFERROR around would flag.
        detail::append(formula, std::isfinite(value) ? "ABS(" : "ISNUMBER(");
        formula.push_back({{}, cells[i]});
        if (std::isfinite(value)) {
            detail::append(formula, "-(" + formula_number(value) + "))>1E-09*" +
                                        formula_number(std::abs(value)));
        } else {
            detail::append(formula, ")");
        }
    }
    detail::append(formula, "),1,0),1)");
    return formula;
}

} // namespace scupper
