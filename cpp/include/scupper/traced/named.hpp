#pragma once
// Names for results and constants, and iterative solves as one step. All of it vanishes for double.

#include "scupper/quantity.hpp"
#include "scupper/traced/traced.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <span>
#include <string_view>
#include <utility>

namespace scupper {

inline double named(std::string_view, double value, const Dimension& = {}, std::string_view = {}) {
    return value;
}
/// Gives a result the name under which it is explained; the value is unchanged.
///
/// @param name [text] what people call it
/// @param value [SI unit of the result] the result
/// @param dimension [-] dimension of the value
/// @param key [text] schema key of a figure; empty for a result in between
/// @return [SI unit of the result] the same value, with its name
/// Range: any value.
/// Errors: none.
/// Source: own convention
Traced named(std::string_view name, const Traced& value, const Dimension& dimension = {},
             std::string_view key = {});

template <Dimension D, class T>
Quantity<D, T> named(std::string_view name, const Quantity<D, T>& value,
                     std::string_view key = {}) {
    return Quantity<D, T>(named(name, value.si(), D, key));
}

/// A named constant as the number type of a formula, so that the explanation shows where it is
/// defined: constant<T>(standard_gravity).
///
/// @param c [SI unit of the constant] value, name and source
/// @return [SI unit of the constant] its value; `Traced` keeps the name and source
/// Range: T is double or Traced; c outlives the result.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/traced/test_derivation.cpp
template <class T>
constexpr T constant(const NamedConstant& c) {
    if constexpr (std::is_same_v<T, double>) {
        return c.value;
    } else {
        return T(c);
    }
}

/// What a solve answered, and how well: the residual is relative to the size of its equation.
struct Solved {
    double value;    ///< SI unit of the result; NaN where there is no answer
    double residual; ///< [-]
};

/// What a solve is called and how it works, for the explanation.
struct SolveInfo {
    std::string_view name;   ///< what is solved for
    std::string_view method; ///< how, and why it always converges
    Dimension dimension;     ///< of the result
};

namespace detail {
Traced record_solve(const SolveInfo& info, const Solved& solved, std::span<const Traced> inputs,
                    Solver solver);
} // namespace detail

/// Runs an iterative solve as one step of the explanation, so that iterations do not swamp it.
///
/// @param info [text] what is solved for, the method, the dimension of the result
/// @param inputs [SI unit of each, N] what the solve depends on
/// @param solve [call] takes std::array<double, N>, gives `Solved`; both arms of a choice are
///   evaluated, so where there is no answer it gives NaN and never throws
/// @return [SI unit of the result] the answer; NaN where there is none
/// Range: any inputs that `solve` takes.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/traced/test_traced.cpp
template <std::size_t N, class F>
double solve_opaque(const SolveInfo&, const std::array<double, N>& inputs, F&& solve) {
    return std::forward<F>(solve)(inputs).value;
}
template <std::size_t N, class F>
Traced solve_opaque(const SolveInfo& info, const std::array<Traced, N>& inputs, F&& solve) {
    std::array<double, N> values{};
    for (std::size_t i = 0; i < N; ++i) {
        values[i] = inputs[i].value();
    }
    const auto again = [solve](std::span<const double> x) {
        std::array<double, N> other{};
        std::copy_n(x.begin(), N, other.begin());
        return solve(other).value;
    };
    return detail::record_solve(info, solve(values), inputs, again);
}

/// The plain value of a number of either type, for checks and results; its history is left behind.
///
/// @param x [any unit] the number
/// @return [unit of x] its value
/// Range: any number.
/// Errors: none.
/// Source: definition
inline double value_of(double x) {
    return x;
}
inline double value_of(const Traced& x) {
    return x.value();
}

} // namespace scupper
