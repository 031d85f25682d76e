#include "expression.hpp"

#include <algorithm>
#include <cstdio>
#include <string_view>

namespace scupper::detail {

namespace {

struct Infix {
    std::string_view sign;
    int precedence; // higher binds tighter
};

Infix infix_of(Op op) {
    switch (op) {
    case Op::either:
        return {" or ", 1};
    case Op::both:
        return {" and ", 2};
    case Op::less:
        return {" < ", 3};
    case Op::less_equal:
        return {" ≤ ", 3};
    case Op::equal:
        return {" = ", 3};
    case Op::add:
        return {" + ", 4};
    case Op::subtract:
        return {" − ", 4};
    case Op::multiply:
        return {" × ", 5};
    case Op::divide:
        return {" ÷ ", 5};
    case Op::power:
        return {" ^ ", 6};
    default:
        return {"", 0};
    }
}

std::string_view function_of(Op op) {
    switch (op) {
    case Op::sqrt:
        return "√";
    case Op::exp:
        return "exp";
    case Op::log:
        return "ln";
    case Op::cos:
        return "cos";
    case Op::tan:
        return "tan";
    case Op::abs:
        return "abs";
    case Op::ceil:
        return "round up";
    case Op::count_up:
        return "count up";
    case Op::min:
        return "the lesser of";
    case Op::max:
        return "the greater of";
    case Op::negation:
        return "not";
    case Op::negate:
        return "−";
    default:
        return "";
    }
}

std::string number_text(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.6g", value);
    return text;
}

} // namespace

Step Expressions::body_of(Step step) const {
    while (recording_.steps()[step].op == Op::named) {
        step = recording_.arguments(step)[0];
    }
    return step;
}

bool Expressions::shown(Step step) const {
    const Op op = recording_.steps()[step].op;
    return recording_.label(step) != nullptr || op == Op::choose || op == Op::opaque;
}

std::string Expressions::name(Step step) {
    if (const Label* label = recording_.label(step)) {
        return label->name;
    }
    if (recording_.steps()[step].op == Op::choose) {
        const int next = static_cast<int>(choices_.size()) + 1;
        return "choice " + std::to_string(choices_.emplace(step, next).first->second);
    }
    return "result";
}

std::vector<Step> Expressions::parts(Step step) const {
    std::vector<Step> found;
    collect(step, true, found);
    return found;
}

std::vector<Step> Expressions::parts_within(Step step) const {
    std::vector<Step> found;
    collect(step, false, found);
    return found;
}

void Expressions::collect(Step step, bool open, std::vector<Step>& found) const {
    if (!open && shown(step)) {
        if (std::find(found.begin(), found.end(), step) == found.end()) {
            found.push_back(step);
        }
        return;
    }
    for (const Step argument : recording_.arguments(step)) {
        collect(argument, false, found);
    }
}

std::string Expressions::write(Step step, int outer_precedence, bool open) {
    const RecordedStep& s = recording_.steps()[step];
    if (!open && shown(step)) {
        return name(step);
    }
    if (s.op == Op::constant) {
        return number_text(s.value);
    }
    if (!infix_of(s.op).sign.empty()) {
        return infix(step, outer_precedence);
    }
    return call(step);
}

std::string Expressions::infix(Step step, int outer_precedence) {
    const Op op = recording_.steps()[step].op;
    const auto [sign, precedence] = infix_of(op);
    const auto args = recording_.arguments(step);
    // The right side of a difference or quotient needs brackets even at equal precedence.
    const bool strict = op == Op::subtract || op == Op::divide;
    const std::string text = write(args[0], precedence, false) + std::string(sign) +
                             write(args[1], precedence + (strict ? 1 : 0), false);
    return precedence < outer_precedence ? "(" + text + ")" : text;
}

std::string Expressions::call(Step step) {
    const auto args = recording_.arguments(step);
    if (args.empty()) {
        return number_text(recording_.steps()[step].value);
    }
    std::string text(function_of(recording_.steps()[step].op));
    text += "(";
    for (std::size_t i = 0; i < args.size(); ++i) {
        text += (i == 0 ? "" : "; ") + write(args[i], 0, false);
    }
    return text + ")";
}

} // namespace scupper::detail
