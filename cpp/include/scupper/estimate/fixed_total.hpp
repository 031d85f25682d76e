#pragma once
// Sums that do not depend on the order of their parts.

#include <array>
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
    /// The upper and the lower half of the sum, for carrying it to another process [-].
    std::array<std::uint64_t, 2> words() const {
        return {static_cast<std::uint64_t>(sum_ >> 64), static_cast<std::uint64_t>(sum_)};
    }
    /// The sum that halves belong to.
    ///
    /// @param words [-] upper and lower half, from `words`
    /// @return [unit of the parts] the same sum, to the bit
    /// Range: any.
    /// Errors: none.
    /// Source: own convention
    /// Verified by: tests/cpp/simulate/test_simulation.cpp
    static FixedTotal of_words(const std::array<std::uint64_t, 2>& words) {
        FixedTotal total;
        total.sum_ = static_cast<Wide>(words[0]) << 64 | static_cast<Wide>(words[1]);
        return total;
    }
    /// Whether two sums are the same to the bit [-].
    friend bool operator==(const FixedTotal& a, const FixedTotal& b) { return a.sum_ == b.sum_; }

  private:
    __extension__ using Wide = __int128;
    static constexpr int bits = 24;
    Wide sum_ = 0;
};

} // namespace scupper::estimate
