#pragma once
// How often a bar or a broom goes along a deck.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::work {

/// How many passes cover a width once.
///
/// Formula: n = count_up(width / (effective width (1 - overlap)))
/// @param width [m] width to cover
/// @param effective_width [m] width of one pass, > 0
/// @param overlap [-] share of a pass that lies on its neighbour, 0 to below 1
/// @return [each] whole passes
/// Range: width >= 0.
/// Errors: none; an effective width of 0 gives infinity.
/// Source: definition
/// Verified by: tests/cpp/work/test_passes.cpp
template <class T>
Count<T> passes(const Length<T>& width, const Length<T>& effective_width, const T& overlap);

} // namespace scupper::work
