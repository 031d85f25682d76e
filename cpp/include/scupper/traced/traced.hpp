#pragma once
// A number that remembers how it came about. The same formula that prices with double explains
// itself with Traced, to the bit.

#include "scupper/traced/recording.hpp"

#include <cmath>
#include <cstdint>

namespace scupper {

/// The outcome of comparing traced numbers. It does not convert to bool: only `choose` takes it,
/// so a bare `if` on a model number does not compile.
class TracedCondition {
  public:
    TracedCondition(bool value, Recording* recording, Step step)
        : recording_(recording), step_(step), value_(value) {}
    /// Which way the comparison went [-].
    bool value() const { return value_; }
    /// The recording it stands in; null where only constants were compared [-].
    Recording* recording() const { return recording_; }
    /// Its step in the recording [-].
    Step step() const { return step_; }

  private:
    Recording* recording_;
    Step step_;
    bool value_;
};

/// A double with its place in a recording. Constants carry no recording until they meet an input.
class Traced {
  public:
    constexpr Traced() = default;
    constexpr Traced(double value) : value_(value) {} // NOLINT: constants mix freely
    /// A constant that keeps its name and source when it meets an input.
    constexpr explicit Traced(const NamedConstant& constant)
        : value_(constant.value), constant_(&constant) {}
    Traced(double value, Recording* recording, Step step)
        : value_(value), recording_(recording), step_(step) {}

    /// The value, as the same formula in double gives it [SI unit of the result].
    constexpr double value() const { return value_; }
    /// The recording it stands in; null for a constant [-].
    constexpr Recording* recording() const { return recording_; }
    /// The step in a recording: its own, or that of a constant recorded now.
    ///
    /// @param recording [-] where a constant is to be recorded
    /// @return [-] the step
    /// Range: `recording` is the one of the other operand.
    /// Errors: none.
    /// Source: own convention
    Step step_in(Recording& recording) const;

    Traced& operator+=(const Traced& b);
    Traced& operator-=(const Traced& b);
    Traced operator-() const;
    friend Traced operator+(const Traced& a, const Traced& b);
    friend Traced operator-(const Traced& a, const Traced& b);
    friend Traced operator*(const Traced& a, const Traced& b);
    friend Traced operator/(const Traced& a, const Traced& b);
    friend TracedCondition operator<(const Traced& a, const Traced& b);
    friend TracedCondition operator>(const Traced& a, const Traced& b) { return b < a; }
    friend TracedCondition operator<=(const Traced& a, const Traced& b);
    friend TracedCondition operator>=(const Traced& a, const Traced& b) { return b <= a; }
    friend TracedCondition operator==(const Traced& a, const Traced& b);

  private:
    double value_ = 0.0;
    Recording* recording_ = nullptr;
    const NamedConstant* constant_ = nullptr;
    Step step_ = 0;
};

// Elementary functions: the value of std's, as one step of the recording; a constant stays one.

/// The square root of a traced number.
///
/// @param a [SI unit] the radicand
/// @return [square root of a's unit] its root
/// Range: a >= 0; NaN below.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/traced/test_traced.cpp
Traced sqrt(const Traced& a);

/// The exponential of a traced number.
///
/// @param a [-] the exponent
/// @return [-] e to the power a
/// Range: any number; infinite beyond about 709.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/traced/test_traced.cpp
Traced exp(const Traced& a);

/// The natural logarithm of a traced number.
///
/// @param a [-] the argument
/// @return [-] ln a
/// Range: a > 0; minus infinity at 0, NaN below.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/traced/test_traced.cpp
Traced log(const Traced& a);

/// The cosine of a traced angle.
///
/// @param a [rad] the angle
/// @return [-] its cosine
/// Range: any finite angle.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/traced/test_traced.cpp
Traced cos(const Traced& a);

/// The tangent of a traced angle.
///
/// @param a [rad] the angle
/// @return [-] its tangent
/// Range: any finite angle; very large near pi/2.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/traced/test_traced.cpp
Traced tan(const Traced& a);

/// The magnitude of a traced number.
///
/// @param a [SI unit] any value
/// @return [unit of a] a without its sign
/// Range: any number; NaN gives NaN.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/traced/test_traced.cpp
Traced abs(const Traced& a);

/// The least whole number not below a traced number; whole items are `count_up`.
///
/// @param a [-] any value
/// @return [-] whole number
/// Range: any number; NaN gives NaN.
/// Errors: none.
/// Source: definition
Traced ceil(const Traced& a);

/// A traced number to a traced power, for exponents that are not whole.
///
/// @param a [-] the base
/// @param b [-] the exponent
/// @return [-] a to the power b
/// Range: a >= 0; NaN below unless b is whole.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/traced/test_traced.cpp
Traced pow(const Traced& a, const Traced& b);
TracedCondition operator&&(const TracedCondition& a, const TracedCondition& b);
TracedCondition operator||(const TracedCondition& a, const TracedCondition& b);
TracedCondition operator!(const TracedCondition& a);

} // namespace scupper
