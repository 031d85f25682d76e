#pragma once
// One recorded operation over a block of draws. Internal to the part.

#include "tape.hpp"

namespace scupper::simulate::detail {

/// Comparisons, what joins them (1 or 0) and choices.
void decide_each(Op op, const Operand* x, double* out, std::size_t count);

/// Functions of one number.
void apply_each(Op op, const Operand& x, double* out, std::size_t count);

/// Sums, products and the like of two numbers.
void combine_each(Op op, const Operand* x, double* out, std::size_t count);

} // namespace scupper::simulate::detail
