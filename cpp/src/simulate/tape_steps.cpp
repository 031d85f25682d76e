#include "tape_steps.hpp"

#include "scupper/random/wide.hpp"
#include "scupper/traced.hpp"

#include <array>
#include <cmath>

namespace scupper::simulate::detail {

namespace {

template <class F>
void each_of(const Operand& a, double* out, std::size_t count, F&& f) {
    const double* x = a.column;
    for (std::size_t i = 0; i < count; ++i) {
        out[i] = f(x[i]);
    }
}

/// Of two operands at least one is a column.
template <class F>
void each_of(const Operand& a, const Operand& b, double* out, std::size_t count, F&& f) {
    const double* x = a.column;
    const double* y = b.column;
    if (y == nullptr) {
        each_of(a, out, count, [&f, n = b.number](double v) { return f(v, n); });
    } else if (x == nullptr) {
        each_of(b, out, count, [&f, n = a.number](double v) { return f(n, v); });
    } else {
        for (std::size_t i = 0; i < count; ++i) {
            out[i] = f(x[i], y[i]);
        }
    }
}

using Filled = std::array<double, block_draws>;

/// A column to read from, whatever the operand is.
const double* column_of(const Operand& x, Filled& filled) {
    if (x.column != nullptr) {
        return x.column;
    }
    filled.fill(x.number);
    return filled.data();
}

void choose_each(const Operand* x, double* out, std::size_t count) {
    std::array<Filled, 3> filled;
    const double* condition = column_of(x[0], filled[0]);
    const double* if_true = column_of(x[1], filled[1]);
    const double* if_false = column_of(x[2], filled[2]);
    for (std::size_t i = 0; i < count; ++i) {
        const double a = if_true[i];
        const double b = if_false[i];
        out[i] = condition[i] != 0.0 ? a : b;
    }
}

} // namespace

SCUPPER_WIDE void decide_each(Op op, const Operand* x, double* out, std::size_t count) {
    switch (op) {
    case Op::less:
        return each_of(x[0], x[1], out, count, [](double a, double b) { return double(a < b); });
    case Op::less_equal:
        return each_of(x[0], x[1], out, count, [](double a, double b) { return double(a <= b); });
    case Op::equal:
        return each_of(x[0], x[1], out, count, [](double a, double b) { return double(a == b); });
    case Op::both:
        return each_of(x[0], x[1], out, count, [](double a, double b) { return a * b; });
    case Op::either:
        return each_of(x[0], x[1], out, count, [](double a, double b) { return max_of(a, b); });
    case Op::negation:
        return each_of(x[0], out, count, [](double a) { return 1.0 - a; });
    default:
        return choose_each(x, out, count);
    }
}

SCUPPER_WIDE void apply_each(Op op, const Operand& x, double* out, std::size_t count) {
    switch (op) {
    case Op::negate:
        return each_of(x, out, count, [](double a) { return -a; });
    case Op::sqrt:
        return each_of(x, out, count, [](double a) { return std::sqrt(a); });
    case Op::exp:
        return each_of(x, out, count, [](double a) { return std::exp(a); });
    case Op::log:
        return each_of(x, out, count, [](double a) { return std::log(a); });
    case Op::cos:
        return each_of(x, out, count, [](double a) { return std::cos(a); });
    case Op::tan:
        return each_of(x, out, count, [](double a) { return std::tan(a); });
    case Op::abs:
        return each_of(x, out, count, [](double a) { return std::abs(a); });
    case Op::ceil:
        return each_of(x, out, count, [](double a) { return std::ceil(a); });
    default:
        return each_of(x, out, count, [](double a) { return count_up(a); });
    }
}

SCUPPER_WIDE void combine_each(Op op, const Operand* x, double* out, std::size_t count) {
    switch (op) {
    case Op::add:
        return each_of(x[0], x[1], out, count, [](double a, double b) { return a + b; });
    case Op::subtract:
        return each_of(x[0], x[1], out, count, [](double a, double b) { return a - b; });
    case Op::multiply:
        return each_of(x[0], x[1], out, count, [](double a, double b) { return a * b; });
    case Op::divide:
        return each_of(x[0], x[1], out, count, [](double a, double b) { return a / b; });
    case Op::min:
        return each_of(x[0], x[1], out, count, [](double a, double b) { return min_of(a, b); });
    case Op::max:
        return each_of(x[0], x[1], out, count, [](double a, double b) { return max_of(a, b); });
    default:
        return each_of(x[0], x[1], out, count, [](double a, double b) { return std::pow(a, b); });
    }
}

} // namespace scupper::simulate::detail
