#pragma once
// Sums that do not depend on the order of their parts.

#include <cmath>
#include <cstdint>

namespace scupper::estimate {

/// Adds numbers in fixed point: the total is the same, to the bit, whatever the order, the number
/// of threads or the partition. A part is rounded to 2^-24 of its unit once.
class FixedTotal {
  public:
    /// Adds a part.
    ///
    /// @param part [any unit] a finite number below 2^80 in size
    /// Range: finite; the caller keeps parts without value apart.
    /// Errors: none.
    /// Source: own convention
    /// Verified by: tests/cpp/estimate/test_programme.cpp
    void add(double part) { sum_ += static_cast<Wide>(std::nearbyint(std::ldexp(part, bits))); }
    /// Adds another total.
    ///
    /// @param other [any unit] a total of other parts
    /// Range: any.
    /// Errors: none.
    /// Source: own convention
    void add(const FixedTotal& other) { sum_ += other.sum_; }
    /// The sum of all parts [unit of the parts].
    double value() const { return std::ldexp(static_cast<double>(sum_), -bits); }

  private:
    __extension__ using Wide = __int128;
    static constexpr int bits = 24;
    Wide sum_ = 0;
};

} // namespace scupper::estimate
